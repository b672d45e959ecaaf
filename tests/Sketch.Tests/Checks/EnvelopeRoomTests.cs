using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class EnvelopeRoomTests
{
    private static IReadOnlyList<Finding> Card(string size, string envelope, string pieces = "") =>
        [.. Fit.In($"card \"Lamp day\"\nbase {size}, fold left, of white\nfront\n{pieces}\n{envelope}")
            .Where(f => f.Kind != FindingCatalogue.NoPlainLetter)];

    [Theory]
    [InlineData("A2", "envelope US A2, of white")]
    [InlineData("US A6", "envelope US A6, of white")]
    [InlineData("US A7", "envelope US A7, of white")]
    [InlineData("ISO A6", "envelope C6, of white")]
    [InlineData("A2", "")]
    [InlineData("5 x 5", "")]
    public void Published_pairs_of_card_and_envelope_fit(string size, string envelope) => Assert.Empty(Card(size, envelope));

    [Fact]
    public void A_card_that_does_not_fit_is_reported_with_a_larger_envelope()
    {
        var finding = Assert.Single(Card("US A7", "envelope US A2, of white"));
        Assert.Equal(FindingCatalogue.TooLargeForEnvelope, finding.Kind);
        Assert.Equal("The card, 5 x 7 in, does not fit its envelope, US A2 (5 3/4 x 4 3/8 in): the long side is 1 1/4 in too long and "
            + "the short side is 5/8 in too long.", finding.Message);
        Assert.Contains("envelope US A7", finding.Hint, StringComparison.Ordinal);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(5, finding.Line());
    }

    [Fact]
    public void A_card_exactly_as_large_as_its_envelope_does_not_fit() =>
        Card("4 3/8 x 5 1/2", "envelope 5 3/4 x 4 3/8, of white").The(FindingCatalogue.TooLargeForEnvelope);

    /// <summary>At least an eighth larger each way is trade practice.</summary>
    [Fact]
    public void Less_than_an_eighth_is_tight() =>
        Assert.Equal(Severity.Warning, Card("4 5/16 x 5 1/2", "envelope US A2, of white").The(FindingCatalogue.TightEnvelope).Severity);

    [Fact]
    public void Between_an_eighth_and_a_quarter_both_ways_is_close() =>
        Assert.Equal(Severity.Note, Card("4 1/4 x 5 1/2", "envelope 5 11/16 x 4 7/16, of white").The(FindingCatalogue.CloseEnvelope)
            .Severity);

    [Fact]
    public void A_front_with_foam_takes_up_its_thickness()
    {
        // Two halves of the base at 0.25 mm, foam of 2 mm and a star of 0.25 mm.
        var finding = Assert.Single(Card("A2", "envelope 5 3/4 x 4 7/16, of white", "  star 1, on foam, of gold"));
        Assert.Equal(FindingCatalogue.CloseEnvelope, finding.Kind);
        Assert.Contains("beside a front about 2.75 mm thick", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A2", "")]
    [InlineData("A2", "envelope US A2, of white")]
    [InlineData("ISO A6", "envelope C6, of white")]
    public void A_raised_front_fills_the_envelope_of_its_own_size_without_a_note(string size, string envelope) =>
        Assert.Empty(Card(size, envelope, "  star 1, raised 3 mm, of gold"));

    [Theory]
    [InlineData("envelope 5 11/16 x 4 7/16, of white", "")]
    [InlineData("envelope 5 11/16 x 4 7/16, of white", "  star 1, raised 3 mm, of gold")]
    [InlineData("envelope US A2, of white", "  star 1, raised 6 mm, of gold")]
    public void A_card_delivered_by_hand_may_be_thick_and_close_in_its_envelope(string envelope, string pieces) =>
        Assert.Empty(Card("A2", envelope + ", by hand", pieces));

    [Fact]
    public void A_card_delivered_by_hand_still_has_to_fit() =>
        Card("US A7", "envelope US A2, of white, by hand").The(FindingCatalogue.TooLargeForEnvelope);
}
