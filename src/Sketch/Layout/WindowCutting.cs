using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// Cuts windows: each out of its parent with the parent's mats; with <c>through</c> out of everything beneath and the base; directly on
/// a face out of the base.
/// </summary>
internal static class WindowCutting
{
    private const int OneByOne = 16;

    /// <summary>The distance in millimetres by which an edge may move unnoticed.</summary>
    private const double Unseen = 0.01;

    /// <summary>The pieces with their windows cut, and the front's outline of the base.</summary>
    public static (ImmutableArray<Piece> Pieces, Outline Base) Cut(
        ImmutableArray<Piece> pieces, IEnumerable<PieceWriter.WindowCut> windows, Outline front)
    {
        var holes = new SortedDictionary<int, List<Outline>>();
        var frontHoles = new List<Outline>();
        foreach (var window in windows)
        {
            foreach (var layer in LayersOf(window, pieces))
            {
                Add(layer, window.Hole);
            }

            if (window.Face == FaceKind.Front && (window.Through || window.Parent < 0))
            {
                frontHoles.Add(window.Hole);
            }
        }

        var cut = pieces.ToBuilder();
        // Windows that go through many layers are the same in each, so they are united once.
        (List<Outline> Holes, Outline Area)? united = null;
        foreach (var (index, list) in holes)
        {
            // The hole is in its real position; a turned piece is cut as if nothing were turned.
            var outline = CutOut(cut[index].Outline, list, pieces[index].Turning.Inverse());
            cut[index] = cut[index] with { Outline = outline, Finished = Remaining(cut[index], outline) };
        }

        return (cut.ToImmutable(), CutOut(front, frontHoles, Affine.Identity));

        void Add(int index, Outline hole)
        {
            if (!holes.TryGetValue(index, out var list))
            {
                holes[index] = list = [];
            }

            list.Add(hole);
        }

        // A few holes are cut one by one, which preserves the curves of those wholly inside; many are united first, which is faster.
        Outline CutOut(Outline outline, List<Outline> list, Affine back)
        {
            if (list.Count <= OneByOne)
            {
                return list.Aggregate(outline, (left, hole) => left.Subtract(Moved(hole, back)));
            }

            if (united is not { } known || !known.Holes.SequenceEqual(list, ReferenceEqualityComparer.Instance))
            {
                united = known = (list, Outline.Union(list));
            }

            return outline.Subtract(Moved(known.Area, back));
        }

        static Outline Moved(Outline hole, Affine back) => back.IsIdentity ? hole : hole.Transform(back);
    }

    /// <summary>The box of what the holes leave: with the exact sides of the piece where they leave part of its edge.</summary>
    private static Rect Remaining(Piece piece, Outline left)
    {
        if (left.IsEmpty)
        {
            return piece.Finished;
        }

        var (before, after, box) = (piece.Outline.Bounds, left.Bounds, piece.Finished);
        var (newLeft, newTop) = (Side(before.Left, after.Left, box.Left), Side(before.Top, after.Top, box.Top));
        return new(
            newLeft, newTop, Side(before.Right, after.Right, box.Right) - newLeft, Side(before.Bottom, after.Bottom, box.Bottom) - newTop);

        static Length Side(double before, double after, Length exact) =>
            Math.Abs(before - after) <= Unseen ? exact : Length.NearestMillimetres(after);
    }

    /// <summary>The pieces that a window is cut out of.</summary>
    /// <param name="window">The window.</param>
    /// <param name="pieces">The pieces, at least up to the window's parent.</param>
    public static IEnumerable<int> LayersOf(PieceWriter.WindowCut window, IReadOnlyList<Piece> pieces)
    {
        for (var i = window.ParentStack; i <= window.Parent && window.Parent >= 0; i++)
        {
            yield return i;
        }

        for (var below = window.Through && window.Parent >= 0
            ? pieces[window.ParentStack].LiesOn : -1; below >= 0; below = pieces[below].LiesOn)
        {
            yield return below;
        }
    }
}
