using System.Globalization;
using System.Text;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>The size list as a Markdown table, for notes and messages.</summary>
public static class SizeMarkdown
{
    private const string Special = @"\`*_[]<>|#~&!";

    private static readonly string[] Columns = ["Piece", "What", "Cut", "Finished", "Border", "Role", "Paper", "Count"];

    /// <summary>Writes a heading, a sentence on the base and the table, without the columns that are empty in all rows.</summary>
    public static void Write(TextWriter output, SizeList list, LengthFormat lengths)
    {
        output.Write($"## {Escape(list.Card.Title)}\n\n{Escape(SizeIntroduction.Of(list.Card, lengths))}\n\n");
        var rows = SizeRow.Of(list, lengths).Select(Cells).ToList();
        var filled = Enumerable.Range(0, Columns.Length).Where(c => rows.Exists(r => r[c].Length > 0)).ToList();
        WriteRow(filled.Select(c => Columns[c]));
        WriteRow(filled.Select(c => c == Columns.Length - 1 ? "---:" : "---"));
        foreach (var row in rows)
        {
            WriteRow(filled.Select(c => Escape(row[c])));
        }

        void WriteRow(IEnumerable<string> cells) => output.Write($"| {string.Join(" | ", cells)} |\n");
    }

    private static string[] Cells(SizeRow row) =>
    [
        row.Path.ToString(), row.What, row.Cut, row.Finished, row.Border, row.Role, row.Paper,
            row.Count.ToString(CultureInfo.InvariantCulture),
    ];

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
