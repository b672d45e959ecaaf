using Google.OrTools.Sat;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>Chooses whole numbers of patterns from a pool: fewest pieces left out, then fewest sheets.</summary>
internal static class WholeSheets
{
    /// <summary>
    /// How often to use each pattern of the pool, or null if nothing with at most <paramref name="atMost"/> sheets was found.
    /// </summary>
    /// <param name="problem">The demand, and how many of each stock there are. Only kinds too large for the sheet may be left
    /// out.</param>
    /// <param name="patterns">The pool.</param>
    /// <param name="atLeast">No solution has fewer sheets, so the search ends when it reaches this.</param>
    /// <param name="atMost">Only solutions with at most this many sheets are useful.</param>
    /// <param name="effort">Work allowed, in the solver's own measure, which is the same on every machine.</param>
    /// <param name="work">What may be done in all.</param>
    /// <returns>The uses, and whether it is proved that the pool allows no fewer.</returns>
    public static (int[]? Times, bool Exhausted) Choose(
        Reduced problem, IReadOnlyList<Pattern> patterns, int atLeast, int atMost, double effort, WorkBudget work)
    {
        var model = new CpModel();
        var copies = problem.Kinds.Max(k => k.Demand);
        var uses = patterns.Select(p => model.NewIntVar(0, Math.Min(copies, p.Stock.OnHand ?? copies), "")).ToArray();
        var cost = LinearExpr.NewBuilder();
        foreach (var kind in problem.Kinds)
        {
            var made = LinearExpr.NewBuilder();
            foreach (var p in Enumerable.Range(0, patterns.Count).Where(p => patterns[p].Counts[kind.Index] > 0))
            {
                made.AddTerm(uses[p], patterns[p].Counts[kind.Index]);
            }

            if (!kind.Fits(problem.Sheet.Width, problem.Sheet.Height))
            {
                var leftOut = model.NewIntVar(0, kind.Demand, "");
                made.Add(leftOut);
                cost.AddTerm(leftOut, PatternProgram.LeftOut);
            }

            model.Add(made >= kind.Demand);
        }

        foreach (var stock in problem.Stocks.Where(s => !s.IsSheet))
        {
            model.Add(Uses(s => s == stock) <= stock.OnHand!.Value);
        }

        var sheets = Uses(s => s.IsSheet);
        model.AddLinearConstraint(sheets, atLeast, atMost);
        cost.Add(sheets);
        model.Minimize(cost);
        var value = CpSolving.Solve(model, effort, work, out var isProved);
        return (value is null ? null : [.. uses.Select(u => (int)value(u))], isProved);

        LinearExpr Uses(Func<Stock, bool> of) => LinearExpr.Sum(uses.Where((_, p) => of(patterns[p].Stock)));
    }
}
