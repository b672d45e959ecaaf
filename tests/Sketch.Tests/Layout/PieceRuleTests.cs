using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Sizes, wraps, turns, foam, windows and copies by the language's rules, on a front of 4 1/4 x 5 1/2.</summary>
public class PieceRuleTests
{
    [Theory]
    [InlineData("circle 2", "2 x 2")]
    [InlineData("circle 2 wide", "2 x 2")]
    [InlineData("square 1 1/2 high", "1 1/2 x 1 1/2")]
    [InlineData("oval 3 x 2", "3 x 2")]
    [InlineData("panel 2 x share 1/2", "2 x 2 3/4")]
    [InlineData("panel 2 x share 1/2, top 1/2", "2 x 2 1/2")] // half of what the distances leave
    [InlineData("strip full x 1/2, left 1/4, right 1/2", "3 1/2 x 1/2")]
    [InlineData("line 1/16, along bottom", "4 1/4 x 1/16")]
    [InlineData("line 1/16, along right", "1/16 x 5 1/2")]
    public void A_piece_has_its_written_size(string piece, string size) =>
        Assert.Equal(Measure.Size(size), Assert.Single(Laid.OnA2($"  {piece}, of red").Pieces).Box.Size);

    [Fact] // across the corners; the height of a regular hexagon is √3/2 of that
    public void A_hexagon_is_measured_across_its_corners() =>
        Assert.Equal(2 * 25.4 * Math.Sqrt(3) / 2, Laid.OnA2("  hexagon 2, of red").Piece("front/hexagon").Box.Height.Millimetres, 0.0001);

    [Theory]
    [InlineData("hexagon 2", Sizing.Written, Sizing.Follows)]
    [InlineData("hexagon 2 wide", Sizing.Written, Sizing.Follows)]
    [InlineData("hexagon 2 high", Sizing.Follows, Sizing.Written)]
    public void A_piece_of_fixed_proportions_has_one_written_side(string piece, Sizing width, Sizing height) =>
        Assert.Equal((width, height), Laid.OnA2($"  {piece}, of red").Piece("front/hexagon").Sizing);

    [Fact]
    public void A_mat_with_a_width_of_its_own_keeps_the_proportions_of_its_piece()
    {
        var mat = Laid.OnA2("  hexagon 2, of red\n    mat 2 1/2, of navy").Piece("front/hexagon/mat").Box;
        Assert.Equal(2.5 * 25.4, mat.Width.Millimetres, 0.0001);
        Assert.Equal(2.5 * 25.4 * Math.Sqrt(3) / 2, mat.Height.Millimetres, 0.0001);
    }

    [Theory]
    [InlineData("strip full x 1/2, wrap 1/2", "5 1/4 x 1/2")]
    [InlineData("strip 1/2 x full, wrap 1/2", "1/2 x 6 1/2")] // the full axis
    [InlineData("strip 3 x 1/2, wrap 1/4", "3 1/2 x 1/2")] // the longer axis
    [InlineData("line 1/16, along left, wrap 1/2", "1/16 x 6 1/2")]
    public void A_wrap_adds_paper_at_both_ends(string piece, string cut) =>
        Assert.Equal(Measure.Size(cut), Assert.Single(Laid.OnA2($"  {piece}, of red").Pieces).Cut);

    [Theory]
    [InlineData("right", "4 3/16, 0", "1/16 x 5 1/2")] // 4 1/4 - 1/16
    [InlineData("bottom", "0, 5 7/16", "4 1/4 x 1/16")]
    public void A_line_along_an_edge_lies_inside_the_face(string edge, string place, string size) =>
        Laid.OnA2($"  line 1/16, along {edge}, of silver").HasSizeAndPlace("front/line", size, place);

    [Theory]
    [InlineData("2", 4)]
    [InlineData("2 1/4", 4)]
    [InlineData("2 7/16", 4)]
    [InlineData("2 1/2", 5)]
    public void Lines_to_write_on_begin_a_spacing_below_the_top_and_end_at_the_bottom_at_the_latest(string height, int count)
    {
        var ruled = Laid.OnA2($"  ruled 3 x {height}, lines 1/2 apart, upper left 1").Piece("front/ruled");
        var bottoms = ruled.Outline.Contours.Select(c => c.Bounds.Bottom).ToArray();
        Assert.Equal(count, bottoms.Length);
        Assert.All(bottoms, (b, i) => Assert.Equal(25.4 * (1.5 + i * 0.5), b, 0.001));
    }

    [Theory]
    [InlineData("frame 1 3/4", 3.75 * 5 - 0.25 * 1.5)]
    [InlineData("frame 1 7/8", 3.75 * 5)] // half of its width
    [InlineData("frame 2", 3.75 * 5)]
    public void A_frame_has_an_opening_as_long_as_its_sides_leave_one(string frame, double squareInches) =>
        Assert.Equal(squareInches * 25.4 * 25.4, Laid.OnA2($"  {frame}, showing 1/4, of gold").Piece("front/frame").Outline.Area, 0.01);

    [Fact]
    public void A_mat_of_a_circle_is_a_circle() =>
        Laid.OnA2("  circle 2, of red\n    mat +1/8, of navy").HasSizeAndPlace("front/circle/mat", "2 1/8 x 2 1/8", "1 1/16, 1 11/16");

    [Fact]
    public void Heights_of_foam_add_up()
    {
        var card = Laid.OnA2("  pic: panel 3 x 2, on foam, of cream\n    square 1, raised 1 mm, of red\n      circle 1/2, of navy");
        card.IsRaised("front/pic/square/circle", "3 mm");
    }

    [Fact]
    public void Foam_can_be_written_with_another_height() =>
        Laid.OnA2("  square 1, on foam 3 mm, of red").IsRaised("front/square", "3 mm");

    [Fact]
    public void A_turned_piece_turns_its_children_with_it()
    {
        // 3 x 1 in the middle of the front, a quarter turn to the right: its left end is now at the top.
        var child = Laid.OnA2("  strip 3 x 1, turn 90, of cream\n    square 1, left 0, of red").Piece("front/strip/square").TurnedOutline;
        var points = child.Contours[0].Segments.Select(s => s.End).ToArray();
        Assert.Equal((1.625 * 25.4, 1.25 * 25.4), (points.Min(p => p.X), points.Min(p => p.Y)), (a, b) => // 2 1/8 - 1/2, 2 3/4 - 1 1/2
            Math.Abs(a.Item1 - b.Item1) < 0.0001 && Math.Abs(a.Item2 - b.Item2) < 0.0001);
    }

    [Theory]
    [InlineData("window circle 1", "front/pic", 2)]
    [InlineData("window circle 1", "front/pic/mat", 2)] // the mats too
    [InlineData("window circle 1, through", "front/pic", 2)]
    public void A_window_cuts_the_piece_that_it_lies_on(string window, string path, int contours) =>
        Assert.Equal(contours, Laid.OnA2($"  pic: panel 3 x 2, of cream\n    mat +1/8, of navy\n    {window}").Piece(path)
            .Outline.Contours.Length);

    [Theory]
    [InlineData("window circle 1", 1)]
    [InlineData("window circle 1, through", 2)]
    public void Only_a_window_through_also_cuts_the_base(string window, int contours) =>
        Assert.Equal(contours, Laid.OnA2($"  pic: panel 3 x 2, of cream\n    {window}").Base.Outline.Contours.Length);

    [Fact]
    public void Alternating_colours_fill_a_grid_in_reading_order() => Assert.Equal(
        ["red", "blue", "navy", "red", "blue", "navy"],
        Laid.OnA2("  6 square 1/2, in a grid 2 across, of red and blue and navy, in turn").RolesOf("front/square"));

    [Fact]
    public void Several_copies_can_be_changed_together() => Assert.Equal(
        ["red", "blue", "blue", "red"],
        Laid.OnA2("  4 square 1/2, in a row, of red\n    item 2 and 3: of blue").RolesOf("front/square"));

    [Theory]
    [InlineData(2, "2 1/4, 1 1/2")] // 1 1/2 + 1/2 + 1/4
    [InlineData(3, "1 1/2, 2 1/2")] // 1 1/2 + 1/2 + 1/2
    public void A_grid_can_have_two_gaps(int number, string place) => // 1 1/4 across and 2 1/2 down, so from 1 1/2, 1 1/2
        Laid.OnA2("  6 square 1/2, in a grid 2 across, gap 1/4 x 1/2, of red").HasPlace($"front/square[{number}]", place);

    [Fact]
    public void A_mat_is_cut_for_every_copy() => Assert.Equal(
        ["front/square[1]/mat", "front/square[1]", "front/square[2]/mat", "front/square[2]"],
        Laid.OnA2("  2 square 1, in a row, of red\n    mat +1/8, of navy").Order());

    [Fact]
    public void The_gap_between_copies_is_between_their_mats() => // two of 1 1/8 with 1/4 between are 2 1/2
        Laid.OnA2("  2 square 1, in a row, gap 1/4, top 0, of red\n    mat +1/8, of navy")
            .HasPlace("front/square[2]", "2 5/16, 1/16"); // 7/8 + 1 3/8 + 1/16

    [Fact]
    public void A_piece_tucked_under_a_sibling_is_drawn_before_its_mats() => Assert.Equal(
        ["front/tag", "front/pic/mat", "front/pic"],
        Laid.OnA2("  pic: panel 2 x 2, of cream\n    mat +1/8, of navy\n  tag 1 x 2, top 1, tucked under pic, of kraft").Order());

    [Fact]
    public void A_part_can_be_used_many_times() => Assert.Equal(
        ["front/first/square", "front/second/square"],
        Laid.Out("card \"Test\"\nbase A2, of white\npart mark 1 x 1\n  square 1/2, of red\nfront\n  first: use mark, left 0\n  second: "
            + "use mark, right 0").Order());

    [Theory]
    [InlineData("  panel 2 x 2, left 1/4, right 1/4, of red")] // both only with full
    [InlineData("  pic: square 1, of red\n  pic: square 1, left 0, of blue")] // the same name twice
    [InlineData("  square 1, above pic by 1/4, of red")] // no such piece
    [InlineData("  a1: square 1, above b1 by 1/4, of red\n  b1: square 1, below a1 by 1/4, of red")] // a circle
    [InlineData("  a1: panel, same size as b1, of red\n  b1: panel, same size as a1, of red")]
    [InlineData("  oval 2, of red")] // an oval has no proportions of its own
    public void Nonsense_is_an_error(string pieces) => Assert.Contains(
        Compiler.Compile(new SourceText("card.card", $"card \"Test\"\nbase A2, fold left, of white\nfront\n{pieces}"),
            new TestWorld()).Findings,
        f => f.Severity == Severity.Error);

    [Fact]
    public void Too_many_letters_are_reported()
    {
        var words = new string('a', 10_000);

        var compilation = Compiler.Compile(
            new SourceText("card.card", $"card \"Test\"\nbase A2, of white\nfront\n  60 strip 3 x 1 \"{words}\", of red"),
                new TestWorld());

        Assert.Contains(compilation.Findings, f => f.Kind == FindingCatalogue.TooManyPieces
            && f.Message.Contains("letters", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2 x 2", 4 - 1.75 * 1.75)] // an eighth of an inch thick
    [InlineData("1/4 x 2", 0.5)] // nothing is left in the middle
    public void A_frame_of_a_width_and_a_height_is_an_eighth_of_an_inch_thick(string size, double area) =>
        Assert.Equal(area * 25.4 * 25.4, Laid.OnA2($"  frame {size}, of red").Piece("front/frame").Outline.Area, 1e-3);

    [Fact]
    public void A_thick_frame_around_a_small_room_has_a_hole() => Assert.Equal(
        25.4 * 25.4 * (4 - 0.25 * 0.25),
        Laid.Out("card \"Test\"\nbase 2 x 2, fold left, of white\nfront\n  frame 7/8, showing 0, of red").Piece("front/frame")
            .Outline.Area, 1e-3);

    [Theory]
    [InlineData("1 mm", 25)]
    [InlineData("0.2 mm", 127)]
    [InlineData("0.1 mm", 0)] // no lines that close can be written on
    public void Lines_are_written_down_to_a_tenth_of_a_millimetre_apart(string apart, int lines) => Assert.Equal(
        lines, Laid.OnA2($"  ruled 3 x 1, lines {apart} apart, of grey").Piece("front/ruled").Outline.Contours.Length);

    [Fact]
    public void A_piece_of_which_a_window_takes_half_is_finished_at_the_other_half()
    {
        var box = Laid.OnA2("  panel 2 x 2, left 1/2, top 1, of red\n    window 1 x 2, left 0").Piece("front/panel").Finished;
        Assert.Equal((1.5, 1.0, 1.0, 2.0), (box.Left.Inches, box.Top.Inches, box.Width.Inches, box.Height.Inches));
    }

    [Fact]
    public void Straight_words_are_as_high_as_their_letters() =>
        Laid.OnA2("  word \"ahoy ahoy ahoy\", letters 1/4, of red").HasSize("front/word", "2 4/5 x 1/4"); // 14 characters of 1/5

    [Fact]
    public void A_drawing_without_a_size_is_as_large_as_in_its_file() => Laid.Out(
        "card \"Test\"\nbase A2, fold left, of white\nfront\n  outline file \"boat.svg\", of red",
        new TestWorld().WithTriangle("boat.svg", 30, 20)).HasSize("front/outline", "30 mm x 20 mm");
}
