using System.Text.RegularExpressions;
using Sketch.Diagnostics;

namespace Sketch.Tests.Diagnostics;

/// <summary>What a file becomes when a person follows a hint.</summary>
internal static partial class Cures
{
    /// <summary>The file after each thing that the hint says to type; none where the hint only gives advice.</summary>
    public static IEnumerable<string> Of(string text, Finding finding)
    {
        var span = finding.Location.Span;
        string Put(string by) => text[..span.Start] + by + text[span.End..];
        if (finding.Replacement is { } replacement)
        {
            yield return Put(replacement);
            yield break;
        }

        if (string.CompareOrdinal(finding.Code, "SK4") < 0)
        {
            yield break;
        }

        var line = text[span.Start..span.End];
        if (Label().Match(finding.Hint) is { Success: true } label)
        {
            var indent = new string(' ', finding.Location.Start.Column - 1 + 2);
            yield return Put(Text().IsMatch(line)
                ? WithClause(WithClause(Text().Replace(line, label.Groups[1].Value, 1), "of", "of white"), "letters", label.Groups[2].Value)
                : $"{Quoted().Replace(line, "")}\n{indent}{label.Value}");
            if (finding.Hint.StartsWith("Neither", StringComparison.Ordinal))
            {
                yield break;
            }
        }

        var hint = Label().Replace(finding.Hint, "");
        if (Shifts().Match(hint) is { Success: true } shifts)
        {
            yield return Put($"{line}, {shifts.Groups[1].Value}");
        }

        foreach (Match said in Said().Matches(hint))
        {
            yield return Put(WithClause(line, said.Groups[1].Value, said.Value));
        }

        foreach (Match size in Measured().Matches(finding.Hint))
        {
            var (number, isWide) = (size.Groups[1].Value, size.Groups[2].Value == "wide");
            yield return Put(Box().IsMatch(line)
                ? Box().Replace(line, isWide ? number + " x $2" : "$1 x " + number, 1)
                : Single().Replace(line, "${1} " + number + (isWide ? " wide" : " high"), 1));
        }

        if (Turned().Match(finding.Hint) is { Success: true } lying)
        {
            yield return Put(WithClause(Box().Replace(line, lying.Groups[1].Value, 1), "turn", "turn left 90"));
        }

        if (AtMost().Match(finding.Hint) is { Success: true } most)
        {
            yield return Put(Box().Replace(line, most.Groups[1].Value, 1));
        }

        if (Whole().Match(finding.Hint) is { Success: true } whole)
        {
            yield return Put(Box().Replace(line, whole.Groups[1].Value, 1));
        }

        if (Border().Match(finding.Hint) is { Success: true } border)
        {
            yield return Put(finding.Hint.Contains("beneath it", StringComparison.Ordinal)
                ? $"{line}\n{IndentBeneath(text, finding)}{border.Value}"
                : MatSize().Replace(line, border.Value, 1));
        }

        if (Envelope().Match(finding.Hint) is { Success: true } envelope)
        {
            yield return line.StartsWith("envelope", StringComparison.Ordinal)
                ? Put(Named().Replace(line, m => "envelope" + m.Groups[1].Value + envelope.Value["envelope".Length..], 1))
                : text + envelope.Value + "\n";
        }
    }

    /// <summary>The indentation of what lies on a line already, else a step more than its own.</summary>
    private static string IndentBeneath(string text, Finding finding)
    {
        var own = finding.Location.Start.Column - 1;
        var next = text[finding.Location.Span.End..].Split('\n').ElementAtOrDefault(1) ?? "";
        return new string(' ', Math.Max(own + 2, next.Length - next.TrimStart().Length > own ? next.Length - next.TrimStart().Length : 0));
    }

    private static string WithClause(string line, string word, string clause)
    {
        var old = new Regex($@"(?<=[\s,]){word} [^,""]+(,\d[^,]*)?(?=,|$)");
        return old.IsMatch(line) ? old.Replace(line, clause, 1) : $"{line}, {clause}";
    }

    private const string Number = @"(\d+(?: \d+/\d+|/\d+|\.\d+)?(?: mm| cm| in)?)";

    [GeneratedRegex(@"\b(letters|wrap|ink|of) (?:" + Number + @"(?! wide| high)|black|white|#[0-9a-f]{6})(?=[.,;: ])(?! that| on)")]
    private static partial Regex Said();

    [GeneratedRegex(@"(strip fit x fit)(?: ""(?:[^""]|"""")*"")+, (letters [^,]+), of white")]
    private static partial Regex Label();

    [GeneratedRegex(@"( ""[^""]*"")+")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"Add ((?:shift [a-z]+ [\d /.]+(?: mm)?(?:, )?)+), or")]
    private static partial Regex Shifts();

    [GeneratedRegex(@"^Make it at most (" + Number + " x " + Number + @")\.")]
    private static partial Regex AtMost();

    [GeneratedRegex(@"\btext( [\d][^"",]*)?(?= "")")]
    private static partial Regex Text();

    [GeneratedRegex(@"\b" + Number + " (wide|high)")]
    private static partial Regex Measured();

    [GeneratedRegex(@"turn it: ([^,]+), turn left 90")]
    private static partial Regex Turned();

    [GeneratedRegex(@"nearest is (" + Number + " x " + Number + "): write that")]
    private static partial Regex Whole();

    [GeneratedRegex(@"mat border " + Number)]
    private static partial Regex Border();

    [GeneratedRegex(@"envelope [^,]+(?=,)")]
    private static partial Regex Envelope();

    [GeneratedRegex(@"^envelope( back)?( [^,]+)?")]
    private static partial Regex Named();

    [GeneratedRegex(@"(\d[\d /.]*?(?: mm| cm| in)?|full|fit|share \d+/\d+) x "
        + @"(\d+(?: \d+/\d+|/\d+|\.\d+)?(?: mm| cm| in)?|full|fit|share \d+/\d+)")]
    private static partial Regex Box();

    [GeneratedRegex(@"\b(square|circle|star|heart|hexagon|scallop|arch|tag|outline|word|gem|text|stamp) "
        + @"\d+(?: \d+/\d+|/\d+|\.\d+)?(?: mm| cm| in)?( wide| high)?")]
    private static partial Regex Single();

    [GeneratedRegex(@"mat( [+\d][^,]*| border [^,]*)?(?=,|$)")]
    private static partial Regex MatSize();
}
