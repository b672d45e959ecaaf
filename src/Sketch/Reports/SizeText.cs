using System.Globalization;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>The size list as a plain-text table.</summary>
public static class SizeText
{
    private const int WidestLine = 110;

    /// <summary>Writes the table: the base first, then face by face what to cut, from the lowest layer up.</summary>
    public static void Write(TextWriter output, SizeList list, LengthFormat lengths)
    {
        var rows = SizeRow.Of(list, lengths);
        output.Write($"{Printable.Line(list.Card.Title)}\n{Printable.Line(SizeIntroduction.Of(list.Card, lengths))}\n\n");
        var table = new TextTable(
            new("Piece", 26), new("What", 16), new("Cut"), new("Finished"), new("Border", 14), new("Role", 10), new("Paper", 14),
                new("Count"));
        FaceKind? face = null;
        foreach (var row in rows)
        {
            var isBase = row.Path == PiecePath.Base;
            if (!isBase && face != row.Path.Face)
            {
                face = row.Path.Face;
                table.AddHeading(SizeIntroduction.Of(list.Card, row.Path.Face, lengths));
            }

            var path = isBase ? row.Path.WithinFace : $"  {row.Path.WithinFace}";
            table.AddRow(
                path, row.What, row.Cut, row.Finished, row.Border, row.Role, row.Paper,
                row.Count.ToString(CultureInfo.InvariantCulture));
        }

        table.Write(output, WidestLine);
        if (rows.Any(r => $"{r.Cut} {r.Finished} {r.Border}".AsSpan().IndexOfAny("+-") >= 0))
        {
            output.Write($"\n+ and - after a size: slightly more or less than the mark at 1/{lengths.Marks} inch.\n");
        }
    }
}
