namespace Sketch.Shapes;

/// <summary>
/// Four overlapping circles of one size whose middles are those of the sides of a square; half of each lies outside the square. The box
/// is twice as wide as the square; a box that is not square stretches it.
/// </summary>
internal static class QuatrefoilForm
{
    public static Contour Draw(Bounds box)
    {
        // The corners of the square, which are the clefts, lie a quarter of the box from its sides.
        var (left, top, right, bottom) = box;
        var (across, down, centre) = (box.Width / 4, box.Height / 4, box.Centre);
        var pen = new ContourPen(new(left + across, top + down));
        Lobe(new(left + across, top), new(centre.X, top), new(right - across, top), new(right - across, top + down));
        Lobe(new(right, top + down), new(right, centre.Y), new(right, bottom - down), new(right - across, bottom - down));
        Lobe(new(right - across, bottom), new(centre.X, bottom), new(left + across, bottom), new(left + across, bottom - down));
        Lobe(new(left, bottom - down), new(left, centre.Y), new(left, top + down), new(left + across, top + down));
        return pen.Close();

        void Lobe(Point before, Point tip, Point after, Point cleft) => pen.Quarter(before, tip).Quarter(after, cleft);
    }
}
