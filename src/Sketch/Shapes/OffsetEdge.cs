namespace Sketch.Shapes;

/// <summary>
/// One edge of a contour moved to its left by a distance: a line stays one line, a curve becomes as many curves as needed to stay
/// within a few thousandths of a millimetre of the true parallel curve.
/// </summary>
internal sealed class OffsetEdge
{
    /// <summary>Millimetres that a curve may lie off the parallel curve.</summary>
    private const double Allowed = 0.001;

    /// <summary>
    /// The same per millimetre of distance: the error of a cubic that approximates a circle, so that circles stay four curves.
    /// </summary>
    private const double AllowedOfDistance = 0.0003;

    private const int DeepestSplit = 5;

    private readonly List<(Point From, Segment To)> _parts = [];

    private OffsetEdge(Point startHeading, Point endHeading)
    {
        StartHeading = startHeading;
        EndHeading = endHeading;
    }

    /// <summary>Direction of the edge at its start, of length 1.</summary>
    public Point StartHeading { get; }

    /// <summary>Direction of the edge at its end, of length 1.</summary>
    public Point EndHeading { get; }

    /// <summary>Where the moved edge begins.</summary>
    public Point Start => _parts[0].From;

    /// <summary>Where the moved edge ends.</summary>
    public Point End => _parts[^1].To.End;

    /// <summary>The segments of the moved edge.</summary>
    public IEnumerable<Segment> Segments => _parts.Select(p => p.To);

    /// <summary>The edge moved, or null where it bends more sharply than the distance allows.</summary>
    public static OffsetEdge? Of(Point from, Segment segment, double distance)
    {
        var start = Heading(from, segment.Control1, segment.Control2, segment.End);
        var end = Heading(segment.End, segment.Control2, segment.Control1, from);
        if (start is not { } forward || end is not { } back)
        {
            return null;
        }

        var edge = new OffsetEdge(forward, new(-back.X, -back.Y));
        return edge.Add(from, segment, distance, 0) ? edge : null;
    }

    /// <summary>Trims this edge and the next one where they cross; false when they do not cross.</summary>
    public bool TrimAgainst(OffsetEdge next)
    {
        for (var i = _parts.Count - 1; i >= 0; i--)
        {
            var (from, to) = _parts[i];
            for (var j = 0; j < next._parts.Count; j++)
            {
                var (otherFrom, other) = next._parts[j];
                if (to.Crossing(from, other, otherFrom) is var (on, onOther))
                {
                    var kept = to.SplitAt(from, on).Before;
                    _parts.RemoveRange(i, _parts.Count - i);
                    _parts.Add((from, kept));
                    next._parts.RemoveRange(0, j + 1);
                    next._parts.Insert(0, (kept.End, other.SplitAt(otherFrom, onOther).After));
                    return true;
                }
            }
        }

        return false;
    }

    private static Point? Heading(Point from, Point first, Point second, Point third)
    {
        foreach (var to in (ReadOnlySpan<Point>)[first, second, third])
        {
            var (x, y) = (to.X - from.X, to.Y - from.Y);
            var length = Math.Sqrt(x * x + y * y);
            if (length > 1e-9)
            {
                return new(x / length, y / length);
            }
        }

        return null;
    }

    private bool Add(Point from, Segment segment, double distance, int depth)
    {
        if (segment.IsLine)
        {
            _parts.Add((Moved(from, StartHeading), Segment.Line(Moved(segment.End, StartHeading))));
            return true;
        }

        if (Parallel(from, segment, distance) is not var (start, moved))
        {
            return false;
        }

        if (Strays(from, segment, distance, start, moved) is not { } strays)
        {
            return false;
        }

        if (!strays)
        {
            _parts.Add((start, moved));
            return true;
        }

        var (before, after) = segment.SplitAt(from, 0.5);
        return depth < DeepestSplit && Add(from, before, distance, depth + 1) && Add(before.End, after, distance, depth + 1);

        Point Moved(Point point, Point heading) => new(point.X + distance * heading.Y, point.Y - distance * heading.X);
    }

    /// <summary>
    /// A cubic that starts and ends where the parallel curve does and in the same directions. Its control lengths are such that it meets
    /// the parallel curve in the middle as well, which turns a circular arc into the arc with the larger radius; where the curve is too
    /// straight to determine them, they grow with the parallel curve's derivative: 1 + distance times curvature.
    /// </summary>
    private static (Point Start, Segment Moved)? Parallel(Point from, Segment segment, double distance)
    {
        if (Place(from, segment, 0, distance) is not var (start, startGrowth)
            || Place(from, segment, 0.5, distance) is not var (middle, _)
            || Place(from, segment, 1, distance) is not var (end, endGrowth))
        {
            return null;
        }

        var (outX, outY) = (segment.Control1.X - from.X, segment.Control1.Y - from.Y);
        var (inX, inY) = (segment.Control2.X - segment.End.X, segment.Control2.Y - segment.End.Y);
        var across = outX * inY - outY * inX;
        if (Math.Abs(across) > 0.1 * Math.Sqrt((outX * outX + outY * outY) * (inX * inX + inY * inY)))
        {
            // The middle of a cubic is (start + 3 control1 + 3 control2 + end) / 8.
            var (x, y) = ((8 * middle.X - 4 * start.X - 4 * end.X) / 3, (8 * middle.Y - 4 * start.Y - 4 * end.Y) / 3);
            (startGrowth, endGrowth) = ((x * inY - y * inX) / across, (outX * y - outY * x) / across);
        }

        return (start, Segment.Curve(
            new(start.X + outX * startGrowth, start.Y + outY * startGrowth),
            new(end.X + inX * endGrowth, end.Y + inY * endGrowth),
            end));
    }

    /// <summary>Whether the moved curve is too far off at any of seven places; null where there is no parallel curve.</summary>
    private static bool? Strays(Point from, Segment segment, double distance, Point start, Segment moved)
    {
        var worst = 0.0;
        for (var i = 1; i < 8; i++)
        {
            var t = i / 8.0;
            if (Place(from, segment, t, distance) is not var (wanted, _))
            {
                return null;
            }

            // Only the distance across the curve counts; along it, being early or late is only a second-order error.
            var (got, slope) = (moved.PointAt(start, t), segment.SlopeAt(from, t));
            var speed = Math.Sqrt(slope.X * slope.X + slope.Y * slope.Y);
            var (x, y) = (got.X - wanted.X, got.Y - wanted.Y);
            var across = Math.Abs(x * slope.Y - y * slope.X) / speed;
            var along = Math.Abs(x * slope.X + y * slope.Y) / speed;
            worst = Math.Max(worst, across + along * along / Math.Abs(distance));
        }

        return worst > Allowed + AllowedOfDistance * Math.Abs(distance);
    }

    /// <summary>
    /// A place on the parallel curve and the factor by which that curve is longer there; null where the factor is not positive.
    /// </summary>
    private static (Point At, double Growth)? Place(Point from, Segment segment, double t, double distance)
    {
        var (point, slope, bend) = (segment.PointAt(from, t), segment.SlopeAt(from, t), segment.BendAt(from, t));
        var speed = Math.Sqrt(slope.X * slope.X + slope.Y * slope.Y);
        var growth = 1 + distance * (slope.X * bend.Y - slope.Y * bend.X) / (speed * speed * speed);
        return growth > 1e-6 && double.IsFinite(growth)
            ? (new(point.X + distance * slope.Y / speed, point.Y - distance * slope.X / speed), growth)
            : null;
    }
}
