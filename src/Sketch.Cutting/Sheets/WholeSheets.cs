using Google.OrTools.Sat;

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
    /// <param name="stop">Ends the search early.</param>
    /// <returns>The uses, and whether it is proved that the pool allows no fewer.</returns>
    public static (int[]? Times, bool Exhausted) Choose(
        Reduced problem, IReadOnlyList<Pattern> patterns, int atLeast, int atMost, double effort, CancellationToken stop)
    {
        var model = new CpModel();
        var most = problem.Kinds.Max(k => k.Demand);
        var uses = patterns.Select(p => model.NewIntVar(0, Math.Min(most, p.Stock.OnHand ?? most), "")).ToArray();
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
        solver.StringParameters =
            FormattableString.Invariant($"num_workers:1, random_seed:1, max_deterministic_time:{effort}, linearization_level:2");
        using var registration = stop.Register(solver.StopSearch);
        var status = solver.Solve(model);
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
