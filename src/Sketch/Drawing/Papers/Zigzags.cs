namespace Sketch.Drawing.Papers;

/// <summary>Patterns of lines that run up and down: chevrons and waves.</summary>
internal static class Zigzags
{
    /// <summary>The period of chevrons downwards, which is half of that across.</summary>
    internal const double Chevron = 9.525;

    /// <summary>Length of a wave.</summary>
    internal const double WaveLength = 12.7;

    /// <summary>Distance between the rows of waves.</summary>
    internal const double WavePitch = 7.9375;

    /// <summary>Chevrons at 45 degrees: bands 3/16 in deep, 3/8 in apart, a point every 3/4 in.</summary>
    internal static void Chevrons(FigureSheet sheet)
    {
        const double Run = Chevron, Rise = Chevron;
        var band = Chevron / 2 / Math.Sqrt(2);
        var path = new PathText();
        foreach (var (_, y) in FigureSheet.Centred(sheet.Height, Chevron, Rise + band))
        {
            var steps = (int)Math.Ceiling(sheet.Width / 2 / Run) + 1;
            path.Move(sheet.Width / 2 - steps * Run, y - Rise / 2 * (steps % 2 == 0 ? -1 : 1));
            for (var i = 0; i < 2 * steps; i++)
            {
                path.LineBy(Run, (i + steps) % 2 == 0 ? -Rise : Rise);
            }
        }

        sheet.Stroke(path, sheet.Figure(0), band);
    }

    /// <summary>Rolling rows 5/16 in apart, a wave 1/2 in long; between them a fine line of the second colour.</summary>
    internal static void Waves(FigureSheet sheet)
    {
        sheet.Stroke(Rows(0), sheet.Figure(0), 1.7, round: true);
        sheet.Stroke(Rows(WavePitch / 2), sheet.Figure(1), 0.7, round: true);

        PathText Rows(double shift)
        {
            const double Half = WaveLength / 2, Swing = 3.2;
            var path = new PathText();
            var count = (int)Math.Ceiling(sheet.Width / 2 / Half) + 2;
            foreach (var (index, y) in FigureSheet.Centred(sheet.Height, WavePitch, Swing, shift))
            {
                var aside = index % 2 == 0 ? 0 : Half / 2;
                path.Move(sheet.Width / 2 - count * Half - aside, y).BowBy(Half / 2, Swing, Half, 0);
                for (var i = 1; i < 2 * count + 1; i++)
                {
                    path.BowOnBy(Half, 0);
                }
            }

            return path;
        }
    }
}
