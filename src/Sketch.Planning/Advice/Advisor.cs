using Sketch.Cutting.Model;
using Sketch.Planning.Plans;

namespace Sketch.Planning.Advice;

/// <summary>Finds what helps if the stash is not enough for a batch.</summary>
internal static class Advisor
{
    private const double ShareOfMakeable = 0.4;

    /// <summary>The advice for a plan; empty if nothing is short.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="work">What may be done; results found by then count.</param>
    public static PlanAdvice Advise(BatchPlan plan, WorkBudget work) =>
        plan.IsEnough && plan.Supplies.All(s => s.Short == 0) ? PlanAdvice.None : new(
            plan.Files.Stash is null ? [] : Makeable.Of(plan, work.Part(ShareOfMakeable)),
            Suggestions.For(plan, work));
}
