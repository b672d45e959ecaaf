using Sketch.Diagnostics;
using Sketch.Tests.Layout;
using Xunit;

namespace Sketch.Tests.Binding;

public class ClauseTests
{
    [Theory]
    [InlineData("star 1, wrap 1/2, of red")]
    [InlineData("star 1, border 1/8, of red")]
    [InlineData("star 1, notch 1/8, of red")]
    [InlineData("star 1, corners 1/8, of red")]
    [InlineData("star 1, through, of red")]
    [InlineData("star 1, file \"boat.svg\", of red")]
    [InlineData("star 1, lines 1/4 apart, of red")]
    [InlineData("star 1, with deep as red, of red")]
    [InlineData("star 1, gap 1/8, of red")]
    [InlineData("star 1, in a row, of red")]
    [InlineData("star 1, fold left, of red")]
    [InlineData("star 1, landscape, of red")]
    [InlineData("star 1, flap 2, of red")]
    [InlineData("star 1, 3 sheets, of red")]
    [InlineData("star 1, price 2, of red")]
    [InlineData("star 1, back, of red")]
    [InlineData("circle 1, 6 points, of red")]
    [InlineData("strip 1 x 1/4, swallowtail left, of red")]
    [InlineData("gem 1/8, letters 1/8, of red")]
    [InlineData("group 1 x 1, of red")]
    [InlineData("window 1 x 1, of red")]
    [InlineData("window 1 x 1, turn 5")]
    [InlineData("window 1 x 1, raised 1 mm")]
    [InlineData("text \"a\", on foam")]
    [InlineData("word 1 wide \"a\", showing 1/8, of red")]
    [InlineData("2 gem 1/8, of red\n  item 1: left 1/4")]
    [InlineData("2 gem 1/8, of red\n  item 1: gap 1/4")]
    [InlineData("star 1, of red\n  mat +1/8, turn 5, of red")]
    [InlineData("star 1, of red\n  mat +1/8, left 1/4, of red")]
    public void A_clause_without_effect_on_its_piece_is_reported(string pieces)
    {
        var finding = Assert.Single(Found.On(pieces));
        Assert.Equal(FindingCatalogue.IdleClause, finding.Kind);
        Assert.Contains("has no effect on", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("base A2, turn 5, of white\nfront\n")]
    [InlineData("base A2, of white\nfront of red\n")]
    [InlineData("base A2, of white\nenvelope US A2, fold left\n")]
    [InlineData("base A2, of white\nrole sky: red, turn 5\nfront\n  sky: star 1\n")]
    [InlineData("base A2, of white\nunits in, turn 5\nfront\n")]
    public void A_clause_without_effect_on_its_line_is_reported(string lines) =>
        Assert.Equal(["SK116"], Found.In("card \"x\"\n" + lines).Select(f => f.Code));

    [Theory]
    [InlineData("star 1, top 1, top 2, of red")]
    [InlineData("star 1, upper left 1, left 2, of red")]
    [InlineData("3 star 1, gap 1/8, spread, of red")]
    [InlineData("star 1, of red, of blue")]
    [InlineData("star 1, on foam, raised 1 mm, of red")]
    public void A_repeated_clause_is_reported(string piece) => Assert.Equal("SK117", Found.On(piece)[0].Code);

    [Theory]
    [InlineData("text \"a\"\n  mat +1/8, of red")]
    [InlineData("ruled 2 x 2\n  mat +1/8, of red")]
    [InlineData("group 2 x 2\n  mat +1/8, of red")]
    [InlineData("window 2 x 2\n  mat +1/8, of red")]
    [InlineData("window 2 x 2\n  star 1, of red")]
    [InlineData("text \"a\"\n  star 1, of red")]
    [InlineData("star 1, of red\n  mat +1/8, of red\n    star 1, of red")]
    [InlineData("star 1, of red\n  mat +1/8 \"a\", of red")]
    [InlineData("star 1, of red\n  item 1: of blue")]
    [InlineData("role sky: red")]
    public void A_piece_in_an_impossible_place_is_reported(string pieces) => Assert.Equal(["SK115"], Found.On(pieces).Select(f => f.Code));

    [Theory]
    [InlineData("circle 2 x 3, of red", "SK118")]
    [InlineData("square 2 x 3, of red", "SK118")]
    [InlineData("gem 1/8 x 1/4, of red", "SK118")]
    [InlineData("circle, showing 1/4, of red", "SK118")]
    [InlineData("window circle 2 x 3", "SK118")]
    [InlineData("panel 1 x 2, corners 3/4, of red", "SK118")]
    [InlineData("banner 2 x 1, swallowtail both, notch 1 1/8, of red", "SK118")]
    [InlineData("panel 2 x 1 \"a\", letters 0, of red", "SK118")]
    [InlineData("star 1, 2 points, of red", "SK119")]
    [InlineData("star 1, 61 points, of red", "SK119")]
    [InlineData("panel 2, of red", "SK118")]
    [InlineData("line 1/16, of red", "SK118")]
    [InlineData("panel +1/8, of red", "SK118")]
    [InlineData("group", "SK301")]
    [InlineData("frame 1/8, of red", "SK301")]
    [InlineData("text", "SK118")]
    [InlineData("strip fit x 1/2, of red", "SK118")]
    [InlineData("strip fit x fit \"a\", of red", "SK118")]
    public void A_size_that_its_kind_cannot_have_is_reported_once(string piece, string code) =>
        Assert.Equal([code], Found.On(piece).Select(f => f.Code));

    [Theory]
    [InlineData("circle 2 x 2, of red")]
    [InlineData("oval 2 x 3, of red")]
    [InlineData("panel 1 x 2, corners 1/2, of red")]
    [InlineData("star 1, 60 points, of red")]
    [InlineData("2 panel 1 x 1, of red\n  mat +1/8, of blue and cream, alternating")]
    [InlineData("heart 1/4, in a grid 2 x 2, gap 1/8, of red")]
    public void A_valid_piece_is_not_reported(string pieces) => Assert.Empty(Found.On(pieces));

    [Theory]
    [InlineData("fold left", "inside top", "inside left")]
    [InlineData("fold top", "inside left", "inside top")]
    public void The_back_of_the_front_is_named_after_the_fold(string fold, string wrong, string right)
    {
        var finding = Assert.Single(Found.In($"card \"x\"\nbase A2, {fold}, of white\n{wrong}\n"));
        Assert.Equal(right, finding.Replacement);
    }

    [Fact]
    public void A_finding_in_a_metric_file_uses_millimetres()
    {
        var finding = Assert.Single(Found.In("card \"x\"\nunits mm\nbase 100 x 150, of white\nfront\n  panel 35, of red\n"));
        Assert.Equal("Write panel 35 mm x 35 mm, or square 35 mm.", finding.Hint);
    }

    [Fact]
    public void A_mistake_repeated_by_a_hundred_copies_is_reported_once() =>
        Assert.Single(Found.On("100 strip 1/8 x 1/8, of red\n  mat 1/16 x 1, of red"));
}
