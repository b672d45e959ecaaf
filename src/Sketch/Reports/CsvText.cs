using System.Buffers;

namespace Sketch.Reports;

/// <summary>Lines of comma-separated values (RFC 4180: commas, line ends of CR LF, quotes doubled).</summary>
public static class CsvText
{
    private static readonly SearchValues<char> MustQuote = SearchValues.Create("\",\r\n");

    /// <summary>One line with its end. Cells with words from a file must go through <see cref="Words"/> first.</summary>
    public static string Line(IEnumerable<string> cells) => string.Join(',', cells.Select(Quoted)) + "\r\n";

    /// <summary>
    /// Words from an untrusted file as a cell: without control characters, and with an apostrophe in front where a spreadsheet would run
    /// them as a formula.
    /// </summary>
    public static string Words(string text)
    {
        var words = Printable.Lines(text);
        return words.Length > 0 && "=+-@\t\r".Contains(words[0], StringComparison.Ordinal) ? "'" + words : words;
    }

    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(MustQuote) ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
