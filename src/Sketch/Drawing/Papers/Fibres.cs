using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing.Papers;

/// <summary>The short bent fibres that show in kraft paper, dark and light, with a speck here and there.</summary>
internal static class Fibres
{
    /// <summary>Square millimetres per fibre.</summary>
    private const double AreaEach = 10;

    internal static void Draw(FigureSheet sheet)
    {
        var random = new Seeded(sheet.Seed);
        PathText dark = new(2), light = new(2), specks = new(2);
        var count = (int)(sheet.Width * sheet.Height / AreaEach) + 1;
        for (var i = 0; i < count; i++)
        {
            var (x, y) = (random.Between(0, sheet.Width), random.Between(0, sheet.Height));
            if (i % 9 == 0)
            {
                specks.Move(x, y).LineBy(0.12, 0.05);
                continue;
            }

            var length = random.Between(0.5, 1.9);
            var (sin, cos) = Math.SinCos(random.Between(0, Math.Tau));
            var bend = random.Between(-0.35, 0.35) * length;
            (i % 5 < 3 ? dark : light).Move(x, y).BowBy(
                length / 2 * cos - bend * sin, length / 2 * sin + bend * cos, length * cos, length * sin);
        }

        sheet.Stroke(dark, Shades.Lighten(sheet.Look.Ground, -0.15), 0.1, 0.4);
        sheet.Stroke(light, Shades.Lighten(sheet.Look.Ground, 0.15), 0.11, 0.5);
        sheet.Stroke(specks, Shades.Lighten(sheet.Look.Ground, -0.24), 0.2, 0.5, round: true);
    }
}
