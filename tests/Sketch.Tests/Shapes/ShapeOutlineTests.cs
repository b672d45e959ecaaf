using Sketch.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class ShapeOutlineTests
{
    public static TheoryData<Shape> Shapes => [.. Enum.GetValues<Shape>()];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_shape_fills_its_box(Shape shape)
    {
        foreach (var (width, height) in new[] { (50.8, 50.8), (20.0, 90.0), (90.0, 20.0) })
        {
            var box = Drawn.Box(7, -3, width, height);
            Assert.Equal(box, ShapeOutline.Build(shape, Drawn.Plain, box).Bounds.ToRect());
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_shape_is_clockwise_and_has_an_area(Shape shape) =>
        Assert.True(Drawn.SampledArea(Drawn.Shape(shape, 40, 30).Contours[0]) > 0);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Zero_and_negative_sizes_and_a_kilometre_are_drawn(Shape shape)
    {
        double[] sizes = [0, -5, 1e-6, 1, 1e6];
        foreach (var width in sizes)
        {
            foreach (var height in sizes)
            {
                var outline = Drawn.Shape(shape, width, height, new ShapeStyle { Swallowtail = Swallowtail.Both, Corner = Length.Limit });
                Assert.Equal(Drawn.Box(0, 0, Math.Max(width, 0), Math.Max(height, 0)), outline.Bounds.ToRect());
            }
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_outline_moves_with_its_box(Shape shape)
    {
        var here = Drawn.Shape(shape, 40, 30).Transform(Affine.Shift(10, 20));
        var there = ShapeOutline.Build(shape, Drawn.Plain, Drawn.Box(10, 20, 40, 30));
        Assert.Equal(here.Area, there.Area, 9);
        Assert.Equal(here.Bounds.ToRect(), there.Bounds.ToRect());
    }
}
