namespace Sketch.Shapes;

/// <summary>A ticket: a rectangle with a quarter of a circle cut out of each corner, about the corner of the box.</summary>
internal static class TicketForm
{
    public static Contour Draw(Bounds box, double radius)
    {
        var (left, top, right, bottom) = box;
        return new ContourPen(new(left + radius, top))
            .Line(right - radius, top).Quarter(new(right - radius, top + radius), new(right, top + radius))
            .Line(right, bottom - radius).Quarter(new(right - radius, bottom - radius), new(right - radius, bottom))
            .Line(left + radius, bottom).Quarter(new(left + radius, bottom - radius), new(left, bottom - radius))
            .Line(left, top + radius).Quarter(new(left + radius, top + radius), new(left + radius, top))
            .Close();
    }
}
