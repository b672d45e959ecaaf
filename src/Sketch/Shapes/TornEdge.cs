namespace Sketch.Shapes;

/// <summary>
/// The line of a tear: slow swings, quick ones and a rough edge on top of each other. The same length, depth and number give the same tear
/// everywhere, so copies, mats of one size, pictures and templates agree.
/// </summary>
internal static class TornEdge
{
    /// <summary>The distance in millimetres between neighbouring points of a tear.</summary>
    private const double Step = 1.2;

    /// <summary>Limits the outline of a strip of any length.</summary>
    private const int MostSteps = 300;

    /// <summary>How far apart the swings are in steps, and how deep they are.</summary>
    private static readonly (int Every, double Depth)[] Swings = [(9, 1), (3, 0.4), (1, 0.3)];

    /// <summary>The depths of points at equal distances along a stretch; the least is 0 and the greatest is the depth.</summary>
    public static double[] Depths(double length, double depth, int number)
    {
        var steps = (int)Math.Clamp(Math.Round(length / Step), 3, MostSteps);
        var random = new Seeded((ulong)Math.Round(length * 1000) * 1_000_003 + (ulong)Math.Round(depth * 1000) * 4099 + (ulong)number);
        var depths = new double[steps + 1];
        foreach (var (every, share) in Swings)
        {
            var swings = new double[steps / every + 2];
            for (var i = 0; i < swings.Length; i++)
            {
                swings[i] = random.Between(0, share);
            }

            for (var i = 0; i <= steps; i++)
            {
                var (from, part) = (i / every, (double)(i % every) / every);
                // Smooth between the swings, so that only the rough edge has corners.
                depths[i] += swings[from] + (swings[from + 1] - swings[from]) * part * part * (3 - 2 * part);
            }
        }

        var (least, greatest) = (depths.Min(), depths.Max());
        return [.. depths.Select(d => (d - least) / (greatest - least) * depth)];
    }
}
