using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Text;

namespace Sketch.Editors.Answers;

/// <summary>The findings of a text, and what puts them right.</summary>
/// <param name="explanations">
/// The scheme of the addresses under which the editor shows what a finding means, such as <c>sketch-finding</c>; null if it shows none.
/// </param>
internal sealed class Findings(string? explanations)
{
    private const string Source = "sketch";

    private const int LongestTitle = 40;

    /// <summary>The findings as an editor marks them. One in another file is marked where the text names that file.</summary>
    public FileFindings Of(OpenDocument document, ImmutableArray<Finding> findings) =>
        new(document.Uri, document.Version, [.. findings.Select(f => Marked(document, f))]);

    /// <summary>What can be typed instead of what is found in a part of a text.</summary>
    public CodeAction[] Fixes(OpenDocument document, ImmutableArray<Finding> findings, EditorRange range)
    {
        var asked = document.Lines.SpanOf(range);
        return [.. findings
            .Where(f => f.Replacement is not null && IsIn(document, f))
            .Where(f => f.Location.Span.Start <= asked.End && asked.Start <= f.Location.Span.End)
            .Select(f => new CodeAction(TitleOf(f.Replacement!), CodeAction.QuickFix, [Marked(document, f)], true,
                new(new() { [document.Uri] = [new(document.Lines.RangeOf(f.Location.Span), f.Replacement!)] })))];
    }

    private EditorFinding Marked(OpenDocument document, Finding finding)
    {
        var isHere = IsIn(document, finding);
        var path = finding.Location.Source.Path;
        var message = $"{finding.Message}\n{finding.Hint}".Trim();
        return new(
            isHere ? document.Lines.RangeOf(finding.Location.Span) : document.Lines.RangeOf(NamePlace.Of(document, path)),
            finding.Severity switch { Severity.Error => 1, Severity.Warning => 2, _ => 3 },
            finding.Code,
            Source,
            isHere ? message : $"{Path.GetFileName(path)}:{finding.Location.Start.Line}: {message}",
            explanations is null ? null : new($"{explanations}:{finding.Code}.md"),
            isHere ? null : [new(ElsewhereOf(finding.Location), finding.Message)]);
    }

    private static bool IsIn(OpenDocument document, Finding finding) => finding.Location.Source.Path == document.Source.Path;

    private static EditorLocation ElsewhereOf(Location place) =>
        new(FileAddress.UriOf(place.Source.Path), new LineMap(place.Source.Content).RangeOf(place.Span));

    private static string TitleOf(string replacement)
    {
        var shown = replacement.Trim();
        return shown.Length == 0 ? "Remove it"
            // A replacement with a line of its own goes before the existing text.
            : shown.Contains('\n', StringComparison.Ordinal) ? $"Insert {shown[..shown.IndexOf('\n', StringComparison.Ordinal)]}"
            : $"Change to {(shown.Length > LongestTitle ? $"{shown[..(LongestTitle - 1)]}…" : shown)}";
    }
}
