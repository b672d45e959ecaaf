using CsCheck;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Sheets that are emptied and filled again; the fewest sheets are counted by hand.</summary>
public sealed class RefillingTests
{
    private const int Attempts = 60;

    [Theory]
    [InlineData(4, 4, 18, 2)] // nine on a sheet
    [InlineData(4, 4, 19, 3)]
    [InlineData(6, 12, 10, 5)] // two on a sheet
    [InlineData(7, 7, 5, 5)] // no two share a sheet
    public void Half_empty_sheets_are_merged(double width, double height, int pieces, int sheets)
    {
        var problem = GivenSheets.On12((width, height, pieces));
        var best = Refilled(problem, problem.OneOnEach()).Best!;
        Assert.Equal((sheets, 0), (best.Sheets, best.LeftOut));
        problem.CanBeCut(best.Uses);
    }

    [Fact]
    public void Different_pieces_fill_a_sheet_together()
    {
        // A square of 8 with a strip at its side and one above it cover a sheet.
        var problem = GivenSheets.On12((8, 8, 3), (4, 12, 3), (8, 4, 3));
        Assert.Equal(3, Refilled(problem, problem.OneOnEach()).Best!.Sheets);
    }

    [Fact]
    public void Offcuts_stay_as_they_are()
    {
        var problem = GivenSheets.On12([(4, 4, 11)], (8, 4, 1));
        var offcut = problem.Row(problem.Stocks[1], 0, 0);
        var best = Refilled(problem, [(offcut, 1), (problem.Row(problem.Sheet, 0), 9)]).Best!;
        Assert.Equal(1, best.Sheets);
        Assert.Contains((offcut, 1), best.Uses);
        problem.CanBeCut(best.Uses);
    }

    [Fact]
    public void Pieces_beyond_the_demand_are_dropped()
    {
        var problem = GivenSheets.On12((4, 4, 9));
        var best = Refilled(problem, [(problem.Row(problem.Sheet, 0, 0, 0), 5)]).Best!;
        Assert.Equal((1, 9), (best.Sheets, best.Uses.Sum(u => u.Times * u.Pattern.Counts[0])));
    }

    [Fact]
    public void One_piece_beyond_the_demand_is_dropped_too()
    {
        var problem = GivenSheets.On12((4, 4, 17));
        var best = Refilled(problem, [(problem.Row(problem.Sheet, 0, 0, 0), 6)]).Best!;
        Assert.Equal((2, 17), (best.Sheets, best.Uses.Sum(u => u.Times * u.Pattern.Counts[0])));
    }

    // Twelve strips fill a sheet. The single one has room above those on any other two sheets or more, which need all their sheets without
    // it.
    [Fact]
    public void The_emptiest_sheet_is_among_those_that_are_filled_again()
    {
        var problem = GivenSheets.On12((1, 12, 111));
        var incumbent = Begun(problem, [(Strips(problem, 11), 10), (Strips(problem, 1), 1)]);
        new Refilling(problem, incumbent, Given.Work()).Run(mostFruitless: 1);
        Assert.Equal(10, incumbent.Best!.Sheets);
    }

    // Six sheets of eleven strips still take six sheets, so one is saved only by going on with fuller ones beside an emptier one.
    [Fact]
    public void A_plan_with_as_many_sheets_but_fuller_ones_is_continued_with()
    {
        var problem = GivenSheets.On12((1, 12, 13 * 11));
        Assert.Equal(12, Refilled(problem, [(Strips(problem, 11), 13)]).Best!.Sheets);
    }

    // At most one of the sheets is full before the end, so any three of them become two.
    [Fact]
    public void It_goes_on_as_long_as_each_attempt_saves_a_sheet()
    {
        var problem = GivenSheets.On12((4, 4, 18));
        var incumbent = Begun(problem, problem.OneOnEach());
        new Refilling(problem, incumbent, Given.Work()).Run(mostFruitless: 2);
        Assert.Equal(2, incumbent.Best!.Sheets);
    }

    [Fact]
    public void A_plan_that_is_proved_is_not_changed()
    {
        var problem = GivenSheets.On12((4, 4, 9));
        var incumbent = Begun(problem, problem.OneOnEach());
        incumbent.Settle();
        new Refilling(problem, incumbent, Given.Work()).Run(Attempts);
        Assert.Equal(9, incumbent.Best!.Sheets);
    }

    [Fact]
    public void A_plan_that_leaves_pieces_out_is_not_changed()
    {
        var problem = GivenSheets.On12((4, 4, 9));
        var best = Refilled(problem, [(problem.Row(problem.Sheet, 0), 8)]).Best!;
        Assert.Equal((8, 1), (best.Sheets, best.LeftOut));
    }

    [Fact]
    public void Nothing_is_done_once_the_budget_is_used_up()
    {
        var problem = GivenSheets.On12((4, 4, 9));
        var incumbent = Begun(problem, problem.OneOnEach());
        new Refilling(problem, incumbent, new(0)).Run(Attempts);
        Assert.Equal(9, incumbent.Best!.Sheets);
    }

    [Fact]
    public void Any_plan_still_cuts_all_pieces_and_takes_no_more_sheets() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[1, 4]).Array[1, 5].Sample(pieces =>
        {
            var problem = GivenSheets.On12([.. pieces.Select(p => ((double)p.Item1, (double)p.Item2, p.Item3))]);
            var best = Refilled(problem, problem.OneOnEach()).Best!;
            problem.CanBeCut(best.Uses);
            Assert.InRange(best.Sheets, SheetBound.ByArea(problem), problem.Demand.Sum());
        }, iter: 40);

    private static Pattern Strips(Reduced problem, int count) => problem.Row(problem.Sheet, new int[count]);

    private static Incumbent Refilled(Reduced problem, (Pattern Pattern, int Times)[] plan)
    {
        var incumbent = Begun(problem, plan);
        new Refilling(problem, incumbent, Given.Work()).Run(Attempts);
        return incumbent;
    }

    private static Incumbent Begun(Reduced problem, (Pattern Pattern, int Times)[] plan)
    {
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer(plan);
        return incumbent;
    }
}
