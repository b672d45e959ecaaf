using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Which plan is the best so far, and when it is proved.</summary>
public sealed class IncumbentTests
{
    private readonly Reduced _problem = GivenSheets.On12((4, 4, 6));

    [Fact]
    public void Fewer_pieces_left_out_count_more_than_fewer_sheets()
    {
        var incumbent = After(Threes(1), Threes(2));
        Assert.Equal((2, 0), (incumbent.Best!.Sheets, incumbent.Best.LeftOut));
    }

    [Fact]
    public void A_plan_with_fewer_sheets_takes_the_place_of_one_with_more() =>
        Assert.Equal(2, After(Ones(6), Threes(2), Ones(6)).Best!.Sheets);

    [Fact]
    public void Equal_plans_are_kept_until_a_better_one_comes()
    {
        var incumbent = After(Ones(6), Twos(3), [.. Ones(2), .. Twos(1)], [.. Ones(1), .. Twos(1), .. Threes(1)]);
        Assert.Equal(2, incumbent.Alternatives.Count);
        incumbent.Offer(Threes(2));
        Assert.Equal(2, Assert.Single(incumbent.Alternatives).Sheets);
    }

    [Fact]
    public void A_worse_plan_is_not_among_the_equal_ones()
    {
        var incumbent = After(Threes(2), Ones(6));
        incumbent.Prefer(Ones(6));
        Assert.Single(incumbent.Alternatives);
    }

    [Fact]
    public void Layouts_with_the_same_pieces_are_merged() => Assert.Equal((1, 2), After([.. Threes(1), .. Threes(1)]).Best!.Uses switch
    {
        [var (_, times)] => (1, times),
        var more => (more.Count, 0),
    });

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    public void A_plan_at_the_bound_is_proved(int bound, bool isProved)
    {
        var incumbent = After(Threes(2));
        incumbent.Raise(bound);
        Assert.Equal(isProved, incumbent.IsSettled);
    }

    [Fact]
    public void A_bound_is_never_lowered()
    {
        var incumbent = After(Threes(2));
        incumbent.Raise(2);
        incumbent.Raise(1);
        Assert.Equal(2, incumbent.LowerBound);
    }

    [Fact]
    public void A_plan_that_leaves_pieces_out_is_not_proved_by_a_bound()
    {
        var incumbent = After(Threes(1));
        incumbent.Raise(1);
        Assert.False(incumbent.IsSettled);
        incumbent.Settle();
        Assert.True(incumbent.IsSettled);
    }

    [Fact]
    public void With_a_spare_sheet_a_plan_of_one_sheet_more_counts_as_best()
    {
        var incumbent = After(Threes(2));
        incumbent.Raise(2);
        var roomy = incumbent.WithSpareSheet();
        Assert.Equal((3, 2), (roomy.Best!.Sheets, roomy.LowerBound));
        Assert.Equal(incumbent.Pool.Patterns, roomy.Pool.Patterns);
    }

    [Fact]
    public void The_progress_gives_sheets_and_bound()
    {
        var heard = new Heard();
        var incumbent = new Incumbent(_problem, heard);
        incumbent.Offer(Twos(3));
        incumbent.Raise(1);
        incumbent.Offer(Ones(6));
        Assert.Equal([new(3, 0), new(3, 1)], heard.All);
    }

    private (Pattern Pattern, int Times)[] Ones(int times) => [(_problem.Row(_problem.Sheet, 0), times)];

    private (Pattern Pattern, int Times)[] Twos(int times) => [(_problem.Row(_problem.Sheet, 0, 0), times)];

    private (Pattern Pattern, int Times)[] Threes(int times) => [(_problem.Row(_problem.Sheet, 0, 0, 0), times)];

    private Incumbent After(params (Pattern Pattern, int Times)[][] plans)
    {
        var incumbent = new Incumbent(_problem, null);
        foreach (var plan in plans)
        {
            incumbent.Offer(plan);
        }

        return incumbent;
    }

    private sealed class Heard : IProgress<PlanProgress>
    {
        public List<PlanProgress> All { get; } = [];

        public void Report(PlanProgress value) => All.Add(value);
    }
}
