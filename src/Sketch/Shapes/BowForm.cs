using System.Collections.Immutable;

namespace Sketch.Shapes;

/// <summary>A tied bow seen from the front, three quarters as high as wide; another box stretches it.</summary>
internal static class BowForm
{
    /// <summary>The height for a width of 1.</summary>
    public const double Ratio = 0.75;

    private static readonly ImmutableArray<Outline> Drawn = [.. new[] { Tail(-1), Tail(1), Loop(-1), Loop(1), Knot() }.Select(Large)];

    private static readonly Outline United = Outline.Union(Drawn);

    /// <summary>The parts of a bow from back to front: two tails, two loops and the knot.</summary>
    public static IEnumerable<Outline> Parts(Bounds box) => Drawn.Select(p => p.Transform(Fit(box)));

    /// <summary>The outline of all parts together, which fills the box.</summary>
    public static Outline Silhouette(Bounds box) => United.Transform(Fit(box));

    private static Affine Fit(Bounds box)
    {
        var all = United.Bounds;
        return Affine.Shift(-all.Left, -all.Top).Then(Affine.Scale(box.Width / all.Width, box.Height / all.Height))
            .Then(Affine.Shift(box.Left, box.Top));
    }

    /// <summary>A decimetre wide, so that curves are not united coarsely.</summary>
    private static Outline Large(Contour part) => new Outline([part]).Transform(Affine.Scale(100, 100));

    private static Contour Tail(int side) => new ContourPen(new(0.04 * side, 0.36))
        .Curve(new(0.2 * side, 0.52), new(0.24 * side, 0.72), new(0.42 * side, 0.9))
        .Line(0.29 * side, 0.89).Line(0.26 * side, 1)
        .Curve(new(0.1 * side, 0.8), new(0.06 * side, 0.6), new(-0.02 * side, 0.4))
        .Close();

    private static Contour Loop(int side) => new ContourPen(new(0.02 * side, 0.27))
        .Curve(new(0.14 * side, 0.1), new(0.32 * side, -0.02), new(0.43 * side, 0.01))
        .Curve(new(0.52 * side, 0.04), new(0.52 * side, 0.6), new(0.42 * side, 0.62))
        .Curve(new(0.3 * side, 0.64), new(0.14 * side, 0.5), new(0.02 * side, 0.41))
        .Close();

    private static Contour Knot() => new ContourPen(new(-0.065, 0.27))
        .Curve(new(-0.03, 0.23), new(0.03, 0.23), new(0.065, 0.27))
        .Curve(new(0.085, 0.32), new(0.085, 0.38), new(0.065, 0.43))
        .Curve(new(0.03, 0.47), new(-0.03, 0.47), new(-0.065, 0.43))
        .Curve(new(-0.085, 0.38), new(-0.085, 0.32), new(-0.065, 0.27))
        .Close();
}
