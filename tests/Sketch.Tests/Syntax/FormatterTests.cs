using Sketch.Diagnostics;
using Sketch.Syntax;
using Xunit;

namespace Sketch.Tests.Syntax;

public class FormatterTests
{
    [Theory]
    [InlineData("panel 2-5/8 X 3\" , OF Navy", "panel 2 5/8 x 3 in, of Navy")]
    [InlineData("panel 2⅝x3", "panel 2 5/8 x 3")]
    [InlineData("panel 10/16 x 21/8", "panel 5/8 x 2 5/8")]
    [InlineData("panel 2.50 x .5", "panel 2.5 x 0.5")]
    [InlineData("mat border 1/16", "mat, border 1/16")]
    [InlineData("star 1, centered", "star 1, centre")]
    [InlineData("Lamp:STAR 1,above Sky/Lamp by 1/4", "Lamp: star 1, above Sky/Lamp by 1/4")]
    [InlineData("star 1, of #9FC9E8   #  a sea", "star 1, of #9fc9e8  #  a sea")]
    [InlineData("text “a good light”", "text \"a good light\"")]
    [InlineData("star 1, of red,", "star 1, of red")]
    [InlineData("left: star 1", null)]
    public void A_line_has_one_canonical_spelling(string line, string? canonical) =>
        Assert.Equal(canonical is null ? null : $"front\n  {canonical}\n", Format($"front\n  {line}\n"));

    [Fact]
    public void Indentation_is_two_spaces_per_level() =>
        Assert.Equal("front\n  panel 1 x 1\n    star 1\n  star 1\n", Format("front\n\tpanel 1 x 1\n\t\t\tstar 1\n\tstar 1"));

    [Fact]
    public void Comments_and_single_blank_lines_are_kept() => Assert.Equal(
        "# first\n\nfront\n  # second\n  star 1  # third\n\n# last\n",
        Format("\n#first\n\n\n\nfront\n# second\n      star 1 # third\n\n\n# last\n\n"));

    [Fact]
    public void A_continuation_is_indented_by_four_and_keeps_its_comment() => Assert.Equal(
        "front\n  star 1,  # lamp\n      of red\n",
            Format("front\n  star 1,# lamp\n of red\n".Replace(",#", ", #", StringComparison.Ordinal)));

    [Fact]
    public void Blank_lines_alone_become_an_empty_text() => Assert.Equal("", Format("\n\n"));

    private static string? Format(string text) => Formatter.Format(new("a.card", text), new FindingBag());
}
