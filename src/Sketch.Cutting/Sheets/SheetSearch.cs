using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Searches for the fewest sheets and for a proof that no plan needs fewer, from quick to thorough, and stops as soon as the two meet.
/// </summary>
internal sealed class SheetSearch
{
    private const int MostPoints = 640;
    private const int MostFruitless = 200;

    // Of the budget: what is not used by these is left for what follows.
    private const double ShareOfFirstFit = 0.1;
    private const double ShareOfProgram = 0.5;

    private readonly Reduced _problem;
    private readonly Incumbent _incumbent;
    private readonly WorkBudget _work;

    private SheetSearch(Reduced problem, IProgress<PlanProgress>? progress, WorkBudget work)
    {
        (_problem, _work) = (problem, work);
        _incumbent = new(problem, progress);
    }

    /// <summary>Searches; there is a plan even when it is stopped at once.</summary>
    public static Incumbent Run(Reduced problem, IProgress<PlanProgress>? progress, WorkBudget work)
    {
        var search = new SheetSearch(problem, progress, work);
        search.Run(int.MinValue, [], isShort: false);
        return search._incumbent;
    }

    /// <summary>A plan of at most <paramref name="target"/> sheets, or the best plan of a full search if there is none.</summary>
    public static WholePlan Within(Reduced problem, int target, WorkBudget work)
    {
        var search = new SheetSearch(problem, null, work);
        search.Run(target, [], isShort: false);
        return search._incumbent.Best!;
    }

    /// <summary>A plan of at most <paramref name="target"/> sheets, if a short search finds one.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="target">Sheets allowed.</param>
    /// <param name="known">Patterns to start from; their stocks are those of the problem.</param>
    /// <param name="work">What may be done.</param>
    public static WholePlan? TryWithin(Reduced problem, int target, IReadOnlyList<Pattern> known, WorkBudget work)
    {
        var search = new SheetSearch(problem, null, work);
        search.Run(target, known, isShort: true);
        return search._incumbent.Best is { LeftOut: 0 } plan && plan.Sheets <= target ? plan : null;
    }

    // With a target, the search ends once that is reached or proved unreachable.
    private void Run(int target, IReadOnlyList<Pattern> known, bool isShort)
    {
        _incumbent.Offer(PlainRows());
        foreach (var pattern in _problem.Kinds.SelectMany(Rows).Concat(known))
        {
            _incumbent.Pool.Add(pattern);
        }

        int?[] onHand = [.. _problem.Stocks.Select(s => s.OnHand)];
        var firstFit = new FirstFit(_problem);
        _incumbent.Offer(firstFit.OnShelves(_problem.Demand, onHand));
        if (!_work.IsOver && firstFit.InParts(_problem.Demand, onHand, _work.Part(ShareOfFirstFit)) is { } parts)
        {
            _incumbent.Offer(parts);
        }

        _incumbent.Raise(Math.Max(SheetBound.ByArea(_problem), SheetBound.ByLargePieces(_problem)));
        if (_work.IsOver || IsDecided(target))
        {
            return;
        }

        var refilling = new Refilling(_problem, _incumbent, _work);
        if (!SolverLibrary.IsThere)
        {
            refilling.Run(MostFruitless);
            return;
        }

        var generation = new ColumnGeneration(_problem, NewTable(), _incumbent.Pool);
        var (bound, use) = generation.Run(_problem.Demand, onHand, _work.Part(ShareOfProgram));
        _incumbent.Raise(bound);
        _incumbent.Fractional = use.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times);
        var prices = generation.Prices;
        var rounding = new Rounding(_problem, _incumbent, _work);
        rounding.RunAtOnce(use);
        var pool = new PoolSearch(_problem, _incumbent, _work);
        var listing = new Listing(_problem, _incumbent, NewTable, _work);
        var quick = new Action[]
        {
            () => rounding.Run(use, prices, back: 0, rounds: 2),
            () => rounding.Dive(generation, use, back: 0),
        };
        var thorough = new Action[]
        {
            quick[0],
            () => listing.Run(prices, share: 1, effort: 500_000),
            quick[1],
            () => rounding.Run(use, prices, back: 2, rounds: 2),
            () => rounding.Run([], prices, back: 0, rounds: 2),
            () => rounding.Dive(generation, use, back: 1),
            () => listing.Run(prices, share: 0.25, effort: 10_000_000),
            () => listing.Run(prices, share: 1, effort: 20_000_000),
            pool.Vary,
            () => rounding.Run(use, prices, back: 2, rounds: 8),
            pool.Choose,
            () => refilling.Run(MostFruitless),
        };
        foreach (var step in isShort ? quick : thorough)
        {
            if (_incumbent.IsSettled || _work.IsOver || IsDecided(target))
            {
                return;
            }

            step();
        }
    }

    private bool IsDecided(int target) =>
        target >= 0 && ((_incumbent.Best!.LeftOut == 0 && _incumbent.Best.Sheets <= target) || _incumbent.LowerBound > target);

    private LayoutTable NewTable()
    {
        var (width, height) = (_problem.Stocks.Max(s => s.Width), _problem.Stocks.Max(s => s.Height));
        return new(
            CutPoints.For(_problem.Kinds.SelectMany(k => k.Ways().Select(w => (w.Width, k.Demand))), width, MostPoints),
            CutPoints.For(_problem.Kinds.SelectMany(k => k.Ways().Select(w => (w.Height, k.Demand))), height, MostPoints),
            _problem.Kinds);
    }

    // Every kind by itself, on offcuts as long as there are any: a poor plan, but one always exists.
    private List<(Pattern Pattern, int Times)> PlainRows()
    {
        var uses = new List<(Pattern Pattern, int Times)>();
        int?[] onHand = [.. _problem.Stocks.Select(s => s.OnHand)];
        foreach (var kind in _problem.Kinds)
        {
            var wanted = kind.Demand;
            foreach (var row in Rows(kind).OrderBy(r => r.Stock.IsSheet).ThenByDescending(r => r.Counts[kind.Index]))
            {
                var count = row.Counts[kind.Index];
                var times = Math.Min(onHand[row.Stock.Index] ?? int.MaxValue, (wanted + count - 1) / count);
                uses.Add((row, times));
                onHand[row.Stock.Index] -= times;
                wanted = Math.Max(0, wanted - times * count);
            }
        }

        return uses;
    }

    // One kind in plain rows, on every stock and in both orientations: enough for the first program to have a solution.
    private IEnumerable<Pattern> Rows(Kind kind) =>
        from stock in _problem.Stocks
        from way in kind.Ways()
        where way.Width <= stock.Width && way.Height <= stock.Height
        let across = (int)Math.Min(kind.Demand, stock.Width / way.Width)
        let down = (int)Math.Min((kind.Demand + across - 1) / across, stock.Height / way.Height)
        select new Pattern(stock, Repeat(false, Repeat(true, new PieceLeaf(kind, way.Width, way.Height), across), down),
            _problem.Kinds.Length);

    private static CutTree Repeat(bool sideBySide, CutTree tree, int times) =>
        times == 1 ? tree : new Join(sideBySide, Repeat(sideBySide, tree, times / 2), Repeat(sideBySide, tree, times - times / 2));
}
