using CsCheck;
using Sketch.Cutting.Layouts;
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

    // A square of 8 with a strip at its side and one above it cover a sheet.
    [Fact]
    public void Without_whole_parts_all_is_filled_by_the_value_of_the_pieces()
    {
        var problem = GivenSheets.On12((8, 8, 3), (4, 12, 3), (8, 4, 3));
        var incumbent = Begun(problem);
        new Rounding(problem, incumbent, Given.Work()).Run([], [64, 48, 32], back: 0, rounds: 2);
        Assert.Equal(3, incumbent.Best!.Sheets);
        problem.CanBeCut(incumbent.Best.Uses);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Diving_into_fractions_gives_a_whole_plan(int back)
    {
        // Two sheets of six strips each, and of nine squares each two and five ninths.
        var problem = GivenSheets.On12((4, 4, 23), (2, 12, 12));
        var (incumbent, generation) = (Begun(problem), Generation(problem));
        var (bound, use) = generation.Run(problem.Demand, problem.OnHand(), Given.Work());
        new Rounding(problem, incumbent, Given.Work()).Dive(generation, use, back);
        Assert.Equal((5, 5, 0), (bound, incumbent.Best!.Sheets, incumbent.Best.LeftOut));
        problem.CanBeCut(incumbent.Best.Uses);
    }

    [Fact]
    public void Any_fractions_become_a_plan_that_can_be_cut() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[1, 5]).Array[1, 4].Sample(pieces =>
        {
            var problem = GivenSheets.On12([.. pieces.Select(p => ((double)p.Item1, (double)p.Item2, p.Item3))], (6, 5, 2));
            var (incumbent, generation) = (Begun(problem), Generation(problem));
            var (bound, use) = generation.Run(problem.Demand, problem.OnHand(), Given.Work());
            var rounding = new Rounding(problem, incumbent, Given.Work());
            rounding.Run(use, generation.Prices, back: 1, rounds: 3);
            rounding.Dive(generation, use, back: 0);
            problem.CanBeCut(incumbent.Best!.Uses);
            Assert.InRange(incumbent.Best.Sheets, bound, problem.Demand.Sum());
        }, iter: 20);

    private static Incumbent Begun(Reduced problem)
    {
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer(problem.OneOnEach());
        return incumbent;
    }

    private static ColumnGeneration Generation(Reduced problem)
    {
        var pool = new PatternPool();
        foreach (var (pattern, _) in problem.OneOnEach())
        {
            pool.Add(pattern);
        }

        return new(problem, new(Points(w => w.Width), Points(w => w.Height), problem.Kinds), pool);

        CutPoints Points(Func<(long Width, long Height), long> side) =>
            CutPoints.For(problem.Kinds.SelectMany(k => k.Ways().Select(w => (side(w), k.Demand))), problem.Sheet.Width, 200);
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
        var incumbent = Begun(_problem);
        new Rounding(_problem, incumbent, Given.Work()).Run(use, [1], back, rounds: 2);
        _problem.CanBeCut(incumbent.Best!.Uses);
        return incumbent.Best;
    }
}
