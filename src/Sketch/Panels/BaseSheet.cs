using System.Collections.Immutable;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Units;

namespace Sketch.Panels;

/// <summary>Where a face, or a part of it, lies on one side of the unfolded base.</summary>
/// <param name="Face">The face.</param>
/// <param name="Part">The part of the face that lies there, on the face.</param>
/// <param name="Place">From the face to the sheet, in millimetres.</param>
public readonly record struct SheetPanel(FaceKind Face, Rect Part, Affine Place);

/// <summary>The card base before it is folded.</summary>
public sealed record BaseSheet
{
    private BaseSheet(
        Size size, bool isUpright, ImmutableArray<SheetPanel> outside, ImmutableArray<SheetPanel> inside, params Length[] scores)
    {
        (Size, HasUprightScores, Outside, Inside, Scores) = (size, isUpright, outside, inside, [.. scores]);
    }

    /// <summary>Its size.</summary>
    public Size Size { get; }

    /// <summary>Whether it is scored from top to bottom; otherwise from left to right.</summary>
    public bool HasUprightScores { get; }

    /// <summary>The distances of the score lines from the left or the top.</summary>
    public ImmutableArray<Length> Scores { get; }

    /// <summary>
    /// The faces on the side that shows the front. The front is the right half of a card folded on the left, the lower half of one folded
    /// at the top, the outer panels of a gate and the left panel of a z.
    /// </summary>
    public ImmutableArray<SheetPanel> Outside { get; }

    /// <summary>The faces on the other side, seen after the sheet is turned over about its scores' direction.</summary>
    public ImmutableArray<SheetPanel> Inside { get; }

    /// <summary>The map from the side that shows the front to the other one.</summary>
    public Affine TurnedOver =>
        HasUprightScores ? new(-1, 0, 0, 1, Size.Width.Millimetres, 0) : new(1, 0, 0, -1, 0, Size.Height.Millimetres);

    /// <summary>The score lines, in millimetres; the same on both sides.</summary>
    public ImmutableArray<(Point From, Point To)> Lines => [.. Scores.Select(s => HasUprightScores
        ? (new Point(s.Millimetres, 0), new Point(s.Millimetres, Size.Height.Millimetres))
        : (new Point(0, s.Millimetres), new Point(Size.Width.Millimetres, s.Millimetres)))];

    /// <summary>The sheet of a card of that size.</summary>
    public static BaseSheet Of(Size closed, Fold fold)
    {
        var (width, height) = (closed.Width, closed.Height);
        var (w, h) = (width.Millimetres, height.Millimetres);
        var here = Affine.Identity;
        switch (fold)
        {
            case Fold.Left:
                return new(new(width * 2, height), true, [Whole(FaceKind.Back, here), Whole(FaceKind.Front, Affine.Shift(w, 0))],
                    [Whole(FaceKind.InsideLeft, here), Whole(FaceKind.Inside, Affine.Shift(w, 0))], width);
            case Fold.Top:
                // The back lies upside down above the front.
                return new(new(width, height * 2), false,
                    [Whole(FaceKind.Back, new(-1, 0, 0, -1, w, h)), Whole(FaceKind.Front, Affine.Shift(0, h))],
                    [Whole(FaceKind.InsideTop, here), Whole(FaceKind.Inside, Affine.Shift(0, h))], height);
            case Fold.Gate:
                var door = width / 2;
                Rect left = new(Length.Zero, Length.Zero, door, height), right = new(door, Length.Zero, width - door, height);
                return new(new(width * 2, height), true,
                    [
                        new(FaceKind.Front, right, Affine.Shift(-door.Millimetres, 0)),
                        Whole(FaceKind.Back, Affine.Shift((width - door).Millimetres, 0)),
                        new(FaceKind.Front, left, Affine.Shift((width * 2 - door).Millimetres, 0)),
                    ],
                    [Whole(FaceKind.Inside, Affine.Shift(door.Millimetres, 0))], width - door, width * 2 - door);
            case Fold.Z:
                return new(new(width * 3, height), true,
                    [
                        Whole(FaceKind.Front, here), Whole(FaceKind.InsideLeft, Affine.Shift(w, 0)),
                        Whole(FaceKind.Inside, Affine.Shift(2 * w, 0)),
                    ],
                    [Whole(FaceKind.Back, here)], width, width * 2);
            default:
                throw new ArgumentOutOfRangeException(nameof(fold));
        }

        SheetPanel Whole(FaceKind face, Affine place) => new(face, new(Length.Zero, Length.Zero, width, height), place);
    }
}
