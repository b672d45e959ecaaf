using Google.OrTools.Sat;

namespace Sketch.Cutting.Sheets;

/// <summary>Chooses whole numbers of patterns from a pool: fewest pieces left out, then fewest sheets.</summary>
internal static class WholeSheets
{
    /// <summary>How often to use each pattern of the pool, or null when nothing better than <paramref name="atMost"/> sheets was found.</summary>
    /// <param name="patterns">The pool.</param>
    /// <param name="demand">Pieces of each kind that must be there.</param>
    /// <param name="onHand">How many of each stock there are; null for any number.</param>
    /// <param name="atLeast">No answer has fewer sheets, so the search ends when it meets this.</param>
    /// <param name="atMost">Only answers with at most so many sheets are of use.</param>
    /// <param name="effort">Work allowed, in the solver's own measure, which is the same on every machine.</param>
    /// <param name="stop">Ends the search early.</param>
    /// <returns>The uses, and whether it is proved that the pool allows no fewer.</returns>
    public static (int[]? Times, bool Exhausted) Choose(
        IReadOnlyList<Pattern> patterns, int[] demand, IReadOnlyList<int?> onHand, int atLeast, int atMost, double effort, CancellationToken stop)
    {
        var model = new CpModel();
        var most = demand.Max();
        var uses = patterns.Select(p => model.NewIntVar(0, Math.Min(most, onHand[p.Stock.Index] ?? most), "")).ToArray();
        for (var kind = 0; kind < demand.Length; kind++)
        {
            if (demand[kind] > 0)
            {
                var holders = Enumerable.Range(0, patterns.Count).Where(p => patterns[p].Counts[kind] > 0).ToArray();
                model.Add(LinearExpr.WeightedSum(holders.Select(p => uses[p]), holders.Select(p => (long)patterns[p].Counts[kind])) >= demand[kind]);
            }
        }

        for (var stock = 0; stock < onHand.Count; stock++)
        {
            if (onHand[stock] is { } limit)
            {
                model.Add(LinearExpr.Sum(Enumerable.Range(0, patterns.Count).Where(p => patterns[p].Stock.Index == stock).Select(p => uses[p])) <= limit);
            }
        }

        var sheets = LinearExpr.Sum(Enumerable.Range(0, patterns.Count).Where(p => patterns[p].Stock.IsSheet).Select(p => uses[p]));
        model.AddLinearConstraint(sheets, atLeast, atMost);
        model.Minimize(sheets);
        using var solver = new CpSolver();
        solver.StringParameters = FormattableString.Invariant($"num_workers:1, random_seed:1, max_deterministic_time:{effort}, linearization_level:2");
        using var registration = stop.Register(solver.StopSearch);
        var status = solver.Solve(model);
        return status switch
        {
            CpSolverStatus.Optimal => ([.. uses.Select(u => (int)solver.Value(u))], true),
            CpSolverStatus.Feasible => ([.. uses.Select(u => (int)solver.Value(u))], false),
            CpSolverStatus.Infeasible => (null, true),
            _ => (null, false),
        };
    }
}
