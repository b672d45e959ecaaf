using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Whole numbers of given layouts, on sheets of 12 x 12 in; the fewest sheets are counted by hand.</summary>
public sealed class WholeSheetsTests
{
    private const double Effort = 1;

    [Fact]
    public void The_fewest_sheets_are_chosen()
    {
        var problem = GivenSheets.On12((4, 4, 7));
        var (times, isProved) = Chosen(problem, 9, problem.Row(problem.Sheet, 0), problem.Row(problem.Sheet, 0, 0, 0));
        Assert.Equal((3, true), (times!.Sum(), isProved));
    }

    [Fact]
    public void Where_no_choice_takes_so_few_sheets_there_is_none_and_that_is_proved()
    {
        var problem = GivenSheets.On12((4, 4, 7));
        Assert.Equal(((int[]?)null, true), Chosen(problem, 2, problem.Row(problem.Sheet, 0, 0, 0)));
    }

    [Fact]
    public void Offcuts_are_used_as_far_as_there_are_any()
    {
        var problem = GivenSheets.On12([(4, 4, 14)], (8, 4, 1));
        var (times, _) = Chosen(problem, 9, problem.Row(problem.Sheet, 0, 0, 0), problem.Row(problem.Stocks[1], 0, 0));
        Assert.Equal([4, 1], times!);
    }

    [Fact]
    public void What_fits_no_sheet_may_be_left_out()
    {
        var problem = GivenSheets.On12([(13, 1, 3), (4, 4, 3)], (13, 1, 2));
        var (small, large) = (0, 1); // the larger area comes first
        var (times, _) = Chosen(problem, 9, problem.Row(problem.Sheet, small, small, small), problem.Row(problem.Stocks[1], large));
        Assert.Equal([1, 2], times!);
    }

    [Fact]
    public void Of_all_layouts_known_the_best_plan_is_offered()
    {
        var problem = GivenSheets.On12((4, 4, 6), (4, 8, 3));
        var (large, small) = (0, 1);
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer([(problem.Row(problem.Sheet, large, large, large), 1), (problem.Row(problem.Sheet, small, small), 3)]);
        incumbent.Pool.Add(problem.Row(problem.Sheet, small, small, small));
        new PoolSearch(problem, incumbent, Given.Work()).Choose();
        Assert.Equal((3, 0), (incumbent.Best!.Sheets, incumbent.Best.LeftOut));
    }

    [Fact]
    public void Layouts_that_are_varied_by_chance_complete_a_plan()
    {
        // A square of 8 with a strip at its side and one above it cover a sheet.
        var problem = GivenSheets.On12((8, 8, 2), (4, 12, 2), (8, 4, 2));
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer(problem.OneOnEach());
        new PoolSearch(problem, incumbent, Given.Work()).Vary();
        Assert.Equal(2, incumbent.Best!.Sheets);
        problem.CanBeCut(incumbent.Best.Uses);
    }

    private static (int[]? Times, bool IsProved) Chosen(Reduced problem, int atMost, params Pattern[] patterns) =>
        WholeSheets.Choose(problem, patterns, atLeast: 0, atMost, Effort, Given.Work());
}
