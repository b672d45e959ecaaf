using Sketch.Colours;
using Sketch.Papers;

namespace Sketch.Variants;

/// <summary>How well papers stand out from one another and words from paper, from 0 (not at all) to 1.</summary>
internal static class Legibility
{
    /// <summary>The difference below which two layers cannot be distinguished at a glance (about 1 is just noticed side by side).</summary>
    public const double Vanishing = 3;

    /// <summary>The difference from which layers stand out well enough (chosen by eye).</summary>
    private const double Clear = 20;

    /// <summary>The fraction that a print on a print loses, as both are busy (chosen by eye).</summary>
    private const double Busy = 0.25;

    /// <summary>A layer on another; 0 when they look the same.</summary>
    public static double OfLayers(PaperLook upper, PaperLook lower)
    {
        var difference = ColourDifference.Between(LookColours.Mean(upper), LookColours.Mean(lower));
        if (difference < Vanishing)
        {
            return 0;
        }

        var standsOut = Math.Min(1, difference / Clear);
        return LookColours.IsPrinted(upper) && LookColours.IsPrinted(lower) ? standsOut * (1 - Busy) : standsOut;
    }

    /// <summary>
    /// Words on a paper: the contrast with each of its colours, weighted by its share; 1 from the ratio that small words need.
    /// </summary>
    /// <param name="ink">The ink.</param>
    /// <param name="paper">The paper.</param>
    public static double OfWords(PaperLook ink, PaperLook paper) =>
        LookColours.Of(paper).Sum(c => c.Share * Math.Min(1, Contrast.Ratio(ink.Ground, c.Colour) / Contrast.LeastForText));
}
