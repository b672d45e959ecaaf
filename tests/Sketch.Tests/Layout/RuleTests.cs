using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Rules of the language that the worked layouts do not cover; every value is worked out by hand from the rule.</summary>
public class RuleTests
{
    [Theory]
    [InlineData("panel, showing 1/8, showing bottom 1/2", "4 x 4 7/8", "1/8, 1/8")]
    [InlineData("panel, showing bottom 1/2, showing 1/8", "4 x 4 7/8", "1/8, 1/8")]
    [InlineData("panel, showing left 1/4", "4 x 5 1/2", "1/4, 0")]
    [InlineData("panel, showing left 1/4, showing top 1", "4 x 4 1/2", "1/4, 1")]
    [InlineData("panel full x 2, showing left 1/4", "4 x 2", "1/4, 1 3/4")]
    [InlineData("panel 2 x 3, showing left 1/4, showing right 2", "2 x 3", "1/4, 1 1/4")]
    [InlineData("panel full x share 1/2, showing 1/4, left 1", "3 x 2 1/2", "1, 1/4")]
    public void Showing_applies_to_the_sides_that_it_names(string panel, string size, string place) =>
        Laid.OnA2($"  {panel}, of red").HasSizeAndPlace("front/panel", size, place);

    [Fact]
    public void Showing_sets_the_box_of_a_text_and_keeps_its_letters()
    {
        var text = Laid.OnA2("  text \"ahoy\", showing 1/2").Piece("front/text");
        Assert.Equal(Measure.Size("3 1/4 x 4 1/2"), text.Box.Size);
        Assert.Equal(Length.Inch(0, 3, 16), text.Words!.LetterHeight);
    }

    [Theory]
    [InlineData("strip full x 1, left 0", "0", "0")]
    [InlineData("strip full x 1, left 1/4", "1/16", "0")]
    [InlineData("strip full x 1, left -1/4, right 1/8", "0", "1/16")]
    [InlineData("strip full x 1, showing left 1/4", "1/16", "0")]
    public void The_mat_of_a_full_strip_shows_where_the_strip_has_a_distance(string strip, string left, string right) =>
        Laid.OnA2($"  {strip}, of red\n    mat +1/8, of blue").ShowsBorder("front/strip/mat", left, "1/16", right, "1/16");

    [Theory]
    [InlineData("panel, of pinkk", "pinkk")]
    [InlineData("sky: panel 3 x 3, of red\n  mat 1/8, of nvy", "nvy")]
    [InlineData("panel, of red\n  star 2, of glod", "glod")]
    [InlineData("strip \"ahoy\", of red, ink nvy", "nvy")]
    public void An_unknown_paper_is_reported_even_if_the_piece_has_no_size(string pieces, string word) =>
        Assert.StartsWith($"'{word}' is neither", Assert.Single(Found.On(pieces), f => f.Code == "SK210")
            .Message, StringComparison.Ordinal);

    [Fact]
    public void A_pattern_after_its_colour_is_answered_with_the_order_to_write() => Assert.Equal(
        "Write the pattern before its colours: role sea: waves blue.",
        Assert.Single(Found.In("card \"Test\"\nbase A2, of white\nrole sea: blue waves\nfront\n  star 1, of sea\n")).Hint);

    [Theory]
    [InlineData("base A2, of any offcut\nfront\n  star 1, of red")]
    [InlineData("base A2, of white\nfront\n  star 1, of any offcut")]
    [InlineData("base A2, of white\nfront\n  star, of any offcut")]
    [InlineData("base A2, of white\nfront\n  2 star 1, in a row, of red and any offcut")]
    [InlineData("base A2, of white\nfront\n  strip 2 x 1 \"ahoy\", of red, ink any offcut")]
    [InlineData("base A2, of white\nfront\n  star 1, of red\nenvelope US A2, of any offcut")]
    public void Any_offcut_on_a_piece_gets_a_hint_with_the_lines_to_write(string lines)
    {
        var findings = Compiler.Compile(new("card.card", $"card \"Lamp day\"\n{lines}\n"), new TestWorld()).Findings;
        var finding = Assert.Single(findings, f => f.Code == "SK115");
        Assert.Equal("Write role scrap: any offcut above the faces, and of scrap here.", finding.Hint);
    }

    [Fact]
    public void A_misspelt_pattern_gets_the_nearest_one_as_a_hint() =>
        Assert.Equal("Did you mean plaid?", Assert.Single(Found.On("panel 3 x 3, of plaidd")).Hint);

    [Fact]
    public void Contradictory_sizes_are_reported_with_both_lines_and_values()
    {
        var finding = Assert.Single(
            Found.On("panel 2 x 3, of red\n  mat +1/8, of blue\n  mat 2 1/2 x 3 1/8, border 1/8, of cream"), f =>
                f.Message.Contains("width", StringComparison.Ordinal));
        Assert.Equal("The width of the panel of line 4 is given twice and differs: line 4 says 2 in and line 6 2 1/2 in, with 3/8 in "
            + "of border between them.", finding.Message);
    }

    [Theory]
    [InlineData("share 1/3", "share 2/3")]
    [InlineData("share 1/7", "share 6/7")]
    [InlineData("share 5/11", "share 6/11")]
    public void Shares_that_add_up_to_a_whole_fill_it_to_the_nanometre(string one, string other)
    {
        var card = Laid.OnA2($"  a: panel full x {one}, top 0, of red\n  b: panel full x {other}, bottom 0, of red");
        Assert.InRange((card.Piece("front/a").Box.Bottom - card.Piece("front/b").Box.Top).Abs().Nanometres, 0, 1);
    }

    [Theory]
    [InlineData("spread edge to edge", "0", "1 5/8", "3 1/4")]
    [InlineData("spread edge to edge, left 1/4, right 1/4", "1/4", "1 5/8", "3")]
    [InlineData("gap 1/8, lower right 0", "1", "2 1/8", "3 1/4")]
    [InlineData("gap -1/4, left 0", "0", "3/4", "1 1/2")]
    [InlineData("step down 1/4, left 0, top 0", "0", "1", "2")]
    public void Three_squares_lie_in_a_row(string clauses, params string[] lefts)
    {
        var card = Laid.OnA2($"  3 square 1, in a row, {clauses}, of red");
        Assert.Equal(lefts.Select(Measure.Length), Enumerable.Range(1, 3).Select(i => card.Piece($"front/square[{i}]").Box.Left));
    }

    [Fact]
    public void Each_copy_of_a_row_with_a_step_down_is_lower()
    {
        var card = Laid.OnA2("  3 square 1, in a row, step down 1/4, left 0, top 0, of red");
        Assert.Equal(["0", "1/4", "1/2"], Enumerable.Range(1, 3).Select(i => LengthFormat.Ruler(card.Piece($"front/square[{i}]").Box.Top)));
    }

    [Fact]
    public void A_step_down_on_its_own_makes_a_column() =>
        Laid.OnA2("  3 square 1, step down 1/4, upper left 0, of red").HasPlace("front/square[3]", "0, 2 1/2");

    [Fact]
    public void The_second_of_two_copies_is_a_step_below_the_first() =>
        Laid.OnA2("  2 square 1, step down 1/4, upper left 0, of red").HasPlace("front/square[2]", "0, 1 1/4");

    [Theory]
    [InlineData("square 1, left 1, right of mid, of red", "2 clauses place the square of line 5 from left to right.")]
    [InlineData("square 1, top 1, over bottom of mid, of red", "2 clauses place the square of line 5 from top to bottom.")]
    [InlineData("square 1, below mid, over bottom of mid, of red", "2 clauses place the square of line 5 from top to bottom.")]
    [InlineData("square 1, top 1, below mid, over bottom of mid, of red", "3 clauses place the square of line 5 from top to bottom.")]
    public void A_piece_has_one_place_in_each_direction(string piece, string message) => Assert.Equal(message,
        Assert.Single(Found.On($"mid: square 1, of red\n{piece}"), f => f.Kind == FindingCatalogue.PlacedTwice).Message);

    [Theory]
    [InlineData("", "1/4")]
    [InlineData(", lined up top", "0")]
    [InlineData(", lined up bottom", "1/2")]
    public void Smaller_copies_are_centred_or_lined_up(string clause, string top) =>
        Laid.OnA2($"  2 square 1, upper left 0{clause}, of red\n    item 2: 1/2").HasPlace("front/square[2]", $"1, {top}");

    [Fact]
    public void A_copy_can_be_shifted_out_of_its_row()
    {
        var card = Laid.OnA2("  2 square 1, upper left 1/4, shift down 1, of red\n    item 2: shift up 1/8");
        card.HasPlace("front/square[1]", "1/4, 1 1/4");
        card.HasPlace("front/square[2]", "1 1/4, 1/8");
    }

    [Theory]
    [InlineData("left of mid by 1/8", "1/2, 2 1/4")]
    [InlineData("right of mid", "2 5/8, 2 1/4")]
    [InlineData("above mid by 1/4, right of mid by 1/8", "2 3/4, 1")]
    [InlineData("over top of mid, over left of mid", "1 1/8, 1 3/4")]
    [InlineData("over right of mid", "2 1/8, 2 1/4")]
    [InlineData("around mid", "1 5/8, 2 1/4")]
    [InlineData("measured from mid, left 0, top 0", "1 5/8, 2 1/4")]
    [InlineData("along top of mid", "1 5/8, 2 1/4")]
    public void A_one_inch_square_is_placed_relative_to_another(string place, string at) =>
        Laid.OnA2($"  mid: square 1, of red\n  it: square 1, {place}, of red").HasPlace("front/it", at);

    [Fact]
    public void A_piece_with_several_mats_under_a_neighbour_is_drawn_before_its_mats() => Assert.Equal(
        ["front/a/mat", "front/a", "front/b/mat", "front/b", "front/c"],
        Laid.OnA2("  b: square 1, of red\n    mat, of red\n  a: square 1, tucked under b, of red\n    mat, of red\n  c: square 1, of red")
            .Order());

    [Fact]
    public void A_window_through_cuts_every_layer_beneath()
    {
        var card = Laid.OnA2("  a: panel 3 x 3, of red\n    mat +1/8, of red\n    b: panel 2 x 2, of red\n      window 1 x 1, through");
        const double hole = 25.4 * 25.4;
        Assert.Equal(8 * hole, card.Piece("front/a").Outline.Area, 3);
        Assert.Equal((3.125 * 3.125 - 1) * hole, card.Piece("front/a/mat").Outline.Area, 3);
        Assert.Equal(3 * hole, card.Piece("front/a/b").Outline.Area, 3);
        Assert.Equal((4.25 * 5.5 - 1) * hole, card.Base.Outline.Area, 3);
    }

    [Fact]
    public void Many_windows_cut_the_sum_of_their_areas() => Assert.Equal(
        (4 * 5 - 40 * 0.25 * 0.25) * 25.4 * 25.4,
        Laid.OnA2("  panel 4 x 5, of red\n    40 window 1/4 x 1/4, in a grid 8 across, gap 1/8").Piece("front/panel").Outline.Area, 3);

    [Fact]
    public void A_window_in_a_turned_piece_turns_with_it()
    {
        var card = Laid.OnA2("  panel 3 x 3, turn 30, of red\n    window 1 x 1, upper left 1/4");
        var hole = card.Piece("front/panel").Outline.Contours[1];
        Assert.Equal(card.Piece("front/panel").Box.Left.Millimetres + 6.35, new Outline([hole]).Bounds.Left, 3);
    }

    [Fact]
    public void Exchanged_roles_reach_parts_at_any_depth()
    {
        var card = Laid.Out("card \"x\"\nbase A2, of white\nrole deep: navy\npart light 1/2 x 1/2\n  star 1/2, of deep\npart lantern 1 "
            + "x 1\n  use light\nfront\n  use lantern, left 0\n  use lantern, right 0, with deep as red\n");
        Assert.Equal("deep", card.Piece("front/group/group/star").Paint.Role);
        Assert.Equal("red", card.Piece("front/group2/group/star").Paint.Role);
    }

    [Theory]
    [InlineData("envelope US A2", "5 3/4 x 4 3/8")]
    [InlineData("envelope", "5 3/4 x 4 3/8")]
    [InlineData("envelope 4 x 6", "6 x 4")]
    [InlineData("envelope C6", "162 mm x 114 mm")]
    public void An_envelope_is_landscape(string line, string size)
    {
        var face = Laid.Out($"card \"x\"\nbase A2, of white\n{line}\n").Find(FaceKind.Envelope)!;
        Assert.Equal(size.Contains("mm", StringComparison.Ordinal)
            ? new(Length.Millimetre(162), Length.Millimetre(114)) : Measure.Size(size), face.Size);
    }

    [Theory]
    [InlineData("envelope US A2, flap 2\nenvelope back\n  tape full x 1/2, over bottom of flap, of blue\n")]
    [InlineData("envelope back, flap 2\n  tape full x 1/2, over bottom of flap, of blue\n")]
    public void Pieces_can_be_placed_on_the_flap_of_the_envelope(string lines) =>
        Laid.Out($"card \"x\"\nbase A2, of white\n{lines}").HasSizeAndPlace("envelope-back/tape", "5 3/4 x 1/2", "0, 1 3/4");

    [Fact]
    public void What_lies_around_the_flap_lies_in_its_middle() =>
        Laid.Out("card \"x\"\nbase A2, of white\nenvelope back, flap 2\n  tape 1 x 1/2, around flap, of blue\n")
            .HasPlace("envelope-back/tape", "2 3/8, 3/4"); // (5 3/4 - 1)/2, (2 - 1/2)/2

    [Fact]
    public void What_is_measured_from_copies_is_as_large_as_all_of_them_with_their_gaps() =>
        Laid.OnA2("  row: 3 square 1, in a row, gap 1/8, of red\n  panel full x 1/4, measured from row, of blue")
            .HasSize("front/panel", "3 1/4 x 1/4");

    [Fact]
    public void A_frame_is_a_ring_of_the_given_width()
    {
        var frame = Laid.OnA2("  frame 1/4, showing 1/4, of gold").Piece("front/frame");
        Assert.Equal(Measure.Size("3 3/4 x 5"), frame.Box.Size);
        Assert.Equal((3.75 * 5 - 3.25 * 4.5) * 25.4 * 25.4, frame.Outline.Area, 3);
    }

    [Fact]
    public void Showing_with_copies_that_do_not_fill_it_is_reported() => Assert.All(
        Found.On("3 square 1, showing 1/8, of red"), f => Assert.Equal(FindingCatalogue.SizesContradict, f.Kind));

    [Fact]
    public void Parts_that_double_past_the_limit_of_pieces_are_left_out_entirely()
    {
        var parts = string.Concat(Enumerable.Range(1, 20).Select(i => $"part p{i} 1 x 1\n  use p{i - 1}\n  use p{i - 1}\n"));
        var compilation = Compiler.Compile(
            new SourceText("card.card",
                $"card \"Chain\"\nbase A2, of white\npart p0 1 x 1\n  star 1/2, of red\n{parts}front\n  square 1, of blue\n  use p20\n"),
                    new TestWorld());

        var finding = Assert.Single(compilation.Findings);
        Assert.Equal((FindingCatalogue.TooManyPieces, 67), (finding.Kind, finding.Location.Start.Line));
        Assert.Equal(["front/square"], compilation.Card!.Pieces.Select(p => p.Path.ToString()));
    }

    [Theory]
    [InlineData("same size as")]
    [InlineData("1/64 x 1/64, right of")]
    public void A_chain_of_pieces_that_refer_to_each_other_has_a_limit(string clause)
    {
        string Chain(int links) => string.Concat(Enumerable.Range(0, links).Select(i => $"p{i}: panel {clause} p{i + 1}, of red\n"))
            + $"p{links}: panel 1/64 x 1/64, left 0, of red";
        Assert.Contains(Found.On(Chain(Limits.Chain)), f => f.Kind == FindingCatalogue.LongChain);
        Assert.DoesNotContain(Found.On(Chain(Limits.Chain - 1)), f => f.Kind == FindingCatalogue.LongChain);
    }

    [Fact]
    public void Parts_in_parts_have_a_limit_of_depth()
    {
        var parts = string.Concat(Enumerable.Range(1, Limits.DepthWithParts + 1).Select(i => $"part p{i} 1 x 1\n  use p{i - 1}\n"));
        var card = $"card \"Chain\"\nbase A2, of white\npart p0 1 x 1\n  star 1/2, of red\n{parts}"
            + $"front\n  use p{Limits.DepthWithParts + 1}\n";
        Assert.Contains(Found.In(card), f => f.Kind == FindingCatalogue.TooDeep);
    }

    [Fact]
    public void The_pieces_of_a_card_without_a_usable_base_are_checked_too() => Assert.Contains(
        Found.In("card \"Card\"\nbase -4 x 5, of white\nfront\n  star 1, of rde\n"),
        f => f.Message.StartsWith("'rde' is neither", StringComparison.Ordinal));

    [Fact]
    public void A_base_of_negative_size_is_one_finding() =>
        Assert.Equal("-4 is negative, which is not allowed here.",
            Assert.Single(Found.In("card \"Card\"\nbase -4 x 5, of white\nfront\n  star 1, of red\n")).Message);
}
