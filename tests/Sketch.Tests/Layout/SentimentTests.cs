using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Words stamped on paper that is cut round them.</summary>
public class SentimentTests
{
    [Fact]
    public void One_number_is_the_width_of_the_paper() =>
        Assert.Equal(Measure.Length("3"), Laid.OnA2("  sentiment 3 wide \"ahoy\", of white").Piece("front/sentiment").Box.Width);

    [Fact]
    public void Letters_are_as_large_as_the_border_allows()
    {
        var card = Laid.OnA2("  word 2 3/4 wide \"ahoy\", top 1/2, of red\n  sentiment 3 wide \"ahoy\", bottom 1/2, of white");
        Assert.Equal(card.Piece("front/word").Words!.LetterHeight, card.Piece("front/sentiment").Words!.LetterHeight);
    }

    [Fact]
    public void With_letters_the_paper_is_the_words_and_two_borders()
    {
        var card = Laid.OnA2(
            "  word \"ahoy\", letters 1/2, top 1/2, of red\n  sentiment \"ahoy\", letters 1/2, border 1/16, bottom 1/2, of white");
        var (word, paper) = (card.Piece("front/word").Box, card.Piece("front/sentiment").Box);
        Assert.Equal((word.Width + Measure.Length("1/8"), word.Height + Measure.Length("1/8")), (paper.Width, paper.Height));
    }

    [Fact]
    public void The_words_are_printed_where_they_leave_the_border_free()
    {
        var piece = Laid.OnA2("  sentiment 3 wide \"ahoy\", of white, ink navy").Piece("front/sentiment");
        Assert.Equal(Measure.Length("2 3/4").Millimetres, piece.Words!.Ink.Bounds.Width, 0.001);
        Assert.Equal(piece.Box.Left.Millimetres + 25.4 / 8, piece.Words.Ink.Bounds.Left, 0.001);
    }

    [Fact]
    public void A_mat_follows_the_outline_of_the_paper() =>
        Laid.OnA2("  sentiment 3 wide \"ahoy\", of white\n    mat border 1/16, of navy").ShowsBorder("front/sentiment/mat", "1/16");

    [Fact]
    public void Words_and_lines_apart_are_one_piece() =>
        Assert.Equal(1, Laid.OnA2("  sentiment 3 wide \"ahoy there\" \"keeper\", border 1/32, of white").Piece("front/sentiment").CutParts);

    [Theory]
    [InlineData("sentiment 3 x 1 \"ahoy\", of white", "one number gives its size")]
    [InlineData("sentiment 1/4 wide \"ahoy\", of white", "leaves no room")]
    [InlineData("sentiment 3 wide, of white", "has no words")]
    [InlineData("sentiment 3 wide \"ahoy\", border left 1/8, of white", "no effect")]
    public void What_cannot_be_cut_is_reported(string line, string message)
    {
        var text = $"card \"Test\"\nbase A2, fold left, of white\nfront\n  {line}\n";
        var findings = Compiler.Compile(new SourceText("card.card", text), new TestWorld()).Findings;
        Assert.Contains(findings, f => f.Message.Contains(message, StringComparison.Ordinal));
    }
}
