using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>The outline to cut for a piece, with the paper that wraps to the back, and where to fold it.</summary>
internal static class CutOutline
{
    /// <summary>The outline to cut, in millimetres, at the piece's place on its face.</summary>
    public static Outline Of(Piece piece)
    {
        if (piece.Wrap == default)
        {
            return piece.Outline;
        }

        if (piece.Outline.WithoutHoles().AsRectangle() is not null)
        {
            return new([.. Outline.Rectangle(piece.Finished.Grow(piece.Wrap)).Contours, .. piece.Outline.Contours[1..]]);
        }

        return Outline.Union([piece.Outline, .. Ends(piece).Select(Outline.Rectangle)]);
    }

    /// <summary>The folds between the visible part and what wraps to the back.</summary>
    public static ImmutableArray<(Point From, Point To)> Folds(Piece piece)
    {
        var box = Bounds.Of(piece.Finished);
        var folds = ImmutableArray.CreateBuilder<(Point, Point)>();
        Add(piece.Wrap.Left, new(box.Left, box.Top), new(box.Left, box.Bottom));
        Add(piece.Wrap.Right, new(box.Right, box.Top), new(box.Right, box.Bottom));
        Add(piece.Wrap.Top, new(box.Left, box.Top), new(box.Right, box.Top));
        Add(piece.Wrap.Bottom, new(box.Left, box.Bottom), new(box.Right, box.Bottom));
        return folds.ToImmutable();

        void Add(Length wrap, Point from, Point to)
        {
            if (wrap > Length.Zero)
            {
                folds.Add((from, to));
            }
        }
    }

    private static IEnumerable<Rect> Ends(Piece piece)
    {
        var (box, wrap) = (piece.Finished, piece.Wrap);
        return new[]
        {
            new Rect(box.Left - wrap.Left, box.Top, wrap.Left, box.Height),
            new Rect(box.Right, box.Top, wrap.Right, box.Height),
            new Rect(box.Left, box.Top - wrap.Top, box.Width, wrap.Top),
            new Rect(box.Left, box.Bottom, box.Width, wrap.Bottom),
        }.Where(e => e.Width > Length.Zero && e.Height > Length.Zero);
    }
}
