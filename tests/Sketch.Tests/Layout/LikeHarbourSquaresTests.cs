using Sketch.Panels;
using Sketch.Stationery;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>
/// Two cards like <see cref="HarbourSquaresTests"/>, worked out by hand from the language.
/// From 4 1/4 x 5 1/2 to 5 x 7 the ratios are 20/17 and 14/11; sizes follow the smaller one, all rounded to the nearest 1/16.
/// </summary>
public class LikeHarbourSquaresTests
{
    internal const string Larger = """
        card "09a Harbour squares, 5 x 7"
        like "01.card"
        base 5 x 7
        refit sizes
        """;

    internal const string WiderMargins = """
        card "09b Harbour squares, wider margins"
        like "01.card"
        change sea: showing 1/4
        """;

    [Theory]
    [InlineData("front/sea/band", "7/8")] // 12/16 x 20/17 = 14.1/16
    [InlineData("front/sea/band/square[1]", "1 5/16")] // 18/16 x 20/17 = 21.2/16
    [InlineData("front/word", "2 1/16")] // 28/16 x 20/17 = 32.9/16
    [InlineData("front/sea/band/line", "1/16")] // lines keep their width
    [InlineData("front/sea/mat", "4 3/4")] // 1/8 x 20/17 is still 1/8 on the ruler: 5 - 2/8
    [InlineData("front/sea", "4 5/8")] // the mat keeps its border
    public void Written_widths_scale_by_the_smaller_ratio(string path, string width) =>
        Assert.Equal(Measure.Length(width), Refitted().Piece(path).Box.Width);

    [Theory]
    [InlineData("front/sea", "3/16")]
    [InlineData("front/sea/band", "13/16")] // sea grew from 3 7/8 to 4 5/8, so 8/16 becomes 9.5/16, on the ruler 5/8
    [InlineData("front/sea/band/square[1]", "19/32")] // 13/16 + (7/8 - 1 5/16)/2
    [InlineData("front/word", "2 7/16")] // right 6/16 x 20/17 = 7.06/16; 5 - 7/16 - 1/16 - 2 1/16
    public void Horizontal_distances_scale_with_their_parent(string path, string left) =>
        Assert.Equal(Measure.Length(left), Refitted().Piece(path).Box.Left);

    [Fact] // bottom 6/16 x 14/11 = 7.6/16, on the ruler 1/2; the mat shows 1/16 below the word
    public void The_distance_to_the_bottom_scales_by_the_other_ratio() =>
        Assert.Equal(Measure.Length("6 7/16"), Refitted().Piece("front/word").Box.Bottom);

    // `showing` is one number for all sides, so it follows the smaller ratio and stays 1/8: the mat is 7 - 2/8 high, sea 6 5/8.
    [Theory]
    [InlineData("front/sea", "3/16, 3/16")]
    [InlineData("front/sea/band/square[1]", "19/32, 55/64")] // (6 5/8 - 3 x 1 5/16)/4 = 43/64
    [InlineData("front/sea/band/square[2]", "19/32, 2 27/32")] // + 1 5/16 + 43/64
    [InlineData("front/sea/band/square[3]", "19/32, 4 53/64")]
    public void The_squares_are_spread_over_the_taller_band(string path, string place) => Refitted().HasPlace(path, place);

    [Theory]
    [InlineData("front/sea/mat")]
    [InlineData("front/word/mat")]
    public void Borders_are_unchanged(string path) => Refitted().ShowsBorder(path, "1/16");

    [Fact]
    public void A_new_base_without_a_fold_keeps_the_fold() =>
        Assert.Equal((Measure.Size("5 x 7"), Fold.Left, "white"),
            (Refitted().Base.Closed, Refitted().Base.Fold, Refitted().Base.Paint.Role));

    [Theory]
    [InlineData("front/sea/mat", "3 3/4 x 5", "1/4, 1/4")] // 4 1/4 - 2/4, 5 1/2 - 2/4
    [InlineData("front/sea", "3 5/8 x 4 7/8", "5/16, 5/16")]
    [InlineData("front/sea/band", "3/4 x 4 7/8", "13/16, 5/16")] // 5/16 + 1/2
    [InlineData("front/sea/band/line", "1/16 x 4 7/8", "13/16, 5/16")]
    [InlineData("front/sea/band/square[1]", "1 1/8 x 1 1/8", "5/8, 11/16")] // (4 7/8 - 3 3/8)/4 = 3/8; 5/16 + 3/8; 13/16 - 3/16
    [InlineData("front/sea/band/square[2]", "1 1/8 x 1 1/8", "5/8, 2 3/16")] // + 1 1/8 + 3/8
    [InlineData("front/sea/band/square[3]", "1 1/8 x 1 1/8", "5/8, 3 11/16")]
    [InlineData("front/word", "1 3/4 x 7/16", "2 1/16, 4 5/8")] // as before
    public void A_changed_margin_moves_only_the_pieces_on_the_panel(string path, string size, string place) =>
        From(WiderMargins).HasSizeAndPlace(path, size, place);

    [Fact]
    public void The_card_has_the_new_title() => Assert.Equal("09b Harbour squares, wider margins", From(WiderMargins).Title);

    private static LaidOutCard Refitted() => From(Larger);

    private static LaidOutCard From(string text) => Laid.Out(text, new TestWorld().WithText("01.card", HarbourSquaresTests.Text));
}
