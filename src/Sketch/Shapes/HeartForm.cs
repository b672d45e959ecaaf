namespace Sketch.Shapes;

/// <summary>
/// A heart with full lobes, gently curved sides and a point below, drawn for a box of 1 x 1 that is then stretched to 10 : 9. The joints
/// lie where the line runs straight across or down, so that it is smooth everywhere but at the cleft and the point.
/// </summary>
internal static class HeartForm
{
    public static Contour Draw(Bounds box)
    {
        return new ContourPen(At(0.5, 0.2))
            .Curve(At(0.535, 0.085), At(0.63, 0), At(0.745, 0))
            .Curve(At(0.89, 0), At(1, 0.13), At(1, 0.3))
            .Curve(At(1, 0.56), At(0.69, 0.78), At(0.5, 1))
            .Curve(At(0.31, 0.78), At(0, 0.56), At(0, 0.3))
            .Curve(At(0, 0.13), At(0.11, 0), At(0.255, 0))
            .Curve(At(0.37, 0), At(0.465, 0.085), At(0.5, 0.2))
            .Close();

        Point At(double x, double y) => new(box.Left + x * box.Width, box.Top + y * box.Height);
    }
}
