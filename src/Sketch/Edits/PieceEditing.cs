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
    /// <summary>The edits of a text that change a piece.</summary>
    /// <param name="card">The card as laid out from the text.</param>
    /// <param name="source">The text.</param>
    /// <param name="piece">A piece of the card. A mat goes, turns and is copied with its piece.</param>
    /// <param name="change">The change.</param>
    /// <returns>Changes in the order of the text, and what cannot be done.</returns>
    public static PieceEdit Of(LaidOutCard card, SourceText source, Piece piece, PieceChange change)
    {
        var found = WrittenPiece.Find(card, source, Meant(card, piece, change));
        return found.ValueOrDefault is { } written ? Of(written, change) : PieceEdit.Refused(found.Problem!);
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

    /// <summary>The piece whose line is edited.</summary>
    private static Piece Meant(LaidOutCard card, Piece piece, PieceChange change)
    {
        var layer = piece.Kind == PieceKind.Shadow ? card.Pieces.First(p => p.Path == piece.Path.Parent) : piece;
        return change is MoveChange or PlaceChange or TurnChange or CopyChange or WordsChange or LettersChange or LetteringChange
                or ShowingChange
            ? WrittenPiece.Owner(card, layer) : layer;
    }

    private static PieceEdit Of(WrittenPiece piece, PieceChange change)
    {
        var line = new LineEditing(piece.File.Source, piece.Line, piece.Card.Units);
        var refusals = new List<Refusal>();
        switch (change)
        {
            case MoveChange move:
                Moving.Write(piece, move, line, refusals);
                break;
            case PlaceChange place:
                Moving.Write(piece, Moving.To(piece, place), line, refusals);
                break;
            case SizeChange size:
                Resizing.Write(piece, size, line, refusals);
                break;
            case OrderChange order:
                return PieceLines.Reorder(piece, order.Up);
            case CopyChange:
                return PieceLines.Copy(piece);
            case DeleteChange:
                return PieceLines.Delete(piece);
            default:
                if (Describing.Write(piece, change, line) is { } reason)
                {
                    refusals.Add(new(reason, null));
                }

                break;
        }

        return new(line.ToEdits(), [.. refusals]);
    }
}
