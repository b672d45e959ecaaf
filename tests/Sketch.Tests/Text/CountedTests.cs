using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Text;

public sealed class CountedTests
{
    [Theory]
    [InlineData(0, "0 sheets")]
    [InlineData(1, "1 sheet")]
    [InlineData(2, "2 sheets")]
    [InlineData(12_000, "12000 sheets")]
    public void One_is_singular_and_all_else_plural(int count, string words) => Assert.Equal(words, Counted.Of(count, "sheet"));

    [Fact]
    public void A_finding_counts_one_point_in_the_singular() =>
        Assert.Contains(
            Compiler.Compile(new SourceText("a.card", "card \"x\"\nbase A2, of white\nfront\n  star 1, 1 points, of red\n"),
                new TestSurroundings()).Findings,
            f => f.Message == "A star of 1 point cannot be cut.");
}
