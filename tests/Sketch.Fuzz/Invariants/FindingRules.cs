using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Reports;

namespace Sketch.Fuzz.Invariants;

/// <summary>What holds for every finding.</summary>
internal static class FindingRules
{
    private static readonly ImmutableHashSet<string> Codes = [.. FindingCatalogue.All.Select(k => k.Code)];

    private static readonly string[] Leaks = ["System.", "Exception", "   at ", "NaN", "∞"];

    /// <summary>
    /// The rules that a finding is in the catalogue, lies in its text and says something in sentences, and that all can be written.
    /// </summary>
    public static void Check(ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var (source, span) = (finding.Location.Source, finding.Location.Span);
            BrokenInvariantException.Unless(Codes.Contains(finding.Code), "a finding has a code of the catalogue", finding.Code);
            BrokenInvariantException.Unless(0 <= span.Start && span.Start <= span.End && span.End <= source.Content.Length,
                "a finding lies in its text", $"{finding.Code} {span.Start}-{span.End} of {source.Content.Length}");
            var (line, column) = (finding.Location.Start.Line, finding.Location.Start.Column);
            BrokenInvariantException.Unless(line >= 1 && line <= source.LineCount && column >= 1
                && column <= source.Content.Length - source.LineStart(line - 1) + 1,
                "a finding has a line and column of its text", $"{finding.Code} {line}:{column}");
            BrokenInvariantException.Unless(IsSentence(finding.Message), "a finding says what is wrong",
                $"{finding.Code} '{finding.Message}'");
            BrokenInvariantException.Unless(IsSentence(finding.Hint), "a finding says what to type instead",
                $"{finding.Code} '{finding.Hint}'");
        }

        using var text = new StringWriter();
        FindingsText.Write(text, findings);
        using var json = new StringWriter();
        ReportJson.WriteDocument(json, document =>
        {
            document.WriteStartObject();
            FindingsJson.Write(document, findings);
            document.WriteEndObject();
        });
        WellFormed.Json(json.ToString());
    }

    /// <summary>Whether it is a sentence for people, which may end with what is typed.</summary>
    private static bool IsSentence(string text) => text.Trim().Length > 5 && char.IsPunctuation(text.TrimEnd()[^1])
        && !Leaks.Any(l => text.Contains(l, StringComparison.Ordinal));
}
