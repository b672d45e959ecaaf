using System.Collections.Immutable;

namespace Sketch.Shapes;

/// <summary>Draws one contour, segment by segment.</summary>
internal sealed class ContourPen
{
    /// <summary>
    /// Control length of a quarter circle of radius 1: 4/3 (√2 - 1). The cubic then touches the circle at both ends and in the middle and
    /// lies at most 0.027 % of the radius outside it (standard approximation).
    /// </summary>
    public const double Kappa = 0.5522847498307936;

    private readonly ImmutableArray<Segment>.Builder _segments = ImmutableArray.CreateBuilder<Segment>();

    private readonly Point _start;

    /// <summary>Puts the pen down.</summary>
    public ContourPen(Point start)
    {
        _start = start;
        At = start;
    }

    /// <summary>The pen's position.</summary>
    public Point At { get; private set; }

    /// <summary>A straight line.</summary>
    public ContourPen Line(double x, double y) => Add(Segment.Line(new(x, y)));

    /// <summary>A cubic curve.</summary>
    public ContourPen Curve(Point control1, Point control2, Point end) => Add(Segment.Curve(control1, control2, end));

    /// <summary>
    /// A quarter of a circle or ellipse to <paramref name="end"/>; the tangents of both ends meet at <paramref name="corner"/>.
    /// </summary>
    public ContourPen Quarter(Point corner, Point end) => Curve(Between(At, corner, Kappa), Between(end, corner, Kappa), end);

    /// <summary>The contour drawn; a straight line closes it if the pen is not back at the start.</summary>
    public Contour Close() => new(_start, _segments.ToImmutable());

    /// <summary>The straight-edged contour through the points.</summary>
    public static Contour Polygon(params ReadOnlySpan<Point> points)
    {
        var pen = new ContourPen(points[0]);
        foreach (var point in points[1..])
        {
            pen.Add(Segment.Line(point));
        }

        return pen.Close();
    }

    /// <summary>The ellipse that touches the box on all sides, clockwise from the top.</summary>
    public static Contour Ellipse(Bounds box)
    {
        var (x, y) = (box.Centre.X, box.Centre.Y);
        return new ContourPen(new(x, box.Top))
            .Quarter(new(box.Right, box.Top), new(box.Right, y))
            .Quarter(new(box.Right, box.Bottom), new(x, box.Bottom))
            .Quarter(new(box.Left, box.Bottom), new(box.Left, y))
            .Quarter(new(box.Left, box.Top), new(x, box.Top))
            .Close();
    }

    private static Point Between(Point from, Point to, double share) =>
        new(from.X + (to.X - from.X) * share, from.Y + (to.Y - from.Y) * share);

    private ContourPen Add(Segment segment)
    {
        _segments.Add(segment);
        At = segment.End;
        return this;
    }
}
