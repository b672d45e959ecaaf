using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>A sheet of the desk, understood by the engine.</summary>
/// <param name="Sheet">What the window shows.</param>
/// <param name="Source">The text, under the file's full path.</param>
/// <param name="Compilation">What the engine makes of it.</param>
/// <param name="Filling">The shelf and the papers chosen.</param>
public sealed record Reading(OpenText Sheet, SourceText Source, Compilation Compilation, RoleFilling Filling)
{
    /// <summary>Everything found, in the order of places.</summary>
    public ImmutableArray<Finding> Findings => Compilation.Findings;

    /// <summary>The card, if the sheet is one that can be laid out.</summary>
    public LaidOutCard? Card => Compilation.Card;

    /// <summary>What the card, stash or batch is called; null where that cannot be read.</summary>
    public string? Title => Card?.Title ?? Compilation.Stash?.Title ?? Compilation.Batch?.Title;

    /// <summary>What kind of file it is: card, stash or batch.</summary>
    public string Kind => Compilation.Stash is not null
        ? "stash" : Compilation.Batch is not null ? "batch" : Path.GetExtension(Source.Path).ToLowerInvariant()[1..];

    /// <summary>Reads a sheet.</summary>
    /// <param name="folder">The opened folder.</param>
    /// <param name="path">The file's path.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="files">What the engine reads files and fonts through.</param>
    public static Reading Of(OpenedFolder folder, string path, OpenText sheet, CachedFiles files)
    {
        var source = new SourceText(path, sheet.Text);
        var filling = new RoleFilling(ShelfOf(folder, sheet.Stash, files), sheet.Choices);
        // A choice that the shelf no longer has is as good as none.
        filling = filling with { Choices = [.. filling.Choices.Where(filling.Has)] };
        return new(sheet, source, Compiler.Compile(source, files, filling), filling);
    }

    /// <summary>The shelf that a stash file describes, as it is on the disk; null when there is none or it has errors.</summary>
    public static Stash? ShelfOf(OpenedFolder folder, string? name, CachedFiles files) =>
        name is not null && folder.PathOf(name) is { } path && OpenedFolder.Read(path, out _) is { } text
            && Compiler.Compile(new(path, text.Text), files) is { Stash: { } stash, HasErrors: false }
            ? stash
            : null;
}
