using CsCheck;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class LargestRectangleTests
{
    public static TheoryData<Shape> Shapes => [.. Enum.GetValues<Shape>()];

    [Fact]
    public void In_a_rectangle_it_is_the_rectangle_itself() =>
        Assert.Equal(new Bounds(3, 4, 43, 34), Drawn.Rectangle(3, 4, 40, 30).LargestRectangleInside());

    [Fact]
    public void In_a_circle_it_is_the_inscribed_square() =>
        // Inscribed square: side r √2 (standard formula); the cubic arcs lie up to 0.03 % outside the circle.
        Assert.Equal(2 * 25 * 25, AreaIn(Outline.Circle(new(0, 0), 25)), 0.5);

    [Fact]
    public void In_an_ellipse_it_is_twice_the_product_of_the_half_axes() =>
        Assert.Equal(2 * 30 * 10, AreaIn(Drawn.Shape(Shape.Oval, 60, 20)), 0.3);

    [Fact]
    public void In_a_right_triangle_it_has_half_the_area() =>
        Assert.Equal(150, AreaIn(Drawn.Polygon(new(0, 0), new(30, 20), new(0, 20))), 1e-3);

    [Fact]
    public void In_a_hexagon_it_reaches_from_top_to_bottom() =>
        // 4 y (1 - y / √3) has its maximum √3 R² at y = √3 / 2 (standard formula, computed).
        Assert.Equal(Math.Sqrt(3) * 400, AreaIn(Drawn.Shape(Shape.Hexagon, 40, 20 * Math.Sqrt(3))), 0.01);

    [Fact]
    public void In_an_arch_with_straight_sides_it_can_reach_into_the_top()
    {
        // Sides 45 high, radius 15: the maximum of 2 x (45 + √(225 - x²)) for x up to 15, found by trying many values.
        var wanted = Enumerable.Range(1, 100_000).Max(i => 2 * (15e-5 * i) * (45 + Math.Sqrt(225 - 15e-5 * i * (15e-5 * i))));
        Assert.Equal(wanted, AreaIn(Drawn.Shape(Shape.Arch, 30, 60)), 0.5);
    }

    [Fact]
    public void It_avoids_holes() =>
        Assert.Equal(new Bounds(20, 0, 50, 30), Drawn.Rectangle(0, 0, 50, 30).Subtract(Drawn.Rectangle(10, 10, 10, 10))
            .LargestRectangleInside());

    [Fact]
    public void It_takes_the_larger_of_two_arms() =>
        Assert.Equal(
            new Bounds(0, 30, 60, 45),
            Drawn.Polygon(new(0, 0), new(15, 0), new(15, 30), new(60, 30), new(60, 45), new(0, 45)).LargestRectangleInside());

    [Fact]
    public void An_empty_outline_has_none() => Assert.Null(Outline.Empty.LargestRectangleInside());

    [Theory]
    [MemberData(nameof(Shapes))]
    public void It_lies_inside_and_no_rectangle_on_a_grid_is_larger(Shape shape) => AssertLargest(Drawn.Shape(shape, 40, 33), 0.999);

    [Fact]
    public void In_any_polygon_no_rectangle_on_a_grid_is_much_larger() =>
        Gen.Double[5, 30].Array[3, 9].Sample(radii => AssertLargest(Drawn.Polygon([.. radii.Select((r, i) =>
            new Point(r * Math.Cos(2 * Math.PI * i / radii.Length), r * Math.Sin(2 * Math.PI * i / radii.Length)))]), 0.98), iter: 40,
                seed: "0000KeepersX");

    private static double AreaIn(Outline outline) => outline.LargestRectangleInside() is { } r ? r.Width * r.Height : 0;

    /// <summary>
    /// By brute force: in a grid of squares that have all corners inside and whose edges the outline does not cross, the
    /// largest block of squares.
    /// </summary>
    private static void AssertLargest(Outline outline, double share)
    {
        const int Squares = 30;
        var found = Assert.NotNull(outline.LargestRectangleInside());
        Assert.True(outline.Covers(
            Drawn.Polygon(new(found.Left, found.Top), new(found.Right, found.Top), new(found.Right, found.Bottom),
                new(found.Left, found.Bottom)), 0.01));

        var (box, inside) = (outline.Bounds, new Membership(outline));
        var (width, height) = (box.Width / Squares, box.Height / Squares);
        var free = new bool[Squares, Squares];
        for (var i = 0; i < Squares; i++)
        {
            for (var j = 0; j < Squares; j++)
            {
                var middle = new Point(box.Left + (i + 0.5) * width, box.Top + (j + 0.5) * height);
                free[i, j] = inside.Inside(middle) && inside.ToEdge(middle) >= Math.Sqrt(width * width + height * height) / 2;
            }
        }

        Assert.True(found.Width * found.Height >= share * LargestBlock(free) * width * height);
    }

    private static int LargestBlock(bool[,] free)
    {
        var best = 0;
        for (var left = 0; left < free.GetLength(0); left++)
        {
            var open = Enumerable.Repeat(true, free.GetLength(1)).ToArray();
            for (var right = left; right < free.GetLength(0); right++)
            {
                var run = 0;
                for (var j = 0; j < open.Length; j++)
                {
                    open[j] &= free[right, j];
                    run = open[j] ? run + 1 : 0;
                    best = Math.Max(best, run * (right - left + 1));
                }
            }
        }

        return best;
    }
}
