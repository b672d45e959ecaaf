using Sketch.Kinds;
using Sketch.Syntax;
using Xunit;

namespace Sketch.Tests.Syntax;

public class LineTests
{
    private const string Head = "card \"x\"\nbase A2\nfront\n";

    [Theory]
    [InlineData("star 1, of #abc", "abc")]
    [InlineData("star 1, of #9FC9E8", "9FC9E8")]
    [InlineData("star 1, of #abc # sea", "abc")]
    [InlineData("star 1, of #abc#", null)]
    [InlineData("star 1, of #abcd", null)]
    [InlineData("star 1, of #", null)]
    public void A_hash_before_three_or_six_digits_is_a_colour(string line, string? colour)
    {
        var mistakes = Reading.Mistakes(line);
        Assert.Equal(colour is null, mistakes.Length > 0);
        if (colour is not null)
        {
            Assert.Equal(colour, Assert.IsType<OfClause>(Assert.Single(Reading.Line<PieceLine>(line).Clauses)).Paints[0].Text);
        }
    }

    [Theory]
    [InlineData("star 1 # a lamp", 0)]
    [InlineData("star 1 #", 0)]
    [InlineData("star 1 #lamp", 1)]
    [InlineData("star 1# lamp", 1)]
    [InlineData("text \"# 1 of #2\"", 0)]
    public void A_comment_sign_has_spaces_on_both_sides(string line, int mistakes) => Assert.Equal(mistakes, Reading.Mistakes(line).Length);

    [Fact]
    public void A_line_that_ends_in_a_comma_continues()
    {
        var star = Reading.Line<PieceLine>("lamp: star 1, left 1/4,\n\n# between\n top 1/4,   # here\nof red");
        Assert.Equal(3, star.Clauses.Length);
    }

    [Theory]
    [InlineData("inside\n")]
    [InlineData("lamp: star 1\n")]
    public void A_comma_before_a_new_line_is_reported(string next)
    {
        var (file, findings) = Reading.File(Head + "  star 1, of red,\n" + next);
        Assert.Equal("SK108", Assert.Single(findings).Code);
        Assert.Equal((4, 17), (findings[0].Location.Start.Line, findings[0].Location.Start.Column));
        Assert.Equal("", findings[0].Replacement);
        Assert.Equal(4, file.Lines.Length);
    }

    [Fact]
    public void Any_indentation_step_is_accepted()
    {
        var (file, findings) = Reading.File(
            "card \"x\"\nfront\n a: panel 1 x 1\n        b: panel 1 x 1\n        c: panel 1 x 1\n d: panel 1 x 1\n");
        Assert.Empty(findings);
        Assert.Equal([2, 0], file.Lines[1].Children.Select(c => c.Children.Length));
    }

    [Fact]
    public void The_indentation_of_blank_lines_and_comments_does_not_matter()
    {
        var (file, findings) = Reading.File("card \"x\"\nfront\n  a: panel 1 x 1\n# far out\n\n      # far in\n  b: panel 1 x 1\n");
        Assert.Empty(findings);
        Assert.Equal(2, file.Lines[1].Children.Length);
    }

    [Theory]
    [InlineData("    star 1\n  star 1\n", "SK106")]
    [InlineData("  star 1\n\tstar 1\n", "SK105")]
    [InlineData("\tstar 1\n\t star 1\n", "SK105")]
    public void Indentation_that_matches_no_level_is_reported(string pieces, string code) =>
        Assert.Equal([code], Reading.File(Head + pieces).Findings.Select(f => f.Code));

    [Fact]
    public void Windows_line_endings_and_a_byte_order_mark_do_not_matter()
    {
        var (file, findings) = Reading.File("\ufeffcard \"x\"\r\nfront\r\n  star 1,\r\n    of red\r\n");
        Assert.Empty(findings);
        Assert.Equal(2, file.Lines.Length);
    }

    [Theory]
    [InlineData("text \"a \"\"good\"\" light\"", "a \"good\" light")]
    [InlineData("text “a good light”", "a good light")]
    [InlineData("text \"\"", "")]
    public void Words_are_quoted(string line, string words) =>
        Assert.Equal(words, Assert.Single(Reading.Line<PieceLine>(line).Head.Texts).Text);

    [Theory]
    [InlineData("BANNER 2 X 1 \"Fair Winds\", Swallowtail RIGHT")]
    [InlineData("banner \"Fair Winds\" 2 x 1 swallowtail right")]
    public void Case_and_the_order_of_size_and_words_do_not_matter(string line)
    {
        var banner = Reading.Line<PieceLine>(line);
        Assert.Equal((PieceKind.Banner, "Fair Winds"), (banner.Head.Kind, banner.Head.Texts[0].Text));
        Assert.True(Assert.IsType<SwallowtailClause>(banner.Clauses[0]).Right);
    }

    [Theory]
    [InlineData("back: star 1", "backing")]
    [InlineData("left: star 1", "leftpiece")]
    [InlineData("text: star 1", "words")]
    [InlineData("x: star 1", "myx")]
    public void A_reserved_word_is_not_a_name_and_another_is_offered(string line, string offer)
    {
        var mistake = Assert.Single(Reading.Mistakes(line));
        Assert.Equal(("SK114", offer), (mistake.Code, mistake.Replacement));
    }

    [Theory]
    [InlineData("gap: star 1")]
    [InlineData("shift: star 1")]
    [InlineData("a-light_2: star 1")]
    [InlineData("lämpchen: star 1")]
    public void Other_words_can_be_names(string line) => Assert.NotNull(Reading.Line<PieceLine>(line).Name);
}
