using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>
/// Worked out by hand from the language. The words have the plain lettering of <see cref="TestWorld"/>:
/// five characters are as wide as 4 capital heights, so "hello" at a width of 1 3/4 is 7/16 high.
/// </summary>
public class HarbourSquaresTests
{
    internal const string Text = """
        card "01 Harbour squares"
        base A2, fold left, of white
        front
          sea: panel, showing 1/8, of blue
            mat +1/8, of navy
            band: strip 3/4 x full, left 1/2, of cream
              line 1/16, along left, of silver
              3 square 1 1/8, in a column, spread, of red, on foam
          word 1 3/4 wide "hello", lower right 3/8, of navy, on foam
            mat, border 1/16, of white
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    [Theory]
    [InlineData("front/sea/mat", "4 x 5 1/4", "1/8, 1/8")] // 4 1/4 - 2/8, 5 1/2 - 2/8
    [InlineData("front/sea", "3 7/8 x 5 1/8", "3/16, 3/16")] // the mat less 1/8
    [InlineData("front/sea/band", "3/4 x 5 1/8", "11/16, 3/16")] // as tall as sea without its mat; 3/16 + 1/2
    [InlineData("front/sea/band/line", "1/16 x 5 1/8", "11/16, 3/16")] // inside the band, flush with its left edge
    [InlineData("front/sea/band/square[1]", "1 1/8 x 1 1/8",
        "1/2, 5/8")] // 11/16 + (3/4 - 1 1/8)/2; (5 1/8 - 3 x 1 1/8)/4 = 7/16, 3/16 + 7/16
    [InlineData("front/sea/band/square[2]", "1 1/8 x 1 1/8", "1/2, 2 3/16")] // 5/8 + 1 1/8 + 7/16
    [InlineData("front/sea/band/square[3]", "1 1/8 x 1 1/8", "1/2, 3 3/4")] // 2 3/16 + 1 9/16
    [InlineData("front/word/mat", "1 7/8 x 9/16", "2, 4 9/16")] // right and bottom 3/8: 4 1/4 - 3/8 - 1 7/8, 5 1/2 - 3/8 - 9/16
    [InlineData("front/word", "1 3/4 x 7/16", "2 1/16, 4 5/8")] // 1/16 further in
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/sea/mat", "4 x 5 1/4")]
    [InlineData("front/sea", "3 7/8 x 5 1/8")]
    [InlineData("front/sea/band", "3/4 x 5 1/8")]
    [InlineData("front/sea/band/line", "1/16 x 5 1/8")]
    [InlineData("front/sea/band/square[2]", "1 1/8 x 1 1/8")]
    [InlineData("front/word", "1 3/4 x 7/16")]
    public void Without_wraps_a_piece_is_cut_at_its_finished_size(string path, string size) => _card.IsCut(path, size);

    [Theory]
    [InlineData("front/sea/mat")] // 1/8 in total
    [InlineData("front/word/mat")] // 1/16 each side
    public void Both_mats_show_a_sixteenth(string path) => _card.ShowsBorder(path, "1/16");

    [Theory]
    [InlineData("front/sea", "0")]
    [InlineData("front/sea/band/line", "0")]
    [InlineData("front/sea/band/square[3]", "2 mm")]
    [InlineData("front/word/mat", "2 mm")] // foam lifts the whole stack
    [InlineData("front/word", "2 mm")]
    public void Pieces_on_foam_are_raised(string path, string height) => _card.IsRaised(path, height);

    [Fact]
    public void The_base_is_half_a_letter_sheet_folded() => Assert.Equal(Measure.Size("8 1/2 x 5 1/2"), _card.Base.Flat);

    [Fact]
    public void Stacks_are_drawn_from_the_outermost_mat_then_their_children() => Assert.Equal(
        [
            "front/sea/mat", "front/sea", "front/sea/band", "front/sea/band/line",
            "front/sea/band/square[1]", "front/sea/band/square[2]", "front/sea/band/square[3]",
            "front/word/mat", "front/word",
        ],
        _card.Order());
}
