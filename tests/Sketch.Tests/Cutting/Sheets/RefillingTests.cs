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
