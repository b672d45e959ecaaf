namespace Sketch.Shapes;

public readonly partial record struct Segment
{
    /// <summary>
    /// Nodes and weights of Gaussian quadrature on [0, 1], exact up to degree five: the degree of x y' - y x' of a cubic.
    /// </summary>
    private static readonly (double Node, double Weight)[] Gauss =
        [(0.5 - Math.Sqrt(0.15), 5 / 18.0), (0.5, 4 / 9.0), (0.5 + Math.Sqrt(0.15), 5 / 18.0)];

    /// <summary>The point at a parameter, 0 at <paramref name="from"/> and 1 at the end.</summary>
    internal Point PointAt(Point from, double t)
    {
        var s = 1 - t;
        if (IsLine)
        {
            return new(s * from.X + t * End.X, s * from.Y + t * End.Y);
        }

        var (a, b, c, d) = (s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t);
        return new(
            a * from.X + b * Control1.X + c * Control2.X + d * End.X,
            a * from.Y + b * Control1.Y + c * Control2.Y + d * End.Y);
    }

    /// <summary>The first derivative at that parameter.</summary>
    internal Point SlopeAt(Point from, double t)
    {
        if (IsLine)
        {
            return new(End.X - from.X, End.Y - from.Y);
        }

        var s = 1 - t;
        var (a, b, c) = (3 * s * s, 6 * s * t, 3 * t * t);
        return new(
            a * (Control1.X - from.X) + b * (Control2.X - Control1.X) + c * (End.X - Control2.X),
            a * (Control1.Y - from.Y) + b * (Control2.Y - Control1.Y) + c * (End.Y - Control2.Y));
    }

    /// <summary>The second derivative at that parameter.</summary>
    internal Point BendAt(Point from, double t)
    {
        if (IsLine)
        {
            return default;
        }

        var (a, b) = (6 * (1 - t), 6 * t);
        return new(
            a * (Control2.X - 2 * Control1.X + from.X) + b * (End.X - 2 * Control2.X + Control1.X),
            a * (Control2.Y - 2 * Control1.Y + from.Y) + b * (End.Y - 2 * Control2.Y + Control1.Y));
    }

    /// <summary>The smallest upright box around the segment.</summary>
    internal Bounds BoundsFrom(Point from)
    {
        var box = new Bounds(Math.Min(from.X, End.X), Math.Min(from.Y, End.Y), Math.Max(from.X, End.X), Math.Max(from.Y, End.Y));
        if (IsLine)
        {
            return box;
        }

        var (left, right) = Range(from.X, Control1.X, Control2.X, End.X, box.Left, box.Right);
        var (top, bottom) = Range(from.Y, Control1.Y, Control2.Y, End.Y, box.Top, box.Bottom);
        return new(left, top, right, bottom);
    }

    /// <summary>Twice the area swept by the line from <paramref name="about"/> to a point that runs along the segment.</summary>
    internal double SweptFrom(Point from, Point about)
    {
        if (IsLine)
        {
            return (from.X - about.X) * (End.Y - about.Y) - (End.X - about.X) * (from.Y - about.Y);
        }

        var sum = 0.0;
        foreach (var (node, weight) in Gauss)
        {
            var (point, slope) = (PointAt(from, node), SlopeAt(from, node));
            sum += weight * ((point.X - about.X) * slope.Y - (point.Y - about.Y) * slope.X);
        }

        return sum;
    }

    /// <summary>Widens a range by the extrema of the cubic: its values at the roots of its derivative between 0 and 1.</summary>
    private static (double Low, double High) Range(double p0, double p1, double p2, double p3, double low, double high)
    {
        if (p1 >= low && p1 <= high && p2 >= low && p2 <= high)
        {
            return (low, high);
        }

        var (a, b, c) = (p3 - p0 + 3 * (p1 - p2), 2 * (p0 - 2 * p1 + p2), p1 - p0);
        var root = Math.Sqrt(Math.Max(0, b * b - 4 * a * c));
        var q = -(b + (b < 0 ? -root : root)) / 2;
        foreach (var t in (ReadOnlySpan<double>)[q / a, c / q])
        {
            if (t is > 0 and < 1)
            {
                var s = 1 - t;
                var value = s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
            }
        }

        return (low, high);
    }
}
