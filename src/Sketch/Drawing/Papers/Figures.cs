using Sketch.Papers;

namespace Sketch.Drawing.Papers;

/// <summary>The figures of every pattern.</summary>
internal static class Figures
{
    /// <summary>
    /// No sheet of patterned paper is larger in either direction (the largest sold is about 700 x 1000 mm); a larger piece shows its ground
    /// only.
    /// </summary>
    private const double LargestSheet = 1000;

    /// <summary>Whether a piece of this paper shows figures.</summary>
    internal static bool HasAny(PieceDesign design) =>
        design is { Width: > 0 and <= LargestSheet, Height: > 0 and <= LargestSheet }
        && (design.Look.Pictured is not null
        || design.Look.Pattern is not (PaperPattern.Plain or PaperPattern.Cardstock or PaperPattern.Foil or PaperPattern.Pearl));

    internal static void Draw(FigureSheet sheet, double dotsPerInch)
    {
        if (sheet.Look.Pictured is { } pictured)
        {
            PicturedPaper.Draw(sheet, pictured, dotsPerInch);
            return;
        }

        switch (sheet.Look.Pattern)
        {
            case PaperPattern.Kraft:
                Fibres.Draw(sheet);
                break;
            case PaperPattern.Dots:
                Dots.Draw(sheet);
                break;
            case PaperPattern.Stripes:
                Bands.Stripes(sheet);
                break;
            case PaperPattern.Gingham:
                Bands.Gingham(sheet);
                break;
            case PaperPattern.Plaid:
                Bands.Plaid(sheet);
                break;
            case PaperPattern.Chevron:
                Zigzags.Chevrons(sheet);
                break;
            case PaperPattern.Waves:
                Zigzags.Waves(sheet);
                break;
            case PaperPattern.Stars:
                ScatteredStars.Draw(sheet);
                break;
            case PaperPattern.Woodgrain:
                Boards.Draw(sheet);
                break;
            case PaperPattern.Patches:
                Patchwork.Draw(sheet);
                break;
            case PaperPattern.Hatched:
                Hatching.Draw(sheet);
                break;
        }
    }
}
