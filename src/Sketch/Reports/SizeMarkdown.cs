using System.Globalization;
using System.Text;

namespace Sketch.Reports;

/// <summary>The size list as a Markdown table, for notes and messages.</summary>
public static class SizeMarkdown
{
    private const string Special = @"\`*_[]<>|#~&!";

    /// <summary>Writes a heading, a sentence on the base and the table.</summary>
    public static void Write(TextWriter output, SizeList list, LengthStyle lengths)
    {
        output.Write($"## {Escape(list.Card.Title)}\n\n{Escape(SizeIntroduction.Of(list.Card, lengths))}\n\n");
        output.Write("| Piece | What | Cut | Finished | Border | Role | Paper | Count |\n");
        output.Write("| --- | --- | --- | --- | --- | --- | --- | ---: |\n");
        foreach (var row in SizeRow.Of(list, lengths))
        {
            string[] cells =
            [
                row.Path, row.What, row.Cut, row.Finished, row.Border, row.Role, row.Paper, row.Count.ToString(CultureInfo.InvariantCulture),
            ];
            output.Write($"| {string.Join(" | ", cells.Select(Escape))} |\n");
        }
    }

    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var character in Printable.Line(text))
        {
            escaped.Append(Special.Contains(character) ? $"\\{character}" : character);
        }

        return escaped.ToString();
    }
}
