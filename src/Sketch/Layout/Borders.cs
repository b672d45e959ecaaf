using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>The written borders of mats, and which of them end flush with a full piece.</summary>
internal static class Borders
{
    /// <summary>What a mat adds in total where no border is written: an eighth of an inch (common practice, no source).</summary>
    public static readonly Length UsualMat = Length.Inch(0, 1, 8);

    public static (Length? Low, Length? High) WrittenBorder(BoundPiece bound, BoundPiece mat, Axis axis)
    {
        var (lowEdge, highEdge) = axis.Edges();
        Length? low = null, high = null;
        if (mat.Size is AddedSize added)
        {
            var total = axis == Axis.Across ? added.Across : added.Down;
            low = Parts.Equal(total, 2, 0);
            high = Parts.Equal(total, 2, 1);
        }

        foreach (var border in mat.Rules.Borders)
        {
            low = border.Edge is null || border.Edge == lowEdge ? border.Amount : low;
            high = border.Edge is null || border.Edge == highEdge ? border.Amount : high;
        }

        if (bound.IsFull(axis))
        {
            // The mats of a full piece end flush with it where it runs to the parent's edge.
            var held = HeldOff(bound);
            low = held.Contains(lowEdge) ? low : Length.Zero;
            high = held.Contains(highEdge) ? high : Length.Zero;
        }

        return (low, high);
    }

    /// <summary>The sides on which a distance keeps the piece from its parent's edge.</summary>
    public static ImmutableArray<Edge> HeldOff(BoundPiece bound) =>
        [.. Enum.GetValues<Edge>().Where(e => bound.Rules.Off(e) > Length.Zero)];
}
