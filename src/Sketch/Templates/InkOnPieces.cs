using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>What is written, stamped or printed on pieces of paper, for a machine that draws before it cuts.</summary>
internal static class InkOnPieces
{
    /// <summary>The ink on a piece, in millimetres on its face as if nothing were turned; empty for none.</summary>
    /// <param name="card">The card.</param>
    /// <param name="index">The piece, in the card's pieces.</param>
    public static Outline Of(LaidOutCard card, int index)
    {
        var piece = card.Pieces[index];
        var back = piece.Turning.IsIdentity ? Affine.Identity : piece.Turning.Inverse();
        var own = piece.Words is { Ink: var ink } ? ink : Outline.Empty;
        return Joined(card.Pieces.Where(p => IsInkOn(card, p, index)).Select(p => p.TurnedOutline.Transform(back)).Prepend(own),
            piece.Outline);
    }

    /// <summary>
    /// The ink on the side of the flat base that shows the front, in millimetres on it.
    /// </summary>
    public static Outline OfBase(LaidOutCard card) => Joined(InkOn(card, card.Base.Sheet.Outside), card.Base.CutSheet);

    /// <summary>The ink on the other side of the flat base, as seen through the paper from the side that shows the front.</summary>
    public static Outline BehindBase(LaidOutCard card) => Joined(
        InkOn(card, card.Base.Sheet.Inside).Select(ink => ink.Transform(card.Base.Sheet.TurnedOver)), card.Base.CutSheet);

    private static IEnumerable<Outline> InkOn(LaidOutCard card, IEnumerable<SheetPanel> panels) => panels.SelectMany(panel => card.Pieces
        .Where(p => p.Face == panel.Face && IsInkOn(card, p, -1))
        .Select(p => Within(p.TurnedOutline, Outline.Rectangle(panel.Part)).Transform(panel.Place)));

    private static bool IsInkOn(LaidOutCard card, Piece ink, int index)
    {
        if (ink.Matter != PieceMatter.Ink || ink.Outline.IsEmpty)
        {
            return false;
        }

        var on = ink.LiesOn;
        while (on >= 0 && card.Pieces[on].Matter == PieceMatter.Unseen)
        {
            on = card.Pieces[on].LiesOn;
        }

        return on == index;
    }

    private static Outline Joined(IEnumerable<Outline> parts, Outline paper) =>
        new([.. parts.Where(p => !p.IsEmpty).SelectMany(p => Within(p, paper).Contours)]);

    private static Outline Within(Outline ink, Outline paper) => paper.Covers(ink) ? ink : ink.Intersect(paper);
}
