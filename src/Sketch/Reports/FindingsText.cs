using System.Collections.Immutable;
using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Reports;

/// <summary>Findings in plain text: the place, the sentence, the line of the file with carets beneath, and the hint.</summary>
public static class FindingsText
{
    private const int LongestExcerpt = 100;
    private const int LeadBeforeFinding = 30;

    /// <summary>Writes all findings.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="findings">The findings, in the order in which they are written.</param>
    /// <param name="inColour">Whether places and severities are marked with the colours of a terminal (ECMA-48, 8.3.117).</param>
    public static void Write(TextWriter output, ImmutableArray<Finding> findings, bool inColour = false)
    {
        foreach (var finding in findings)
        {
            Write(output, finding, inColour);
        }
    }

    /// <summary>Such as "2 errors, 1 warning"; "no problems found" if there are none.</summary>
    public static string Summary(IReadOnlyCollection<Finding> findings)
    {
        Severity[] weights = [Severity.Error, Severity.Warning, Severity.Note];
        var counts = weights.Select(w => (Name: NameOf(w), Count: findings.Count(f => f.Severity == w))).Where(c => c.Count > 0).ToList();
        return counts.Count == 0 ? "no problems found" : string.Join(", ", counts.Select(c => Counted.Of(c.Count, c.Name)));
    }

    /// <summary>The severity's word: error, warning, note.</summary>
    public static string NameOf(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    private static void Write(TextWriter output, Finding finding, bool inColour)
    {
        var (source, start) = (finding.Location.Source, finding.Location.Start);
        var (bold, colour, plain) = inColour ? ("\u001b[1m", ColourOf(finding.Severity), "\u001b[0m") : ("", "", "");
        output.Write($"{bold}{Printable.Line(source.Path)}:{start.Line}:{start.Column}:{plain} "
            + $"{colour}{NameOf(finding.Severity)} {finding.Code}:{plain} {Printable.Line(finding.Message)}\n");
        WriteExcerpt(output, finding, colour, plain);
        if (finding.Hint.Length > 0)
        {
            output.Write($"  hint: {Printable.Line(finding.Hint)}\n");
        }
    }

    private static string ColourOf(Severity severity) => severity switch
    {
        Severity.Error => "\u001b[1;31m",
        Severity.Warning => "\u001b[1;33m",
        _ => "\u001b[1;36m",
    };

    private static void WriteExcerpt(TextWriter output, Finding finding, string colour, string plain)
    {
        var start = finding.Location.Start;
        var line = finding.Location.Source.Line(start.Line - 1);
        if (line.Length == 0)
        {
            return;
        }

        var column = Math.Min(start.Column - 1, line.Length);
        var marked = Math.Clamp(finding.Location.Span.Length, 1, Math.Max(1, line.Length - column));
        var from = line.Length <= LongestExcerpt ? 0 : Math.Clamp(column - LeadBeforeFinding, 0, line.Length - LongestExcerpt);
        var to = Math.Min(line.Length, from + LongestExcerpt);
        var number = start.Line.ToString(CultureInfo.InvariantCulture).PadLeft(5);
        var (before, after) = (from > 0 ? "…" : "", to < line.Length ? "…" : "");
        var lead = LettersIn(line[from..column]) + before.Length;
        var carets = Math.Max(1, LettersIn(line[column..Math.Min(to, column + marked)]));
        output.Write($"{number} | {before}{Printable.Line(line[from..to])}{after}\n");
        output.Write($"      | {new string(' ', lead)}{colour}{new string('^', carets)}{plain}\n");
    }

    /// <summary>Letters as displayed: a combining accent takes no room of its own.</summary>
    private static int LettersIn(string text) => new StringInfo(text).LengthInTextElements;
}
