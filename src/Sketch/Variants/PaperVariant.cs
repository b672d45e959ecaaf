using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Variants;

/// <summary>A card's roles filled with papers of a stash.</summary>
/// <param name="Choices">What fills which role, in the order of the card's roles.</param>
/// <param name="Score">How well neighbouring layers and words stand out, from 0 to 1.</param>
public sealed record PaperVariant(ImmutableArray<PaperChoice> Choices, double Score)
{
    /// <summary>The choices as <c>draw --paper</c> takes them: <c>sky=gulls/back,deep=navy</c>.</summary>
    public string Id => string.Join(",", Choices);

    /// <summary>A filling with these papers in the varied roles.</summary>
    public RoleFilling Over(RoleFilling filling) => filling with { Choices = [.. filling.Choices, .. Choices] };
}

/// <summary>Which variants to find.</summary>
/// <param name="Roles">The roles to vary; empty for all that are cut from paper.</param>
/// <param name="Papers">Papers, or sides of them such as <c>gulls/back</c>; empty for the whole stash.</param>
/// <param name="Limit">The maximum number of variants.</param>
public sealed record VariantOptions(ImmutableArray<string> Roles, ImmutableArray<string> Papers, int Limit);

/// <summary>The variants found.</summary>
/// <param name="Best">The most different and most legible, the best first.</param>
/// <param name="Found">How many there are in all.</param>
/// <param name="Lacking">How many more there would be if the papers were enough for one card.</param>
public sealed record VariantList(ImmutableArray<PaperVariant> Best, int Found, int Lacking)
{
    /// <summary>How many ways were tried, those whose layers vanish on each other included.</summary>
    public long Tried { get; init; }

    /// <summary>What was tried for each role and what was left out and why, in sentences.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Why a card has no variants, as a sentence that begins in lower case.</summary>
    public string WhyNone(LaidOutCard card) =>
        Lacking > 0 ? $"the papers are not enough for even one card in any of {Counted.Of(Lacking, "variant")}."
        : card.Roles.IsEmpty ? "the card declares no roles; write role sky: gulls above the faces and of sky on a piece."
        : "none of the papers contrasts with its neighbours; name other roles or papers.";
}
