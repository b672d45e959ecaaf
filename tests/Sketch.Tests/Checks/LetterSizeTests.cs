using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>Envelopes that are no plain letter by their size: limits of the Domestic Mail Manual 101.1 and of the UPU, Art. 203.</summary>
public class LetterSizeTests
{
    private static List<string> NotesOn(string card) =>
        [.. Compiler.Compile(new SourceText("a.card", $"card \"A\"\n{card}\n"), new TestWorld()).Findings
            .Where(f => f.Code == "SK472").Select(f => f.Message)];

    // 6 1/4 in is higher than 6 1/8 in; 5 1/4 in square has a ratio of 1, and 1.3 goes without a surcharge; C7 is 114 x 81 mm.
    [Theory]
    [InlineData("base 6 x 6, fold left, of white", "US Postal Service", "158.75 mm high, and a letter is at most 155.575")]
    [InlineData("base 5 x 5, fold left, of white", "US Postal Service", "It is as long as it is high, and a letter is at least 1.3")]
    [InlineData("base 3 x 3, fold left, of white", "US Postal Service", "mm long, and a letter is at least 127")]
    [InlineData("units mm\nbase ISO A7, fold left, of white", "Post abroad", "114 mm long, and a letter is at least 140")]
    public void A_square_or_small_envelope_is_a_note(string card, string service, string words)
    {
        var note = Assert.Single(NotesOn(card));
        Assert.StartsWith(service, note, StringComparison.Ordinal);
        Assert.Contains(words, note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("base A2, fold left, of white")]
    [InlineData("base 5 x 7, fold left, of white")]
    [InlineData("base slimline, fold left, of white")]
    [InlineData("units mm\nbase ISO A6, fold left, of white")]
    [InlineData("base 6 x 6, fold left, of white\nenvelope 6 1/2 x 6 1/2, by hand")]
    public void A_usual_envelope_or_one_that_is_handed_over_is_not(string card) => Assert.Empty(NotesOn(card));
}
