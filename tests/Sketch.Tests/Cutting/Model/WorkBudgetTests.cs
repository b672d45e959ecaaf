using Sketch.Cutting.Model;
using Xunit;

namespace Sketch.Tests.Cutting.Model;

/// <summary>How much a search may do.</summary>
public sealed class WorkBudgetTests
{
    [Theory]
    [InlineData(99, 1, false)]
    [InlineData(100, 0, true)]
    [InlineData(101, -1, true)]
    public void Work_is_over_when_nothing_is_left(long spent, long left, bool isOver)
    {
        var work = new WorkBudget(100);
        work.Spend(spent);
        Assert.Equal((left, isOver), (work.Left, work.IsOver));
    }

    [Fact]
    public void A_cancellation_ends_the_work()
    {
        using var source = new CancellationTokenSource();
        var part = new WorkBudget(100, source.Token).Part(1);
        Assert.False(part.IsOver);
        source.Cancel();
        Assert.True(part.IsOver);
    }

    [Fact]
    public void Steps_of_a_part_count_for_the_whole()
    {
        var work = new WorkBudget(100);
        work.Spend(20);
        var part = work.Part(0.25);
        Assert.Equal(20, part.Left);
        part.Spend(30);
        Assert.Equal((-10, 50), (part.Left, work.Left));
    }

    [Fact]
    public void Of_a_budget_used_up_a_part_is_nothing()
    {
        var work = new WorkBudget(100);
        work.Spend(200);
        Assert.Equal(0, work.Part(0.5).Left);
    }

    [Fact]
    public void Tasks_share_what_is_left_evenly()
    {
        var work = new WorkBudget(100);
        var left = new long[3];
        work.Share([0, 1, 2], (task, part) =>
        {
            left[task] = part.Left;
            part.Spend(10 * task);
        });
        Assert.Equal([33, 33, 33], left);
        Assert.Equal(70, work.Left);
    }

    [Fact]
    public void Of_a_budget_used_up_tasks_get_nothing()
    {
        var work = new WorkBudget(0);
        work.Spend(5);
        work.Share([0, 1], (_, part) => Assert.Equal(0, part.Left));
        Assert.Equal(-5, work.Left);
    }
}
