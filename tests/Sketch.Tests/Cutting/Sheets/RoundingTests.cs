using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Whole plans from fractions, on a sheet of 12 x 12 in; the sheets are counted by hand.</summary>
public sealed class RoundingTests
{
    private readonly Reduced _problem = GivenSheets.On12([(6, 12, 7)], (6, 12, 1));
    private readonly Pattern _pair;
    private readonly Pattern _single;
    private readonly Pattern _onOffcut;

    public RoundingTests()
    {
        _pair = _problem.Row(_problem.Sheet, 0, 0);
        _single = _problem.Row(_problem.Sheet, 0);
        _onOffcut = _problem.Row(_problem.Stocks[1], 0);
    }

    [Fact]
    public void Whole_parts_are_kept_and_the_rest_is_added()
    {
        // Two whole pairs leave three pieces: a third pair, and one on the offcut.
        var best = AtOnce((_pair, 2.5), (_onOffcut, 0.5));
        Assert.Equal((3, 0), (best.Sheets, best.LeftOut));
        Assert.Equal(7, best.Uses.Sum(u => u.Times * u.Pattern.Counts[0]));
    }

    [Fact]
    public void A_part_next_to_whole_is_whole() => Assert.Contains(AtOnce((_pair, 3 - 1e-9), (_onOffcut, 1)).Uses, u => u == (_pair, 3));

    [Fact]
    public void The_part_that_is_nearest_to_whole_is_rounded_up_first()
    {
        var best = AtOnce((_single, 0.3), (_pair, 2.9), (_onOffcut, 0.8));
        Assert.Equal(3, best.Sheets);
        Assert.DoesNotContain(best.Uses, u => u.Pattern.Stock.IsSheet && u.Pattern.Counts[0] == 1);
    }

    [Fact]
    public void No_more_offcuts_are_used_than_there_are() =>
        Assert.Equal(1, AtOnce((_onOffcut, 1), (_single, 0.1)).Uses.Where(u => !u.Pattern.Stock.IsSheet).Sum(u => u.Times));

    [Fact]
    public void A_plan_is_offered_even_without_a_budget()
    {
        var incumbent = new Incumbent(_problem, null);
        new Rounding(_problem, incumbent, new(0)).RunAtOnce([(_pair, 1.5)]);
        Assert.Equal((3, 0), (incumbent.Best!.Sheets, incumbent.Best.LeftOut));
    }

    [Fact]
    public void Whole_parts_that_are_all_that_is_wanted_are_the_plan()
    {
        var best = Rounded(back: 0, (_pair, 3), (_onOffcut, 1));
        Assert.Equal([(_pair, 3), (_onOffcut, 1)], best.Uses);
    }

    [Theory]
    [InlineData(0, 7)]
    [InlineData(1, 3)]
    public void Parts_are_given_back_to_be_filled_better(int back, int sheets)
    {
        // Sheets with one piece each are kept, or given back and filled with pairs.
        var singles = Enumerable.Range(0, 7).Select(_ => (_single, 1.0)).ToArray();
        Assert.Equal(sheets, Rounded(back, singles).Sheets);
    }

    private WholePlan AtOnce(params (Pattern Pattern, double Times)[] use)
    {
        var incumbent = new Incumbent(_problem, null);
        new Rounding(_problem, incumbent, Given.Work()).RunAtOnce(use);
        _problem.CanBeCut(incumbent.Best!.Uses);
        return incumbent.Best;
    }

    private WholePlan Rounded(int back, params (Pattern Pattern, double Times)[] use)
    {
        var incumbent = new Incumbent(_problem, null);
        incumbent.Offer(_problem.OneOnEach());
        new Rounding(_problem, incumbent, Given.Work()).Run(use, [1], back, rounds: 2);
        _problem.CanBeCut(incumbent.Best!.Uses);
        return incumbent.Best;
    }
}
