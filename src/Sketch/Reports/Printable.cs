using System.Globalization;
using System.Text;

namespace Sketch.Reports;

/// <summary>Text from an untrusted file made safe for a terminal.</summary>
public static class Printable
{
    /// <summary>
    /// The text on one line: control characters, line ends and marks that change the reading direction, which could rewrite what is on
    /// the screen, become a centred dot; a tab becomes a blank. The number of characters stays the same.
    /// </summary>
    public static string Line(string text) => Replaced(text, keepLineEnds: false);

    /// <summary>The same, except that line ends and tabs stay.</summary>
    public static string Lines(string text) => Replaced(text, keepLineEnds: true);

    private static string Replaced(string text, bool keepLineEnds)
    {
        if (!text.Any(MustGo))
        {
            return text;
        }

        var line = new StringBuilder(text.Length);
        foreach (var character in text)
        {
            line.Append(keepLineEnds && character is ('\n' or '\r' or '\t')
                ? character : character == '\t' ? ' ' : MustGo(character) ? '·' : character);
        }

        return line.ToString();
    }

    private static bool MustGo(char character) => CharUnicodeInfo.GetUnicodeCategory(character) is
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || character is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F' or '\u061C';
}
