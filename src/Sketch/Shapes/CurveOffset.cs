using System.Collections.Immutable;

namespace Sketch.Shapes;

/// <summary>
/// Moves a contour edge by edge, so that lines stay lines and curves stay curves. Where that is not possible in one pass (edges that
/// vanish, parts that collide) it gives up, and the geometry library does it with chords.
/// </summary>
internal static class CurveOffset
{
    /// <summary>Sine of the angle up to which two edges count as one smooth line.</summary>
    private const double Smooth = 1e-6;

    /// <summary>
    /// The contour moved to its left, which is outwards on an outer contour that runs clockwise as seen, and into the hole on a hole that
    /// runs the other way; null when it gives up. The caller must check that the result does not cross itself.
    /// </summary>
    public static Contour? Of(Contour contour, double distance)
    {
        if (contour.AsRectangle() is { } box)
        {
            return Rectangle(box, contour.SignedArea > 0 ? distance : -distance, contour.SignedArea > 0);
        }

        var edges = new List<OffsetEdge>();
        var corners = new List<Point>();
        var from = contour.Start;
        foreach (var segment in Closed(contour))
        {
            if (OffsetEdge.Of(from, segment, distance) is not { } edge)
            {
                return null;
            }

            edges.Add(edge);
            corners.Add(segment.End);
            from = segment.End;
        }

        return edges.Count > 1 ? Join(edges, corners, distance) : null;
    }

    private static Contour? Rectangle(Bounds box, double distance, bool clockwise)
    {
        var grown = box.Grow(distance);
        if (grown is not { Width: > 0, Height: > 0 })
        {
            return null;
        }

        var contour = ContourPen.Polygon(
            new(grown.Left, grown.Top), new(grown.Right, grown.Top), new(grown.Right, grown.Bottom), new(grown.Left, grown.Bottom));
        return clockwise ? contour : contour.Reverse();
    }

    private static IEnumerable<Segment> Closed(Contour contour)
    {
        var at = contour.Start;
        foreach (var segment in contour.Segments.Append(Segment.Line(contour.Start)))
        {
            if (!IsPoint(at, segment))
            {
                yield return segment;
                at = segment.End;
            }
        }

        static bool IsPoint(Point at, Segment s) => Near(at, s.End) && Near(at, s.Control1) && Near(at, s.Control2);

        static bool Near(Point a, Point b) => Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y) < 1e-9;
    }

    /// <summary>Rounds the corners that open and trims the edges at those that close.</summary>
    private static Contour? Join(List<OffsetEdge> edges, List<Point> corners, double distance)
    {
        var arcs = new List<Segment>[edges.Count];
        for (var i = 0; i < edges.Count; i++)
        {
            var (edge, next) = (edges[i], edges[(i + 1) % edges.Count]);
            var (a, b) = (edge.EndHeading, next.StartHeading);
            var (sine, cosine) = (a.X * b.Y - a.Y * b.X, a.X * b.X + a.Y * b.Y);
            arcs[i] = [];
            if (Math.Abs(sine) < Smooth && cosine > 0)
            {
                continue;
            }

            // Where an edge turns straight back, only the edges themselves distinguish a spike from a cleft.
            var turnsBack = Math.Abs(sine) < Smooth;
            var opens = sine * distance > 0;
            if ((turnsBack || !opens) && edge.TrimAgainst(next))
            {
                continue;
            }

            if (!turnsBack && !opens)
            {
                return null;
            }

            var angle = Math.Abs(Math.Atan2(sine, cosine)) * Math.Sign(distance);
            arcs[i] = Arc(corners[i], edge.End, next.Start, angle);
        }

        var segments = ImmutableArray.CreateBuilder<Segment>();
        for (var i = 0; i < edges.Count; i++)
        {
            segments.AddRange(edges[i].Segments);
            segments.AddRange(arcs[i]);
        }

        return new(edges[0].Start, segments.ToImmutable());
    }

    /// <summary>
    /// A circular arc as cubics of at most a quarter; control length 4/3 tan(angle/4) times the radius (standard formula).
    /// </summary>
    private static List<Segment> Arc(Point centre, Point from, Point to, double angle)
    {
        var parts = (int)Math.Ceiling(Math.Abs(angle) / (Math.PI / 2) - 1e-9);
        var step = angle / parts;
        var reach = 4.0 / 3 * Math.Tan(step / 4);
        var arc = new List<Segment>(parts);
        var (x, y) = (from.X - centre.X, from.Y - centre.Y);
        for (var i = 1; i <= parts; i++)
        {
            var (sin, cos) = Math.SinCos(step);
            var (nextX, nextY) = (cos * x - sin * y, sin * x + cos * y);
            var end = i == parts ? to : new(centre.X + nextX, centre.Y + nextY);
            arc.Add(Segment.Curve(
                new(centre.X + x - reach * y, centre.Y + y + reach * x),
                new(centre.X + nextX + reach * nextY, centre.Y + nextY - reach * nextX),
                end));
            (x, y) = (nextX, nextY);
        }

        return arc;
    }
}
