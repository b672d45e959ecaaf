using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// Clips lines at the edges of a tile, so that the file contains nothing outside, as cutting machines do not support clip paths.
/// </summary>
internal static class LineClipping
{
    /// <summary>How far the chords of a curve may deviate, in millimetres.</summary>
    private const double Tolerance = 0.002;

    // Tiles are computed apart from the whole, so an edge of it may lie a rounding error beyond them.
    private const double Rounding = 1e-7;

    /// <summary>The parts of a line within a box: contours that lie wholly in it, unchanged, and the open parts of the others.</summary>
    public static IEnumerable<TemplateLine> Clip(TemplateLine line, Bounds box)
    {
        var wide = box.Grow(Rounding);
        if (wide.Covers(line.Bounds))
        {
            return [line];
        }

        var whole = ImmutableArray.CreateBuilder<Contour>();
        var parts = ImmutableArray.CreateBuilder<Contour>();
        foreach (var contour in line.Contours)
        {
            if (wide.Covers(new Outline([contour]).Bounds))
            {
                whole.Add(contour);
                continue;
            }

            var points = contour.Flatten(Tolerance);
            if (line.IsClosed)
            {
                points.Add(points[0]);
            }

            AddWithin(points, wide, parts);
        }

        TemplateLine[] clipped =
            [line with { Contours = whole.ToImmutable() }, line with { Contours = parts.ToImmutable(), IsClosed = false }];
        return clipped.Where(l => !l.Contours.IsEmpty);
    }

    private static void AddWithin(List<Point> points, Bounds box, ImmutableArray<Contour>.Builder parts)
    {
        var run = new List<Point>();
        for (var i = 1; i < points.Count; i++)
        {
            if (Within(points[i - 1], points[i], box) is not var (from, to))
            {
                continue;
            }

            if (run.Count == 0 || run[^1] != from)
            {
                End();
                run.Add(from);
            }

            run.Add(to);
        }

        End();

        void End()
        {
            if (run.Count > 1)
            {
                parts.Add(new(run[0], [.. run.Skip(1).Select(Segment.Line)]));
            }

            run.Clear();
        }
    }

    /// <summary>The part of a segment within a box (Liang and Barsky, 1984).</summary>
    private static (Point From, Point To)? Within(Point from, Point to, Bounds box)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var (enter, leave) = (0.0, 1.0);
        foreach (var (towards, room) in (ReadOnlySpan<(double, double)>)
            [(-dx, from.X - box.Left), (dx, box.Right - from.X), (-dy, from.Y - box.Top), (dy, box.Bottom - from.Y)])
        {
            if (towards == 0)
            {
                if (room < 0)
                {
                    return null;
                }

                continue;
            }

            var share = room / towards;
            (enter, leave) = towards < 0 ? (Math.Max(enter, share), leave) : (enter, Math.Min(leave, share));
        }

        return enter < leave ? (At(enter, from), At(leave, to)) : null;

        Point At(double share, Point end) => share is 0 or 1 ? end : new(from.X + share * dx, from.Y + share * dy);
    }
}
