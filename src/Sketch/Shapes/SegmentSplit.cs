namespace Sketch.Shapes;

public readonly partial record struct Segment
{
    /// <summary>The part from the start to a parameter t and the part from there to the end (de Casteljau's construction).</summary>
    internal (Segment Before, Segment After) SplitAt(Point from, double t)
    {
        if (IsLine)
        {
            return (Line(Mix(from, End, t)), this);
        }

        var (a, b, c) = (Mix(from, Control1, t), Mix(Control1, Control2, t), Mix(Control2, End, t));
        var (d, e) = (Mix(a, b, t), Mix(b, c, t));
        var middle = Mix(d, e, t);
        return (Curve(a, d, middle), Curve(e, c, End));
    }

    /// <summary>
    /// The crossing of two segments that lies latest on this one and, of those, earliest on the other, as parameters; null when
    /// they do not cross. Curves are searched by chords, then refined by Newton's method.
    /// </summary>
    internal (double On, double OnOther)? Crossing(Point from, Segment other, Point otherFrom)
    {
        if (!BoundsFrom(from).Grow(Slack).Overlaps(other.BoundsFrom(otherFrom).Grow(Slack)))
        {
            return null;
        }

        const int Curved = 16;
        var (chords, otherChords) = (IsLine ? 1 : Curved, other.IsLine ? 1 : Curved);
        for (var i = chords - 1; i >= 0; i--)
        {
            var (a, b) = (PointAt(from, (double)i / chords), PointAt(from, (i + 1.0) / chords));
            for (var j = 0; j < otherChords; j++)
            {
                var (c, d) = (other.PointAt(otherFrom, (double)j / otherChords), other.PointAt(otherFrom, (j + 1.0) / otherChords));
                if (CrossingOfLines(a, b, c, d) is var (t, u)
                    && Refine(from, other, otherFrom, (i + t) / chords, (j + u) / otherChords) is { } found)
                {
                    return found;
                }
            }
        }

        return null;
    }

    /// <summary>Millimetres by which crossings at the very ends of segments may miss.</summary>
    private const double Slack = 1e-9;

    private static (double, double)? CrossingOfLines(Point a, Point b, Point c, Point d)
    {
        var (abX, abY, cdX, cdY) = (b.X - a.X, b.Y - a.Y, d.X - c.X, d.Y - c.Y);
        var across = abX * cdY - abY * cdX;
        if (across == 0)
        {
            return null;
        }

        var t = ((c.X - a.X) * cdY - (c.Y - a.Y) * cdX) / across;
        var u = ((c.X - a.X) * abY - (c.Y - a.Y) * abX) / across;
        return t is >= -Slack and <= 1 + Slack && u is >= -Slack and <= 1 + Slack ? (Math.Clamp(t, 0, 1), Math.Clamp(u, 0, 1)) : null;
    }

    private (double, double)? Refine(Point from, Segment other, Point otherFrom, double t, double u)
    {
        for (var round = 0; round < 12; round++)
        {
            var (a, b) = (PointAt(from, t), other.PointAt(otherFrom, u));
            var (missX, missY) = (b.X - a.X, b.Y - a.Y);
            if (Math.Abs(missX) + Math.Abs(missY) < 1e-7)
            {
                return (t, u);
            }

            var (p, q) = (SlopeAt(from, t), other.SlopeAt(otherFrom, u));
            var across = p.X * q.Y - p.Y * q.X;
            t = Math.Clamp(t + (missX * q.Y - missY * q.X) / across, 0, 1);
            u = Math.Clamp(u + (missX * p.Y - missY * p.X) / across, 0, 1);
            if (double.IsNaN(t) || double.IsNaN(u))
            {
                return null;
            }
        }

        return null;
    }

    private static Point Mix(Point a, Point b, double t) => new(a.X + (b.X - a.X) * t, a.Y + (b.Y - a.Y) * t);
}
