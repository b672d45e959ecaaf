using CsCheck;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>One stock filled after the other on a sheet of 12 x 12 in; the pieces are counted by hand.</summary>
public sealed class SequentialFillTests
{
    [Theory]
    [InlineData(4, 4, 27, 3)] // nine on a sheet
    [InlineData(4, 4, 28, 4)]
    [InlineData(6, 12, 5, 3)]
    public void Sheets_are_filled_until_nothing_is_wanted(double width, double height, int pieces, int sheets)
    {
        var problem = GivenSheets.On12((width, height, pieces));
        var uses = Filled(problem, problem.OnHand());
        Assert.Equal((sheets, pieces), (uses.Sum(u => u.Times), uses.Sum(u => u.Times * u.Pattern.Counts[0])));
    }

    [Fact]
    public void Sheets_filled_alike_are_one_layout()
    {
        var problem = GivenSheets.On12((4, 4, 28));
        Assert.Equal([(9, 3), (1, 1)], Filled(problem, problem.OnHand()).Select(u => (u.Pattern.Counts[0], u.Times)));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(2, 18)]
    [InlineData(9, 28)]
    public void No_more_sheets_are_used_than_allowed(int most, int pieces)
    {
        var problem = GivenSheets.On12((4, 4, 28));
        var uses = new SequentialFill(problem).Run(problem.Demand, problem.OnHand(), [1], most, Given.Work());
        Assert.Equal(pieces, uses.Sum(u => u.Times * u.Pattern.Counts[0]));
    }

    [Fact]
    public void Offcuts_are_filled_first_as_long_as_there_are_any()
    {
        var problem = GivenSheets.On12([(4, 4, 13)], (8, 4, 2));
        Assert.Equal([(1, 2, 2), (0, 9, 1)],
            Filled(problem, problem.OnHand()).Select(u => (u.Pattern.Stock.Index, u.Pattern.Counts[0], u.Times)));
        Assert.Equal([(0, 9), (0, 4)], Filled(problem, [null, 0]).Select(u => (u.Pattern.Stock.Index, u.Pattern.Counts[0])));
    }

    [Fact]
    public void When_the_budget_is_used_up_the_rest_is_placed_on_shelves()
    {
        var problem = GivenSheets.On12([(4, 4, 13)], (8, 4, 2));
        problem.CanBeCut(new SequentialFill(problem).Run(problem.Demand, problem.OnHand(), [1], int.MaxValue, new(0)));
    }

    [Fact]
    public void What_is_filled_can_be_cut() => Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[1, 5]).Array[1, 4].Sample(pieces =>
    {
        var problem = GivenSheets.On12([.. pieces.Select(p => ((double)p.Item1, (double)p.Item2, p.Item3))], (6, 5, 2));
        problem.CanBeCut(Filled(problem, problem.OnHand()));
    }, iter: 60);

    private static List<(Pattern Pattern, int Times)> Filled(Reduced problem, int?[] onHand) => new SequentialFill(problem).Run(
        problem.Demand, onHand, [.. problem.Kinds.Select(k => (int)(k.Area / 1e13) + 1)], int.MaxValue, Given.Work());
}
