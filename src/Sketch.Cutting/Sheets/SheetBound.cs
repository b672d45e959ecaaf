using Sketch.Cutting.Layouts;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Bounds the number of sheets from below, exactly and in whole numbers. With values given to pieces, no sheet holds more than its best
/// layout; so the value of all pieces, less what the offcuts can hold, divided by that and rounded up, is a bound (Farley 1990). The bound
/// by area is the simplest one.
/// </summary>
internal sealed class SheetBound
{
    private const int Steps = 480;

    private readonly Reduced _problem;
    private readonly LayoutTable? _table;
    private readonly long _step;

    private SheetBound(Reduced problem, LayoutTable? table, long step) => (_problem, _table, _step) = (problem, table, step);

    /// <summary>Whether the bound reads the table that prices layouts, so that it costs nothing after each pricing.</summary>
    public bool IsShared => _step == 1;

    /// <param name="problem">The problem.</param>
    /// <param name="pricing">
    /// The table that prices layouts. If it may miss some, a coarser one is built, with pieces and stocks rounded down to whole steps: what
    /// can be cut can still be cut after that, so its bound holds.
    /// </param>
    public static SheetBound For(Reduced problem, LayoutTable pricing)
    {
        if (pricing.IsExact)
        {
            return new(problem, pricing, 1);
        }

        var step = Math.Max(2, problem.Stocks.Max(s => Math.Max(s.Width, s.Height)) / Steps);
        Kind[] kinds = [.. problem.Kinds.Select(k => k with { Width = k.Width / step, Height = k.Height / step })];
        if (kinds.Any(k => k.Width == 0 || k.Height == 0))
        {
            return new(problem, null, step);
        }

        var points = new[] { problem.Stocks.Max(s => s.Width) / step, problem.Stocks.Max(s => s.Height) / step };
        return new(problem, new(CutPoints.Grid((int)points[0]), CutPoints.Grid((int)points[1]), kinds), step);
    }

    /// <summary>The bound by area.</summary>
    public static int ByArea(Reduced problem)
    {
        static Int128 Area(long width, long height) => (Int128)width * height;
        var left = problem.Kinds.Where(k => k.Fits(problem.Sheet.Width, problem.Sheet.Height))
            .Aggregate((Int128)0, (sum, k) => sum + (Area(k.Width, k.Height) * k.Demand));
        left = problem.Stocks.Where(s => !s.IsSheet).Aggregate(left, (sum, s) => sum - (Area(s.Width, s.Height) * s.OnHand!.Value));
        var sheet = Area(problem.Sheet.Width, problem.Sheet.Height);
        return left <= 0 ? 0 : (int)((left + sheet - 1) / sheet);
    }

    /// <summary>A bound without a search: the number of pieces that need a sheet each, as no two of them fit on one.</summary>
    public static int ByLargePieces(Reduced problem)
    {
        var sheet = problem.Sheet;
        var offcuts = problem.Stocks.Where(s => !s.IsSheet).ToList();
        if (offcuts.Exists(s => s.Width > sheet.Width || s.Height > sheet.Height))
        {
            return 0; // two of them might lie on such an offcut
        }

        var apart = new List<Kind>();
        foreach (var kind in problem.Kinds.Where(k => k.Fits(sheet.Width, sheet.Height)))
        {
            if (!FitTogether(kind, kind, sheet) && !apart.Exists(other => FitTogether(kind, other, sheet)))
            {
                apart.Add(kind);
            }
        }

        var onOffcuts = offcuts.Where(s => apart.Exists(k => k.Fits(s.Width, s.Height))).Sum(s => (long)s.OnHand!.Value);
        return (int)Math.Max(0, apart.Sum(k => (long)k.Demand) - onOffcuts);
    }

    // Two rectangles fit into another without overlap only side by side or one above the other.
    private static bool FitTogether(Kind one, Kind other, Stock sheet) =>
        (from a in one.Ways()
         from b in other.Ways()
         select (a.Width + b.Width <= sheet.Width && Math.Max(a.Height, b.Height) <= sheet.Height)
             || (a.Height + b.Height <= sheet.Height && Math.Max(a.Width, b.Width) <= sheet.Width)).Any(fits => fits);

    /// <summary>The bound by value.</summary>
    /// <param name="worth">The value of each kind; a shared table has just been filled with it.</param>
    /// <param name="demand">Pieces of each kind.</param>
    /// <param name="onHand">How many of each stock; null for any number.</param>
    public int By(int[] worth, int[] demand, IReadOnlyList<int?> onHand)
    {
        if (_table is null)
        {
            return 0;
        }

        // What fits only offcuts needs no sheet.
        int[] counted = [.. _problem.Kinds.Select(k => k.Fits(_problem.Sheet.Width, _problem.Sheet.Height) ? worth[k.Index] : 0)];
        if (!IsShared || !counted.AsSpan().SequenceEqual(worth))
        {
            _table.Fill(counted);
        }

        var total = _problem.Kinds.Aggregate((Int128)0, (sum, k) => sum + ((Int128)demand[k.Index] * counted[k.Index]));
        total = _problem.Stocks.Where(s => !s.IsSheet).Aggregate(total, (sum, s) => sum - ((Int128)onHand[s.Index]!.Value * Best(s)));
        var most = Best(_problem.Sheet);
        return total <= 0 || most == 0 ? 0 : (int)((total + most - 1) / most);
    }

    private int Best(Stock stock) => _table!.Best(stock.Width / _step, stock.Height / _step);
}
