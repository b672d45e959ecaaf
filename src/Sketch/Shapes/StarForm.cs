using System.Collections.Immutable;

namespace Sketch.Shapes;

/// <summary>
/// The star with its tips on a circle of radius 1 about the origin, one tip upwards. Up to five points, a tip is as sharp as the
/// pentagram's (36 degrees), from six on, as the hexagram's (60 degrees), so that five points make the star polygon {5/2}, six make {6/2},
/// and many points make a seal with teeth.
/// </summary>
internal sealed record StarForm(ImmutableArray<Point> Corners, Bounds Box)
{
    private static readonly StarForm[] Forms =
        [.. Enumerable.Range(ShapeStyle.FewestPoints, ShapeStyle.MostPoints - ShapeStyle.FewestPoints + 1).Select(Make)];

    /// <summary>Radius of the inner corners, from the law of sines in the triangle of centre, tip and inner corner.</summary>
    public static double InnerRadius(int points)
    {
        var halfTip = (points <= 5 ? 18 : 30) * Math.PI / 180;
        return Math.Sin(halfTip) / Math.Sin(halfTip + Math.PI / points);
    }

    /// <summary>The star with that many points, or with the nearest supported number.</summary>
    public static StarForm Of(int points) =>
        Forms[Math.Clamp(points, ShapeStyle.FewestPoints, ShapeStyle.MostPoints) - ShapeStyle.FewestPoints];

    private static StarForm Make(int points)
    {
        var inner = InnerRadius(points);
        var corners = Enumerable.Range(0, 2 * points).Select(i =>
        {
            var (sin, cos) = Math.SinCos(Math.PI * i / points);
            var radius = i % 2 == 0 ? 1 : inner;
            return new Point(radius * sin, -radius * cos);
        }).ToImmutableArray();
        return new(corners, new(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y)));
    }
}
