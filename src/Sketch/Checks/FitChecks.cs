using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;

namespace Sketch.Checks;

/// <summary>
/// Whether a laid-out card can be made as it is: warnings and notes only, since every card here has its sizes and places.
/// </summary>
public static class FitChecks
{
    private static readonly ImmutableArray<IFitRule> Rules =
    [
        new PastTheEdge(), new AcrossBothDoors(), new OverItsParent(), new HiddenCompletely(), new MatBorders(), new OffTheRuler(),
        new FallsApart(), new TooThinToCut(), new WordsTooBig(), new WordsTooFaint(), new LettersTooSmall(), new EnvelopeRoom(),
        new WrapTooLong(), new TooThick(), new LetterSize(),
    ];

    /// <summary>Adds the findings of all rules.</summary>
    public static void Run(LaidOutCard card, FindingBag findings)
    {
        var view = new FitView(card);
        foreach (var rule in Rules)
        {
            rule.Check(view, findings);
        }
    }
}
