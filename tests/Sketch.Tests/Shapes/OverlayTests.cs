using CsCheck;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class OverlayTests
{
    private static readonly Outline Panel = Drawn.Rectangle(0, 0, 40, 30);

    private static readonly Gen<Outline> Shapes = Gen.Select(
        Gen.Enum<Shape>(), Gen.Double[5, 40], Gen.Double[5, 40], Gen.Double[0, 20], Gen.Double[0, 20], Gen.Double[0, 360],
        (shape, width, height, left, top, turn) =>
            ShapeOutline.Build(shape, Drawn.Plain, Drawn.Box(left, top, width, height)).Transform(Affine.Turn(turn, new(20, 15))));

    [Fact]
    public void A_hole_entirely_inside_keeps_its_curves()
    {
        var heart = Drawn.Shape(Shape.Heart, 20, 18).Transform(Affine.Shift(10, 6));
        var pierced = Panel.Subtract(heart);
        Assert.Equal([3, 6], pierced.Contours.Select(c => c.Segments.Length));
        Assert.Equal(Panel.Area - heart.Area, pierced.Area, 9);
    }

    [Fact]
    public void A_hole_has_the_opposite_direction_to_its_outline()
    {
        var pierced = Drawn.Shape(Shape.Heart, 40, 36).Subtract(Outline.Circle(new(20, 15), 4));
        Assert.True(Drawn.SampledArea(pierced.Contours[0]) > 0 && Drawn.SampledArea(pierced.Contours[1]) < 0);
    }

    [Fact]
    public void A_ring_shaped_hole_keeps_its_middle()
    {
        var pierced = Panel.Subtract(Outline.Circle(new(20, 15), 5).Ring(3));
        Assert.Equal(3, pierced.Contours.Length);
        Assert.True(new Membership(pierced).Inside(new(20, 15)));
    }

    [Fact]
    public void A_hole_at_the_edge_becomes_a_notch() =>
        Assert.Equal(40 * 30 - 5 * 10, Assert.Single(Panel.Subtract(Drawn.Rectangle(-5, 10, 10, 10)).Contours).SignedArea, 9);

    [Fact]
    public void Overlapping_holes_become_one_hole()
    {
        var pierced = Panel.Subtract(Drawn.Rectangle(5, 5, 10, 10)).Subtract(Drawn.Rectangle(10, 10, 10, 10));
        Assert.Equal(2, pierced.Contours.Length);
        Assert.Equal(1200 - 175, pierced.Area, 9);
    }

    [Fact]
    public void A_separate_outline_removes_nothing() =>
        Assert.Same(Panel, Panel.Subtract(Drawn.Rectangle(50, 0, 5, 5)));

    [Fact]
    public void A_covered_outline_is_removed_entirely() =>
        Assert.True(Drawn.Rectangle(5, 5, 10, 10).Subtract(Panel).IsEmpty);

    [Fact]
    public void Separate_outlines_keep_their_curves_in_a_union()
    {
        var apart = Outline.Union([Outline.Circle(new(0, 0), 5), Outline.Circle(new(8, 8), 5)]);
        Assert.Equal([4, 4], apart.Contours.Select(c => c.Segments.Length));
    }

    [Fact]
    public void Overlapping_letters_become_one() =>
        Assert.Single(Outline.Union([Drawn.Rectangle(0, 0, 10, 4), Drawn.Rectangle(8, 0, 10, 4), Drawn.Rectangle(17, 0, 4, 9)]).Contours);

    [Fact]
    public void The_union_of_an_outline_with_itself_is_the_outline() =>
        Assert.Equal(Panel.Area, Outline.Union([Panel, Panel]).Area, 9);

    [Fact]
    public void A_stroke_across_the_hole_of_a_letter_fills_it()
    {
        // As in a Q with three contours: the ring, its hole, and a tail over both.
        var ring = Outline.Circle(new(10, 10), 8).Subtract(Outline.Circle(new(10, 10), 5));
        var letter = new Outline([.. ring.Contours, .. Drawn.Rectangle(9, 9, 2, 12).Contours]);
        var united = new Membership(Outline.Union([letter]));
        var drawn = new Membership(letter);
        Assert.All(Membership.Grid(letter.Bounds, 1, 40), p => Assert.Equal(drawn.Inside(p), united.Inside(p)));
    }

    [Fact]
    public void A_self_crossing_contour_is_filled_by_the_winding_rule()
    {
        var pentagram = Drawn.Polygon(
            [.. Enumerable.Range(0, 5).Select(i => new Point(20 * Math.Sin(i * 0.8 * Math.PI), -20 * Math.Cos(i * 0.8 * Math.PI)))]);
        // The star polygon {5/2} with its middle filled, circumradius 1: 1.1225699414 (standard formula, computed).
        Assert.Equal(1.1225699414 * 400, Outline.Union([pentagram]).Area, 1e-6);
    }

    [Fact]
    public void A_bow_tie_keeps_both_halves() =>
        Assert.Equal(50, Outline.Union([Drawn.Polygon(new(0, 0), new(10, 10), new(10, 0), new(0, 10))]).Area, 1e-9);

    [Fact]
    public void The_areas_of_difference_and_intersection_and_union_add_up() =>
        Gen.Select(Shapes, Shapes).Sample((a, b) =>
        {
            var common = a.Intersect(b).Area;
            // Chords deviate up to 0.002 mm from curves of up to 250 mm.
            Assert.Equal(a.Area - common, a.Subtract(b).Area, 0.5);
            Assert.Equal(a.Area + b.Area - common, a.Union(b).Area, 1.0);
            Assert.Equal(common, a.OverlapArea(b), 1e-9);
        }, iter: 100, seed: "0000KeepersX");

    [Fact]
    public void Points_belong_to_results_by_the_definitions() =>
        Gen.Select(Shapes, Shapes).Sample((a, b) =>
        {
            var (inA, inB) = (new Membership(a), new Membership(b));
            var (difference, common, both) = (new Membership(a.Subtract(b)), new Membership(a.Intersect(b)), new Membership(a.Union(b)));
            foreach (var p in Membership.Grid(a.Bounds, 2, 8).Where(p => inA.ToEdge(p) > 0.01 && inB.ToEdge(p) > 0.01))
            {
                Assert.Equal(inA.Inside(p) && !inB.Inside(p), difference.Inside(p));
                Assert.Equal(inA.Inside(p) && inB.Inside(p), common.Inside(p));
                Assert.Equal(inA.Inside(p) || inB.Inside(p), both.Inside(p));
            }
        }, iter: 15, seed: "0000KeepersX");

    [Fact]
    public void Outer_contours_are_clockwise_and_holes_anticlockwise() =>
        Gen.Select(Shapes, Shapes).Sample((a, b) =>
            Assert.All(new[] { a.Subtract(b), a.Union(b), a.Intersect(b) }, o =>
                Assert.All(o.Contours, c =>
                {
                    var others = new Membership(new([.. o.Contours.Where(other => !ReferenceEquals(other, c))]));
                    Assert.Equal(others.Inside(c.Start), Drawn.SampledArea(c) < 0);
                })), iter: 15, seed: "0000KeepersX");

    [Fact]
    public void Outlines_from_zero_size_to_a_kilometre_are_overlaid()
    {
        var all = from shape in new[] { Shape.Rectangle, Shape.Star, Shape.Tag }
                  from size in new[] { (0, 0), (1e-6, 20), (20, 20), (1e6, 20), (1e6, 1e6) }
                  select Drawn.Shape(shape, size.Item1, size.Item2);
        var outlines = all.ToList();
        foreach (var (a, b) in from a in outlines from b in outlines select (a, b))
        {
            var areas = new[] { a.Subtract(b).Area, a.Intersect(b).Area, a.Union(b).Area, a.OverlapArea(b), a.Covers(b) ? 1 : 0 };
            Assert.All(areas, area => Assert.InRange(area, 0, 1e13));
        }
    }

    [Fact]
    public void A_piece_on_the_edge_is_covered() => Assert.True(Panel.Covers(Drawn.Rectangle(0, 0, 40, 5)));

    [Fact]
    public void A_piece_past_the_edge_is_not_covered() => Assert.False(Panel.Covers(Drawn.Rectangle(-0.1, 0, 40, 5)));

    [Fact]
    public void A_shape_covers_itself() =>
        Assert.All(Enum.GetValues<Shape>(), s => Assert.True(Drawn.Shape(s, 30, 20).Covers(Drawn.Shape(s, 30, 20))));

    [Fact]
    public void A_mat_covers_its_piece() =>
        Assert.All(Enum.GetValues<Shape>(), s =>
            Assert.True(Drawn.Shape(s, 30, 20).Grow(1, closeHoles: true).Covers(Drawn.Shape(s, 30, 20))));

    [Fact]
    public void A_piece_over_a_window_is_not_covered() =>
        Assert.False(Panel.Subtract(Outline.Circle(new(20, 15), 2)).Covers(Drawn.Rectangle(10, 5, 20, 20)));

    [Fact]
    public void The_overlap_of_rectangles_is_the_product_of_their_common_sides() =>
        Assert.Equal(6, Panel.OverlapArea(Drawn.Rectangle(38, 27, 10, 10)));

    [Fact]
    public void Neighbours_that_only_touch_do_not_overlap() =>
        Assert.Equal(0, Panel.OverlapArea(Drawn.Rectangle(40, 0, 10, 10)));
}
