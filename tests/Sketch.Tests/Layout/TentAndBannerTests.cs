using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language.</summary>
public class TentAndBannerTests
{
    internal const string Text = """
        card "02 Tent and banner"
        base A2, landscape, fold top, of white
        front
          wide: panel 4 1/2 x 2 1/2, bottom 1/4, of blue
            line 1/16, along top, of silver, wrap 1/2
            line 1/16, along bottom, of silver, wrap 1/2
            3 gem 1/8, in a row, gap 1/16, right 1/4, of red
          pic: square 2 5/8, measured from wide, left -1/8, bottom 1/2, of cream
            mat 2 3/4, of navy
          banner 3 1/4 x 1/2 "Fair winds", over bottom of pic, left 1 1/2, swallowtail right, of kraft
          2 gem 1/8, in a row, gap 1/16, lower left 1/16, of red
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    [Theory]
    [InlineData("front/wide", "4 1/2 x 2 1/2", "1/2, 1 1/2")] // (5 1/2 - 4 1/2)/2; 4 1/4 - 1/4 - 2 1/2
    [InlineData("front/wide/line", "4 1/2 x 1/16", "1/2, 1 1/2")]
    [InlineData("front/wide/line2", "4 1/2 x 1/16", "1/2, 3 15/16")] // the bottom of wide is at 4; less 1/16
    [InlineData("front/wide/gem[1]", "1/8 x 1/8", "4 1/4, 2 11/16")] // 5 - 1/4 - (3/8 + 2/16); 1 1/2 + (2 1/2 - 1/8)/2
    [InlineData("front/wide/gem[2]", "1/8 x 1/8", "4 7/16, 2 11/16")] // + 1/8 + 1/16
    [InlineData("front/wide/gem[3]", "1/8 x 1/8", "4 5/8, 2 11/16")]
    [InlineData("front/pic/mat", "2 3/4 x 2 3/4", "3/8, 3/4")] // the outermost edges: 1/2 - 1/8; 4 - 1/2 - 2 3/4
    [InlineData("front/pic", "2 5/8 x 2 5/8", "7/16, 13/16")] // 1/16 further in
    [InlineData("front/banner", "3 1/4 x 1/2", "1 1/2, 3 1/4")] // its middle on the mat's bottom edge, 3 1/2
    [InlineData("front/gem[1]", "1/8 x 1/8", "1/16, 4 1/16")] // 4 1/4 - 1/16 - 1/8
    [InlineData("front/gem[2]", "1/8 x 1/8", "1/4, 4 1/16")]
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/wide/line", "5 1/2 x 1/16")] // 1/2 at both ends goes round to the back
    [InlineData("front/wide/line2", "5 1/2 x 1/16")]
    [InlineData("front/pic/mat", "2 3/4 x 2 3/4")]
    [InlineData("front/banner", "3 1/4 x 1/2")]
    [InlineData("front/gem[1]", null)] // a gem is not cut from paper
    public void Each_piece_has_its_cut_size(string path, string? size) => _card.IsCut(path, size);

    [Fact]
    public void A_mat_of_a_written_size_shows_half_the_difference() => _card.ShowsBorder("front/pic/mat", "1/16"); // (2 3/4 - 2 5/8)/2

    [Fact]
    public void The_notch_of_the_banner_is_half_as_deep_as_the_banner_is_high() =>
        Assert.Equal((Measure.Length("0"), Measure.Length("1/4")), _card.Piece("front/banner").Notches);

    [Fact]
    public void A_landscape_A2_is_wider_than_high() => Assert.Equal(Measure.Size("5 1/2 x 4 1/4"), _card.Base.Closed);

    [Fact]
    public void Folded_at_the_top_the_sheet_is_twice_as_high() => Assert.Equal(Measure.Size("5 1/2 x 8 1/2"), _card.Base.Flat);

    [Fact]
    public void Pieces_are_drawn_in_written_order() => Assert.Equal(
        [
            "front/wide", "front/wide/line", "front/wide/line2", "front/wide/gem[1]", "front/wide/gem[2]", "front/wide/gem[3]",
            "front/pic/mat", "front/pic", "front/banner", "front/gem[1]", "front/gem[2]",
        ],
        _card.Order());
}
