using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>
/// Writes what somebody does to a piece by hand into the text, as a maker would type it: the clause that is there gets another value, a
/// distance stays a distance, and all else stays as it is.
/// </summary>
public static class PieceEditing
{
    /// <summary>The changes that do what is wished of a piece.</summary>
    /// <param name="card">The card as laid out from the text.</param>
    /// <param name="source">The text.</param>
    /// <param name="piece">A piece of the card. A mat goes, turns and is copied with its piece.</param>
    /// <param name="wish">What is wished.</param>
    /// <returns>Changes in the order of the text, and what cannot be done.</returns>
    public static PieceEdit Of(LaidOutCard card, SourceText source, Piece piece, PieceWish wish)
    {
        var found = WrittenPiece.Find(card, source, Meant(card, piece, wish));
        return found.ValueOrDefault is { } written ? Of(written, wish) : PieceEdit.Refused(found.Problem!);
    }

    /// <summary>How a piece is placed and sized as it is written; a problem says why it cannot be changed here.</summary>
    /// <param name="card">The card as laid out from the text.</param>
    /// <param name="source">The text.</param>
    /// <param name="piece">A piece of the card.</param>
    public static Diagnostics.Result<PieceHold> HoldOn(LaidOutCard card, SourceText source, Piece piece) =>
        WrittenPiece.Find(card, source, WrittenPiece.Owner(card, piece)).Map(written => new PieceHold(
            written.Piece, written.Box, written.Reference ?? written.Box,
            new(Moving.RefusalOn(written, Axis.Across), Resizing.RefusalOn(written, Axis.Across), Moving.HeldEdge(written, Axis.Across),
                Moving.IsCentred(written, Axis.Across)),
            new(Moving.RefusalOn(written, Axis.Down), Resizing.RefusalOn(written, Axis.Down), Moving.HeldEdge(written, Axis.Down),
                Moving.IsCentred(written, Axis.Down)))
        {
            Copies = written.Copies,
            Described = Describing.Read(written),
            Mats = [.. card.MatsOf(written.Piece)
                .Select(m => (m, WrittenPiece.Find(card, source, m).Map(Describing.Read).ValueOrDefault ?? new("", [])))],
        });

    /// <summary>The piece whose line a wish changes.</summary>
    private static Piece Meant(LaidOutCard card, Piece piece, PieceWish wish)
    {
        var layer = piece.Kind == PieceKind.Shadow ? card.Pieces.First(p => p.Path == piece.Path.Parent) : piece;
        return wish is MoveWish or PlaceWish or TurnWish or CopyWish or WordsWish or LettersWish or LetteringWish or ShowingWish
            ? WrittenPiece.Owner(card, layer) : layer;
    }

    private static PieceEdit Of(WrittenPiece piece, PieceWish wish)
    {
        var line = new LineEditing(piece.File.Source, piece.Line, piece.Card.Units);
        var refusals = new List<Refusal>();
        switch (wish)
        {
            case MoveWish move:
                Moving.Write(piece, move, line, refusals);
                break;
            case PlaceWish place:
                Moving.Write(piece, Moving.To(piece, place), line, refusals);
                break;
            case SizeWish size:
                Resizing.Write(piece, size, line, refusals);
                break;
            case OrderWish order:
                return PieceLines.Reorder(piece, order.Up);
            case CopyWish:
                return PieceLines.Copy(piece);
            case DeleteWish:
                return PieceLines.Delete(piece);
            default:
                if (Describing.Write(piece, wish, line) is { } reason)
                {
                    refusals.Add(new(reason, null));
                }

                break;
        }

        return new(line.ToEdits(), [.. refusals]);
    }
}
