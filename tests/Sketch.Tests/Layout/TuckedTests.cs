using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>What a piece can be tucked under. One that cannot stays where it is written.</summary>
public sealed class TuckedTests
{
    [Theory]
    [InlineData("  pic: panel 2 x 2, of red\n    lamp: square 1, of navy\n  tag 1 x 2, tucked under lamp, of kraft\n",
        "the tag of line 6 cannot be tucked under lamp, which is no sibling of it.", 3)]
    [InlineData("  a: square 1, tucked under b, of red\n  b: square 1, tucked under a, of navy\n",
        "b cannot be tucked under a, which is tucked under it in turn.", 2)]
    [InlineData("  a: square 1, tucked under a, of red\n", "There is no piece called a on this face.", 1)]
    [InlineData("  tag 1 x 2, tucked under, of kraft\n",
        "the tag of line 4 lies directly on the face, so it cannot be tucked under a parent.", 1)]
    public void Only_the_parent_or_a_sibling_lies_over_a_piece(string pieces, string message, int drawn)
    {
        var compiled = Compiler.Compile(new("card.card", $"card \"Test\"\nbase A2, fold left, of white\nfront\n{pieces}"), new TestWorld());
        Assert.Contains(message, compiled.Findings.Select(f => f.Message));
        Assert.Equal(drawn, compiled.Card!.Pieces.Length);
    }

    [Fact]
    public void Siblings_are_drawn_after_what_is_tucked_under_them() => Assert.Equal(
        ["front/c", "front/b", "front/a", "front/d"],
        Laid.OnA2("  a: square 1, of red\n  b: square 1, tucked under a, of navy\n  c: square 1, tucked under b, of red\n"
            + "  d: square 1/2, of blue").Order());
}
