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
    public string? ErrorSince(Reading before)
    {
        var known = before.Compilation.Findings.Where(IsError).Select(f => (f.Code, f.Message)).ToHashSet();
        return Compilation.Findings.FirstOrDefault(f => IsError(f) && !known.Contains((f.Code, f.Message))) is { } error
            ? $"That is not possible: line {error.Location.Start.Line}. {error.Message} {error.Hint}".TrimEnd() : null;

        static bool IsError(Finding finding) => finding.Severity == Severity.Error;
    }
}
