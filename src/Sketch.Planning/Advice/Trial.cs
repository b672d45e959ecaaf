using Sketch.Cutting;
using Sketch.Planning.Demand;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>Plans a paper again with a change, to see what the change saves.</summary>
internal sealed class Trial(Length kerf, CancellationToken stop)
{
    /// <summary>Whether an order can be cut from this many sheets; false if a piece of it fits nowhere or the time is over.</summary>
    public bool Suffice(PaperOrder order, int sheets) => SheetPlanner.Suffice(order.Problem(kerf), sheets, stop);

    /// <summary>The fewest sheets that an order takes, if they are at most <paramref name="most"/>.</summary>
    public int? SheetsUpTo(PaperOrder order, int most)
    {
        var problem = order.Problem(kerf);
        return SheetPlanner.Suffice(problem, most, stop) ? SheetPlanner.Sheets(problem, stop) : null;
    }

    /// <summary>An order with other pieces.</summary>
    public static PaperOrder With(PaperOrder order, IEnumerable<PieceOrder> pieces) =>
        order with { Pieces = [.. pieces.Where(p => p.Count > 0)] };
}
