using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Assembly;

/// <summary>What is done in a step of the assembly, in the order in which such steps are best done.</summary>
public enum AssemblyAction
{
    /// <summary>The base is scored and folded.</summary>
    Score,

    /// <summary>Words, drawings and lines to write on are stamped, printed or written.</summary>
    Ink,

    /// <summary>A piece is glued, and its ends are folded to the back of what it lies on.</summary>
    Wrap,

    /// <summary>A piece is glued flat.</summary>
    Glue,

    /// <summary>A piece is attached on foam.</summary>
    Raise,

    /// <summary>A ready-made thing is stuck on.</summary>
    Stick,
}

/// <summary>One step of the assembly of a card: the copies of one line, attached together.</summary>
/// <param name="Number">Counted from 1 through the whole card.</param>
/// <param name="Action">What is done.</param>
/// <param name="Pieces">The pieces in drawing order; none for the base, which is scored.</param>
/// <param name="Places">Where each piece goes.</param>
public sealed record AssemblyStep(
    int Number, AssemblyAction Action, ImmutableArray<Piece> Pieces, ImmutableArray<PiecePlace> Places)
{
    /// <summary>The face that the step is done on; the front for the base.</summary>
    public FaceKind Face => Pieces.IsEmpty ? FaceKind.Front : Pieces[0].Face;

    /// <summary>The height of the foam beneath each piece; zero for none.</summary>
    public Length Foam => Pieces.IsEmpty ? Length.Zero : Pieces[0].Foam;

    /// <summary>Pads of foam for all its pieces, by <see cref="Fastening"/>; 0 without foam.</summary>
    public long FoamPads => Foam > Length.Zero ? Pieces.Sum(p => Fastening.Pads(p.Box.Size)) : 0;

    /// <summary>The length of foam strip for all its pieces, by <see cref="Fastening"/>; zero without foam.</summary>
    public Length FoamStrips =>
        Foam > Length.Zero ? Pieces.Aggregate(Length.Zero, (sum, piece) => sum + Fastening.Strips(piece.Box.Size)) : Length.Zero;
}

/// <summary>
/// Where a piece goes on what it lies on, both taken as unturned. A distance is negative where the piece reaches past that edge.
/// </summary>
/// <param name="On">What it lies on; null for the face itself.</param>
/// <param name="Left">From the left edge to that of the piece.</param>
/// <param name="Top">From the top edge.</param>
/// <param name="Right">From the right edge.</param>
/// <param name="Bottom">From the bottom edge.</param>
/// <param name="Turn">The turn of the piece on what it lies on, in degrees clockwise.</param>
public sealed record PiecePlace(Piece? On, Length Left, Length Top, Length Right, Length Bottom, double Turn)
{
    /// <summary>The place of a piece of a card.</summary>
    public static PiecePlace Of(LaidOutCard card, Piece piece)
    {
        var on = piece.LiesOn >= 0 ? card.Pieces[piece.LiesOn] : null;
        var ground = on?.Finished ?? new Rect(Length.Zero, Length.Zero, card.SizeOf(piece.Face).Width, card.SizeOf(piece.Face).Height);
        var box = piece.Finished;
        return new(
            on, box.Left - ground.Left, box.Top - ground.Top, ground.Right - box.Right, ground.Bottom - box.Bottom, piece.Turn);
    }
}
