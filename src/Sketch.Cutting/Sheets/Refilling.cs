using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Improves a plan a few sheets at a time: empties the weakest and some others, and fills them again. If that takes a sheet less, the
/// plan is better; if it takes as many, but fuller ones and one that is emptier, that plan is continued with (ruin and recreate).
/// </summary>
internal sealed class Refilling(Reduced problem, Incumbent incumbent, WorkBudget work)
{
    private const int FewestAtOnce = 3;
    private const int MostAtOnce = 6;

    private readonly SequentialFill _fill = new(problem);
    private readonly FixedDraws _draws = new();

    /// <summary>Runs until the plan is proved, the budget is used up, or many attempts in a row change nothing.</summary>
    public void Run(int mostFruitless)
    {
        var sheets = Sheets(incumbent.Best!);
        for (var fruitless = 0; fruitless < mostFruitless && !incumbent.IsSettled && !work.IsOver; fruitless++)
        {
            if (sheets.Count <= 1 || incumbent.Best!.LeftOut > 0)
            {
                return;
            }

            var emptied = Choose(sheets);
            if (Refilled(sheets, emptied) is not { } filled)
            {
                continue;
            }

            var next = sheets.Except(emptied).Concat(filled.SelectMany(f => Enumerable.Repeat(f.Pattern, f.Times)).Select(Sheet)).ToList();
            if (next.Count < sheets.Count || Fullness(next) > Fullness(sheets) + 1e-6)
            {
                fruitless = 0;
                (sheets, var before) = (next, sheets.Count);
                if (next.Count < before)
                {
                    incumbent.Offer([.. sheets.Select(s => (s.Pattern, 1)), .. incumbent.Best.Uses.Where(u => !u.Pattern.Stock.IsSheet)]);
                }
            }
        }
    }

    // Each sheet by itself, without pieces beyond the demand.
    private List<UsedSheet> Sheets(WholePlan plan)
    {
        var surplus = problem.Kinds.Select(k => plan.Uses.Sum(u => (long)u.Times * u.Pattern.Counts[k.Index]) - k.Demand).ToArray();
        var sheets = new List<UsedSheet>();
        foreach (var pattern in plan.Uses.Where(u => u.Pattern.Stock.IsSheet).SelectMany(u => Enumerable.Repeat(u.Pattern, u.Times)))
        {
            var drop = pattern.Counts.Select((c, k) => (int)Math.Clamp(surplus[k], 0, c)).ToArray();
            for (var kind = 0; kind < drop.Length; kind++)
            {
                surplus[kind] -= drop[kind];
            }

            if (drop.All(d => d == 0))
            {
                sheets.Add(Sheet(pattern));
            }
            else if (pattern.Tree.Without(drop) is { } tree)
            {
                sheets.Add(Sheet(new(pattern.Stock, tree, problem.Kinds.Length)));
            }
        }

        return sheets;
    }

    private UsedSheet Sheet(Pattern pattern) =>
        new(pattern, problem.Kinds.Sum(k => pattern.Counts[k.Index] * k.Area) / ((double)problem.Sheet.Width * problem.Sheet.Height));

    // Full sheets and empty ones are better than many that are half full.
    private static double Fullness(List<UsedSheet> sheets) => sheets.Sum(s => s.Filled * s.Filled);

    private List<UsedSheet> Choose(List<UsedSheet> sheets)
    {
        var weakest = sheets.OrderBy(s => s.Filled).ToList();
        var chosen = new List<UsedSheet> { weakest[0] };
        var count = Math.Min(sheets.Count, FewestAtOnce + _draws.Below(MostAtOnce - FewestAtOnce + 1));
        while (chosen.Count < count)
        {
            // The weaker half is chosen twice as often.
            var other = weakest[_draws.Below(2) == 0 ? _draws.Below(weakest.Count) : _draws.Below((weakest.Count + 1) / 2)];
            if (!chosen.Contains(other))
            {
                chosen.Add(other);
            }
        }

        return chosen;
    }

    private List<(Pattern Pattern, int Times)>? Refilled(List<UsedSheet> sheets, List<UsedSheet> emptied)
    {
        var wanted = problem.Kinds.Select(k => emptied.Sum(s => s.Pattern.Counts[k.Index])).ToArray();
        int?[] onHand = [.. problem.Stocks.Select(s => s.IsSheet ? null : (int?)0)];
        var noise = problem.Kinds.Select(_ => _draws.About(1, 0.2)).ToArray();
        var filled = _fill.Run(wanted, onHand, incumbent.Worth(k => k.Area * noise[k.Index]), emptied.Count, work);
        var placed = problem.Kinds.All(k => filled.Sum(f => f.Times * f.Pattern.Counts[k.Index]) >= wanted[k.Index]);
        return placed && sheets.Count >= emptied.Count ? filled : null;
    }

    /// <summary>A sheet and the share of it that its pieces cover; each is an object of its own, even if two are cut alike.</summary>
    private sealed class UsedSheet(Pattern pattern, double filled)
    {
        public Pattern Pattern => pattern;

        public double Filled => filled;
    }
}
