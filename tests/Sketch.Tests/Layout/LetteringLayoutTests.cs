using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>The boxes of words that are not set in plain straight lines.</summary>
public class LetteringLayoutTests
{
    [Fact]
    public void Words_on_a_circle_take_its_room_with_letters_all_round() =>
        Laid.OnA2("  text \"ahoy\", on circle 2, letters 1/4").HasSize("front/text", "2 5/8 x 2 5/8");

    [Fact]
    public void A_size_beside_a_circle_has_no_effect() => Assert.Contains(Found("text 3 wide \"ahoy\", on circle 2"),
        f => f.Contains("has no effect", StringComparison.Ordinal));

    [Fact]
    public void Words_longer_than_the_circle_are_answered_with_one_that_is_large_enough() =>
        // Thirty characters of 0.8 capitals of 1/4 in are 6 in long; 6 / pi is 1.91 in.
        Assert.Contains(Found("text \"abcdefghijklmnopqrstuvwxyzabcd\", on circle 1, letters 1/4"),
            f => f.Contains("on circle 1 15/16 in", StringComparison.Ordinal));

    [Fact]
    public void Several_lines_are_not_bent() => Assert.Contains(Found("text \"ahoy\" \"there\", arched 60"),
        f => f.Contains("cannot be bent together", StringComparison.Ordinal));

    [Theory]
    [InlineData("ranged left", 0)]
    [InlineData("ranged right", 1)]
    public void Ranged_lines_share_an_edge(string clause, int side)
    {
        var lines = Laid.OnA2($"  text \"ahoy\" \"there keeper\", letters 1/4, {clause}").Piece("front/text").Outline.Contours;
        var edges = lines.Select(c => side == 0 ? c.Bounds.Left : c.Bounds.Right).ToList();
        var extreme = side == 0 ? edges.Min() : edges.Max();
        Assert.Equal(2, edges.Count(e => Math.Abs(e - extreme) < 0.001));
    }

    private static IEnumerable<string> Found(string line) =>
        Compiler.Compile(new SourceText("card.card", $"card \"Test\"\nbase A2, fold left, of white\nfront\n  {line}\n"), new TestWorld())
            .Findings.Select(f => f.Message + " " + f.Hint);
}
