using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>
/// Worked out by hand from the language. In the plain lettering of <see cref="TestWorld"/> letters of half the height of the strip,
/// 3/16, are 0.15 in wide; the strip is 1/8 longer at each end, rounded up to the next 1/16.
/// </summary>
public class ThreeStripsTests
{
    internal const string Text = """
        card "07 Three strips"
        base A2, landscape, fold top, of white
        front
          3 strip fit x 3/8 "May every light" "you see" "lead you home", in a column, gap 1/8, step right 3/8, left 1/2, of kraft
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    // The block is 3 x 3/8 + 2 x 1/8 = 1 3/8 high, its top at (4 1/4 - 1 3/8)/2 = 1 7/16.
    [Theory]
    [InlineData(1, "2 1/2 x 3/8", "1/2, 1 7/16")] // 15 x 0.15 + 1/4 = 2.5
    [InlineData(2, "1 5/16 x 3/8", "7/8, 1 15/16")] // 7 x 0.15 + 1/4 = 1.3; 3/8 further right, 3/8 + 1/8 further down
    [InlineData(3, "2 1/4 x 3/8", "1 1/4, 2 7/16")] // 13 x 0.15 + 1/4 = 2.2
    public void Each_strip_fits_its_words_and_steps_to_the_right(int number, string size, string place) =>
        _card.HasSizeAndPlace($"front/strip[{number}]", size, place);

    [Theory]
    [InlineData(1, "May every light")]
    [InlineData(2, "you see")]
    [InlineData(3, "lead you home")]
    public void Each_strip_has_its_own_words(int number, string words) =>
        Assert.Equal(words, _card.Piece($"front/strip[{number}]").Words?.Text);

    [Fact]
    public void Letters_are_half_as_high_as_the_strip() =>
        Assert.Equal(Measure.Length("3/16"), _card.Piece("front/strip[1]").Words?.LetterHeight);
}
