using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>The state of a search: the best plan and the best bound so far, and every pattern found.</summary>
internal sealed class Incumbent(Reduced problem, IProgress<PlanProgress>? progress)
{
    private const int MostEquals = 60;

    private readonly int[] _demand = problem.Demand;
    private readonly List<WholePlan> _equals = [];

    public PatternPool Pool { get; } = new();

    /// <summary>Null only until the first offer.</summary>
    public WholePlan? Best { get; private set; }

    /// <summary>The best plan and others found that equal it in pieces and sheets, in the order in which they were found.</summary>
    public IReadOnlyList<WholePlan> Alternatives => _equals;

    public int LowerBound { get; private set; }

    /// <summary>The fractional number of sheets of the linear program: the unused part of the last sheet could stay whole.</summary>
    public double Fractional { get; set; }

    /// <summary>Whether the plan is proved optimal, whether all pieces are placed or not.</summary>
    public bool IsSettled { get; private set; }

    public void Offer(IReadOnlyList<(Pattern Pattern, int Times)> uses)
    {
        foreach (var (pattern, _) in uses)
        {
            Pool.Add(pattern);
        }

        var plan = WholePlan.From(uses, _demand);
        if (plan.IsBetterThan(Best))
        {
            Best = plan;
            _equals.Clear();
            _equals.Add(plan);
            Compare();
            progress?.Report(new(plan.Sheets, LowerBound));
        }
        else if (!Best!.IsBetterThan(plan) && _equals.Count < MostEquals)
        {
            _equals.Add(plan);
        }
    }

    /// <summary>Adds a plan to those that equal the best one, unless it is worse, however many there are.</summary>
    public void Prefer(IReadOnlyList<(Pattern Pattern, int Times)> uses)
    {
        var plan = WholePlan.From(uses, _demand);
        if (!Best!.IsBetterThan(plan))
        {
            _equals.Add(plan);
        }
    }

    /// <summary>
    /// A search that knows the same patterns and bound, in which plans with one more sheet count as best: they leave room for fewer
    /// layouts.
    /// </summary>
    public Incumbent WithSpareSheet()
    {
        var roomy = new Incumbent(problem, null);
        var repeated = Best!.Uses.Where(u => u.Pattern.Stock.IsSheet).MaxBy(u => u.Times).Pattern;
        roomy.Offer([.. Best.Uses, (repeated, 1)]);
        foreach (var pattern in Pool.Patterns)
        {
            roomy.Pool.Add(pattern);
        }

        roomy.Raise(LowerBound);
        return roomy;
    }

    /// <summary>Records that no plan needs fewer sheets than <paramref name="bound"/>.</summary>
    public void Raise(int bound)
    {
        if (bound > LowerBound)
        {
            LowerBound = bound;
            Compare();
            progress?.Report(new(Best!.Sheets, bound));
        }
    }

    /// <summary>Records that no plan is better than the best one or leaves out fewer pieces.</summary>
    public void Settle()
    {
        Raise(Best!.Sheets);
        IsSettled = true;
    }

    /// <summary>Values by area or another measure, as whole numbers that a table can sum.</summary>
    public int[] Worth(Func<Kind, double> of)
    {
        var most = problem.Kinds.Max(k => of(k) / k.Area) * problem.Stocks.Max(s => s.Width) * problem.Stocks.Max(s => s.Height);
        return [.. problem.Kinds.Select(k => Math.Max(1, (int)(of(k) / most * LayoutTable.MostValue)))];
    }

    private void Compare() => IsSettled |= Best!.LeftOut == 0 && Best.Sheets <= LowerBound;
}
