using Sketch.Syntax;
using Xunit;

namespace Sketch.Tests.Syntax;

public class LetteringReaderTests
{
    [Theory]
    [InlineData("lettering script", "Dancing Script")]
    [InlineData("lettering Script bold", "Dancing Script bold")]
    [InlineData("lettering serif bold italic", "Playfair Display bold italic")]
    public void A_kind_of_lettering_stands_for_a_font(string clause, string font) =>
        Assert.Equal(font, Reading.Clause<FontClause>(clause).Font.Text);

    [Fact]
    public void A_line_of_the_card_letters_all_its_words() =>
        Assert.Equal("Caveat", Assert.IsType<FontLine>(
            Reading.File("card \"x\"\nlettering handwriting\nbase A2, of white\n").File.Lines[1]).Font.Text);

    [Theory]
    [InlineData("scrip", "script")]
    [InlineData("typewritter", "typewriter")]
    public void A_misspelt_kind_is_corrected(string written, string meant)
    {
        var mistake = Assert.Single(Reading.Mistakes($"text \"ahoy\", lettering {written}"));
        Assert.Equal(meant, mistake.Replacement);
    }

    [Fact]
    public void An_unknown_kind_is_answered_with_all_kinds()
    {
        var mistake = Assert.Single(Reading.Mistakes("text \"ahoy\", lettering curly"));
        Assert.Equal("Expected a kind of lettering, found 'curly'.", mistake.Message);
        Assert.Contains("plain, formal, script", mistake.Hint, StringComparison.Ordinal);
    }
}
