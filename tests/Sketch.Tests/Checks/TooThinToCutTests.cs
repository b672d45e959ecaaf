using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>In the lettering of the tests a word is a bar as high as a capital, so letters 1/64 in high are 0.4 mm thick.</summary>
public sealed class TooThinToCutTests
{
    [Fact]
    public void A_word_thinner_than_a_thirty_second_of_an_inch_is_a_note_with_its_thickness()
    {
        var finding = Fit.OnA2("  word \"ahoy\", letters 1/64, of navy").The(FindingCatalogue.TooThinToCut);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("The word of line 4 is only about 0.3 mm thick at its thinnest; a hand needs at least 1/32 in.", finding.Message);
    }

    [Fact]
    public void The_proposed_width_is_thick_enough()
    {
        var hint = Fit.OnA2("  word 1/16 wide \"ahoy\", of navy").The(FindingCatalogue.TooThinToCut).Hint;
        var width = hint["Make it ".Length..hint.IndexOf(" wide", StringComparison.Ordinal)];
        Assert.Empty(Fit.OnA2($"  word {width} wide \"ahoy\", of navy").Of(FindingCatalogue.TooThinToCut));
    }

    [Theory]
    [InlineData("word \"ahoy\", letters 1/16, of navy")]
    [InlineData("panel 2 x 1/64, of navy")]
    [InlineData("text \"ahoy\", letters 1/64")]
    public void Thick_words_and_what_is_not_cut_round_letters_are_not_reported(string line) =>
        Assert.Empty(Fit.OnA2("  " + line).Of(FindingCatalogue.TooThinToCut));
}
