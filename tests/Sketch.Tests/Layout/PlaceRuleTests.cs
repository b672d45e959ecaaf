using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Places of pieces on a front of 4 1/4 x 5 1/2.</summary>
public class PlaceRuleTests
{
    [Theory]
    [InlineData("", "1 5/8, 2 1/4")] // (4 1/4 - 1)/2, (5 1/2 - 1)/2
    [InlineData(", left 1/4", "1/4, 2 1/4")]
    [InlineData(", right 1/4", "3, 2 1/4")]
    [InlineData(", bottom -1/4", "1 5/8, 4 3/4")] // beyond the edge
    [InlineData(", lower right 3/8", "2 7/8, 4 1/8")]
    [InlineData(", shift right 1/8", "1 3/4, 2 1/4")]
    [InlineData(", upper left 1/4, shift down 1/2", "1/4, 3/4")]
    public void A_one_inch_square_lies_where_it_is_placed(string place, string at) =>
        Laid.OnA2($"  square 1{place}, of red").HasPlace("front/square", at);

    // Beside a panel of 2 x 2 with a mat, outermost 2 1/4 x 2 1/4 from 1/2 to 2 3/4 across and from 1 to 3 1/4 down.
    [Theory]
    [InlineData("above pic by 1/8", "1 3/8, 3/8")] // middle of pic 1 5/8, less 1/4; 1 - 1/8 - 1/2
    [InlineData("below pic by 1/8", "1 3/8, 3 3/8")]
    [InlineData("right of pic by 1/4", "3, 1 7/8")] // 2 3/4 + 1/4; middle of pic 2 1/8, less 1/4
    [InlineData("left of pic by 0", "0, 1 7/8")]
    [InlineData("above pic by 1/8, left 1", "1, 3/8")]
    [InlineData("over bottom of pic, left 0", "0, 3")] // 3 1/4 - 1/4
    [InlineData("over right of pic, top 0", "2 1/2, 0")] // 2 3/4 - 1/4
    [InlineData("measured from pic, upper left 1/8", "3/4, 1 1/4")] // that piece's own edge: 5/8 + 1/8, 1 1/8 + 1/8
    public void A_half_inch_square_is_placed_relative_to_a_panel_with_a_mat(string place, string at) =>
        Laid.OnA2($"  pic: panel 2 x 2, left 1/2, top 1, of cream\n    mat +1/4, of navy\n  square 1/2, {place}, of red")
            .HasPlace("front/square", at);

    [Fact]
    public void A_piece_with_an_uneven_mat_is_centred_by_the_edges_of_the_mat() =>
        Laid.OnA2("  panel 3 x 2, of cream\n    mat, border 1/16, border bottom 1/2, of navy")
            .HasPlace("front/panel/mat", "9/16, 1 15/32"); // (4 1/4 - 3 1/8)/2; (5 1/2 - 2 9/16)/2

    [Theory]
    [InlineData("turn 5", 5)]
    [InlineData("turn right 5", 5)]
    [InlineData("turn left 5", -5)]
    [InlineData("turn -5", -5)]
    public void A_turn_without_a_direction_is_to_the_right(string turn, double degrees) =>
        Assert.Equal(degrees, Laid.OnA2($"  square 1, {turn}, of red").Piece("front/square").Turn);

    [Fact]
    public void A_place_is_that_of_the_unturned_piece() =>
        Laid.OnA2("  square 1, left 1/4, top 1/4, turn 45, of red").HasPlace("front/square", "1/4, 1/4");

    // Parts of a column: 5 1/2 - 2 x 1/8 - 2 x 1/4 = 4 3/4 by three.
    [Theory]
    [InlineData(1, "1/8, 1/8")]
    [InlineData(2, "1/8, 1 23/24")] // 1/8 + 1 7/12 + 1/4
    [InlineData(3, "1/8, 3 19/24")]
    public void A_missing_size_in_a_column_is_an_equal_part(int number, string at) =>
        Laid.OnA2("  3 panel, showing 1/8, in a column, gap 1/4, of blue").HasPlace($"front/panel[{number}]", at);

    [Theory]
    [InlineData("spread", "5/16, 1 5/8, 2 15/16")] // 4 1/4 - 3 = 1 1/4, four gaps of 5/16
    [InlineData("spread edge to edge", "0, 1 5/8, 3 1/4")] // two gaps of 5/8
    [InlineData("gap 1/8", "1/2, 1 5/8, 2 3/4")] // block 3 1/4
    public void A_row_of_three_squares(string spacing, string lefts)
    {
        var card = Laid.OnA2($"  3 square 1, in a row, {spacing}, top 0, of red");
        var expected = lefts.Split(", ");
        for (var i = 0; i < 3; i++)
        {
            card.HasPlace($"front/square[{i + 1}]", $"{expected[i]}, 0");
        }
    }

    [Fact]
    public void Copies_are_in_a_row_by_default() =>
        Laid.OnA2("  2 square 1, gap 1/4, top 0, of red").HasPlace("front/square[2]", "2 1/4, 0"); // 1 + 1 + 1/4

    [Fact]
    public void A_grid_is_written_as_columns_by_rows() =>
        Laid.OnA2("  6 square 1, in a grid 3 x 2, gap 1/8, of red")
            .HasPlace("front/square[4]", "1/2, 2 13/16"); // (4 1/4 - 3 1/4)/2; (5 1/2 - 2 1/8)/2 + 1 1/8

    [Fact]
    public void A_piece_tucked_under_its_parent_is_drawn_before_the_mats_of_the_parent() => Assert.Equal(
        ["front/pic/tag", "front/pic/mat", "front/pic"],
        Laid.OnA2("  pic: panel 2 x 2, of cream\n    mat +1/8, of navy\n    tag 1 x 2, top -1, tucked under, of kraft").Order());

    [Fact]
    public void Numbers_of_unnamed_pieces_skip_names_in_use() => Assert.Equal(
        ["front/square", "front/square2", "front/square3"],
        Laid.OnA2("  square 1, of red\n  square2: square 1, left 0, of blue\n  square 1, right 0, of navy").Order());

    [Fact]
    public void A_line_along_an_edge_may_end_at_a_distance_from_both_sides() =>
        Laid.OnA2("  line 1/16, along top, left 1/4, right 1/2, of red").HasSizeAndPlace("front/line", "3 1/2 x 1/16", "1/4, 0");

    [Fact]
    public void A_line_along_the_edge_of_a_piece_lies_on_the_piece_and_not_on_its_mat() =>
        Laid.OnA2("  pic: panel 2 x 2, left 1/2, top 1, of cream\n    mat +1/4, of navy\n  line 1/16, along top of pic, of red")
            .HasSizeAndPlace("front/line", "2 x 1/16", "5/8, 1 1/8");

    [Fact]
    public void A_frame_around_a_piece_with_an_uneven_mat_lies_around_the_piece() =>
        Laid.OnA2("  pic: panel 2 x 2, left 1/2, top 1, of cream\n    mat, border 1/8, border bottom 1/2, of navy\n"
            + "  frame 1/8, around pic, of red").HasSizeAndPlace("front/frame", "2 1/4 x 2 1/4", "1/2, 1");

    [Theory]
    [InlineData(3, null)]
    [InlineData(5, "5 copies need 5 in, but there are 4 1/4 in, so they overlap.")]
    public void Copies_that_are_spread_need_room(int count, string? finding) =>
        Assert.Equal(finding, Found.On($"{count} square 1, in a row, spread, of red").SingleOrDefault()?.Message);
}
