using System.Text.RegularExpressions;

namespace Sketch.Tests.Diagnostics;

/// <summary>Slips of the pen, generated for every word and number of a file.</summary>
internal static partial class Slips
{
    private static readonly string[] OtherNumbers = ["9", "1/32", "0.3"];

    /// <summary>The file with one slip each: letters exchanged, numbers changed, commas and clauses lost, lines lost or indented.</summary>
    public static IEnumerable<string> In(string text)
    {
        foreach (Match word in Word().Matches(text))
        {
            yield return With(text, word, word.Value[..1] + word.Value[2] + word.Value[1] + word.Value[3..]);
        }

        foreach (Match number in Number().Matches(text))
        {
            yield return With(text, number, "-" + number.Value);
            if (number.Value.Contains('/', StringComparison.Ordinal))
            {
                var (whole, fraction) = number.Value.Split(' ') is [var a, var b] ? (a, b) : ("0", number.Value);
                yield return With(text, number, number.Value.Contains(' ') ? whole + " 1/3" : "1/3");
                yield return With(text, number,
                    $"{whole},{1000 * int.Parse(fraction.Split('/')[0]) / int.Parse(fraction.Split('/')[1]):000}");
            }

            foreach (var other in OtherNumbers.Append(number.Value + " furlongs"))
            {
                yield return With(text, number, other);
            }
        }

        foreach (Match comma in Comma().Matches(text))
        {
            yield return With(text, comma, " ");
            if (!LineAt(text, comma.Index).Contains("letters", StringComparison.Ordinal))
            {
                yield return With(text, comma, ", letters 9/16, ");
            }
        }

        foreach (Match clause in Clause().Matches(text))
        {
            yield return With(text, clause, "");
            yield return With(text, clause, clause.Value + clause.Value);
        }

        foreach (Match paint in Paint().Matches(text))
        {
            yield return With(text, paint, paint.Value.Split(' ')[0] + " black");
            yield return With(text, paint, paint.Value.Split(' ')[0] + " #e8e8e8");
            yield return With(text, paint, paint.Value.Split(' ')[0] + " plaid");
        }

        foreach (Match line in Line().Matches(text))
        {
            yield return With(text, line, "");
            yield return With(text, line, "  " + line.Value);
        }
    }

    /// <summary>A line and the next, in which it may go on.</summary>
    private static string LineAt(string text, int index) =>
        text[(text.LastIndexOf('\n', index) + 1)..text.IndexOf('\n', Math.Min(text.Length - 1, text.IndexOf('\n', index) + 1))];

    private static string With(string text, Match part, string other) => text[..part.Index] + other + text[(part.Index + part.Length)..];

    [GeneratedRegex(@"(?<=^|[\s,:])[a-z]{4,}(?=[\s,:]|$)", RegexOptions.Multiline)]
    private static partial Regex Word();

    [GeneratedRegex(@"(?<=[\sx+])\d+( \d+/\d+|/\d+|\.\d+)?(?=,| x |$)", RegexOptions.Multiline)]
    private static partial Regex Number();

    [GeneratedRegex(@",\s+")]
    private static partial Regex Comma();

    [GeneratedRegex(@", [^,\n""#]+(?=,|$)", RegexOptions.Multiline)]
    private static partial Regex Clause();

    [GeneratedRegex(@"\b(of|ink) [a-z#0-9]+")]
    private static partial Regex Paint();

    [GeneratedRegex(@"^.+\n", RegexOptions.Multiline)]
    private static partial Regex Line();
}
