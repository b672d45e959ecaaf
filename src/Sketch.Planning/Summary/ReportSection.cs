using System.Collections.Immutable;

namespace Sketch.Planning.Summary;

/// <summary>A part of a report: a heading, sentences beneath it, and a table.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Sentences">Sentences, one per paragraph.</param>
/// <param name="Table">A table, or null.</param>
public sealed record ReportSection(string Heading, ImmutableArray<string> Sentences, ReportTable? Table = null)
{
    /// <summary>The part as lines of plain text.</summary>
    public IEnumerable<string> Lines() => [Heading, new string('=', Heading.Length), .. Sentences, .. Table?.Lines() ?? [], ""];
}

/// <summary>A table of a report.</summary>
/// <param name="Columns">The headings of its columns.</param>
/// <param name="Rows">A cell for each column.</param>
public sealed record ReportTable(ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    private const int Gap = 2;

    /// <summary>A table without the columns that are empty in all rows.</summary>
    public static ReportTable Of(ImmutableArray<string> columns, IEnumerable<ImmutableArray<string>> rows)
    {
        var all = rows.ToList();
        var filled = Enumerable.Range(0, columns.Length).Where(c => all.Exists(r => r[c].Length > 0)).ToList();
        return new([.. filled.Select(c => columns[c])], [.. all.Select(r => filled.Select(c => r[c]).ToImmutableArray())]);
    }

    /// <summary>Whether a column holds numbers alone, so that it is right-aligned.</summary>
    public bool IsNumeric(int column) =>
        Rows.All(r => r[column].Length == 0 || r[column] == "any"
            || (char.IsAsciiDigit(r[column][0]) && !r[column].Contains('x', StringComparison.Ordinal)));

    /// <summary>The table as aligned lines of plain text.</summary>
    public IEnumerable<string> Lines()
    {
        var widths = Columns.Select((c, i) => Rows.Select(r => r[i].Length).Append(c.Length).Max()).ToArray();
        return Rows.Prepend(Columns).Select(row => string.Concat(row.Select((cell, i) =>
            (IsNumeric(i) ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i])) + new string(' ', Gap))).TrimEnd());
    }
}
