using System.Collections.Immutable;

namespace Sketch.Planning;

/// <summary>What to do when the shelf is not enough for a batch.</summary>
/// <param name="Makeable">How many of each card can be made; empty when all can.</param>
/// <param name="Suggestions">Changes that save sheets.</param>
public sealed record Advice(ImmutableArray<MakeableCards> Makeable, ImmutableArray<Suggestion> Suggestions)
{
    /// <summary>Nothing to advise.</summary>
    public static Advice None { get; } = new([], []);

    /// <summary>Works advice out; none when everything is there.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="timeLimit">For each of the two parts; what is found by then counts.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static Advice For(BatchPlan plan, TimeSpan timeLimit, CancellationToken cancellation) =>
        plan.IsEnough && plan.Supplies.All(s => s.Short == 0) || cancellation.IsCancellationRequested ? None : new(
            plan.Files.Stash is null ? [] : Planning.Makeable.Of(plan, timeLimit, cancellation),
            Planning.Suggestions.For(plan, timeLimit, cancellation));
}
