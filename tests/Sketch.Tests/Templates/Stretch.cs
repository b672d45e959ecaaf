using Sketch.Shapes;
using Sketch.Templates;

namespace Sketch.Tests.Templates;

/// <summary>A straight segment of a line on a page; curves are approximated by chords.</summary>
internal readonly record struct Stretch(Point From, Point To)
{
    private const double Tolerance = 0.05;

    /// <summary>The segments of a line.</summary>
    public static IEnumerable<Stretch> Of(TemplateLine line) => line.Contours.Select(c => c.Flatten(Tolerance))
        .SelectMany(p => p.Zip(p.Skip(1).Concat(line.IsClosed ? [p[0]] : []), (a, b) => new Stretch(a, b)));

    /// <summary>Its length.</summary>
    public double Length => Apart(From, To);

    /// <summary>The point halfway along it.</summary>
    public Point Middle => new((From.X + To.X) / 2, (From.Y + To.Y) / 2);

    /// <summary>The distance from a point to the nearest point of it.</summary>
    public double DistanceTo(Point point)
    {
        var (x, y) = (To.X - From.X, To.Y - From.Y);
        var along = Length == 0 ? 0 : ((point.X - From.X) * x + (point.Y - From.Y) * y) / (Length * Length);
        var share = Math.Clamp(along, 0, 1);
        return Apart(point, new(From.X + share * x, From.Y + share * y));
    }

    private static double Apart(Point a, Point b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));

    /// <summary>
    /// Whether it runs through a box: it misses one when all corners of the box lie on one side of it, or when it ends before the box on
    /// one axis.
    /// </summary>
    public bool Crosses(Bounds box)
    {
        var (a, b) = (From, To);
        if (Math.Max(a.X, b.X) <= box.Left || Math.Min(a.X, b.X) >= box.Right || Math.Max(a.Y, b.Y) <= box.Top
            || Math.Min(a.Y, b.Y) >= box.Bottom)
        {
            return false;
        }

        var first = SideOf(box.Left, box.Top);
        return SideOf(box.Right, box.Top) != first || SideOf(box.Left, box.Bottom) != first || SideOf(box.Right, box.Bottom) != first;

        int SideOf(double x, double y) => Math.Sign((b.X - a.X) * (y - a.Y) - (b.Y - a.Y) * (x - a.X));
    }
}
