using CsCheck;
using Sketch.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class OutlineMeasureTests
{
    public static TheoryData<Shape> Shapes => [.. Enum.GetValues<Shape>()];

    // Regular star polygon {5/2} with circumradius 100 mm: width and height 2 sin 72 and 1 + cos 36 (standard formulas, computed).
    private static readonly Outline Star = Drawn.Shape(Shape.Star, 190.21130326, 180.90169944);

    [Fact]
    public void The_inner_radius_of_a_star_is_the_inverse_square_of_the_golden_ratio()
    {
        // 1/phi^2 = 0.3819660113 = sin 18 / sin 54 (standard formula; nested scale also on vectree.io).
        var centre = new Point(95.10565163, 100);
        var radii = Star.Contours[0].Segments.Select(s => Drawn.Distance(s.End, centre)).Order().ToList();
        Assert.Equal(38.19660113, radii[0], 1e-6);
        Assert.Equal(100, radii[^1], 1e-6);
    }

    [Fact]
    public void A_star_with_circumradius_1_has_the_area_1_1225699414() => Assert.Equal(1.1225699414, Star.Area / 10_000, 1e-8);

    [Fact]
    public void A_star_with_circumradius_1_has_the_perimeter_7_2654252801() =>
        Assert.Equal(7.2654252801, Drawn.SampledLength(Star.Contours[0]) / 100, 1e-7);

    [Fact]
    public void The_edges_of_a_star_pass_its_centre_at_cos_72()
    {
        // 0.3090169944 (standard formula, computed).
        var (a, b) = (Star.Contours[0].Start, Star.Contours[0].Segments[0].End);
        var distance = Math.Abs((b.X - a.X) * (a.Y - 100) - (a.X - 95.10565163) * (b.Y - a.Y)) / Drawn.Distance(a, b);
        Assert.Equal(30.90169944, distance, 1e-6);
    }

    [Fact]
    public void A_star_of_six_points_is_the_hexagram()
    {
        // {6/2}: two triangles, inner radius 1/√3 of the outer (standard formula, computed): area 6 · sin 30 · 1/√3 = √3.
        var star = Drawn.Shape(Shape.Star, 100 * Math.Sqrt(3), 200, new ShapeStyle { Points = 6 });
        Assert.Equal(Math.Sqrt(3), star.Area / 10_000, 1e-8);
    }

    [Theory]
    // n sin(360/n) / 2 with circumradius 1 (standard formula, computed).
    [InlineData(3, 1.2990381057, 5.1961524227)]
    [InlineData(5, 2.3776412907, 5.8778525229)]
    [InlineData(8, 2.8284271247, 6.1229349178)]
    [InlineData(12, 3.0, 6.2116570825)]
    public void Regular_polygons_have_their_published_areas_and_perimeters(int corners, double area, double perimeter)
    {
        var polygon = Drawn.Polygon([.. Enumerable.Range(0, corners).Select(i =>
            new Point(Math.Cos(2 * Math.PI * i / corners), Math.Sin(2 * Math.PI * i / corners)))]);
        Assert.Equal(area, polygon.Area, 1e-9);
        Assert.Equal(perimeter, Drawn.SampledLength(polygon.Contours[0]), 1e-9);
    }

    [Fact]
    public void A_hexagon_with_circumradius_1_has_the_area_2_5980762114_and_the_perimeter_6()
    {
        var hexagon = Drawn.Shape(Shape.Hexagon, 200, 100 * Math.Sqrt(3));
        Assert.Equal(2.5980762114, hexagon.Area / 10_000, 1e-7);
        Assert.Equal(6, Drawn.SampledLength(hexagon.Contours[0]) / 100, 1e-7);
    }

    [Fact]
    public void The_area_of_a_circle_is_pi_r_squared_within_the_error_of_its_curves() =>
        Assert.InRange(Outline.Circle(new(7, 9), 10).Area, 314.159, 314.159 * 1.0003);

    [Theory]
    // w h - c h / 2 for each notched end (standard formula, computed).
    [InlineData(Swallowtail.None, 63.5 * 15.875)]
    [InlineData(Swallowtail.Left, 63.5 * 15.875 - 7.9375 * 15.875 / 2)]
    [InlineData(Swallowtail.Right, 63.5 * 15.875 - 7.9375 * 15.875 / 2)]
    [InlineData(Swallowtail.Both, 63.5 * 15.875 - 7.9375 * 15.875)]
    public void A_swallowtail_removes_half_its_depth_times_the_height(Swallowtail ends, double area) =>
        Assert.Equal(area, Drawn.Shape(Shape.Banner, 63.5, 15.875, new ShapeStyle { Swallowtail = ends }).Area, 1e-4);

    [Fact]
    public void Two_notches_meet_at_most() =>
        Assert.Equal(
            (Length.Millimetre(10), Length.Millimetre(10)),
            new ShapeStyle { Swallowtail = Swallowtail.Both, Notch = Length.Millimetre(30) }.Notches(
                new(Length.Millimetre(20), Length.Millimetre(8))));

    [Fact]
    public void A_corner_radius_is_at_most_half_the_shorter_side() =>
        Assert.Equal(Length.Millimetre(4),
            new ShapeStyle { Corner = Length.Inch(1) }.CornerRadius(Shape.Rectangle, new(Length.Millimetre(20), Length.Millimetre(8))));

    [Fact]
    public void A_rounded_corner_removes_a_square_minus_a_quarter_circle()
    {
        // w h - (4 - pi) r^2 (standard formula).
        var rounded = Drawn.Shape(Shape.Rounded, 40, 24, new ShapeStyle { Corner = Length.Millimetre(5) });
        Assert.Equal(40 * 24 - (4 - Math.PI) * 25, rounded.Area, 0.03);
    }

    [Fact]
    public void An_arch_is_a_rectangle_under_half_a_circle() =>
        Assert.Equal(30 * 45 + Math.PI * 225 / 2, Drawn.Shape(Shape.Arch, 30, 60).Area, 0.12);

    [Theory]
    [InlineData(null, 24 / 8.0)]
    [InlineData(5, 5)]
    [InlineData(90, 12)]
    public void A_ticket_is_a_rectangle_less_a_circle(int? corner, double radius)
    {
        // w h - pi r^2: four quarters of a circle (standard formula).
        var style = new ShapeStyle { Corner = corner is { } c ? Length.Millimetre(c) : null };
        Assert.Equal(40 * 24 - Math.PI * radius * radius, Drawn.Shape(Shape.Ticket, 40, 24, style).Area, 0.001 * radius * radius);
    }

    [Theory]
    [InlineData(null, 24 / 8.0)]
    [InlineData(5, 5)]
    public void A_notched_piece_is_a_rectangle_less_four_squares(int? corner, double side) =>
        Assert.Equal(40 * 24 - 4 * side * side,
            Drawn.Shape(Shape.Notched, 40, 24, new ShapeStyle { Corner = corner is { } c ? Length.Millimetre(c) : null }).Area, 1e-9);

    // Three quarters of its box (standard formula of the regular hexagon).
    [Fact]
    public void A_tile_is_three_quarters_of_its_box() => Assert.Equal(30 * 34 * 0.75, Drawn.Shape(Shape.Tile, 30, 34).Area, 1e-9);

    [Theory]
    [InlineData(40, 40)]
    [InlineData(40, 24)]
    public void A_quatrefoil_is_a_square_and_four_half_circles(double width, double height) =>
        // Half of the box each way is the square; the halves of circles about it add up to pi / 2 of its area (standard formula).
        Assert.Equal(width * height / 4 * (1 + Math.PI / 2), Drawn.Shape(Shape.Quatrefoil, width, height).Area, width * height * 2e-4);

    [Theory]
    [InlineData(20, 30)]
    [InlineData(30, 20)]
    public void A_drop_is_two_thirds_of_a_circle_and_two_tangents(double width, double height)
    {
        // With r = 1 the sector of 240 degrees is 2π/3, and each right triangle at a tangent √3/2; stretched into its box.
        var area = (2 * Math.PI / 3 + Math.Sqrt(3)) * (width / 2) * (height / 3);
        Assert.Equal(area, Drawn.Shape(Shape.Drop, width, height).Area, area * 1e-3);
    }

    [Fact]
    public void A_pennant_is_half_its_box() => Assert.Equal(30 * 40 / 2.0, Drawn.Shape(Shape.Pennant, 30, 40).Area, 1e-9);

    [Theory]
    [InlineData(60, 40, null, 10)]
    [InlineData(180, 40, null, 12.7)]
    [InlineData(60, 8, null, 4)]
    [InlineData(60, 40, 15, 15)]
    [InlineData(60, 20, 90, 20)]
    public void A_pocket_is_a_rectangle_less_half_a_circle(double width, double height, int? notch, double radius)
    {
        // w h - pi r^2 / 2 (standard formula).
        var style = new ShapeStyle { Notch = notch is { } n ? Length.Millimetre(n) : null };
        Assert.Equal(width * height - Math.PI * radius * radius / 2, Drawn.Shape(Shape.Pocket, width, height, style).Area,
            0.001 * radius * radius);
    }

    [Theory]
    [InlineData(Shape.Ticket)]
    [InlineData(Shape.Quatrefoil)]
    [InlineData(Shape.Pennant)]
    [InlineData(Shape.Pocket)]
    public void A_shape_touches_all_sides_of_its_box(Shape shape) =>
        Assert.Equal(new Bounds(0, 0, 40, 24), Drawn.Shape(shape, 40, 24).Bounds);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Areas_agree_with_the_shoelace_formula_on_sampled_points(Shape shape)
    {
        var outline = Drawn.Shape(shape, 47, 31);
        Assert.Equal(outline.Contours.Sum(Drawn.SampledArea), outline.Area, outline.Area * 4e-4);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Turning_and_shifting_keep_the_area_and_scaling_squares_it(Shape shape)
    {
        var outline = Drawn.Shape(shape, 47, 31);
        Assert.Equal(outline.Area, outline.Transform(Affine.Turn(33, new(10, 10)).Then(Affine.Shift(500, -200))).Area, 1e-8);
        Assert.Equal(outline.Area * 6, outline.Transform(Affine.Scale(2, 3)).Area, 1e-8);
        Assert.Equal(outline.Area, outline.Transform(Affine.Scale(-1, 1)).Area, 1e-8);
    }

    [Fact]
    public void Bounds_are_those_of_the_curve_and_not_of_its_control_points() =>
        // x = 3 s^2 t + ... of the cubic with ordinates 0, 8, 8, 0 reaches 3/4 of 8 (standard property).
        Assert.Equal(new Bounds(0, 0, 10, 6), new Outline([new Contour(new(0, 0), [Segment.Curve(new(0, 8), new(10, 8), new(10, 0))])])
            .Bounds);

    [Fact]
    public void Bounds_contain_every_point_and_touch_on_every_side() =>
        Gen.Double[-50, 50].Array[8].Sample(v =>
        {
            var contour = new Contour(new(v[0], v[1]), [Segment.Curve(new(v[2], v[3]), new(v[4], v[5]), new(v[6], v[7]))]);
            var (bounds, points) = (contour.Bounds, Drawn.Sample(contour));
            Assert.Equal(points.Min(p => p.X), bounds.Left, 0.1);
            Assert.Equal(points.Max(p => p.X), bounds.Right, 0.1);
            Assert.Equal(points.Min(p => p.Y), bounds.Top, 0.1);
            Assert.Equal(points.Max(p => p.Y), bounds.Bottom, 0.1);
            Assert.All(points, p => Assert.True(bounds.Grow(1e-9).Covers(new(p.X, p.Y, p.X, p.Y))));
        }, seed: "0000KeepersX");

    [Fact]
    public void Reversing_twice_gives_the_same_line()
    {
        var heart = Drawn.Shape(Shape.Heart, 30, 27);
        Assert.Equal(heart.ToSvgPath(), new Outline([heart.Contours[0].Reverse().Reverse()]).ToSvgPath());
    }

    [Fact]
    public void Filling_the_holes_leaves_the_outer_contour() =>
        Assert.Equal(6, Assert.Single(Drawn.Shape(Shape.Tag, 30, 60).WithoutHoles().Contours).Segments.Length + 1);

    [Fact]
    public void All_bumps_of_a_scallop_are_equal()
    {
        var ends = Drawn.Shape(Shape.Scallop, 50, 50).Contours[0].Segments.Select(s => Drawn.Distance(s.End, new(25, 25))).ToList();
        Assert.Equal(40, ends.Count);
        Assert.All(ends.Where((_, i) => i % 2 == 0), tip => Assert.Equal(25, tip, 1e-9));
        Assert.All(ends.Where((_, i) => i % 2 == 1), cleft => Assert.Equal(ends[1], cleft, 1e-9));
    }
}
