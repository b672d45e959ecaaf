using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// The card base before it is folded, seen from outside: the front is the right half of a card folded on the left, the lower half of one
/// folded at the top.
/// </summary>
internal static class FlatBaseTemplate
{
    /// <summary>The length of an arrow that is seen at once and leaves room for words, in millimetres.</summary>
    private const double LongestArrow = 60;

    /// <summary>The flat sheet with the windows of the front.</summary>
    public static Outline Outline(CardBase card)
    {
        var (flat, closed) = (card.Flat, card.Closed);
        var sheet = Shapes.Outline.Rectangle(new(Length.Zero, Length.Zero, flat.Width, flat.Height));
        var front = Shapes.Outline.Rectangle(new(Length.Zero, Length.Zero, closed.Width, closed.Height));
        var toFront = Affine.Shift((flat.Width - closed.Width).Millimetres, (flat.Height - closed.Height).Millimetres);
        return card.Outline.WithoutHoles().AsRectangle() is not null
            ? new([.. sheet.Contours, .. new Outline(card.Outline.Contours[1..]).Transform(toFront).Contours])
            : sheet.Subtract(front.Subtract(card.Outline).Transform(toFront));
    }

    /// <summary>The score line.</summary>
    public static ImmutableArray<(Point From, Point To)> Folds(CardBase card)
    {
        var (width, height) = (card.Flat.Width.Millimetres, card.Flat.Height.Millimetres);
        return card.Fold == Fold.Left ? [(new(width / 2, 0), new(width / 2, height))] : [(new(0, height / 2), new(width, height / 2))];
    }

    /// <summary>
    /// An arrow along the fold, in the back half: card folds without cracks when its grain runs with the fold (common practice, no source).
    /// </summary>
    public static (Point Middle, Point Half) Grain(CardBase card)
    {
        var (width, height) = (card.Flat.Width.Millimetres, card.Flat.Height.Millimetres);
        return card.Fold == Fold.Left
            ? (new(width / 8, height / 2), new(0, Math.Min(LongestArrow, height * 0.8) / 2))
            : (new(width / 2, height / 8), new(Math.Min(LongestArrow, width * 0.8) / 2, 0));
    }
}
