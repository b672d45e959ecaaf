using System.Collections.Immutable;

namespace Sketch.CutFiles;

/// <summary>What a machine does along a line: a layer with a name and a colour of its own.</summary>
/// <param name="Name">Its name in the files.</param>
/// <param name="Colour">Its colour in an SVG.</param>
/// <param name="Number">The number of that colour in a DXF, by the colour index of that format.</param>
public sealed record CutLayer(string Name, string Colour, int Number)
{
    /// <summary>Letters, stamps and stitches, drawn by a pen or left out.</summary>
    public static readonly CutLayer Draw = new("draw", "#ff0000", 1);

    /// <summary>Lines to score.</summary>
    public static readonly CutLayer Score = new("score", "#0000ff", 5);

    /// <summary>Lines along which paper is folded to the back.</summary>
    public static readonly CutLayer Fold = new("fold", "#ff00ff", 6);

    /// <summary>Lines to cut.</summary>
    public static readonly CutLayer Cut = new("cut", "#000000", 7);

    /// <summary>All layers in the order of work: paper that is cut out no longer lies still.</summary>
    public static readonly ImmutableArray<CutLayer> All = [Draw, Score, Fold, Cut];
}
