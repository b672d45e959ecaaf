namespace Sketch.Shapes;

/// <summary>An affine map of the drawing plane: x' = A x + C y + E, y' = B x + D y + F (in the order of SVG's <c>matrix</c>).</summary>
public readonly record struct Affine(double A, double B, double C, double D, double E, double F)
{
    /// <summary>The identity.</summary>
    public static readonly Affine Identity = new(1, 0, 0, 1, 0, 0);

    /// <summary>Whether it is the identity.</summary>
    public bool IsIdentity => this == Identity;

    /// <summary>A shift.</summary>
    public static Affine Shift(double x, double y) => new(1, 0, 0, 1, x, y);

    /// <summary>A scaling about the origin.</summary>
    public static Affine Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    /// <summary>A rotation about a point, clockwise as seen (y runs down).</summary>
    public static Affine Turn(double degrees, Point about)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(cos, sin, -sin, cos, about.X - cos * about.X + sin * about.Y, about.Y - sin * about.X - cos * about.Y);
    }

    /// <summary>This map, followed by <paramref name="next"/>.</summary>
    public Affine Then(Affine next) => new(
        next.A * A + next.C * B, next.B * A + next.D * B,
        next.A * C + next.C * D, next.B * C + next.D * D,
        next.A * E + next.C * F + next.E, next.B * E + next.D * F + next.F);

    /// <summary>The inverse.</summary>
    /// <exception cref="InvalidOperationException">The map is singular, so it has no inverse.</exception>
    public Affine Inverse()
    {
        var determinant = A * D - B * C;
        if (determinant == 0)
        {
            throw new InvalidOperationException("a flattened plane has no way back");
        }

        var (a, b, c, d) = (D / determinant, -B / determinant, -C / determinant, A / determinant);
        return new(a, b, c, d, -(a * E + c * F), -(b * E + d * F));
    }

    /// <summary>The image of a point.</summary>
    public Point Apply(Point point) => new(A * point.X + C * point.Y + E, B * point.X + D * point.Y + F);
}
