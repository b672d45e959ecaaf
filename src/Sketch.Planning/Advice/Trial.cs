using Sketch.Cutting;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>Plans a paper again with a change, to see what the change is worth.</summary>
internal sealed class Trial(Length kerf, TimeSpan timeLimit, CancellationToken stop)
{
    /// <summary>Sheets that an order takes; null when a piece of it fits nowhere, or the time is over.</summary>
    public int? Sheets(PaperOrder order)
    {
        if (order.Pieces.IsEmpty)
        {
            return 0;
        }

        var plan = SheetPlanner.Plan(order.Problem(kerf), new(timeLimit), null, stop);
        return stop.IsCancellationRequested || !plan.Unplaced.IsEmpty ? null : plan.Sheets;
    }

    /// <summary>The same, without planning where the pieces' area alone needs more than <paramref name="most"/> sheets.</summary>
    public int? SheetsUpTo(PaperOrder order, int most) => AreaBound(order) > most || Sheets(order) is not { } sheets || sheets > most ? null : sheets;

    /// <summary>An order with other pieces.</summary>
    public static PaperOrder With(PaperOrder order, IEnumerable<PieceOrder> pieces) => order with { Pieces = [.. pieces.Where(p => p.Count > 0)] };

    private static long AreaBound(PaperOrder order)
    {
        var missing = order.Pieces.Sum(p => Area(p.Size) * p.Count) - order.Offcuts.Sum(o => Area(o.Size) * o.Count);
        return (long)Math.Ceiling(missing / Area(order.Sheet.Usable.Size) - 1e-9);
    }

    private static double Area(Size size) => (double)size.Width.Nanometres * size.Height.Nanometres;
}
