using System.Collections.Immutable;

namespace Sketch.Planning.Plans;

/// <summary>What to do when the stash is not enough for a batch.</summary>
/// <param name="Makeable">How many of each card can be made; empty when all can.</param>
/// <param name="Suggestions">Changes that save sheets.</param>
public sealed record PlanAdvice(ImmutableArray<MakeableCards> Makeable, ImmutableArray<Suggestion> Suggestions)
{
    /// <summary>Nothing to advise.</summary>
    public static PlanAdvice None { get; } = new([], []);
}
