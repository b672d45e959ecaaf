using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// The part of a layer that is neither visible nor needed as support: what lies flat on it covers it, and glue still has its margin
/// round the hole on every such piece and on the layer itself. Pieces on foam do not count, since foam must stand on paper. The layer
/// stays one piece: where a hidden part lies round paper that must stay, only a rectangle beside that paper is cut out.
/// </summary>
internal static class HollowParts
{
    /// <summary>
    /// The hidden parts, in millimetres on the piece's face as if nothing were turned; empty if nothing worth cutting out is hidden.
    /// </summary>
    /// <param name="card">The card.</param>
    /// <param name="index">The layer, in the card's pieces.</param>
    /// <param name="gluing">The margin for glue on each side.</param>
    public static ImmutableArray<FreedPart> Of(LaidOutCard card, int index, Length gluing)
    {
        var layer = card.Pieces[index];
        var margin = gluing.Millimetres;
        var back = layer.Turning.IsIdentity ? Affine.Identity : layer.Turning.Inverse();
        var bounds = layer.Outline.Bounds;
        var covered = card.Pieces.Skip(index + 1)
            .Where(p => p.Face == layer.Face && p.Matter == PieceMatter.Paper && p.Raised == layer.Raised)
            .Select(p => p.TurnedOutline.Transform(back))
            .Where(o => o.Bounds.Overlaps(bounds))
            .Select(o => o.Grow(-margin))
            .ToList();
        var hidden = covered.Count switch
        {
            0 => Outline.Empty,
            1 => covered[0],
            _ => Outline.Union(covered),
        };
        return FreedPaper.WorthKeeping(hidden.Intersect(layer.Outline.Grow(-margin)));
    }
}
