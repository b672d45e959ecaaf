using Sketch.Planning.Demand;

namespace Sketch.Planning.Plans;

/// <summary>How many of a card the stash is enough for.</summary>
/// <param name="Design">The card.</param>
/// <param name="Count">How many.</param>
public sealed record MakeableCards(Design Design, int Count);
