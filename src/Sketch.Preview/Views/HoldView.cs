using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>
/// A piece that somebody has taken hold of. Lengths are whole nanometres on its face; boxes are left, top, width, height.
/// </summary>
/// <param name="Piece">Its path.</param>
/// <param name="Name">Its name, or its kind and number.</param>
/// <param name="Kind">What it is, in a word.</param>
/// <param name="Line">Its line in the text.</param>
/// <param name="Box">Its own box.</param>
/// <param name="Block">The box of all copies of its line with their mats, to which its place refers.</param>
/// <param name="Reference">What its distances are measured from.</param>
/// <param name="Turning">From its unturned box to its place on the face: a matrix in millimetres.</param>
/// <param name="Ground">The same of what it lies on: directions are along and across that.</param>
/// <param name="Across">What can be done from left to right.</param>
/// <param name="Down">What can be done from top to bottom.</param>
/// <param name="Others">The boxes of the other pieces, to line up with.</param>
/// <param name="Step">The marks of the ruler.</param>
/// <param name="LongStep">A larger step.</param>
/// <param name="IsMetric">Whether the file is in millimetres or centimetres.</param>
/// <param name="Form">What the form of the piece shows.</param>
internal sealed record HoldView(
    string Piece,
    string Name,
    string Kind,
    int Line,
    long[] Box,
    long[] Block,
    long[] Reference,
    double[] Turning,
    double[] Ground,
    AxisView Across,
    AxisView Down,
    IEnumerable<long[]> Others,
    long Step,
    long LongStep,
    bool IsMetric,
    PieceForm Form)
{
    private const int MostOthers = 200;

    /// <summary>What the page needs of a piece.</summary>
    /// <param name="card">The card.</param>
    /// <param name="hold">The piece and what its line allows.</param>
    public static HoldView Of(LaidOutCard card, PieceHold hold)
    {
        var piece = hold.Piece;
        var format = card.Units.Format();
        var ground = piece.Path.Parent is { } path ? card.Pieces.FirstOrDefault(p => p.Path == path) : null;
        return new(
            piece.Path.ToString(),
            piece.Path.Name,
            piece.Kind.Name,
            piece.Location.Start.Line,
            Of(piece.Box),
            Of(hold.Box),
            Of(hold.Reference),
            Of(piece.Turning),
            Of(ground?.Turning ?? Affine.Identity),
            AxisView.Of(hold.Across),
            AxisView.Of(hold.Down),
            OthersOf(card, hold, ground?.Turning ?? Affine.Identity),
            format.Step.Nanometres,
            (format.Metric ? Length.Millimetre(5) : Length.Inch(0, 1, 4)).Nanometres,
            format.Metric,
            PieceForm.Of(card, hold));
    }

    /// <summary>The pieces that are turned like what it lies on, without those that go with it.</summary>
    private static IEnumerable<long[]> OthersOf(LaidOutCard card, PieceHold hold, Affine ground)
    {
        var own = hold.Copies.Select(c => c.Path.ToString()).ToArray();
        return card.On(hold.Piece.Face)
            .Where(p => !p.Kind.Traits.IsLayer && p.Matter != PieceMatter.Unseen && p.Turning == ground
                && !Array.Exists(own, o => p.Path.ToString() == o || p.Path.ToString().StartsWith(o + "/", StringComparison.Ordinal)))
            .Take(MostOthers)
            .Select(p => Of(card.WithMats(p)));
    }

    private static long[] Of(Rect box) => [box.Left.Nanometres, box.Top.Nanometres, box.Width.Nanometres, box.Height.Nanometres];

    private static double[] Of(Affine turning) => [turning.A, turning.B, turning.C, turning.D, turning.E, turning.F];
}

/// <summary>What can be done with a piece in one direction.</summary>
/// <param name="Move">Why it cannot be moved; null when it can.</param>
/// <param name="Size">Why it cannot be resized; null when it can.</param>
/// <param name="Held">The edge from which it is measured; null for its middle.</param>
/// <param name="IsCentred">Whether it stands in the middle because nothing else is written.</param>
internal sealed record AxisView(RefusalView? Move, RefusalView? Size, string? Held, bool IsCentred)
{
    /// <summary>What a hold allows.</summary>
    public static AxisView Of(AxisHold hold) =>
        new(RefusalView.Of(hold.Move), RefusalView.Of(hold.Size), hold.Held?.Name(), hold.IsCentred);
}

/// <summary>Why something cannot be done, and what can be done instead.</summary>
/// <param name="Reason">The reason in sentences.</param>
/// <param name="Offer">What is offered instead; null for nothing.</param>
internal sealed record RefusalView(string Reason, OfferView? Offer)
{
    /// <summary>A refusal for the page.</summary>
    public static RefusalView? Of(Refusal? refusal) => refusal is null ? null : new(refusal.Reason,
        refusal.Offer is { } offer
            ? new(offer.Label, offer.Of.ToString(), offer.Change.Width?.Nanometres, offer.Change.Height?.Nanometres, offer.Change.LetsGo)
            : null);
}

/// <summary>A size that is offered.</summary>
/// <param name="Label">What it does, for a button.</param>
/// <param name="Piece">The path of the piece that gets it.</param>
/// <param name="Width">Its width in nanometres; null to leave it.</param>
/// <param name="Height">Its height in nanometres; null to leave it.</param>
/// <param name="LetsGo">Whether what gives the size is given up.</param>
internal sealed record OfferView(string Label, string Piece, long? Width, long? Height, bool LetsGo);
