using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>The lettering of these tests is 0.8 of a capital's height for every character.</summary>
public sealed class WordsTooBigTests
{
    /// <summary>10 characters of 10 mm capitals are 80 mm wide; 60 mm hold capitals of 7.5.</summary>
    [Fact]
    public void Words_too_wide_for_their_strip_are_told_with_letters_that_fit()
    {
        var finding = Assert.Single(Fit.InMillimetres("  rope: strip 60 x 20 \"Fair winds\", letters 10, of white"));
        Assert.Equal(FindingCatalogue.WordsTooBig, finding.Kind);
        Assert.Equal("“Fair winds” is 20 mm too wide for rope with letters 10 mm high.", finding.Message);
        Assert.Equal("Write letters 7.5, or make it 80 wide.", finding.Hint);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void The_letters_hinted_fit() => Assert.Empty(Fit.InMillimetres("  strip 60 x 20 \"Fair winds\", letters 7.5, of white"));

    [Fact]
    public void Words_too_high_for_their_strip_are_told() => Assert.Equal(
        "“Fair” is 2 mm too high for the strip of line 5 with letters 10 mm high.",
        Fit.InMillimetres("  strip 60 x 8 \"Fair\", letters 10, of white").The(FindingCatalogue.WordsTooBig).Message);

    [Fact]
    public void Inches_are_told_as_on_a_ruler()
    {
        var finding = Fit.OnA2("  rope: strip 2 x 1/2 \"Fair winds\", letters 3/8, of white").The(FindingCatalogue.WordsTooBig);
        Assert.Equal("“Fair winds” is 1 in too wide for rope with letters 3/8 in high.", finding.Message);
        Assert.Equal("Write letters 1/4, or make it 3 wide.", finding.Hint);
    }

    [Fact]
    public void A_width_that_the_face_does_not_have_is_no_hint() => Assert.Equal(
        "Write letters 3/16.",
        Fit.OnA2("  strip 4 x 2 \"Fair winds and calm seas\", letters 3/8, of white").The(FindingCatalogue.WordsTooBig).Hint);

    [Fact]
    public void Words_on_an_upright_strip_are_to_be_written_lying() => Assert.EndsWith(
        ", or write it lying, and turn it: turn left 90.",
        Fit.OnA2("  strip 1/2 x 5 \"Fair winds\", letters 3/8, of white").The(FindingCatalogue.WordsTooBig).Hint, StringComparison.Ordinal);

    [Fact]
    public void Words_in_the_box_of_a_star_may_still_run_over_its_edge() => Assert.Equal(
        "“Fair” runs over the edge of lamp with letters 10 mm high.",
        Fit.InMillimetres("  lamp: star 40 \"Fair\", letters 10, of white").The(FindingCatalogue.WordsTooBig).Message);

    [Fact]
    public void Copies_are_one_finding() =>
        Assert.Single(Fit.InMillimetres("  3 strip 15 x 5 \"Fair winds\", in a column, gap 5, of white").Of(FindingCatalogue.WordsTooBig));

    [Fact]
    public void A_strip_that_fits_its_words_fits() =>
        Assert.Empty(Fit.OnA2("  strip fit x 3/8 \"you see\", of kraft"));
}
