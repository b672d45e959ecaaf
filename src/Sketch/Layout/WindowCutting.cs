using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Layout;

/// <summary>
/// Cuts windows: each out of its parent with the parent's mats; with <c>through</c> out of everything beneath and the base; directly on
/// a face out of the base.
/// </summary>
internal static class WindowCutting
{
    /// <summary>The pieces with their windows cut, and the front's outline of the base.</summary>
    public static (ImmutableArray<Piece> Pieces, Outline Base) Cut(
        ImmutableArray<Piece> pieces, IEnumerable<PieceWriter.WindowCut> windows, Outline front)
    {
        var cut = pieces.ToBuilder();
        foreach (var window in windows)
        {
            if (window.Parent < 0)
            {
                front = window.Face == FaceKind.Front ? front.Subtract(window.Hole) : front;
                continue;
            }

            for (var i = window.ParentStack; i <= window.Parent; i++)
            {
                cut[i] = CutOut(cut[i], window.Hole);
            }

            if (window.Through)
            {
                for (var below = cut[window.ParentStack].LiesOn; below >= 0; below = cut[below].LiesOn)
                {
                    cut[below] = CutOut(cut[below], window.Hole);
                }

                front = window.Face == FaceKind.Front ? front.Subtract(window.Hole) : front;
            }
        }

        return (cut.ToImmutable(), front);
    }

    /// <summary>The hole lies where it really is; a turned piece is cut as if nothing were turned.</summary>
    private static Piece CutOut(Piece piece, Outline hole) =>
        piece with { Outline = piece.Outline.Subtract(piece.Turning.IsIdentity ? hole : hole.Transform(piece.Turning.Inverse())) };
}
