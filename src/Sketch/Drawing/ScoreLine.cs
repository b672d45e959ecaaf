using Sketch.Colours;

namespace Sketch.Drawing;

/// <summary>How a line that is scored or stitched into paper is drawn: dark on light paper, light on dark paper.</summary>
internal static class ScoreLine
{
    internal const double Width = 0.3;

    internal const double Opacity = 0.6;

    internal const string Dashes = "2.4 1.6";

    /// <summary>The colour on a paper of that colour.</summary>
    internal static Rgb On(Rgb ground)
    {
        var (black, white) = (new Rgb(0, 0, 0), new Rgb(255, 255, 255));
        return Contrast.Ratio(black, ground) >= Contrast.Ratio(white, ground) ? black : white;
    }
}
