using System.Collections.Immutable;

namespace Sketch.Shapes;

/// <summary>Dashes inside the edge of an outline, like a line of stitches.</summary>
public static class Stitching
{
    /// <summary>The usual length of a stitch in millimetres, and that of the gap after it (common practice, no source).</summary>
    private const double Stitch = 2.2, Gap = 1.5;

    /// <summary>Limits the stitches of one contour.</summary>
    private const int MostStitches = 400;

    private const double Tolerance = 0.05;

    /// <summary>
    /// The stitches of an outline, each an open line, at a distance in millimetres inside its edge and round its holes. On each contour
    /// they are equally long, as near to 2.2 mm with gaps of 1.5 mm as a whole number of them allows; none where no room is left.
    /// </summary>
    public static ImmutableArray<Contour> Of(Outline outline, double distance)
    {
        var stitches = ImmutableArray.CreateBuilder<Contour>();
        foreach (var contour in outline.Grow(-distance).Contours)
        {
            var points = contour.Flatten(Tolerance);
            points.Add(points[0]);
            Add(stitches, points);
        }

        return stitches.ToImmutable();
    }

    private static void Add(ImmutableArray<Contour>.Builder stitches, List<Point> line)
    {
        var length = 0.0;
        for (var i = 1; i < line.Count; i++)
        {
            length += Distance(line[i - 1], line[i]);
        }

        var count = (int)Math.Clamp(Math.Round(length / (Stitch + Gap)), 1, MostStitches);
        var pitch = length / count;
        var (share, at, walked) = (Stitch / (Stitch + Gap), 1, 0.0);
        for (var i = 0; i < count; i++)
        {
            var (from, to) = (i * pitch, (i + share) * pitch);
            var start = PointAt(from);
            var ends = ImmutableArray.CreateBuilder<Segment>();
            while (at < line.Count && walked + Distance(line[at - 1], line[at]) < to)
            {
                walked += Distance(line[at - 1], line[at]);
                ends.Add(Segment.Line(line[at]));
                at++;
            }

            ends.Add(Segment.Line(PointAt(to)));
            stitches.Add(new(start, ends.ToImmutable()));
        }

        Point PointAt(double distance)
        {
            while (at < line.Count - 1 && walked + Distance(line[at - 1], line[at]) < distance)
            {
                walked += Distance(line[at - 1], line[at]);
                at++;
            }

            var part = Math.Clamp((distance - walked) / Math.Max(1e-12, Distance(line[at - 1], line[at])), 0, 1);
            return new(line[at - 1].X + (line[at].X - line[at - 1].X) * part, line[at - 1].Y + (line[at].Y - line[at - 1].Y) * part);
        }
    }

    private static double Distance(Point a, Point b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
