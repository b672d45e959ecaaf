using System.Collections.Immutable;
using Sketch.Stashes;

namespace Sketch.Preview.Sessions;

/// <summary>What a window of the page shows: a text with its edits, and the papers chosen for it.</summary>
/// <param name="File">The file's name in the opened folder.</param>
/// <param name="Text">The text, with line feeds only.</param>
/// <param name="Base">The stamp of the content of the file when the edits began.</param>
/// <param name="Stash">The name of the stash file whose papers are used, or null for none.</param>
/// <param name="Choices">The papers chosen for roles.</param>
public sealed record OpenText(string File, string Text, string Base, string? Stash, ImmutableArray<PaperChoice> Choices);
