namespace Sketch.Shapes;

public sealed partial record Contour
{
    /// <summary>Limits the number of chords even for a curve a kilometre long.</summary>
    private const int MostChords = 2_000;

    /// <summary>The corners of a polygon that deviates from the line by at most the tolerance; the start is listed once.</summary>
    public List<Point> Flatten(double tolerance)
    {
        var points = new List<Point> { Start };
        var from = Start;
        foreach (var segment in Segments)
        {
            var chords = segment.IsLine ? 1 : Chords(from, segment, tolerance);
            for (var i = 1; i < chords; i++)
            {
                points.Add(segment.PointAt(from, (double)i / chords));
            }

            points.Add(segment.End);
            from = segment.End;
        }

        if (points.Count > 1 && points[^1] == Start)
        {
            points.RemoveAt(points.Count - 1);
        }

        return points;
    }

    /// <summary>
    /// Whether the line turns only to the right, once round, as a clockwise convex line does; dents of less than a hundredth of a
    /// millimetre are ignored.
    /// </summary>
    internal bool IsConvex()
    {
        var points = Flatten(0.01);
        var turned = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b, c) = (points[i], points[(i + 1) % points.Count], points[(i + 2) % points.Count]);
            var (inX, inY, outX, outY) = (b.X - a.X, b.Y - a.Y, c.X - b.X, c.Y - b.Y);
            var turn = Math.Atan2(inX * outY - inY * outX, inX * outX + inY * outY);
            if (turn < -1e-9)
            {
                return false;
            }

            turned += turn;
        }

        return turned < 3 * Math.PI;
    }

    /// <summary>The ends and the middles of the segments.</summary>
    internal IEnumerable<Point> Samples()
    {
        var from = Start;
        foreach (var segment in Segments)
        {
            yield return segment.PointAt(from, 0.5);
            yield return segment.End;
            from = segment.End;
        }
    }

    /// <summary>
    /// A chord over a parameter range h of a curve deviates by at most h²/8 of its largest second derivative, which for a cubic is 6 times
    /// the larger second difference of its control points (interpolation error bound).
    /// </summary>
    private static int Chords(Point from, Segment curve, double tolerance)
    {
        var first = Hypotenuse(from.X - 2 * curve.Control1.X + curve.Control2.X, from.Y - 2 * curve.Control1.Y + curve.Control2.Y);
        var second = Hypotenuse(curve.Control1.X - 2 * curve.Control2.X + curve.End.X, curve.Control1.Y - 2 * curve.Control2.Y
            + curve.End.Y);
        var chords = Math.Ceiling(Math.Sqrt(0.75 * Math.Max(first, second) / tolerance));
        return (int)Math.Clamp(chords, 1, MostChords);
    }

    private static double Hypotenuse(double x, double y) => Math.Sqrt(x * x + y * y);
}
