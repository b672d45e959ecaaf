using Sketch.Shapes;

namespace Sketch.Tests.Shapes;

/// <summary>
/// Tests whether points are inside an outline and measures their distance to its edge, by brute force on sampled lines. The
/// definitions of offset, union and so on can thus be checked point by point, without the code under test.
/// </summary>
internal sealed class Membership(Outline outline)
{
    private readonly List<List<Point>> _lines = [.. outline.Contours.Select(Drawn.Sample)];

    public bool Inside(Point point)
    {
        var winding = 0;
        foreach (var line in _lines)
        {
            for (var i = 0; i < line.Count; i++)
            {
                var (a, b) = (line[i], line[(i + 1) % line.Count]);
                if (a.Y <= point.Y != b.Y <= point.Y)
                {
                    var crossing = a.X + (point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X);
                    winding += crossing > point.X ? (b.Y > a.Y ? 1 : -1) : 0;
                }
            }
        }

        return winding != 0;
    }

    public double ToEdge(Point point)
    {
        var least = double.MaxValue;
        foreach (var line in _lines)
        {
            for (var i = 0; i < line.Count; i++)
            {
                var (a, b) = (line[i], line[(i + 1) % line.Count]);
                var (x, y) = (b.X - a.X, b.Y - a.Y);
                var square = x * x + y * y;
                var t = square == 0 ? 0 : Math.Clamp(((point.X - a.X) * x + (point.Y - a.Y) * y) / square, 0, 1);
                least = Math.Min(least, Drawn.Distance(point, new(a.X + t * x, a.Y + t * y)));
            }
        }

        return least;
    }

    /// <summary>A grid of points in and around a box, with odd steps so that points rarely fall on edges.</summary>
    public static IEnumerable<Point> Grid(Bounds box, double margin, int steps)
    {
        var around = box.Grow(margin + 0.0137);
        for (var i = 0; i <= steps; i++)
        {
            for (var j = 0; j <= steps; j++)
            {
                yield return new(around.Left + around.Width * i / steps, around.Top + around.Height * j / steps);
            }
        }
    }
}
