using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Sketch.Tests.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class HollowPartsTests
{
    private static readonly TemplateOptions Hollow = Printed.OnLetter with { Hollow = GlueMargin.Usual };

    private static TemplatePiece Piece(string pieces, string name, TemplateOptions? options = null) =>
        Printed.Of($"card \"Test\"\nbase A2, fold left, of white\nfront\n{pieces}", options ?? Hollow).Pieces.Single(p => p.Name == name);

    [Fact]
    public void A_mat_is_hollow_under_its_panel_except_for_a_quarter_inch_on_all_sides()
    {
        var mat = Piece("  sky: panel, showing 1/4, of blue\n    mat +1/8, of navy\n", "mat behind sky");
        // The panel is 3 5/8 x 4 7/8 in; a quarter of an inch stays on each side of it.
        Assert.Equal((Length.Inch(3, 1, 8), Length.Inch(4, 3, 8)), (Assert.Single(mat.Freed).Size.Width, mat.Freed[0].Size.Height));
    }

    [Fact]
    public void Nothing_is_hollow_by_default() =>
        Assert.Empty(Piece("  sky: panel, showing 1/4, of blue\n    mat +1/8, of navy\n", "mat behind sky", Printed.OnLetter).Freed);

    [Fact]
    public void The_margin_can_be_wider()
    {
        var mat = Piece("  sky: panel 3 x 4, of blue\n    mat +1/8, of navy\n", "mat behind sky",
            Printed.OnLetter with { Hollow = GlueMargin.Of(Length.Inch(0, 1, 2)) });
        Assert.Equal(new Size(Length.Inch(2), Length.Inch(3)), Assert.Single(mat.Freed).Size);
    }

    [Fact]
    public void Paper_beneath_foam_is_kept() =>
        Assert.Empty(Piece("  sky: panel 3 x 4, of blue\n    lamp: square 2, of navy, on foam\n", "sky: panel").Freed);

    [Fact]
    public void Paper_seen_through_a_window_is_kept()
    {
        var mat = Piece("  sky: panel 3 x 4, of blue\n    mat +1/8, of navy\n    window circle 1\n", "mat behind sky");
        Assert.All(mat.Freed, f => Assert.True(f.Outline.Intersect(Outline.Circle(new(39.69, 52.39), 12.7)).Area < 0.01));
    }

    [Theory]
    [InlineData("  sky: panel 3 1/2 x 4 1/2, of blue\n    window 1 x 1\n    mat +1/8, of navy\n", "mat behind sky")]
    [InlineData("  sky: panel 3 1/2 x 4 1/2, of blue\n    window 1/2 x 1/2, top 1/2\n    panel 3 x 4, of red\n", "sky: panel")]
    [InlineData("  sky: panel 3 1/2 x 4 1/2, of blue\n    panel 3 1/4 x 4 1/4, of red\n      window circle 1/2\n", "sky: panel")]
    public void A_layer_stays_one_piece(string pieces, string name)
    {
        var piece = Piece(pieces, name);
        Assert.NotEmpty(piece.Freed);
        var left = piece.Freed.Aggregate(piece.Outline, (rest, part) => rest.Subtract(part.Outline));
        Assert.Single(left.Contours, c => c.SignedArea > 0);
    }

    [Fact]
    public void A_part_too_small_for_another_layer_is_kept() =>
        Assert.Empty(Piece("  sky: panel 3 x 4, of blue\n    lamp: square 7/8, of navy\n", "sky: panel").Freed);

    [Fact]
    public void Each_of_two_pieces_side_by_side_keeps_its_own_margin() =>
        Assert.Equal(2, Piece("  sky: panel 4 x 2, of blue\n    square 2, left 0, of red\n    square 2, right 0, of navy\n", "sky: panel")
            .Freed.Length);

    [Theory]
    [InlineData("  sky: panel 3 1/2 x 4 1/2, of blue\n    star 3, left 1/4, of red\n", "sky: panel")]
    [InlineData("  sky: panel 3 1/2 x 4 1/2, of blue, turn left 7\n    heart 3, top 0, of red\n    circle 2, bottom 1/8, of red\n",
        "sky: panel")]
    [InlineData("  sky: circle 3 1/2, of blue\n    oval 3 x 2, left -1/2, of red, turn 20\n", "sky: circle")]
    [InlineData("  sky: panel 3 1/2 x 4 1/2, of blue\n    tag 2 x 3, of red\n    scallop 2, right 0, top 0, of navy\n", "sky: panel")]
    public void The_area_of_hidden_parts_agrees_with_a_count_of_squares(string pieces, string name)
    {
        const double finest = 0.25;
        const double margin = 6.35;
        var card = Laid.OnA2(pieces);
        var layer = card.Pieces[0];
        var covers = card.Pieces.Skip(1).Select(p => new Membership(p.TurnedOutline)).ToList();
        var own = new Membership(layer.TurnedOutline);
        var box = layer.TurnedOutline.Bounds;

        var hollow = Piece(pieces, name).Hollow;
        Assert.Equal(Counted(box.Left, box.Top, 128), hollow.Area, hollow.Area * 0.01);

        // The depth of a point changes by no more than the distance to the next point, so a square far from the edge counts entirely.
        double Counted(double left, double top, double side)
        {
            var within = Within(new(left + side / 2, top + side / 2));
            if (side <= finest || Math.Abs(within - margin) >= side * Math.Sqrt(0.5))
            {
                return within >= margin ? side * side : 0;
            }

            var half = side / 2;
            return Counted(left, top, half) + Counted(left + half, top, half) + Counted(left, top + half, half)
                + Counted(left + half, top + half, half);
        }

        double Within(Point point) => Math.Min(Depth(own, point), covers.Max(c => Depth(c, point)));

        static double Depth(Membership shape, Point point) => shape.Inside(point) ? shape.ToEdge(point) : -shape.ToEdge(point);
    }

    [Theory]
    [InlineData("star 3")]
    [InlineData("heart 3")]
    [InlineData("circle 3")]
    public void The_piece_for_a_smaller_layer_lies_within_the_removed_part(string shape)
    {
        var freed = Assert.Single(Piece($"  sky: panel 3 1/2 x 4 1/2, of blue\n    {shape}, of red\n", "sky: panel").Freed);
        Assert.True(freed.Outline.Covers(Outline.Rectangle(freed.Reusable.ToRect())));
    }

    [Fact]
    public void The_base_is_never_hollow() => Assert.Empty(Piece("  sky: panel 3 x 4, of blue\n", "base").Freed);

    /// <summary>Stars that lie on each other, whose outlines have many corners when they are moved inwards.</summary>
    private static string Beams(int stars) =>
        $"card \"Beams\"\nbase 12 x 12, fold left, of white\nfront\n  {stars} star 8, 60 points, in a row, gap -7 15/16, of gold\n";

    private static IEnumerable<string> SaidOf(string card)
    {
        var findings = new FindingBag();
        CardTemplates.Make([Printed.Lay(card)], Hollow, new FolderFiles(fonts: new FontLibrary([])), findings);
        return findings.ToImmutable().Where(f => f.Code == "SK514").Select(f => f.Message);
    }

    [Fact]
    public void Beyond_the_limit_of_corners_the_further_layers_stay_whole()
    {
        var stars = Printed.Of(Beams(8), Hollow).Pieces.Where(p => p.Name.StartsWith("star", StringComparison.Ordinal)).ToList();
        // Nothing lies on the topmost of the five.
        Assert.Equal((3, 5), (stars.Where(s => s.Freed.Length > 0).Sum(s => s.Count), stars.Where(s => s.Freed.IsEmpty).Sum(s => s.Count)));
    }

    [Fact]
    public void A_note_says_how_many_layers_stay_whole() => Assert.Equal(
        ["4 layers of \"Beams\" are not cut hollow: the pieces on all its layers have too many corners to be compared."],
        SaidOf(Beams(8)));

    [Fact]
    public void Within_the_limit_of_corners_nothing_is_said() => Assert.Empty(SaidOf(Beams(3)));

    [Fact]
    public void A_part_gives_its_largest_rectangle_and_then_the_largest_of_the_rest()
    {
        // An L of two bars, 40 x 100 and 30 x 30 beside its foot.
        var bars = Drawn.Polygon(new(0, 0), new(40, 0), new(40, 70), new(70, 70), new(70, 100), new(0, 100));
        var part = new FreedPart(bars, bars.LargestRectangleInside()!.Value);
        Assert.Equal([new(Length.Millimetre(40), Length.Millimetre(100)), new Size(Length.Millimetre(30), Length.Millimetre(30))],
            part.Rectangles(new(true), Length.Millimetre(13)));
    }

    [Fact]
    public void Rectangles_too_small_to_keep_are_left_out()
    {
        var bar = Drawn.Rectangle(0, 0, 100, 12.5);
        Assert.Empty(new FreedPart(bar, bar.Bounds).Rectangles(new(true), Length.Millimetre(13)));
    }
}
