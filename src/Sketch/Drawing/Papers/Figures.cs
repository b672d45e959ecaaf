using Sketch.Papers;

namespace Sketch.Drawing.Papers;

/// <summary>The figures of every pattern.</summary>
internal static class Figures
{
    /// <summary>No sheet of patterned paper is larger either way (the largest sold is about 700 x 1000 mm); a larger piece shows its ground only.</summary>
    private const double LargestSheet = 1000;

    /// <summary>Whether a piece of this paper shows figures.</summary>
    internal static bool HasAny(PieceDesign design) =>
        design is { Width: > 0 and <= LargestSheet, Height: > 0 and <= LargestSheet }
        && (design.Look.Pictured is not null || design.Look.Pattern is not (Pattern.Plain or Pattern.Cardstock or Pattern.Foil or Pattern.Pearl));

    internal static void Draw(FigureSheet sheet, double dotsPerInch)
    {
        if (sheet.Look.Pictured is { } pictured)
        {
            PicturedPaper.Draw(sheet, pictured, dotsPerInch);
            return;
        }

        switch (sheet.Look.Pattern)
        {
            case Pattern.Kraft:
                Fibres.Draw(sheet);
                break;
            case Pattern.Dots:
                Dots.Draw(sheet);
                break;
            case Pattern.Stripes:
                Bands.Stripes(sheet);
                break;
            case Pattern.Gingham:
                Bands.Gingham(sheet);
                break;
            case Pattern.Plaid:
                Bands.Plaid(sheet);
                break;
            case Pattern.Chevron:
                Zigzags.Chevrons(sheet);
                break;
            case Pattern.Waves:
                Zigzags.Waves(sheet);
                break;
            case Pattern.Stars:
                ScatteredStars.Draw(sheet);
                break;
            case Pattern.Woodgrain:
                Boards.Draw(sheet);
                break;
            case Pattern.Patches:
                Patchwork.Draw(sheet);
                break;
            case Pattern.Hatched:
                Hatching.Draw(sheet);
                break;
        }
    }
}
