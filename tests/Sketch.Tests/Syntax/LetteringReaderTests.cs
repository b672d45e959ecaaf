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

    [Theory]
    [InlineData("arched 60", 60)]
    [InlineData("arched up 60 degrees", 60)]
    [InlineData("arched down 45", -45)]
    public void Arched_gives_the_degrees_that_words_cover(string clause, double degrees) =>
        Assert.Equal(degrees, Reading.Clause<ArchedClause>(clause).Degrees);

    [Fact]
    public void On_circle_gives_its_diameter() =>
        Assert.Equal(Reading.Length("2"), Reading.Clause<OnCircleClause>("on circle 2").Diameter);

    [Fact]
    public void Spacing_is_a_part_of_the_letter_height() =>
        Assert.Equal(0.2, Reading.Clause<SpacedClause>("spaced 20 percent").Share);

    [Theory]
    [InlineData("arched", "the degrees of a circle")]
    [InlineData("arched 400", "cannot cover 400 degrees")]
    [InlineData("arched 0", "cannot cover 0 degrees")]
    [InlineData("spaced 20", "the word percent")]
    [InlineData("spaced 900 percent", "at most 500 percent")]
    [InlineData("ranged middle", "left or right")]
    public void What_is_missing_or_out_of_range_is_reported(string clause, string message) =>
        Assert.Contains(message, Assert.Single(Reading.Mistakes($"text \"ahoy\", {clause}")).Message, StringComparison.Ordinal);
}
