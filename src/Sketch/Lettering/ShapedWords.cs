using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Lettering;

/// <summary>
/// A line of words as outlines at a cap height of 1 mm: x from 0 at the leftmost ink, y = 0 on the baseline and y growing downwards,
/// so letters have negative y.
/// </summary>
/// <param name="Outline">The outlines of all glyphs, overlapping contours united.</param>
/// <param name="MissingCharacters">Characters that the font does not have, each once; empty when it has all.</param>
public sealed record ShapedWords(Outline Outline, string MissingCharacters)
{
    /// <summary>The glyphs with ink, in the order in which they are seen; empty for a host that shapes words as a whole.</summary>
    public ImmutableArray<ShapedGlyph> Glyphs { get; init; } = [];

    /// <summary>The middle of the circle on which bent words stand.</summary>
    public Point CircleCentre { get; init; }
}

/// <summary>A glyph where it stands on the line.</summary>
/// <param name="Outline">Its outline.</param>
/// <param name="Middle">The x of the middle of the room that it takes on the line, about which it turns on an arc.</param>
public sealed record ShapedGlyph(Outline Outline, double Middle);
