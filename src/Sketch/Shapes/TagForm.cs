namespace Sketch.Shapes;

/// <summary>
/// A gift tag. The upper corners are cut off at 45 degrees, a quarter of the width each; the hole is a seventh of the width across, at most
/// 1/4 in (the larger of the common punches), centred as far down as the cuts reach.
/// </summary>
internal static class TagForm
{
    private const double LargestHole = 6.35;

    public static Outline Draw(Bounds box)
    {
        var (left, top, right, bottom) = box;
        var cut = Math.Min(box.Width, box.Height) / 4;
        var body = ContourPen.Polygon(
            new(left + cut, top), new(right - cut, top), new(right, top + cut), new(right, bottom), new(left, bottom),
                new(left, top + cut));
        var radius = Math.Min(Math.Min(box.Width, box.Height) / 7, LargestHole) / 2;
        var middle = new Bounds(box.Centre.X, top + cut, box.Centre.X, top + cut);
        return new([body, ContourPen.Ellipse(middle.Grow(radius)).Reverse()]);
    }
}
