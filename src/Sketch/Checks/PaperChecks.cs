using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;

namespace Sketch.Checks;

/// <summary>A finding that depends on the papers of a card.</summary>
/// <param name="Finding">The finding, at its place in the card.</param>
/// <param name="Papers">The papers that it concerns, the one beneath first; empty for those of a whole stack.</param>
public sealed record PaperFinding(Finding Finding, ImmutableArray<Paint> Papers);

/// <summary>The checks whose answers can change when the same card is made from other papers: by their colours or thicknesses.</summary>
public static class PaperChecks
{
    private static readonly ImmutableArray<IFitRule> OfThickness = [new EnvelopeRoom(), new TooThick()];

    private static readonly ImmutableArray<FindingKind> Kinds =
    [
        FindingCatalogue.WordsTooFaint, FindingCatalogue.WordsShimmer, FindingCatalogue.TooThick, FindingCatalogue.TooLargeForEnvelope,
        FindingCatalogue.TightEnvelope, FindingCatalogue.CloseEnvelope,
    ];

    /// <summary>What these checks find in a card.</summary>
    public static ImmutableArray<PaperFinding> Of(LaidOutCard card)
    {
        var view = new FitView(card);
        var stacks = new FindingBag();
        foreach (var rule in OfThickness)
        {
            rule.Check(view, stacks);
        }

        return [.. WordsTooFaint.Find(view), .. stacks.ToImmutable().Select(f => new PaperFinding(f, []))];
    }

    /// <summary>Whether a kind of finding comes from these checks.</summary>
    public static bool Give(FindingKind kind) => Kinds.Contains(kind);
}
