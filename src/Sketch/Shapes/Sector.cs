namespace Sketch.Shapes;

/// <summary>The part of a box that an arc about its middle covers.</summary>
internal static class Sector
{
    /// <summary>Degrees between the corners of the sector far outside the box.</summary>
    private const double Step = 30;

    /// <summary>
    /// What lies within half of the degrees to both sides of the direction upwards, or downwards for negative degrees, seen from the middle
    /// of the box; it reaches far beyond the box. From a full circle on it is all round.
    /// </summary>
    public static Outline Of(Bounds box, double degrees)
    {
        var span = Math.Min(360, Math.Abs(degrees));
        var radius = 2 * (box.Width + box.Height);
        var steps = (int)Math.Ceiling(span / Step);
        var points = new List<Point>();
        if (span < 360)
        {
            points.Add(box.Centre);
        }

        for (var i = 0; i <= (span < 360 ? steps : steps - 1); i++)
        {
            var (sin, cos) = Math.SinCos((-span / 2 + span * i / steps) * Math.PI / 180);
            points.Add(degrees < 0 ? new(box.Centre.X - radius * sin, box.Centre.Y + radius * cos)
                : new(box.Centre.X + radius * sin, box.Centre.Y - radius * cos));
        }

        return new([ContourPen.Polygon([.. points])]);
    }
}
