using Google.OrTools.Sat;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Runs the solver of integer programs the same way everywhere: with one thread, within a budget, without touching Ctrl-C.
/// </summary>
internal static class CpSolving
{
    // One unit of the solver takes about as long as so many steps.
    private const double StepsOfEffort = 1e9;

    /// <summary>The values of the best solution found; null if there is none.</summary>
    /// <param name="model">The program.</param>
    /// <param name="effort">Work allowed, in the solver's own measure, which is the same on every machine.</param>
    /// <param name="work">What may be done in all.</param>
    public static Func<IntVar, long>? Solve(CpModel model, double effort, WorkBudget work) => Solve(model, effort, work, out _);

    /// <summary>As above, and whether it is proved that there is no better solution, or none at all.</summary>
    public static Func<IntVar, long>? Solve(CpModel model, double effort, WorkBudget work, out bool isProved)
    {
        isProved = false;
        if (!SolverLibrary.IsThere)
        {
            return null;
        }

        var solver = new CpSolver();
        var most = Math.Min(effort, work.Left / StepsOfEffort);
        // Ctrl-C belongs to the program: the solver would replace its handler.
        solver.StringParameters = FormattableString.Invariant(
            $"catch_sigint_signal:false, num_workers:1, random_seed:1, max_deterministic_time:{most}, linearization_level:2");
        using var registration = work.Cancellation.Register(solver.StopSearch);
        var status = solver.Solve(model);
        work.Spend((long)((solver.Response?.DeterministicTime ?? 0) * StepsOfEffort) + model.Model.Variables.Count * 1000L);
        isProved = status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible;
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? solver.Value : null;
    }
}
