using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting;

/// <summary>No plan takes more sheets than plain shelves do, however little work is allowed.</summary>
public sealed class NeverWorseThanSimpleTests
{
    private const long Little = 20_000_000;

    // More than a table takes that has just been begun when the work is used up.
    private const long Overshoot = 200_000_000;

    public static TheoryData<int> Classes() => [.. Enumerable.Range(1, ClassicalClasses.Count)];

    [Theory]
    [MemberData(nameof(Classes))]
    public void A_class_takes_no_more_sheets_than_shelves(int number)
    {
        foreach (var (pieces, seed) in from pieces in (int[])[20, 60, 100] from seed in (int[])[1, 2] select (pieces, seed))
        {
            AssertNoWorse(ClassicalClasses.Problem(number, pieces, seed), Little);
        }
    }

    [Theory]
    [MemberData(nameof(Classes))]
    public void A_stopped_plan_takes_no_more_sheets_than_shelves(int number) =>
        AssertNoWorse(ClassicalClasses.Problem(number, 60, 3), work: 0);

    [Fact]
    public void Two_hundred_kinds_take_no_more_sheets_than_shelves() => AssertNoWorse(Kinds(200, 3), Little);

    [Fact]
    public void Thin_strips_take_no_more_sheets_than_shelves() => AssertNoWorse(
        new(Given.Sheet(12, 12), [], [.. Enumerable.Range(0, 60).Select(
            i => new PieceDemand($"p{i}", new(Length.Inch(0, 60 + i * 2, 16), Length.Inch(0, 4 + i % 13, 64)), 25))]), Little);

    [Fact]
    public void The_same_work_gives_the_same_plan()
    {
        var plans = Enumerable.Range(0, 2).Select(_ => SheetPlanner.Plan(Kinds(40, 5), new(Little))).ToList();
        Assert.Equal(plans[0].Layouts.SelectMany(l => l.Pieces), plans[1].Layouts.SelectMany(l => l.Pieces));
    }

    [Fact]
    public void A_search_ends_when_its_work_is_used_up()
    {
        var work = new WorkBudget(Little, TestContext.Current.CancellationToken);
        SheetPlanner.Plan(Kinds(150, 333), work);
        Assert.InRange(work.Left, -Overshoot, Little / 2);
    }

    private static CuttingProblem Kinds(int kinds, int each)
    {
        var random = new Random(kinds);
        return new(Given.Sheet(12, 12), [], [.. Enumerable.Range(0, kinds).Select(i => new PieceDemand(
            $"p{i}", new(Length.Inch(0, random.Next(8, 91), 16), Length.Inch(0, random.Next(8, 91), 16)), each)).ToImmutableArray()]);
    }

    private static void AssertNoWorse(CuttingProblem problem, long work)
    {
        var plan = SheetPlanner.Plan(problem, new(work, TestContext.Current.CancellationToken));
        Assert.Empty(PlanChecker.Faults(problem, plan));
        Assert.InRange(plan.Sheets, 0, ShelfFirstFit.Sheets(problem));
    }
}
