using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>How far a search goes, on sheets of 12 x 12 in; the fewest sheets are counted by hand.</summary>
public sealed class SheetSearchTests
{
    [Fact]
    public void A_search_without_a_budget_still_fills_shelves()
    {
        var found = SheetSearch.Run(GivenSheets.On12((6, 12, 1), (5, 12, 1)), null, new(0));
        Assert.Equal((1, 1, true), (found.Best!.Sheets, found.LowerBound, found.IsSettled));
    }

    [Fact]
    public void The_first_plan_has_every_kind_on_sheets_of_its_own()
    {
        var heard = new Heard();
        SheetSearch.Run(GivenSheets.On12((4, 4, 10), (3, 3, 1)), heard, new(0));
        Assert.Equal([new(3, 0), new(2, 0), new(2, 2)], heard.All); // nine of 4 x 4 on a sheet, one more, and that of 3 x 3
    }

    [Fact]
    public void Every_kind_alone_is_a_plan_on_offcuts_first()
    {
        var problem = GivenSheets.On12([(13, 1, 3), (4, 4, 12)], (13, 2, 2));
        var best = SheetSearch.Run(problem, null, Given.Work()).Best!;
        Assert.Equal((2, 0), (best.Sheets, best.LeftOut));
        problem.CanBeCut(best.Uses);
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(2, false)] // the area of 19 squares takes more than two sheets
    public void A_short_search_gives_a_plan_only_within_its_sheets(int sheets, bool isFound)
    {
        var plan = SheetSearch.TryWithin(GivenSheets.On12((4, 4, 19)), sheets, [], Given.Work());
        Assert.Equal(isFound ? 3 : (int?)null, plan?.Sheets);
    }

    [Fact]
    public void A_plan_within_more_sheets_than_needed_ends_the_search_early()
    {
        var problem = GivenSheets.On12((8, 8, 4), (4, 12, 4), (8, 4, 4));
        Assert.InRange(SheetSearch.Within(problem, 12, Given.Work()).Sheets, 4, 12);
        Assert.Equal(4, SheetSearch.Within(problem, 4, Given.Work()).Sheets);
    }

    // Four squares of 5 x 5 fill a sheet. A plain plan has the two sheets that are needed; that one is not enough takes more to prove.
    [Fact]
    public void A_search_ends_once_the_sheets_allowed_are_enough()
    {
        var problem = GivenSheets.On12((5, 5, 5));
        Assert.Equal(2, SheetSearch.Within(problem, 2, Given.Work()).Sheets);
        Assert.InRange(Spent(work => SheetSearch.Within(problem, 2, work)), 0, Spent(work => SheetSearch.Within(problem, 1, work)) / 2);
    }

    [Fact]
    public void A_search_ends_once_it_is_proved_that_the_sheets_allowed_are_too_few()
    {
        // By area three sheets are needed; that four are takes more to prove.
        var problem = GivenSheets.On12((5, 5, 13));
        Assert.InRange(Spent(work => SheetSearch.Within(problem, 2, work)), 0, Spent(work => SheetSearch.Within(problem, 3, work)) / 2);
    }

    private static long Spent(Action<WorkBudget> search)
    {
        var work = Given.Work();
        search(work);
        return WorkBudget.Usual - work.Left;
    }

    private sealed class Heard : IProgress<PlanProgress>
    {
        public List<PlanProgress> All { get; } = [];

        public void Report(PlanProgress value) => All.Add(value);
    }
}
