using System.Collections.Immutable;

namespace Sketch.Diagnostics;

/// <summary>What a finding means, an example that gives it, and the corrected example.</summary>
/// <param name="Kind">The finding.</param>
/// <param name="Meaning">What it means; a few sentences of Markdown.</param>
/// <param name="Example">Files that give this finding.</param>
/// <param name="Remedy">What to do about it; a sentence or two of Markdown.</param>
/// <param name="Fix">The corrected example: the files that differ. Running it does not give this finding.</param>
public sealed record Explanation(FindingKind Kind, string Meaning, Example Example, string Remedy, Example Fix);

/// <summary>Files and what to run on them.</summary>
/// <param name="Files">At least one file. Other files that they name come from the folder <c>sketches</c>.</param>
/// <param name="Command">The command line; null for <c>plan</c> of a batch, and <c>check</c> of the last file otherwise.</param>
public sealed record Example(ImmutableArray<ExampleFile> Files, string? Command);

/// <summary>A file of an example.</summary>
/// <param name="Name">Its name; the extension gives its kind.</param>
/// <param name="Text">Its text. A line <c>… 60 more</c> stands for sixty lines that continue the pattern of the two lines above it.</param>
/// <param name="IsLatin1">Whether the file is saved in Latin-1, as old programs do, instead of UTF-8.</param>
public sealed record ExampleFile(string Name, string Text, bool IsLatin1)
{
    /// <summary>The name's extension: <c>card</c>, <c>stash</c> or <c>batch</c>.</summary>
    public string Language => Name[(Name.LastIndexOf('.') + 1)..];
}
