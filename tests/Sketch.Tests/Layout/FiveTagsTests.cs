using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language.</summary>
public class FiveTagsTests
{
    internal const string Text = """
        card "08 Five tags"
        base slimline, landscape, fold top, of white
        front
          5 tag 1 1/8 x 2 1/4 "1" "2" "3" "4" "5", in a row, spread, top 0, of kraft and blue, in turn
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    // Five tags take 5 5/8 of 8 1/2; the other 2 7/8 are six gaps of 23/48, so each tag starts 1 29/48 after the previous one.
    [Theory]
    [InlineData(1, "23/48, 0")]
    [InlineData(2, "2 1/12, 0")]
    [InlineData(3, "3 11/16, 0")]
    [InlineData(4, "5 7/24, 0")]
    [InlineData(5, "6 43/48, 0")]
    public void Five_tags_are_spread_with_equal_gaps(int number, string place) =>
        _card.HasSizeAndPlace($"front/tag[{number}]", "1 1/8 x 2 1/4", place);

    [Fact]
    public void Alternating_colours_follow_reading_order() =>
        Assert.Equal(["kraft", "blue", "kraft", "blue", "kraft"], _card.RolesOf("front/tag"));

    [Fact]
    public void Each_tag_shows_its_number() =>
        Assert.Equal(["1", "2", "3", "4", "5"], _card.Pieces.Select(p => p.Words?.Text));

    [Fact]
    public void A_landscape_slimline_card_is_three_and_a_half_high() =>
        Assert.Equal(Measure.Size("8 1/2 x 3 1/2"), _card.Base.Closed);
}
