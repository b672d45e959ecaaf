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
    public void One_is_singular_and_all_other_counts_are_plural(int count, string words) => Assert.Equal(words, Counted.Of(count, "sheet"));

    [Fact]
    public void A_finding_uses_the_singular_for_one_point() =>
        Assert.Contains(
            Compiler.Compile(new SourceText("a.card", "card \"x\"\nbase A2, of white\nfront\n  star 1, 1 points, of red\n"),
                new TestWorld()).Findings,
            f => f.Message == "A star of 1 point cannot be cut.");
}
