using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Numbers drawn by chance, the same in every run.</summary>
public sealed class FixedDrawsTests
{
    [Fact]
    public void Draws_are_the_same_in_every_run()
    {
        // As xorshift with 13, 7 and 17 gives them from the golden ratio in 64 bits.
        var draws = new FixedDraws();
        Assert.Equal([989, 574, 30, 260, 268, 465], Enumerable.Range(0, 6).Select(_ => draws.Below(1000)));
    }

    [Fact]
    public void Every_number_below_the_limit_is_drawn_about_as_often() =>
        Assert.All(Drawn(new FixedDraws()).CountBy(n => n), drawn => Assert.InRange(drawn.Value, 800, 1200));

    [Fact]
    public void Numbers_lie_about_the_middle()
    {
        var draws = new FixedDraws();
        var numbers = Enumerable.Range(0, 1000).Select(_ => draws.About(10, 2)).ToList();
        Assert.InRange(numbers.Min(), 8, 8.1);
        Assert.InRange(numbers.Max(), 11.9, 12);
        Assert.InRange(numbers.Average(), 9.8, 10.2);
    }

    private static List<int> Drawn(FixedDraws draws)
    {
        var drawn = Enumerable.Range(0, 5000).Select(_ => draws.Below(5)).ToList();
        Assert.Equal([0, 1, 2, 3, 4], drawn.Distinct().Order());
        return drawn;
    }
}
