using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Solves small problems, and those whose sheets would have to be nearly full: every layout that could be part of a better plan is listed,
/// and choosing among them shows whether there is such a plan.
/// </summary>
internal sealed class Listing(Reduced problem, Incumbent incumbent, Func<LayoutTable> newTable, WorkBudget work)
{
    private const int MostPatterns = 20_000;
    private const double ChoiceEffort = 5;

    private readonly int?[] _onHand = [.. problem.Stocks.Select(s => s.OnHand)];

    /// <summary>Improves the plan and the bound as far as the effort allows.</summary>
    /// <param name="prices">Prices of the pieces from the linear program.</param>
    /// <param name="share">The share of the affordable waste that one part may hold; below 1, better plans may be found, but nothing is
    /// proved.</param>
    /// <param name="effort">Work allowed.</param>
    public void Run(int[] prices, double share, long effort)
    {
        int[] most = [.. problem.Kinds.Select(
            k => Math.Min(k.Demand, problem.Stocks.Max(s => (int)Math.Min(int.MaxValue, (double)s.Width * s.Height / k.Area))))];
        (long, long)[] stocks = [.. problem.Stocks.Select(s => (s.Width, s.Height))];
        while (!incumbent.IsSettled && !work.IsOver)
        {
            var limits = incumbent.Best!.LeftOut > 0 ? PieceSets.Limits.None : Affordable(prices, incumbent.Best.Sheets - 1);
            if (PieceSets.TryList(problem.Kinds, stocks, most, limits.Times(share), effort, work) is not { } sets
                || !Choose(sets, limits, share == 1))
            {
                return;
            }
        }
    }

    // False if trying again is pointless.
    private bool Choose(PieceSets sets, PieceSets.Limits limits, bool isComplete)
    {
        var all = new List<Pattern>();
        foreach (var stock in problem.Stocks)
        {
            all.AddRange(sets.Fullest(stock.Width, stock.Height, limits).Take(MostPatterns + 1 - all.Count)
                .Select(tree => new Pattern(stock, tree, problem.Kinds.Length)));
        }

        if (all.Count > MostPatterns)
        {
            return false;
        }

        var best = incumbent.Best!;
        var atMost = best.LeftOut > 0 ? int.MaxValue : best.Sheets - 1;
        var (times, exhausted) = WholeSheets.Choose(problem, all, incumbent.LowerBound, atMost, ChoiceEffort, work);
        if (times is not null)
        {
            incumbent.Offer([.. all.Zip(times)]);
        }

        if (exhausted && isComplete)
        {
            incumbent.Settle();
        }

        return times is not null && !ReferenceEquals(best, incumbent.Best);
    }

    // By how much these sheets and all offcuts exceed the pieces: by area and, if the table is exact, by the values it gives to
    // them.
    private PieceSets.Limits Affordable(int[] prices, int sheets)
    {
        var waste = problem.Stocks.Sum(s => (double)s.Width * s.Height * (_onHand[s.Index] ?? sheets)) * (1 + 1e-9) - problem.Kinds.Sum(
            k => k.Area * k.Demand);
        var (byPrice, byArea) = (newTable(), newTable());
        return new(waste, byPrice.IsExact ? [Loss(byPrice, prices, sheets), Loss(byArea, incumbent.Worth(k => k.Area), sheets)] : []);
    }

    private PieceSets.Loss Loss(LayoutTable table, int[] worth, int sheets)
    {
        table.Fill(worth);
        work.Spend(table.Effort);
        var room = problem.Stocks.Aggregate(
            (Int128)0, (sum, s) => sum + (Int128)table.Best(s.Width, s.Height) * (_onHand[s.Index] ?? sheets));
        return new(table, worth, problem.Kinds.Aggregate(room, (left, k) => left - (Int128)worth[k.Index] * k.Demand));
    }
}
