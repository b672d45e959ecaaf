using Sketch.Batches;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;

namespace Sketch.Planning.Advice;

/// <summary>Plans a paper again with a change, to see what the change saves.</summary>
internal sealed class Trial(Batch batch, WorkBudget work)
{
    /// <summary>Whether an order can be cut from this many sheets; false if a piece of it fits nowhere or the work is used up.</summary>
    public bool Suffice(PaperOrder order, int sheets) => !work.IsOver && SheetPlanner.Suffice(Problem(order), sheets, work);

    /// <summary>The fewest sheets that an order takes, if they are at most <paramref name="most"/>.</summary>
    public int? SheetsUpTo(PaperOrder order, int most)
    {
        return Suffice(order, most) && SheetPlanner.Sheets(Problem(order), work) is { } sheets && sheets <= most ? sheets : null;
    }

    // What hollow layers free is stock for other pieces, as in the plan.
    private CuttingProblem Problem(PaperOrder order) =>
        FreedStock.Added(order.Problem(batch.Kerf), FreedStock.Of(batch, order, [], BatchPlan.SmallestUse));

    /// <summary>An order with other pieces.</summary>
    public static PaperOrder With(PaperOrder order, IEnumerable<PieceOrder> pieces) =>
        order with { Pieces = [.. pieces.Where(p => p.Count > 0)] };
}
