using Sketch.Cutting.Layouts;

namespace Sketch.Cutting.Sheets;

/// <summary>Looks for the fewest sheets and for a proof that there are none fewer, from quick to thorough, and stops as soon as the two meet.</summary>
internal sealed class SheetSearch
{
    private const int MostPoints = 640;
    private const int MostPointsLimited = 200;
    private const long EffortForSets = 10_000_000;
    private const int MostSets = 20_000;

    private readonly Reduced _problem;
    private readonly LayoutTable _table;
    private readonly SequentialFill _fill;
    private readonly PatternPool _pool = new();
    private readonly int[] _demand;
    private readonly int?[] _onHand;
    private readonly IProgress<PlanProgress>? _progress;
    private readonly CancellationToken _stop;

    private SheetSearch(Reduced problem, IProgress<PlanProgress>? progress, CancellationToken stop)
    {
        (_problem, _progress, _stop) = (problem, progress, stop);
        var (width, height) = (problem.Stocks.Max(s => s.Width), problem.Stocks.Max(s => s.Height));
        _table = new(Across(width, MostPoints), Down(height, MostPoints), problem.Kinds);
        _fill = new(problem, new(Across(width, MostPointsLimited), Down(height, MostPointsLimited), problem.Kinds));
        _demand = problem.Demand;
        _onHand = [.. problem.Stocks.Select(s => s.OnHand)];
    }

    private WholePlan? Best { get; set; }

    private int LowerBound { get; set; }

    private bool IsDone => Best is { LeftOut: 0 } && Best.Sheets <= LowerBound;

    /// <summary>Searches.</summary>
    /// <returns>The best plan found, the patterns met on the way, and the bound.</returns>
    public static (WholePlan Plan, PatternPool Pool, int LowerBound) Run(Reduced problem, IProgress<PlanProgress>? progress, CancellationToken stop)
    {
        var search = new SheetSearch(problem, progress, stop);
        search.Run();
        return (search.Best!, search._pool, search.LowerBound);
    }

    private void Run()
    {
        foreach (var pattern in _problem.Kinds.SelectMany(Rows))
        {
            _pool.Add(pattern);
        }

        Offer(_fill.Run(_demand, _onHand, Worth(k => k.Area), int.MaxValue, CancellationToken.None));
        var generation = new ColumnGeneration(_problem, _table, _pool);
        var (bound, use) = generation.Run(_demand, _onHand, _stop);
        Raise(bound);
        Round(use, generation.Prices);
        if (!IsDone && !_stop.IsCancellationRequested)
        {
            ListAll();
        }
    }

    // With few pieces every layout can be listed, and choosing among them settles the matter.
    private void ListAll()
    {
        int[] most = [.. _problem.Kinds.Select(k => Math.Min(k.Demand, _problem.Stocks.Max(s => MostOf(k, s))))];
        (long, long)[] stocks = [.. _problem.Stocks.Select(s => (s.Width, s.Height))];
        if (PieceSets.TryList(_problem.Kinds, stocks, most, EffortForSets, _stop) is not { } sets)
        {
            return;
        }

        var all = new List<Pattern>();
        foreach (var stock in _problem.Stocks)
        {
            all.AddRange(sets.Fullest(stock.Width, stock.Height).Take(MostSets + 1 - all.Count).Select(tree => new Pattern(stock, tree, _problem.Kinds.Length)));
        }

        if (all.Count <= MostSets)
        {
            var leftOut = Best!.LeftOut > 0;
            var (times, exhausted) = WholeSheets.Choose(all, _demand, _onHand, leftOut ? 0 : LowerBound, leftOut ? int.MaxValue : Best.Sheets - 1, 5, _stop);
            if (times is not null)
            {
                Offer([.. all.Zip(times)]);
            }

            if (exhausted && Best.LeftOut == 0)
            {
                Raise(Best.Sheets);
            }
        }
    }

    private static int MostOf(Kind kind, Stock stock) => (int)Math.Min(kind.Demand, (double)stock.Width * stock.Height / kind.Area);

    // Whole parts of the program's answer as they are; what is still wanted is filled anew, or chosen from all patterns met.
    private void Round(List<(Pattern Pattern, double Times)> use, int[] prices)
    {
        for (var back = 0; back <= 2 && !IsDone && !_stop.IsCancellationRequested; back++)
        {
            var kept = use.Select(u => (u.Pattern, Times: Math.Max(0, (int)Math.Floor(u.Times + 1e-6) - back))).Where(u => u.Times > 0).ToList();
            var keptSheets = kept.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times);
            var wanted = _demand.ToArray();
            var onHand = _onHand.ToArray();
            foreach (var (pattern, times) in kept)
            {
                onHand[pattern.Stock.Index] -= times;
                for (var kind = 0; kind < wanted.Length; kind++)
                {
                    wanted[kind] = Math.Max(0, wanted[kind] - times * pattern.Counts[kind]);
                }
            }

            if (wanted.All(w => w == 0))
            {
                Offer(kept);
                continue;
            }

            var most = Best!.Sheets - keptSheets;
            Offer([.. kept, .. _fill.Run(wanted, onHand, Worth(k => k.Area), most, _stop)]);
            if (!IsDone)
            {
                Offer([.. kept, .. _fill.Run(wanted, onHand, Worth(k => prices[k.Index] + 0.01 * prices.Max() * k.Area / _problem.Kinds[0].Area), most, _stop)]);
            }

            if (!IsDone && Best.LeftOut == 0)
            {
                var (times, _) = WholeSheets.Choose(_pool.Patterns, wanted, onHand, Math.Max(0, LowerBound - keptSheets), Best.Sheets - 1 - keptSheets, 0.5, _stop);
                if (times is not null)
                {
                    Offer([.. kept, .. _pool.Patterns.Zip(times)]);
                }
            }
        }
    }

    private void Offer(IReadOnlyList<(Pattern Pattern, int Times)> uses)
    {
        foreach (var (pattern, _) in uses)
        {
            _pool.Add(pattern);
        }

        var plan = WholePlan.From(uses, _demand);
        if (plan.IsBetterThan(Best))
        {
            Best = plan;
            _progress?.Report(new(plan.Sheets, LowerBound));
        }
    }

    private void Raise(int bound)
    {
        if (bound > LowerBound)
        {
            LowerBound = bound;
            _progress?.Report(new(Best!.Sheets, bound));
        }
    }

    // One kind in plain rows, on every stock and both ways: enough for the first program to have an answer.
    private IEnumerable<Pattern> Rows(Kind kind) =>
        from stock in _problem.Stocks
        from way in kind.Ways()
        where way.Width <= stock.Width && way.Height <= stock.Height
        let row = Repeat(true, new PieceLeaf(kind, way.Width, way.Height), (int)Math.Min(kind.Demand, stock.Width / way.Width))
        let rows = (int)Math.Min((kind.Demand + stock.Width / way.Width - 1) / (stock.Width / way.Width), stock.Height / way.Height)
        select new Pattern(stock, Repeat(false, row, rows), _problem.Kinds.Length);

    private static CutTree Repeat(bool sideBySide, CutTree tree, int times) =>
        times == 1 ? tree : new Join(sideBySide, Repeat(sideBySide, tree, times / 2), Repeat(sideBySide, tree, times - times / 2));

    private int[] Worth(Func<Kind, double> of)
    {
        var most = _problem.Kinds.Max(k => of(k) / k.Area) * _problem.Stocks.Max(s => s.Width) * _problem.Stocks.Max(s => s.Height);
        return [.. _problem.Kinds.Select(k => Math.Max(1, (int)(of(k) / most * LayoutTable.MostValue)))];
    }

    private CutPoints Across(long limit, int most) => CutPoints.For(_problem.Kinds.SelectMany(k => k.Ways().Select(w => (w.Width, k.Demand))), limit, most);

    private CutPoints Down(long limit, int most) => CutPoints.For(_problem.Kinds.SelectMany(k => k.Ways().Select(w => (w.Height, k.Demand))), limit, most);
}
