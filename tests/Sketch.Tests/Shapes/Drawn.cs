using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Tests.Shapes;

/// <summary>Builds outlines for tests, in millimetres.</summary>
internal static class Drawn
{
    private const int Steps = 40;

    public static readonly ShapeStyle Plain = ShapeStyle.Plain;

    public static Rect Box(double left, double top, double width, double height) => new(
        Length.NearestMillimetres(left), Length.NearestMillimetres(top), Length.NearestMillimetres(width),
            Length.NearestMillimetres(height));

    public static Outline Rectangle(double left, double top, double width, double height) =>
        Outline.Rectangle(Box(left, top, width, height));

    public static Outline Shape(Shape shape, double width, double height, ShapeStyle? style = null) =>
        ShapeOutline.Build(shape, style ?? Plain, Box(0, 0, width, height));

    public static Outline Polygon(params Point[] corners) =>
        new([new Contour(corners[0], [.. corners.Skip(1).Select(Segment.Line)])]);

    /// <summary>Points on the line, computed without the code under test: 40 on each curve.</summary>
    public static List<Point> Sample(Contour contour)
    {
        var points = new List<Point> { contour.Start };
        foreach (var segment in contour.Segments)
        {
            var from = points[^1];
            for (var i = 1; i < Steps && !segment.IsLine; i++)
            {
                var t = (double)i / Steps;
                double At(double a, double b, double c, double d) =>
                    a + t * (3 * (b - a) + t * (3 * (a - 2 * b + c) + t * (d - a + 3 * (b - c))));
                points.Add(new(
                    At(from.X, segment.Control1.X, segment.Control2.X, segment.End.X),
                    At(from.Y, segment.Control1.Y, segment.Control2.Y, segment.End.Y)));
            }

            points.Add(segment.End);
        }

        return points;
    }

    /// <summary>Area of the sampled line by the shoelace formula: positive where it runs clockwise as seen.</summary>
    public static double SampledArea(Contour contour)
    {
        var points = Sample(contour);
        return Enumerable.Range(0, points.Count).Sum(i =>
            points[i].X * points[(i + 1) % points.Count].Y - points[(i + 1) % points.Count].X * points[i].Y) / 2;
    }

    /// <summary>Length of the sampled line.</summary>
    public static double SampledLength(Contour contour)
    {
        var points = Sample(contour);
        return Enumerable.Range(0, points.Count).Sum(i => Distance(points[i], points[(i + 1) % points.Count]));
    }

    public static double Distance(Point a, Point b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
