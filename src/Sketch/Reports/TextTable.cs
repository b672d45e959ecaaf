using System.Text;

namespace Sketch.Reports;

/// <summary>A column of a <see cref="TextTable"/>.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Comfortable">
/// For a column whose long cells may wrap: the width that is enough for most; it is narrowed to that before others are
/// narrowed further. Null for a column that never wraps, such as one of sizes.
/// </param>
internal sealed record TextColumn(string Title, int? Comfortable = null);

/// <summary>A table in plain text: aligned columns without rules. Columns without any content are left out.</summary>
internal sealed class TextTable(params TextColumn[] columns)
{
    private const int Gap = 2;
    private const int LongestWholeWord = 12;

    private readonly List<string[]> _rows = [];

    /// <summary>Adds a line across all columns.</summary>
    public void AddHeading(string text) => _rows.Add([Printable.Line(text)]);

    /// <summary>Adds a row with a cell for each column.</summary>
    public void AddRow(params string[] cells) => _rows.Add([.. cells.Select(Printable.Line)]);

    /// <summary>
    /// Writes the table; wide columns that may wrap are narrowed until a line has at most <paramref name="widest"/> characters.
    /// </summary>
    public void Write(TextWriter output, int widest)
    {
        var filled = _rows.Where(r => r.Length == columns.Length).ToList();
        var shown = Enumerable.Range(0, columns.Length).Where(c => filled.Any(r => r[c].Length > 0)).ToArray();
        var widths = shown.Select(c => filled.Max(r => r[c].Length)).Zip(shown, (w, c) => Math.Max(w, columns[c].Title.Length)).ToArray();
        Narrow(shown, widths, widest);
        WriteRow(output, [.. columns.Select(c => c.Title)], shown, widths);
        foreach (var row in _rows)
        {
            if (row.Length == columns.Length)
            {
                WriteRow(output, row, shown, widths);
            }
            else
            {
                output.Write(row[0] + "\n");
            }
        }
    }

    private void Narrow(int[] shown, int[] widths, int widest)
    {
        var wraps = Enumerable.Range(0, shown.Length).Where(i => columns[shown[i]].Comfortable is not null).ToArray();
        var words = shown.Select(c => Math.Min(LongestWholeWord, _rows.Where(r => r.Length == columns.Length).Max(r => LongestWord(r[c]))))
            .ToArray();
        while (widths.Sum() + Gap * (widths.Length - 1) > widest
            && wraps.Where(i => widths[i] > words[i]).ToArray() is { Length: > 0 } wide)
        {
            widths[wide.MaxBy(i => widths[i] - columns[shown[i]].Comfortable!.Value)]--;
        }
    }

    private static void WriteRow(TextWriter output, string[] cells, int[] shown, int[] widths)
    {
        var wrapped = shown.Select((c, i) => Wrap(cells[c], widths[i])).ToArray();
        for (var line = 0; line < wrapped.Max(w => w.Count); line++)
        {
            var text = new StringBuilder();
            for (var i = 0; i < wrapped.Length; i++)
            {
                var cell = line < wrapped[i].Count ? wrapped[i][line] : "";
                text.Append(cell.PadRight(widths[i] + Gap));
            }

            output.Write(text.ToString().TrimEnd() + "\n");
        }
    }

    private static List<string> Wrap(string cell, int width)
    {
        var lines = new List<string>();
        var indent = new string(' ', Math.Min(cell.Length - cell.TrimStart().Length, width / 2));
        var rest = cell;
        while (rest.Length > width)
        {
            var at = width;
            while (at > indent.Length && !MayBreak(rest, at))
            {
                at--;
            }

            at = at > indent.Length ? at : width;
            lines.Add(rest[..at].TrimEnd());
            rest = indent + rest[at..].TrimStart();
        }

        lines.Add(rest);
        return lines;
    }

    /// <summary>The length of the longest unbreakable part, with what precedes it on its first line.</summary>
    private static int LongestWord(string cell)
    {
        var (longest, start) = (0, 0);
        for (var at = cell.Length - cell.TrimStart().Length + 1; at <= cell.Length; at++)
        {
            if (at == cell.Length || MayBreak(cell, at))
            {
                longest = Math.Max(longest, cell[start..at].TrimEnd().Length);
                start = at;
            }
        }

        return longest;
    }

    /// <summary>Lines may break at blanks, and within paths and compound names, but not within fractions.</summary>
    private static bool MayBreak(string text, int at) =>
        text[at - 1] == ' ' || text[at] == ' ' || (text[at - 1] is '/' or '-' && char.IsLetter(text[at]));
}
