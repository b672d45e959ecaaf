using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Sizes of mats and layers, as makers calculate them and as the language defines them.</summary>
public class MatTests
{
    /// <summary>Common practice, no source: "an eighth mat" is an eighth larger in total.</summary>
    [Fact]
    public void An_eighth_mat_of_a_2_5_8_piece_is_2_3_4() =>
        Laid.OnA2("  pic: square 2 5/8, of cream\n    mat +1/8, of navy").IsCut("front/pic/mat", "2 3/4 x 2 3/4");

    /// <summary>Common practice, no source.</summary>
    [Fact]
    public void A_layer_showing_an_eighth_on_an_A2_card_is_4_by_5_1_4() =>
        Laid.OnA2("  panel, showing 1/8, of blue").IsCut("front/panel", "4 x 5 1/4");

    /// <summary>Common practice, no source.</summary>
    [Fact]
    public void A_panel_with_that_layer_as_its_mat_is_3_7_8_by_5_1_8() =>
        Laid.OnA2("  panel, showing 1/8, of blue\n    mat +1/8, of navy").IsCut("front/panel", "3 7/8 x 5 1/8");

    /// <summary>Layers of 1/8 and of 1/4 less than the card in total: a hobby table of card layers.</summary>
    [Theory]
    [InlineData("A1", "3 3/8 x 4 3/4", "3 1/4 x 4 5/8")]
    [InlineData("A2", "4 1/8 x 5 3/8", "4 x 5 1/4")]
    [InlineData("US A6", "4 3/8 x 6 1/8", "4 1/4 x 6")]
    [InlineData("US A7", "4 7/8 x 6 7/8", "4 3/4 x 6 3/4")]
    [InlineData("US A8", "5 1/8 x 7 3/4", "5 x 7 5/8")]
    [InlineData("A9", "5 3/8 x 8 3/8", "5 1/4 x 8 1/4")]
    [InlineData("no10", "3 3/4 x 9 1/8", "3 5/8 x 9")]
    [InlineData("6 x 6", "5 7/8 x 5 7/8", "5 3/4 x 5 3/4")]
    public void Two_layers_on_a_card_have_the_published_sizes(string size, string eighth, string quarter)
    {
        var card = Laid.Out($"card \"Test\"\nbase {size}, fold left, of white\nfront\n  panel, showing 1/16, of blue\n  panel, showing "
            + "1/8, of navy");
        card.HasSize("front/panel", eighth);
        card.HasSize("front/panel2", quarter);
    }

    /// <summary>Thin, thick, thin: a hobby article gives mats of 1/8, 1/4 and 1/8.</summary>
    [Theory]
    [InlineData("front/pic/mat", "3 1/8 x 2 1/8", "1/16")]
    [InlineData("front/pic/mat2", "3 3/8 x 2 3/8", "1/8")]
    [InlineData("front/pic/mat3", "3 1/2 x 2 1/2", "1/16")]
    public void Mats_add_up_outwards(string path, string size, string border)
    {
        var card = Laid.OnA2("  pic: panel 3 x 2, of cream\n    mat +1/8, of navy\n    mat +1/4, of white\n    mat +1/8, of navy");
        card.HasSize(path, size);
        card.ShowsBorder(path, border);
    }

    [Theory]
    [InlineData("mat, border 1/16", "1/16", "1/16", "1/16", "1/16", "3 1/8 x 2 1/8")]
    [InlineData("mat border 1/16", "1/16", "1/16", "1/16", "1/16", "3 1/8 x 2 1/8")] // the comma before the first clause may be left out
    [InlineData("mat +1/8 x 1/4", "1/16", "1/8", "1/16", "1/8", "3 1/8 x 2 1/4")] // across and down, in total
    [InlineData("mat 3 1/4 x 2 1/4", "1/8", "1/8", "1/8", "1/8", "3 1/4 x 2 1/4")]
    [InlineData("mat", "1/16", "1/16", "1/16", "1/16", "3 1/8 x 2 1/8")] // the default: 1/8 in total
    public void A_border_is_written_as_a_total_or_per_side(string mat, string left, string top, string right, string bottom, string size)
    {
        var card = Laid.OnA2($"  pic: panel 3 x 2, of cream\n    {mat}, of navy");
        card.ShowsBorder("front/pic/mat", left, top, right, bottom);
        card.HasSize("front/pic/mat", size);
    }

    [Fact]
    public void One_side_of_a_mat_can_be_wider()
    {
        var card = Laid.OnA2("  pic: panel 3 x 2, of cream\n    mat, border 1/16, border bottom 1/2, of navy");
        card.ShowsBorder("front/pic/mat", "1/16", "1/16", "1/16", "1/2");
        card.HasSize("front/pic/mat", "3 1/8 x 2 9/16"); // 2 + 1/16 + 1/2
    }

    [Theory]
    [InlineData("left 1/4, top 1/2", "5/16, 9/16")] // the mat keeps the distance
    [InlineData("right 1/4, bottom 1/2", "15/16, 2 15/16")] // 4 1/4 - 1/4 - 1/16 - 3, 5 1/2 - 1/2 - 1/16 - 2
    [InlineData("upper left 1/4", "5/16, 5/16")]
    [InlineData("centre", "5/8, 1 3/4")]
    [InlineData("top 0", "5/8, 1/16")]
    public void Distances_refer_to_the_outermost_layer(string place, string at) =>
        Laid.OnA2($"  pic: panel 3 x 2, {place}, of cream\n    mat +1/8, of navy").HasPlace("front/pic", at);

    [Fact]
    public void The_distance_of_a_child_is_from_the_panel_without_its_mat() =>
        Laid.OnA2("  pic: panel 3 x 2, left 1/4, top 1/2, of cream\n    mat +1/4, of navy\n    square 1, left 1/8, top 1/8, of red")
            .HasPlace("front/pic/square", "1/2, 3/4"); // 1/4 + 1/8 + 1/8, 1/2 + 1/8 + 1/8

    [Fact]
    public void The_mat_of_a_full_strip_shows_only_above_and_below()
    {
        var card = Laid.OnA2("  strip full x 1/2, bottom 1/4, of kraft\n    mat +1/8, of navy");
        card.HasSizeAndPlace("front/strip", "4 1/4 x 1/2", "0, 4 11/16"); // 5 1/2 - 1/4 - 1/16 - 1/2
        card.HasSizeAndPlace("front/strip/mat", "4 1/4 x 5/8", "0, 4 5/8");
        card.ShowsBorder("front/strip/mat", "0", "1/16", "0", "1/16");
    }

    [Fact]
    public void The_mat_of_a_full_strip_also_shows_at_an_end_with_a_distance()
    {
        var card = Laid.OnA2("  strip full x 1/2, left 1/2, bottom 1/4, of kraft\n    mat +1/8, of navy");
        card.HasSizeAndPlace("front/strip/mat", "3 3/4 x 5/8", "1/2, 4 5/8"); // 4 1/4 - 1/2
        card.HasSizeAndPlace("front/strip", "3 11/16 x 1/2", "9/16, 4 11/16"); // less 1/16 on the left
        card.ShowsBorder("front/strip/mat", "1/16", "1/16", "0", "1/16");
    }
}
