using Sketch.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class ProportionTests
{
    private static readonly Length Width = Length.Inch(2);

    [Theory]
    [InlineData(Shape.Square)]
    [InlineData(Shape.Circle)]
    [InlineData(Shape.Scallop)]
    [InlineData(Shape.Quatrefoil)]
    public void Shapes_as_wide_as_high_keep_the_length_exactly(Shape shape) =>
        Assert.Equal(Width, ShapeProportions.HeightFor(shape, ShapeStyle.Plain, Width));

    [Theory]
    [InlineData(Shape.Rectangle)]
    [InlineData(Shape.Rounded)]
    [InlineData(Shape.Oval)]
    [InlineData(Shape.Banner)]
    [InlineData(Shape.Ticket)]
    [InlineData(Shape.Pocket)]
    public void Shapes_without_proportions_need_two_lengths(Shape shape) => Assert.False(ShapeProportions.Has(shape));

    [Fact]
    public void Missing_proportions_throw() =>
        Assert.Throws<ArgumentException>(() => ShapeProportions.HeightFor(Shape.Banner, ShapeStyle.Plain, Width));

    [Fact]
    public void A_five_pointed_star_is_1_8090169944_high_where_it_is_1_9021130326_wide()
    {
        // Regular pentagram with circumradius 1: width 2 sin 72, height 1 + cos 36 (standard formulas, computed).
        var height = ShapeProportions.HeightFor(Shape.Star, ShapeStyle.Plain, Length.Millimetre(1902.1130326m));
        Assert.InRange(height.Nanometres, 1_809_016_993, 1_809_016_995);
    }

    [Fact]
    public void A_hexagon_two_wide_across_its_corners_is_root_three_high()
    {
        // Apothem of a hexagon with circumradius 1: 0.8660254038 (standard formula, computed).
        var height = ShapeProportions.HeightFor(Shape.Hexagon, ShapeStyle.Plain, Length.Millimetre(200));
        Assert.Equal(173_205_081, height.Nanometres);
    }

    [Theory]
    [InlineData(Shape.Heart, 45, 40.5)]
    [InlineData(Shape.Arch, 50, 75)]
    [InlineData(Shape.Tag, 30, 60)]
    [InlineData(Shape.Pennant, 40, 50)]
    public void Shapes_of_the_language_have_its_proportions(Shape shape, double width, double height) =>
        Assert.Equal(Length.NearestMillimetres(height),
            ShapeProportions.HeightFor(shape, ShapeStyle.Plain, Length.NearestMillimetres(width)));

    [Fact]
    public void The_width_for_a_height_is_the_inverse_of_the_height_for_a_width()
    {
        foreach (var shape in Enum.GetValues<Shape>().Where(ShapeProportions.Has))
        {
            for (var points = ShapeStyle.FewestPoints; points <= ShapeStyle.MostPoints; points++)
            {
                var style = new ShapeStyle { Points = points };
                var height = ShapeProportions.HeightFor(shape, style, Width);
                var back = ShapeProportions.WidthFor(shape, style, height);
                Assert.InRange((back - Width).Nanometres, -1, 1);
            }
        }
    }

    [Fact]
    public void A_star_is_centred_by_the_circle_through_its_tips()
    {
        // The centre lies one circumradius below the top tip; the height is 1.8090169944 R.
        var centre = ShapeProportions.CentreOf(
            Shape.Star, ShapeStyle.Plain, new(Length.Millimetre(1902.1130326m), Length.Millimetre(1809.0169944m)));
        Assert.InRange(centre.Top.Nanometres, 999_999_998, 1_000_000_001);
        Assert.Equal(951_056_516, centre.Left.Nanometres);
    }

    [Fact]
    public void Other_shapes_are_centred_by_their_box() =>
        Assert.Equal(new Place(Length.Inch(1), Length.Inch(1, 1, 2)),
            ShapeProportions.CentreOf(Shape.Heart, ShapeStyle.Plain, new(Length.Inch(2), Length.Inch(3))));
}
