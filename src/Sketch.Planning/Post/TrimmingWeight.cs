using Sketch.Assembly;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Planning.Post;

/// <summary>
/// The weight of what is not paper: ready-made things, foam and glue. The ranges are common practice, no source, and wide, since these
/// things differ more than papers do. Ink is not weighed.
/// </summary>
internal static class TrimmingWeight
{
    private const double GramsPerCubicMillimetre = 0.001;

    // From a hollow head or a bead with a flat back to solid metal, in g/cm3; sheets and cords of paper, cotton, satin and plastic.
    private static readonly Spread Metal = new(1.5, 8.5);
    private static readonly Spread Hard = new(0.5, 2.6);
    private static readonly Spread Soft = new(0.3, 1.4);

    // Foam of polyethylene or EVA, in g/cm3.
    private static readonly Spread Foam = new(0.03, 0.25);

    // From next to nothing to thick double-sided tape, in g/m2 of the strips that are glued.
    private static readonly Spread Glue = new(0, 200);

    /// <summary>The weight on a card in grams.</summary>
    public static Spread Of(LaidOutCard card) => card.Pieces.Where(PostalItem.IsOfCard).Aggregate(default(Spread), (sum, p) => sum + Of(p));

    private static Spread Of(Piece piece) => piece.Matter switch
    {
        PieceMatter.Ready => DensityOf(piece.Kind) * (Volume(piece) * GramsPerCubicMillimetre),
        PieceMatter.Paper => Fastened(piece),
        _ => default,
    };

    private static Spread Fastened(Piece piece)
    {
        var area = Fastening.Strips(piece.Box.Size).Millimetres * Fastening.FoamStrip.Millimetres;
        var glue = Glue * (area / 1e6);
        return piece.Foam > Length.Zero ? glue + Foam * (area * piece.Foam.Millimetres * GramsPerCubicMillimetre) : glue;
    }

    private static double Volume(Piece piece)
    {
        var own = piece.Kind.Traits.ThicknessAt(piece.Box.Size).Millimetres;
        var thick = own > 0 ? own : PostalItem.TapeThickness;
        var tails = piece.Tails.Millimetres * 2 * Length.Min(piece.Box.Width, piece.Box.Height).Millimetres;
        return (piece.Outline.Area + tails) * thick;
    }

    private static Spread DensityOf(PieceKind kind) =>
        kind == PieceKind.Brad ? Metal : kind.Traits.IsSmallPart ? Hard : Soft;
}
