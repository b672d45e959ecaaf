using Sketch.Colours;

namespace Sketch.Drawing.Papers;

/// <summary>Patterns made of straight bands: stripes, gingham and plaid.</summary>
internal static class Bands
{
    /// <summary>Width of a stripe and of the ground between two.</summary>
    internal const double Stripe = 6.35;

    /// <summary>Width of a gingham square.</summary>
    internal const double Check = 3.96875;

    /// <summary>The period of a plaid.</summary>
    internal const double Sett = 25.4;

    /// <summary>Upright stripes 1/4 in wide, as far apart; a second figure colour gives a fine line in the middle of the ground.</summary>
    internal static void Stripes(FigureSheet sheet)
    {
        sheet.Stroke(Upright(sheet, Stripe * 2, Stripe), sheet.Figure(0), Stripe);
        if (sheet.Look.Figures.Length > 1)
        {
            sheet.Stroke(Upright(sheet, Stripe * 2, 0.8, Stripe), sheet.Figure(1), 0.8);
        }
    }

    /// <summary>Squares of 5/32 in: translucent bands both ways, so that there are three tones.</summary>
    internal static void Gingham(FigureSheet sheet)
    {
        var colour = sheet.Figure(0);
        sheet.Stroke(Upright(sheet, Check * 2, Check), colour, Check, 0.55);
        sheet.Stroke(Lying(sheet, Check * 2, Check), colour, Check, 0.55);
    }

    /// <summary>Every inch a broad band and two fine lines of the second colour, the same both ways.</summary>
    internal static void Plaid(FigureSheet sheet)
    {
        const double Broad = 8, Fine = 1, Narrow = 2.4;
        var (first, second) = (sheet.Figure(0), sheet.Figure(1));
        BothWays(Broad, 0, first, 0.42);
        BothWays(Narrow, Sett / 2, second, 0.5);
        foreach (var side in (ReadOnlySpan<int>)[-1, 1])
        {
            BothWays(Fine, Sett / 2 + side * 3.4, second, 0.5);
            BothWays(Fine * 0.6, side * (Broad / 2 - 1.4), sheet.Look.Ground, 0.5);
        }

        void BothWays(double width, double shift, Rgb colour, double opacity)
        {
            sheet.Stroke(Upright(sheet, Sett, width, shift), colour, width, opacity);
            sheet.Stroke(Lying(sheet, Sett, width, shift), colour, width, opacity);
        }
    }

    private static PathText Upright(FigureSheet sheet, double period, double width, double shift = 0)
    {
        var path = new PathText();
        foreach (var (_, x) in FigureSheet.Centred(sheet.Width, period, width / 2, shift))
        {
            path.Move(x, 0).Down(sheet.Height);
        }

        return path;
    }

    private static PathText Lying(FigureSheet sheet, double period, double width, double shift = 0)
    {
        var path = new PathText();
        foreach (var (_, y) in FigureSheet.Centred(sheet.Height, period, width / 2, shift))
        {
            path.Move(0, y).Across(sheet.Width);
        }

        return path;
    }
}
