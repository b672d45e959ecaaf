namespace Sketch.Shapes;

/// <summary>A pocket: a rectangle with half a circle cut out of the middle of its upper edge for a thumb.</summary>
internal static class PocketForm
{
    public static Contour Draw(Bounds box, double radius)
    {
        var (left, top, right, bottom) = box;
        var middle = box.Centre.X;
        return new ContourPen(new(left, top))
            .Line(middle - radius, top)
            .Quarter(new(middle - radius, top + radius), new(middle, top + radius))
            .Quarter(new(middle + radius, top + radius), new(middle + radius, top))
            .Line(right, top).Line(right, bottom).Line(left, bottom)
            .Close();
    }
}
