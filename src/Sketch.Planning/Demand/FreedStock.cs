using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Cutting.Model;
using Sketch.Panels;
using Sketch.Templates;
using Sketch.Units;

namespace Sketch.Planning.Demand;

/// <summary>
/// Equal rectangles of paper that the pieces of an order free: out of their windows and frames, and from under what covers them. They are
/// stock like an offcut, but only once the pieces are cut.
/// </summary>
/// <param name="From">The pieces that free them.</param>
/// <param name="Size">The size of each as it lies in the upright piece, on whole steps of the ruler.</param>
/// <param name="Each">How many each piece frees.</param>
/// <param name="Pieces">How many of the pieces are planned.</param>
public sealed record FreedStock(PieceOrder From, Size Size, int Each, int Pieces)
{
    /// <summary>How many in all.</summary>
    public int Count => Each * Pieces;

    /// <summary>A problem with freed rectangles as stock, in place of those that it may have already.</summary>
    public static CuttingProblem Added(CuttingProblem problem, IEnumerable<FreedStock> freed) => problem with
    {
        Offcuts =
        [
            .. problem.Offcuts.Where(o => o.FreedBy is null),
            .. freed.Select(f => new OffcutStock(f.Size, f.Count) { FreedBy = f.From.Id }),
        ],
    };

    /// <summary>What the pieces of one paper free; nothing unless the batch is cut hollow.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="paper">The pieces to cut from the paper.</param>
    /// <param name="unplaced">Pieces that fit nowhere and are not cut.</param>
    /// <param name="smallest">The shortest side that makes a leftover worth keeping.</param>
    public static ImmutableArray<FreedStock> Of(
        Batch batch, PaperOrder paper, ImmutableArray<UnplacedPieces> unplaced, Length smallest)
    {
        if (batch.Hollow is not { } written)
        {
            return [];
        }

        var gluing = written > Length.Zero ? written : GlueMargin.Usual.On(batch.Units);
        var lengths = batch.Units.Format();
        return
        [
            .. from piece in paper.Pieces
               where piece.Design is not null
               let cut = piece.Count - unplaced.Where(u => u.Id == piece.Id).Sum(u => u.Count)
               where cut > 0
               from size in PartsOf(piece, gluing).SelectMany(p => p.Rectangles(lengths, smallest)).GroupBy(s => s)
               select new FreedStock(piece, size.Key, size.Count(), cut),
        ];
    }

    private static ImmutableArray<FreedPart> PartsOf(PieceOrder piece, Length gluing)
    {
        var card = piece.Design!.Card;
        var index = card.Pieces.ToList().FindIndex(p => p.Path.Equals(piece.Path));
        return index < 0 ? FreedPaper.OfBase(card) : FreedPaper.Of(card, index, gluing);
    }
}
