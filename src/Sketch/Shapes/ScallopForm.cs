namespace Sketch.Shapes;

/// <summary>Scalloped edges: half-round bumps with sharp corners between them, as wide and high as the box over the tips.</summary>
internal static class ScallopForm
{
    /// <summary>
    /// Bumps round a circle: about 1/4 in each at 2 in across; a multiple of four, so that a tip touches each side of the box.
    /// </summary>
    private const int Round = 20;

    /// <summary>Bumps along the shorter side of a rectangle.</summary>
    private const int Short = 8;

    /// <summary>Limits the outline of a strip of any length.</summary>
    private const int Most = 400;

    /// <summary>
    /// Half circles on the sides of a regular polygon with circumradius c: a tip lies c (cos π/n + sin π/n) from the middle.
    /// </summary>
    public static Contour Circle(Bounds box)
    {
        var half = Math.PI / Round;
        var radius = Math.Min(box.Width, box.Height) / 2;
        var inner = radius / (Math.Cos(half) + Math.Sin(half));
        var bump = inner * Math.Sin(half);
        var pen = new ContourPen(Polar(inner, -half));
        for (var i = 0; i < Round; i++)
        {
            var outward = 2 * half * i;
            var end = i == Round - 1 ? Polar(inner, -half) : Polar(inner, outward + half);
            pen.Quarter(Raised(pen.At, outward), Polar(radius, outward)).Quarter(Raised(end, outward), end);
        }

        return pen.Close();

        // Clockwise from the top.
        Point Polar(double distance, double angle) =>
            new(box.Centre.X + distance * Math.Sin(angle), box.Centre.Y - distance * Math.Cos(angle));

        Point Raised(Point foot, double outward) => new(foot.X + bump * Math.Sin(outward), foot.Y - bump * Math.Cos(outward));
    }

    /// <summary>
    /// Three quarters of a circle round each corner of an inner rectangle; between them bumps of equal width, as close to half circles as
    /// the side allows.
    /// </summary>
    public static Contour Rectangle(Bounds box)
    {
        var radius = Math.Min(box.Width, box.Height) / (2 * Short);
        var (left, top, right, bottom) = box.Grow(-radius);
        var pen = new ContourPen(new(left, top + radius));
        Corner(new(left, top), new(-1, 0), new(0, -1));
        Side(new(right - radius, top), new(0, -1));
        Corner(new(right, top), new(0, -1), new(1, 0));
        Side(new(right, bottom - radius), new(1, 0));
        Corner(new(right, bottom), new(1, 0), new(0, 1));
        Side(new(left + radius, bottom), new(0, 1));
        Corner(new(left, bottom), new(0, 1), new(-1, 0));
        Side(new(left, top + radius), new(-1, 0));
        return pen.Close();

        // From the side that faces `before` round to the side that faces `after`.
        void Corner(Point centre, Point before, Point after)
        {
            pen.Quarter(Offset(pen.At, before, radius), Offset(centre, before, radius));
            pen.Quarter(Offset(Offset(centre, before, radius), after, radius), Offset(centre, after, radius));
            var end = Offset(centre, before, -radius);
            pen.Quarter(Offset(end, after, radius), end);
        }

        void Side(Point end, Point outward)
        {
            var start = pen.At;
            var length = Math.Abs(end.X - start.X) + Math.Abs(end.Y - start.Y);
            var bumps = radius > 0 ? Math.Clamp((int)Math.Round(Math.Min(length / (2 * radius), Most)), 1, Most) : 1;
            for (var i = 1; i <= bumps; i++)
            {
                var from = pen.At;
                var to = i == bumps ? end : Part(start, end, i, bumps);
                pen.Quarter(Offset(from, outward, radius), Offset(Part(from, to, 1, 2), outward, radius));
                pen.Quarter(Offset(to, outward, radius), to);
            }
        }
    }

    private static Point Offset(Point from, Point direction, double distance) =>
        new(from.X + direction.X * distance, from.Y + direction.Y * distance);

    private static Point Part(Point from, Point to, int part, int of) =>
        new(from.X + (to.X - from.X) * part / of, from.Y + (to.Y - from.Y) * part / of);
}
