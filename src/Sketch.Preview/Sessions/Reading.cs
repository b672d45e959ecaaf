using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Preview.Sessions;

/// <summary>What a window shows, as the engine understands it.</summary>
/// <param name="Compilation">What the engine makes of the text.</param>
/// <param name="Filling">The shelf and the papers chosen.</param>
public sealed record Reading(Compilation Compilation, RoleFilling Filling)
{
    /// <summary>The text, under the file's full path.</summary>
    public SourceText Source => Compilation.Source;

    /// <summary>The card, if the text is one that can be laid out.</summary>
    public LaidOutCard? Card => Compilation.Card;

    /// <summary>What the card, stash or batch is called; null where that cannot be read.</summary>
    public string? Title => Card?.Title ?? Compilation.Stash?.Title ?? Compilation.Batch?.Title;

    /// <summary>What kind of file it is: card, stash or batch.</summary>
    public string Kind => Compilation.Stash is not null
        ? "stash" : Compilation.Batch is not null ? "batch" : Path.GetExtension(Source.Path).ToLowerInvariant()[1..];
}
