using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// How thick the closed card is where its front is highest: all layers of the base and, along what lies on what, papers, foam and what is
/// ready-made.
/// Papers count with usual thicknesses, as no sheet is measured: 0.25 mm for cardstock and bases (0.203 to 0.254 mm for 65 to 90 lb cover
/// in a printed chart of paper weights), 0.15 mm for patterned paper (common practice, no source). What is ready-made has the
/// thickness of its kind: see <see cref="PieceTraits.ThicknessAt"/>.
/// </summary>
/// <param name="Front">The thickness.</param>
/// <param name="Highest">The piece on top there; null when nothing lies on the front.</param>
public sealed record StackHeight(Length Front, Piece? Highest)
{
    private static readonly Length Cardstock = Length.Millimetre(0.25m);
    private static readonly Length PatternedPaper = Length.Millimetre(0.15m);

    /// <summary>Measures a card.</summary>
    public static StackHeight Of(LaidOutCard card)
    {
        var tops = new Length[card.Pieces.Length];
        var highest = -1;
        for (var i = 0; i < tops.Length; i++)
        {
            var piece = card.Pieces[i];
            tops[i] = (piece.LiesOn >= 0 ? tops[piece.LiesOn] : Length.Zero) + piece.Foam + Thickness(piece);
            if (piece.Face == FaceKind.Front && piece.Matter != PieceMatter.Unseen && (highest < 0 || tops[i] > tops[highest]))
            {
                highest = i;
            }
        }

        var halves = Cardstock * card.Base.Layers;
        return highest < 0 ? new(halves, null) : new(halves + tops[highest], card.Pieces[highest]);
    }

    private static Length Thickness(Piece piece) => piece.Matter switch
    {
        PieceMatter.Paper => piece.Paint.Look.Pattern switch
        {
            PaperPattern.Plain or PaperPattern.Cardstock or PaperPattern.Kraft or PaperPattern.Foil or PaperPattern.Pearl
                or PaperPattern.Patches => Cardstock,
            _ => PatternedPaper,
        },
        PieceMatter.Ready => piece.Kind.Traits.ThicknessAt(piece.Box.Size),
        _ => Length.Zero,
    };
}
