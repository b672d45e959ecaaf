using Sketch.Edits;
using Sketch.Tests.Layout;
using Xunit;

namespace Sketch.Tests.Edits;

/// <summary>What the form of a piece changes besides its size and place.</summary>
public class DescribingTests
{
    [Theory]
    [InlineData("star 1, of gold", 5, "star 1, of gold, turn right 5")]
    [InlineData("star 1, turn left 5, of gold", 12.5, "star 1, turn right 12.5, of gold")]
    [InlineData("star 1, turn left 5, of gold", 0, "star 1, of gold")]
    public void A_turn_is_one_clause(string line, double degrees, string written) => Becomes(line, new TurnChange(degrees), written);

    [Theory]
    [InlineData("star 1, of gold", "2 mm", "star 1, of gold, on foam")]
    [InlineData("star 1, on foam, of gold", "3 mm", "star 1, raised 3 mm, of gold")]
    [InlineData("star 1, raised 2 mm, of gold", null, "star 1, of gold")]
    public void Foam_is_one_clause(string line, string? height, string written) =>
        Becomes(line, new FoamChange(height is null ? null : Measure.Length(height)), written);

    [Theory]
    [InlineData("star 1, of gold", "deep", "star 1, of deep")]
    [InlineData("star 1, of light blue paper # old", "deep", "star 1, of deep # old")]
    [InlineData("star 1, top 1, raised 2 mm", "#123456", "star 1, top 1, of #123456, raised 2 mm")]
    [InlineData("2 star 1, of red and gold, in turn", "navy", "2 star 1, of navy and gold, in turn", "front/star[1]")]
    public void Paper_is_what_stands_after_of(string line, string paper, string written, string path = "front/star") =>
        Becomes(line, new PaperChange(paper), written, path);

    [Fact]
    public void A_paper_that_no_line_can_name_is_refused() => Assert.Equal(
        "\"two words, here\" cannot be written after \"of\". Choose a role, a colour, or a paper whose name is one word.",
        Hands.Refused("  star 1", "front/star", new PaperChange("two words, here"))?.Reason);

    [Theory]
    [InlineData("star 1 \"a\" \"b\", of gold", new[] { "a", "c \"d\"" }, "star 1 \"a\" \"c \"\"d\"\"\", of gold")]
    [InlineData("star 1 \"a\" \"b\", of gold", new[] { "a" }, "star 1 \"a\", of gold")]
    [InlineData("star 1, of gold", new[] { "a" }, "star 1 \"a\", of gold")]
    [InlineData("star 1, of gold", new[] { "“a”" }, "star 1 \"\"\"a\"\"\", of gold")]
    public void Words_are_replaced_line_by_line(string line, string[] words, string written) =>
        Becomes(line, new WordsChange([.. words]), written);

    [Theory]
    [InlineData("mat +1/8, of navy", "mat +1/4, of navy")]
    [InlineData("mat border 1/16, border bottom 1/2, of navy", "mat border 1/8, border bottom 1/2, of navy")]
    [InlineData("mat, of navy", "mat +1/4, of navy")]
    public void A_border_is_written_as_before(string mat, string written) =>
        Becomes("star 1, of gold\n    " + mat, new BorderChange(Measure.Length("1/8")), "star 1, of gold\n    " + written,
            "front/star/mat");

    [Fact]
    public void Letters_are_one_clause() =>
        Becomes("star 1 \"a\", letters 1/8, of gold", new LettersChange(Measure.Length("1/4")), "star 1 \"a\", letters 1/4, of gold");

    [Fact]
    public void What_shows_is_one_number() => Becomes("panel, showing 1/8, showing bottom 1, of gold",
        new ShowingChange(Measure.Length("1/4")), "panel, showing 1/4, showing bottom 1, of gold", "front/panel");

    [Fact]
    public void A_last_clause_is_taken_away_before_its_comment() =>
        Becomes("star 1, of gold, turn 5 # old", new TurnChange(0), "star 1, of gold # old");

    [Fact]
    public void A_clause_between_comments_is_taken_away_without_them() => Becomes("star 1, # one\n    turn 5, # two\n    of gold",
        new TurnChange(0), "star 1, # one\n    # two\n    of gold");

    private static void Becomes(string line, PieceChange change, string written, string path = "front/star") =>
        Assert.Equal(written, Hands.On("  " + line, path, change).Trim());
}
