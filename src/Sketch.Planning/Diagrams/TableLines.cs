using Sketch.Planning.Summary;

namespace Sketch.Planning.Diagrams;

/// <summary>A table broken into lines so that it is no wider than a page.</summary>
internal sealed class TableLines
{
    private const double Rounding = 0.01;

    /// <summary>Breaks a table: if it is too wide, column widths are limited so that the whole fits.</summary>
    /// <param name="table">The table.</param>
    /// <param name="lettering">The letters.</param>
    /// <param name="points">Their size.</param>
    /// <param name="room">The width that its columns share, in millimetres, without the gaps between them.</param>
    public TableLines(ReportTable table, Lettering lettering, double points, double room)
    {
        var widths = table.Columns.Select((_, i) => table.Rows.Prepend(table.Columns).Max(r => lettering.Width(r[i], points))).ToList();
        var widest = Widest(widths, room);
        Widths = [.. widths.Select(w => Math.Min(w, widest))];
        Head = Break(table.Columns);
        Rows = [.. table.Rows.Select(r => Break(r))];

        List<string>[] Break(IReadOnlyList<string> cells) =>
            [.. cells.Select((c, i) => lettering.Wrap(c, points, Widths[i] + Rounding).ToList())];
    }

    /// <summary>Widths of the columns.</summary>
    public IReadOnlyList<double> Widths { get; }

    /// <summary>The lines of each column's heading.</summary>
    public IReadOnlyList<string>[] Head { get; }

    /// <summary>The lines of each cell, row by row.</summary>
    public IReadOnlyList<IReadOnlyList<string>[]> Rows { get; }

    /// <summary>How many lines a row takes.</summary>
    public static int Count(IReadOnlyList<string>[] row) => row.Max(c => c.Count);

    // Narrow columns keep their width; the others share the rest.
    private static double Widest(List<double> widths, double room)
    {
        var left = room;
        var wider = widths.Count;
        foreach (var width in widths.Order())
        {
            if (width * wider > left)
            {
                return left / wider;
            }

            left -= width;
            wider--;
        }

        return room;
    }
}
