using Google.OrTools.Sat;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>Chooses whole numbers of patterns from a pool: fewest pieces left out, then fewest sheets.</summary>
internal static class WholeSheets
{
    // One unit of the solver is about a second.
    private const double StepsOfEffort = 1e9;

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
        using var solver = new CpSolver();
        // Ctrl-C belongs to the program: the solver would replace its handler.
        var most = Math.Min(effort, work.Left / StepsOfEffort);
        solver.StringParameters = FormattableString.Invariant(
            $"catch_sigint_signal:false, num_workers:1, random_seed:1, max_deterministic_time:{most}, linearization_level:2");
        using var registration = work.Cancellation.Register(solver.StopSearch);
        var status = solver.Solve(model);
        work.Spend((long)((solver.Response?.DeterministicTime ?? 0) * StepsOfEffort) + patterns.Count * (long)problem.Kinds.Length);
        return status switch
        {
            CpSolverStatus.Optimal => ([.. uses.Select(u => (int)solver.Value(u))], true),
            CpSolverStatus.Feasible => ([.. uses.Select(u => (int)solver.Value(u))], false),
            CpSolverStatus.Infeasible => (null, true),
            _ => (null, false),
        };

        LinearExpr Uses(Func<Stock, bool> of) => LinearExpr.Sum(uses.Where((_, p) => of(patterns[p].Stock)));
    }
}
