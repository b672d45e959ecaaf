namespace Sketch.Shapes;

/// <summary>
/// A circle and its two tangents from a point above it, one diameter from its centre: three halves as high as wide. With the radius r its
/// area is r² (2π/3 + √3). Another box stretches it.
/// </summary>
internal static class DropForm
{
    /// <summary>The height for a width of 1.</summary>
    public const double Ratio = 1.5;

    /// <summary>The control length of an arc of 30 degrees in radii: 4/3 tan 7.5°.</summary>
    private const double Twelfth = 0.175532765829816;

    public static Contour Draw(Bounds box)
    {
        // The tangents touch the circle 30 degrees above its middle.
        var root = Math.Sqrt(3) / 2;
        var (right, left) = (At(root, -0.5), At(-root, -0.5));
        return new ContourPen(At(0, -2))
            .Line(right.X, right.Y)
            .Curve(At(root + Twelfth / 2, -0.5 + Twelfth * root), At(1, -Twelfth), At(1, 0))
            .Quarter(At(1, 1), At(0, 1))
            .Quarter(At(-1, 1), At(-1, 0))
            .Curve(At(-1, -Twelfth), At(-root - Twelfth / 2, -0.5 + Twelfth * root), left)
            .Close();

        // In radii from the centre of the circle.
        Point At(double x, double y) => new(box.Centre.X + x * box.Width / 2, box.Top + (y + 2) * box.Height / 3);
    }
}
