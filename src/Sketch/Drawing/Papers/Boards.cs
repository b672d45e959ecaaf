using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing.Papers;

/// <summary>
/// Boards 3/4 in wide that lie across, with joints here and there, grain along them and a knot around which the grain bends.
/// </summary>
internal static class Boards
{
    /// <summary>Width of a board.</summary>
    internal const double Width = 19.05;

    private const double Shortest = 70;
    private const double Longest = 150;
    private const double Step = 7;
    private const int Grains = 6;

    internal static void Draw(FigureSheet sheet)
    {
        var random = new Seeded(sheet.Seed);
        PathText dark = new(), light = new(), grain = new(2), fine = new(2), gaps = new(), knots = new(2);
        var offset = random.Between(0, Width);
        for (var top = -offset; top < sheet.Height; top += Width)
        {
            gaps.Move(0, top).Across(sheet.Width);
            var end = 0.0;
            for (var left = -random.Between(0, Longest); left < sheet.Width; left = end)
            {
                end = left + random.Between(Shortest, Longest);
                var tone = random.Below(3);
                if (tone > 0)
                {
                    (tone == 1 ? dark : light).Rectangle(left, top, end, top + Width);
                }

                gaps.Move(end, top).Down(top + Width);
                Grain(random, new(Math.Max(left, -Step), top, Math.Min(end, sheet.Width + Step), top + Width), grain, fine, knots);
            }
        }

        var ground = sheet.Look.Ground;
        var veins = sheet.Look.Figures.Length > 0 ? sheet.Figure(0) : Shades.Lighten(ground, -0.16, 1.1);
        sheet.Fill(dark, Shades.Lighten(ground, -0.05, 1.1), 0.8);
        sheet.Fill(light, Shades.Lighten(ground, 0.045), 0.8);
        sheet.Stroke(grain, veins, 0.28, 0.6);
        sheet.Stroke(fine, veins, 0.14, 0.55);
        sheet.Stroke(knots, veins, 0.3, 0.75);
        sheet.Stroke(gaps, Shades.Lighten(ground, -0.32), 0.35, 0.75);
    }

    private static void Grain(Seeded random, Bounds board, PathText grain, PathText fine, PathText knots)
    {
        if (board.Width <= 0)
        {
            return;
        }

        var hasKnot = random.Below(5) < 2;
        var knot = new Point(
            random.Between(board.Left, board.Right), board.Top + random.Between(0.35, 0.65) * Width);
        var phase = random.Between(0, Math.Tau);
        for (var i = 0; i < Grains; i++)
        {
            var middle = board.Top + (i + 0.5 + random.Between(-0.3, 0.3)) * Width / Grains;
            var swing = random.Between(0.2, 0.7);
            Vein(i % 2 == 0 ? grain : fine, board, x => Bent(x, middle, swing));
        }

        if (hasKnot)
        {
            foreach (var size in (ReadOnlySpan<double>)[0.5, 1.1, 1.7])
            {
                Oval(knots, knot, size * 1.5, size);
            }
        }

        double Bent(double x, double middle, double swing)
        {
            var y = middle + swing * Math.Sin(x / 23 + phase) + swing * 0.4 * Math.Sin(x / 9 + 2 * phase);
            if (!hasKnot)
            {
                return y;
            }

            var far = (x - knot.X) / 6;
            var aside = y - knot.Y;
            return y + Math.CopySign(2.1 * Math.Exp(-far * far - aside * aside / 30), aside);
        }
    }

    /// <summary>A smooth line through points (a Catmull-Rom spline written as Bézier curves).</summary>
    private static void Vein(PathText path, Bounds board, Func<double, double> height)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(board.Width / Step));
        var step = board.Width / steps;
        path.Move(board.Left, height(board.Left));
        for (var i = 0; i < steps; i++)
        {
            var (x0, x1) = (board.Left + i * step, board.Left + (i + 1) * step);
            var (y0, y1) = (height(x0), height(x1));
            path.CurveTo(
                new(x0 + step / 3, y0 + (y1 - height(x0 - step)) / 6), new(x1 - step / 3, y1 - (height(x1 + step) - y0) / 6), new(x1, y1));
        }
    }

    private static void Oval(PathText path, Point centre, double across, double down) =>
        path.Move(centre.X - across, centre.Y)
            .BowBy(0, -down, across, -down).BowOnBy(across, down)
            .BowBy(0, down, -across, down).BowOnBy(-across, -down);
}
