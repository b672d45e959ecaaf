using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>The borders that mats are written with, and which of them end flush with a full piece.</summary>
internal static class Borders
{
    /// <summary>What an unwritten border adds in total: an eighth of an inch (common practice, no source).</summary>
    public static readonly Length UsualMat = Length.Inch(0, 1, 8);

    public static (Length? Low, Length? High) WrittenBorder(BoundPiece draft, BoundPiece mat, Axis axis)
    {
        var (lowEdge, highEdge) = Edges(axis);
        Length? low = null, high = null;
        if (mat.Size is AddedSize added)
        {
            var total = axis == Axis.Across ? added.Across : added.Down;
            low = Parts.Equal(total, 2, 0);
            high = Parts.Equal(total, 2, 1);
        }

        foreach (var border in mat.All<BorderClause>().OrderBy(b => b.Edge is not null))
        {
            low = border.Edge is null || border.Edge == lowEdge ? border.Amount : low;
            high = border.Edge is null || border.Edge == highEdge ? border.Amount : high;
        }

        if (IsFull(draft, axis))
        {
            // The mats of a full piece end flush with it where it runs to the parent's edge.
            var held = HeldOff(draft);
            low = held.Contains(lowEdge) ? low : Length.Zero;
            high = held.Contains(highEdge) ? high : Length.Zero;
        }

        return (low, high);
    }

    /// <summary>The sides on which a distance keeps the piece from its parent's edge.</summary>
    public static ImmutableArray<Edge> HeldOff(BoundPiece draft) =>
        [.. Enum.GetValues<Edge>().Where(e => Distances.Off(draft, e) > Length.Zero)];

    /// <summary>The sides at the low and the high end of an axis.</summary>
    public static (Edge Low, Edge High) Edges(Axis axis) => axis == Axis.Across ? (Edge.Left, Edge.Right) : (Edge.Top, Edge.Bottom);

    /// <summary>What is written for one direction of a width x height, or null.</summary>
    public static ExtentSyntax? Extent(BoundPiece draft, Axis axis) =>
        draft.Size is BoxSize box ? axis == Axis.Across ? box.Width : box.Height : null;

    /// <summary>Whether the piece is as large as its parent in one direction, less the distances written.</summary>
    public static bool IsFull(BoundPiece draft, Axis axis) => Extent(draft, axis) is FullExtent;
}
