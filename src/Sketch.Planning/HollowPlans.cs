using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;

namespace Sketch.Planning;

/// <summary>
/// Cuts small pieces of a paper out of what its hollow layers free, where that takes fewer sheets. A freed rectangle is smaller than the
/// piece that it comes out of, so no piece ever waits for itself.
/// </summary>
internal static class HollowPlans
{
    /// <summary>The plans with what their pieces free, each exchanged for one that uses it if that takes fewer sheets.</summary>
    /// <param name="plans">Plans that cut everything from sheets and offcuts.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="work">How much to search for all of them.</param>
    public static ImmutableArray<PaperPlan> Of(ImmutableArray<PaperPlan> plans, Batch batch, WorkBudget work)
    {
        var hollow = plans.Select(p => p with { Freed = FreedStock.Of(batch, p.Order, p.Plan.Unplaced, BatchPlan.SmallestUse) }).ToArray();
        var open = Enumerable.Range(0, plans.Length).Where(i => !hollow[i].Freed.IsEmpty && hollow[i].Plan.Sheets > 1).ToList();
        work.Share(open, (i, own) => hollow[i] = WithFreed(hollow[i], own));
        return [.. hollow];
    }

    private static PaperPlan WithFreed(PaperPlan paper, WorkBudget work)
    {
        var problem = FreedStock.Added(paper.Problem, paper.Freed);
        var plan = SheetPlanner.Plan(problem, work);
        return plan.Sheets < paper.Plan.Sheets && plan.Unplaced.Length == paper.Plan.Unplaced.Length
            ? paper with { Problem = problem, Plan = plan }
            : paper with { Plan = paper.Plan with { LowerBound = Math.Min(paper.Plan.LowerBound, plan.LowerBound) } };
    }
}
