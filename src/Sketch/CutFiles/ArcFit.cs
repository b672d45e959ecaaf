using Sketch.Shapes;

namespace Sketch.CutFiles;

/// <summary>A corner of a line made of straight lines and arcs.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Bulge">
/// The tangent of a quarter of the angle of the arc to the next corner, positive where it turns from the x axis to the y axis; 0 for a
/// straight line.
/// </param>
internal readonly record struct ArcVertex(Point At, double Bulge);

/// <summary>
/// Replaces the curves of a line by arcs, which machines follow smoothly. Each curve becomes two arcs that meet its ends in its own
/// directions (a biarc); where these stray too far, the curve is halved.
/// </summary>
internal static class ArcFit
{
    private const int MostHalvings = 12;
    private const int Samples = 16;

    /// <summary>The corners of a line; a closed one does not repeat its start.</summary>
    /// <param name="line">The line.</param>
    /// <param name="isClosed">Whether it returns to its start.</param>
    /// <param name="tolerance">How far an arc may lie from its curve, in the unit of the line.</param>
    public static List<ArcVertex> Of(Contour line, bool isClosed, double tolerance)
    {
        var corners = new List<ArcVertex>();
        var from = line.Start;
        foreach (var segment in line.Segments)
        {
            if (!segment.IsLine)
            {
                Add(corners, from, segment, tolerance, 0);
            }
            else if (!IsSame(from, segment.End))
            {
                corners.Add(new(from, 0));
            }

            from = segment.End;
        }

        if (!isClosed || !IsSame(from, line.Start))
        {
            corners.Add(new(from, 0));
        }

        return corners;
    }

    private static bool IsSame(Point a, Point b) => Math.Abs(a.X - b.X) < 1e-6 && Math.Abs(a.Y - b.Y) < 1e-6;

    private static void Add(List<ArcVertex> corners, Point from, Segment curve, double tolerance, int halvings)
    {
        if (Biarc.Of(from, curve) is { } arcs && arcs.Strays(from, curve) <= tolerance)
        {
            corners.Add(new(from, arcs.FirstBulge));
            corners.Add(new(arcs.Joint, arcs.SecondBulge));
        }
        else if (halvings == MostHalvings)
        {
            corners.Add(new(from, 0));
        }
        else
        {
            var (before, after) = curve.SplitAt(from, 0.5);
            Add(corners, from, before, tolerance, halvings + 1);
            Add(corners, before.End, after, tolerance, halvings + 1);
        }
    }

    /// <summary>Two arcs that touch each other at a joint.</summary>
    private readonly record struct Biarc(Point Joint, Point Along, double FirstBulge, double SecondBulge)
    {
        // An arc of more than a quarter of a circle is halved rather than trusted.
        private const double MostBulge = 0.5;

        public static Biarc? Of(Point from, Segment curve)
        {
            var to = curve.End;
            var start = Direction(from, curve.Control1, curve.Control2, to);
            var back = Direction(to, curve.Control2, curve.Control1, from);
            Point end = new(-back.X, -back.Y);
            var chord = Minus(to, from);
            var (square, ahead) = (Dot(chord, chord), Dot(chord, new(start.X + end.X, start.Y + end.Y)));
            if (square == 0)
            {
                return null;
            }

            // The joint lies midway between two points at an equal distance along both tangents.
            var turn = 1 - Dot(start, end);
            var reach = turn > 1e-9 ? (-ahead + Math.Sqrt(ahead * ahead + 2 * turn * square)) / (2 * turn) : square / (2 * ahead);
            if (!(reach > 0) || double.IsInfinity(reach))
            {
                return null;
            }

            Point a = new(from.X + reach * start.X, from.Y + reach * start.Y), b = new(to.X - reach * end.X, to.Y - reach * end.Y);
            Point joint = new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
            var (first, second) = (Bulge(start, Minus(joint, from)), Bulge(Minus(to, joint), end));
            return Math.Max(Math.Abs(first), Math.Abs(second)) > MostBulge ? null : new(joint, Minus(b, a), first, second);
        }

        /// <summary>How far the curve lies from the arcs, at most.</summary>
        public double Strays(Point from, Segment curve)
        {
            var most = 0.0;
            for (var i = 1; i < Samples; i++)
            {
                var point = curve.PointAt(from, (double)i / Samples);
                most = Math.Max(most, Dot(Minus(point, Joint), Along) < 0
                    ? Distance(point, from, Joint, FirstBulge) : Distance(point, Joint, curve.End, SecondBulge));
            }

            return most;
        }

        private static double Distance(Point point, Point from, Point to, double bulge)
        {
            var (chord, toPoint) = (Minus(to, from), Minus(point, from));
            var length = Math.Sqrt(Dot(chord, chord));
            if (Math.Abs(bulge) < 1e-9)
            {
                return Math.Abs(Cross(chord, toPoint)) / length;
            }

            var radius = length * (1 + bulge * bulge) / (4 * bulge);
            var toCentre = length * (1 - bulge * bulge) / (4 * bulge);
            Point centre = new((from.X + to.X) / 2 - toCentre * chord.Y / length, (from.Y + to.Y) / 2 + toCentre * chord.X / length);
            var outward = Minus(point, centre);
            return Math.Abs(Math.Sqrt(Dot(outward, outward)) - Math.Abs(radius));
        }

        /// <summary>The direction to the first point that lies elsewhere.</summary>
        private static Point Direction(Point from, params ReadOnlySpan<Point> towards)
        {
            foreach (var to in towards)
            {
                var way = Minus(to, from);
                var length = Math.Sqrt(Dot(way, way));
                if (length > 1e-9)
                {
                    return new(way.X / length, way.Y / length);
                }
            }

            return default;
        }

        private static double Bulge(Point from, Point to) => Math.Tan(Math.Atan2(Cross(from, to), Dot(from, to)) / 2);

        private static Point Minus(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

        private static double Dot(Point a, Point b) => a.X * b.X + a.Y * b.Y;

        private static double Cross(Point a, Point b) => a.X * b.Y - a.Y * b.X;
    }
}
