using Sketch.Planning.Plans;

namespace Sketch.Planning.Advice;

/// <summary>Finds what helps if the stash is not enough for a batch.</summary>
internal static class Advisor
{
    /// <summary>The advice for a plan; empty if nothing is short.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="timeLimit">The limit for each of the two parts; results found by then count.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static PlanAdvice Advise(BatchPlan plan, TimeSpan timeLimit, CancellationToken cancellation) =>
        plan.IsEnough && plan.Supplies.All(s => s.Short == 0) || cancellation.IsCancellationRequested ? PlanAdvice.None : new(
            plan.Files.Stash is null ? [] : Makeable.Of(plan, timeLimit, cancellation),
            Suggestions.For(plan, timeLimit, cancellation));
}
