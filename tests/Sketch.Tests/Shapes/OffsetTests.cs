using CsCheck;
using Sketch.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class OffsetTests
{
    private const double True = 0.01;

    public static TheoryData<Shape, double> ShapesAndDistances =>
        [.. from shape in Enum.GetValues<Shape>() from distance in new[] { 1.5875, 6, -1, -4 } select (shape, distance)];

    public static TheoryData<Shape> Shapes => [.. Enum.GetValues<Shape>()];

    [Theory]
    [MemberData(nameof(ShapesAndDistances))]
    public void An_offset_contains_exactly_the_points_within_the_distance(Shape shape, double distance)
    {
        AssertOffset(Drawn.Shape(shape, 40, 40), distance);
        AssertOffset(Drawn.Shape(shape, 31, 52), distance);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Growing_a_shape_grows_its_box_by_the_same_distance(Shape shape)
    {
        var outline = Drawn.Shape(shape, 44.45, 31.75);
        var (wanted, got) = (outline.Bounds.Grow(3.175), outline.Grow(3.175).Bounds);
        Assert.Equal(wanted.Left, got.Left, True);
        Assert.Equal(wanted.Top, got.Top, True);
        Assert.Equal(wanted.Right, got.Right, True);
        Assert.Equal(wanted.Bottom, got.Bottom, True);
    }

    [Fact]
    public void A_rectangle_keeps_its_corners_sharp() =>
        Assert.Equal(
            Drawn.Box(8.4125, 18.4125, 53.975, 79.375),
            Assert.Single(Drawn.Rectangle(10, 20, 50.8, 76.2).Grow(1.5875).Contours).Bounds.ToRect());

    [Fact]
    public void A_grown_rectangle_has_four_corners() =>
        Assert.Equal(3, Drawn.Rectangle(0, 0, 50, 80).Grow(2).Contours[0].Segments.Length);

    [Theory]
    // 4 x 5.25 in, mitred: (4 + 2d)(5.25 + 2d) (standard formula, computed).
    [InlineData(1 / 16.0, 22.171875)]
    [InlineData(1 / 8.0, 23.375)]
    [InlineData(1 / 4.0, 25.875)]
    public void A_mat_of_4_by_5_and_a_quarter_has_the_mitred_area(double inches, double area) =>
        Assert.Equal(area, Drawn.Rectangle(0, 0, 101.6, 133.35).Grow(inches * 25.4).Area / (25.4 * 25.4), 9);

    [Theory]
    // Steiner's formula A + P d + pi d^2 for 4 x 5.25 in (math.techqa.club 2499599; values computed).
    [InlineData(1 / 16.0, 22.1685218463)]
    [InlineData(1 / 8.0, 23.3615873852)]
    [InlineData(1 / 4.0, 25.8213295408)]
    public void A_rotated_rectangle_grows_by_Steiner_s_formula(double inches, double area)
    {
        var slant = Drawn.Rectangle(0, 0, 101.6, 133.35).Transform(Affine.Turn(30, new(0, 0)));
        Assert.Equal(area, slant.Grow(inches * 25.4).Area / (25.4 * 25.4), 1e-4);
    }

    [Fact]
    public void The_edge_of_a_convex_shape_grows_by_2_pi_times_the_distance()
    {
        // P + 2 pi d for 4 x 5.25 in and 1/8 in: 19.2853981634 (Steiner, computed).
        var slant = Drawn.Rectangle(0, 0, 101.6, 133.35).Transform(Affine.Turn(30, new(0, 0)));
        Assert.Equal(19.2853981634, Drawn.SampledLength(slant.Grow(3.175).Contours[0]) / 25.4, 1e-3);
    }

    [Fact]
    public void A_hexagon_grows_by_Steiner_s_formula()
    {
        // Circumradius 1, d = 0.1: 3.2294921379 (Steiner, computed).
        var hexagon = Drawn.Shape(Shape.Hexagon, 200, 100 * Math.Sqrt(3));
        Assert.Equal(3.2294921379, hexagon.Grow(10).Area / 10_000, 2e-5);
    }

    [Fact]
    public void A_star_grows_by_the_formula_for_round_joins()
    {
        // Circumradius 1, d = 0.1: A + P d + 2.6504726672 d^2 = 1.8756171961 (computed; confirmed on a grid there to 1.874).
        var star = Drawn.Shape(Shape.Star, 190.21130326, 180.90169944);
        Assert.Equal(1.8756171961, star.Grow(10).Area / 10_000, 2e-5);
    }

    [Fact]
    public void A_grown_circle_is_the_larger_circle()
    {
        var (grown, larger) = (Outline.Circle(new(3, 4), 20).Grow(5), Outline.Circle(new(3, 4), 25));
        Assert.Equal(4, grown.Contours[0].Segments.Length);
        Assert.All(grown.Contours[0].Segments.Zip(larger.Contours[0].Segments), pair =>
        {
            Assert.Equal(0, Drawn.Distance(pair.First.Control1, pair.Second.Control1), 0.001);
            Assert.Equal(0, Drawn.Distance(pair.First.End, pair.Second.End), 1e-9);
        });
    }

    [Fact]
    public void Growing_keeps_curves_as_curves() =>
        Assert.InRange(Drawn.Shape(Shape.Heart, 45, 40.5).Grow(1.6).Contours[0].Segments.Length, 7, 20);

    [Fact]
    public void Shrinking_past_the_middle_leaves_nothing()
    {
        foreach (var shape in Enum.GetValues<Shape>())
        {
            Assert.True(Drawn.Shape(shape, 30, 20).Grow(-11).IsEmpty, shape.ToString());
        }
    }

    [Fact]
    public void A_shape_with_a_narrow_waist_shrinks_into_two()
    {
        var waist = Drawn.Polygon(
            new(0, 0), new(30, 0), new(30, 9), new(60, 9), new(60, 0), new(90, 0), new(90, 30), new(60, 30), new(60, 12), new(30, 12),
                new(30, 30), new(0, 30));
        Assert.Equal(2, waist.Grow(-2).Contours.Length);
    }

    [Fact]
    public void A_slot_narrower_than_the_mat_closes()
    {
        var slotted = Drawn.Polygon(new(0, 0), new(20, 0), new(20, 20), new(22, 20), new(22, 0), new(42, 0), new(42, 40), new(0, 40));
        AssertOffset(slotted, 3);
    }

    [Fact]
    public void A_hole_shrinks_when_its_outline_grows()
    {
        var pierced = Drawn.Rectangle(0, 0, 40, 30).Subtract(Outline.Circle(new(20, 15), 5));
        Assert.Equal(44 * 34 - Outline.Circle(new(20, 15), 3).Area, pierced.Grow(2).Area, 0.01);
    }

    [Fact]
    public void Holes_are_filled_on_request() =>
        Assert.Single(Drawn.Shape(Shape.Tag, 30, 60).Grow(0.1, closeHoles: true).Contours);

    [Fact]
    public void A_ring_is_the_grown_outline_without_the_outline()
    {
        var ring = Outline.Circle(new(0, 0), 30).Ring(3.175);
        // Between circles of radius R + t and R: pi (2 R t + t^2) (standard formula); cubic arcs are up to 0.03 % larger.
        Assert.Equal(Math.PI * (2 * 30 * 3.175 + 3.175 * 3.175), ring.Area, 0.3);
        Assert.True(Drawn.SampledArea(ring.Contours[0]) > 0 && Drawn.SampledArea(ring.Contours[1]) < 0);
    }

    [Fact]
    public void A_wavy_outline_of_a_thousand_corners_is_offset_correctly() =>
        AssertOffset(Drawn.Polygon([.. Enumerable.Range(0, 1_000).Select(i => Polar(20 + 3 * Math.Sin(i * 0.0628 * 7), i, 1_000))]), 2);

    [Fact]
    public void Outlines_in_the_other_direction_grow_in_the_same_way()
    {
        var outline = Drawn.Shape(Shape.Heart, 40, 36);
        var reversed = new Outline([outline.Contours[0].Reverse()]);
        Assert.Equal(outline.Grow(2).Area, reversed.Grow(2).Area, 1e-3);
    }

    [Fact]
    public void Any_polygon_is_offset_correctly() =>
        Gen.Select(Gen.Double[4, 30].Array[3, 9], Gen.Double[-6, 12]).Sample(
            (radii, distance) => AssertOffset(Drawn.Polygon([.. radii.Select((r, i) => Polar(r, i, radii.Length))]), distance),
            iter: 100, seed: "0000KeepersX");

    [Fact]
    public void Sizes_from_zero_to_a_kilometre_are_offset()
    {
        double[] sizes = [0, 1, 1e6];
        foreach (var shape in Enum.GetValues<Shape>())
        {
            foreach (var (width, height) in from w in sizes from h in sizes select (w, h))
            {
                foreach (var distance in new[] { -1, 1e6 })
                {
                    Assert.True(double.IsFinite(Drawn.Shape(shape, width, height).Grow(distance).Area));
                }
            }
        }
    }

    private static Point Polar(double radius, int i, int of)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * i / of);
        return new(radius * cos, radius * sin);
    }

    [Fact]
    public void A_narrow_frame_shrinks_to_nothing() =>
        Assert.True(Outline.Rectangle(new(Length.Zero, Length.Zero, Length.Inch(0, 3, 4), Length.Inch(0, 1, 2))).Ring(1.5875).Grow(-6.35)
            .IsEmpty);

    /// <summary>
    /// By definition: a point is inside the offset if it is inside the shape or within the distance (if shrunk: inside and farther away).
    /// </summary>
    private static void AssertOffset(Outline outline, double distance)
    {
        var isRectangle = outline.Contours is [{ Segments: [{ IsLine: true }, { IsLine: true }, { IsLine: true }] }] && distance > 0;
        var offset = outline.Grow(distance);
        var (old, got) = (new Membership(outline), new Membership(offset));
        var margin = Math.Max(distance, 0) + 1;
        foreach (var point in Membership.Grid(outline.Bounds, margin, 13))
        {
            var inside = old.Inside(point);
            var signed = inside ? -old.ToEdge(point) : old.ToEdge(point);
            if (Math.Abs(signed - distance) > True
                && !(isRectangle && outline.Bounds.Grow(distance).Covers(new Bounds(point.X, point.Y, point.X, point.Y))))
            {
                Assert.True(signed < distance == got.Inside(point), $"{point} is {signed} from the edge, offset {distance}");
            }
        }

        foreach (var point in offset.Contours.SelectMany(c => c.Segments).Select(s => s.End))
        {
            Assert.True(isRectangle || Math.Abs(old.ToEdge(point) - Math.Abs(distance)) <= True,
                $"{point} of the offset is {old.ToEdge(point)} away");
        }

        Assert.All(offset.Contours, c => Assert.NotEqual(0, Drawn.SampledArea(c)));
    }
}
