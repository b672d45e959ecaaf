using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Preview.Sessions;

/// <summary>The compiled text of a window.</summary>
/// <param name="Compilation">The compilation of the text.</param>
/// <param name="Filling">The stash and the papers chosen.</param>
public sealed record Reading(Compilation Compilation, RoleFilling Filling)
{
    /// <summary>The text, with the full path of the file.</summary>
    public SourceText Source => Compilation.Source;

    /// <summary>The card, if the text is a card that can be laid out.</summary>
    public LaidOutCard? Card => Compilation.Card;

    /// <summary>The title of the card, stash or batch; null where it cannot be read.</summary>
    public string? Title => Card?.Title ?? Compilation.Stash?.Title ?? Compilation.Batch?.Title;

    /// <summary>The kind of file: card, stash or batch.</summary>
    public string Kind => Compilation.Stash is not null
        ? "stash" : Compilation.Batch is not null ? "batch" : Path.GetExtension(Source.Path).ToLowerInvariant()[1..];

    /// <summary>A sentence about the first error that an earlier reading of the file did not have; null if there is none.</summary>
    public string? ErrorSince(Reading before) =>
        Since(before, Severity.Error) is { } error ? $"That is not possible: {Sentence(error)}" : null;

    /// <summary>A sentence about the first warning that an earlier reading of the file did not have; null if there is none.</summary>
    public string? WarningSince(Reading before) =>
        Since(before, Severity.Warning) is { } warning ? $"Look at {Sentence(warning)}" : null;

    private Finding? Since(Reading before, Severity severity)
    {
        var known = before.Compilation.Findings.Select(f => (f.Code, f.Message)).ToHashSet();
        return Compilation.Findings.FirstOrDefault(f => f.Severity == severity && !known.Contains((f.Code, f.Message)));
    }

    private static string Sentence(Finding finding) => $"line {finding.Location.Start.Line}. {finding.Message} {finding.Hint}".TrimEnd();
}
