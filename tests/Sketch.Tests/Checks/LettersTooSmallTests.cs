using System.Globalization;
using System.Text.RegularExpressions;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>A small x of at least 2 mm is the least of clear print (RNIB).</summary>
public sealed class LettersTooSmallTests
{
    private static readonly IWorld Fonts = new FolderFiles(fonts: new FontLibrary([]));

    private static IReadOnlyList<Finding> In(string piece) =>
        Fit.In(
            $"card \"Small\"\nunits mm\nbase 100 x 150, fold left, of white\nfront\n  {piece}\n", Fonts)
            .Of(FindingCatalogue.LettersTooSmall);

    [Theory]
    // The small letters of the tool's own font are three quarters as high as its capitals.
    [InlineData("text \"fair winds\", letters 2.5", 1)]
    [InlineData("text \"fair winds\", letters 3", 0)]
    // Capitals and figures have no small letters.
    [InlineData("text \"FAIR WINDS 26\", letters 2.5", 0)]
    [InlineData("text \"fair winds\", letters 2.5, capitals", 0)]
    [InlineData("text \"fair winds\", letters 1.5, capitals", 1)]
    // In a formal script the small letters are much lower than the capitals.
    [InlineData("text \"fair winds\", letters 3, lettering formal", 1)]
    [InlineData("text \"fair winds\", letters 3, lettering rounded", 0)]
    [InlineData("panel 40 x 4 \"fair winds\", of white", 1)]
    public void Letters_are_too_small_below_two_millimetres(string piece, int found) => Assert.Equal(found, In(piece).Count);

    [Fact]
    public void It_is_a_note_that_names_the_height()
    {
        var finding = Assert.Single(In("text \"fair winds\", letters 2"));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Matches(
            @"^The small letters of “fair winds” are 1\.[45]\d* mm high; older readers need at least 2 mm\.$", finding.Message);
    }

    [Theory]
    [InlineData("text \"fair winds\", letters 2", "letters (?<size>[\\d.]*\\d)", "text \"fair winds\", letters {0}")]
    [InlineData("text 8 wide \"fair winds\"", "(?<size>[\\d.]+) wide", "text {0} wide \"fair winds\"")]
    public void What_the_hint_says_is_enough(string piece, string hint, string cured)
    {
        var written = Regex.Match(Assert.Single(In(piece)).Hint, hint).Groups["size"].Value;
        Assert.Empty(In(string.Format(CultureInfo.InvariantCulture, cured, written)));
    }
}
