using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;
using Sketch.Tests.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>What a plan holds beyond the demand is removed, on sheets of 12 x 12 in.</summary>
public sealed class SurplusTests
{
    private readonly Reduced _problem = GivenSheets.On12([(4, 4, 7), (2, 2, 2)], (8, 4, 2));

    [Fact]
    public void Exactly_the_demand_stays_as_it_is() => Assert.Equal(
        ["sheet 1,2 x 1", "sheet 3,0 x 2"], Left((Sheet(0, 0, 0), 2), (Sheet(0, 1, 1), 1)).Order(StringComparer.Ordinal));

    [Fact]
    public void It_is_taken_from_the_emptiest_sheet() => Assert.Equal(
        ["sheet 0,2 x 1", "sheet 1,0 x 1", "sheet 3,0 x 2"],
        Left((Sheet(0, 0, 0), 2), (Sheet(0, 0), 1), (Sheet(1, 1), 1)).Order(StringComparer.Ordinal));

    [Fact]
    public void It_is_taken_from_sheets_before_offcuts() => Assert.Equal(
        ["offcut 2,0 x 2", "sheet 0,2 x 1", "sheet 3,0 x 1"],
        Left((Offcut(0, 0), 2), (Sheet(0, 0, 0), 2), (Sheet(1, 1), 1)).Order(StringComparer.Ordinal));

    [Fact]
    public void It_is_taken_from_the_offcut_of_which_the_smaller_share_is_covered()
    {
        // A square of 4 covers a third of 4 x 12 and half of 8 x 4.
        var problem = GivenSheets.On12([(4, 4, 1)], (8, 4, 1), (4, 12, 1));
        var left = Surplus.Remove([.. problem.Stocks.Skip(1).Select(stock => (problem.Row(stock, 0), 1))], problem);
        Assert.Equal(problem.Stocks[1], Assert.Single(left).Pattern.Stock);
    }

    [Fact]
    public void As_much_as_possible_is_taken_from_the_same_sheets() => Assert.Equal(
        ["sheet 0,2 x 1", "sheet 1,0 x 1", "sheet 2,0 x 3"],
        Left((Sheet(0, 0), 5), (Sheet(1, 1), 1)).Order(StringComparer.Ordinal));

    [Fact]
    public void Sheets_that_lose_as_much_stay_alike() => Assert.Equal(
        ["sheet 1,0 x 2", "sheet 1,1 x 2", "sheet 3,0 x 1"],
        Left((Sheet(0, 0, 0), 1), (Sheet(0, 1), 4)).Order(StringComparer.Ordinal));

    private Pattern Sheet(params int[] kinds) => _problem.Row(_problem.Sheet, kinds);

    private Pattern Offcut(params int[] kinds) => _problem.Row(_problem.Stocks[1], kinds);

    private IEnumerable<string> Left(params (Pattern Pattern, int Times)[] uses) => Surplus.Remove(uses, _problem)
        .Select(u => $"{(u.Pattern.Stock.IsSheet ? "sheet" : "offcut")} {string.Join(',', u.Pattern.Counts)} x {u.Times}");
}
