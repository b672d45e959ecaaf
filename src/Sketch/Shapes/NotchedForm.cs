namespace Sketch.Shapes;

/// <summary>A rectangle with a square cut out of each corner.</summary>
internal static class NotchedForm
{
    public static Contour Draw(Bounds box, double side)
    {
        var (left, top, right, bottom) = box;
        return ContourPen.Polygon(
            new(left + side, top), new(right - side, top), new(right - side, top + side), new(right, top + side),
            new(right, bottom - side), new(right - side, bottom - side), new(right - side, bottom), new(left + side, bottom),
            new(left + side, bottom - side), new(left, bottom - side), new(left, top + side), new(left + side, top + side));
    }
}
