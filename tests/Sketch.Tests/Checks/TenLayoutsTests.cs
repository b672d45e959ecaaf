using Sketch.Tests.Layout;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>What is right to find in the ten layouts and the worked example; all other rules are silent on them.</summary>
public sealed class TenLayoutsTests
{
    private static readonly IWorld Folder = new TestWorld()
        .WithText("01.card", HarbourSquaresTests.Text)
        .WithTriangle("boat.svg", 20, 30).WithTriangle("maker.svg", 20, 10).WithTriangle("gull.svg", 40, 20);

    [Theory]
    [InlineData(TentAndBannerTests.Text)]
    [InlineData(PatchworkHeartTests.Text)]
    [InlineData(ThreeStripsTests.Text)]
    [InlineData(FiveTagsTests.Text)]
    [InlineData(InsideAndOutTests.Text)]
    public void Nothing_is_found(string text) => Assert.Empty(Fit.In(text, Folder));

    /// <summary>A square envelope is posted at another rate, which is a note.</summary>
    [Fact]
    public void The_square_card_is_no_plain_letter() => Assert.Equal(["SK472"], Codes(PortholeTests.Text));

    /// <summary>
    /// The squares of 1 1/8 hang over the band of 3/4, which is meant and so a note; a front of 3.5 mm goes into the usual envelope for the
    /// size.
    /// </summary>
    [Theory]
    [InlineData(HarbourSquaresTests.Text)]
    [InlineData(LikeHarbourSquaresTests.WiderMargins)]
    public void Squares_hang_over_their_band(string text) => Assert.Equal(["SK404"], Codes(text));

    /// <summary>The A7 envelope is 1/4 in larger both ways.</summary>
    [Fact]
    public void The_larger_card_has_room_in_its_envelope() => Assert.Equal(["SK404"], Codes(LikeHarbourSquaresTests.Larger));

    /// <summary>Thirds of 4 1/4 are on no ruler.</summary>
    [Fact]
    public void Thirds_are_off_the_ruler() => Assert.Equal(["SK431", "SK431"], Codes(PhotoTests.Text));

    /// <summary>Half of 4 - 1/16 is 1 31/32; five letters of 1 in, half the height of the scallop, are 4 in wide.</summary>
    [Fact]
    public void Quarters_with_a_gap_are_off_the_ruler_and_the_word_is_too_large() =>
        Assert.Equal(["SK431", "SK441"], Codes(QuartersTests.Text));

    /// <summary>In the plain lettering of the tests the words are 2 1/2 wide, as wide as the banner with its notch.</summary>
    [Fact]
    public void The_words_of_the_worked_example_reach_its_notch() => Assert.Equal(["SK441"], Codes(FairWindsTests.Text));

    private static IEnumerable<string> Codes(string text) => Fit.In(text, Folder).Select(f => f.Code).Order(StringComparer.Ordinal);
}
