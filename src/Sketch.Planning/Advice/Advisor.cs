using Sketch.Planning.Plans;

namespace Sketch.Planning.Advice;

/// <summary>Finds what helps where the stash is not enough for a batch.</summary>
internal static class Advisor
{
    /// <summary>The advice for a plan; none if everything is there.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="timeLimit">The limit for each of the two parts; what is found by then counts.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static PlanAdvice Advise(BatchPlan plan, TimeSpan timeLimit, CancellationToken cancellation) =>
        plan.IsEnough && plan.Supplies.All(s => s.Short == 0) || cancellation.IsCancellationRequested ? PlanAdvice.None : new(
            plan.Files.Stash is null ? [] : Makeable.Of(plan, timeLimit, cancellation),
            Suggestions.For(plan, timeLimit, cancellation));
}
