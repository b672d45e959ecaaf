using CsCheck;
using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>
/// All layouts that a better plan could have are listed: the best plan is found and proved. On sheets of 12 x 12 in the fewest sheets are
/// counted by hand; brute force checks random problems.
/// </summary>
public sealed class ListingTests
{
    private const long Effort = 1_000_000;

    private static readonly Gen<CuttingProblem> Small = GivenSheets.Random(8, 4, 6);

    [Fact]
    public void The_fewest_sheets_are_found_and_proved() =>
        Small.Select(Gen.Int[1, 20].Array[3], Gen.Bool).Sample((given, prices, isExact) =>
        {
            var (problem, fewest) = (Reduced.From(given), BruteForce.Sheets(given)!.Value);
            var incumbent = Begun(problem, problem.OneOnEach());
            List(problem, incumbent, prices, 1, isExact);
            Assert.Equal((fewest, true), (incumbent.Best!.Sheets, incumbent.IsSettled));
            problem.CanBeCut(incumbent.Best.Uses);
        }, iter: 40);

    // As above, but now all that is not wasted by the best plan is needed.
    [Fact]
    public void One_sheet_less_is_found_if_there_is_such_a_plan() =>
        Small.Select(Gen.Int[1, 20].Array[3], Gen.Bool).Sample((given, prices, isExact) =>
        {
            if (BruteForce.Sheets(given) is > 0 and var fewest)
            {
                var problem = Reduced.From(given);
                var incumbent = Begun(problem, problem.OneOnEach());
                List(problem, incumbent, prices, 1, isExact);
                var roomy = incumbent.WithSpareSheet();
                Assert.Equal(fewest + 1, roomy.Best!.Sheets);
                List(problem, roomy, prices, 1, isExact);
                Assert.Equal(fewest, roomy.Best.Sheets);
            }
        }, iter: 15);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void All_waste_may_lie_on_one_sheet(bool isExact)
    {
        var problem = GivenSheets.On12((12, 12, 1), (7, 7, 1));
        var incumbent = Begun(problem, (problem.Row(problem.Sheet, 0), 1), (problem.Row(problem.Sheet, 1), 2));
        List(problem, incumbent, [144, 49], 1, isExact);
        Assert.Equal((2, true), (incumbent.Best!.Sheets, incumbent.IsSettled));
    }

    [Theory]
    [InlineData(11, 1)] // nine on a sheet and two on the offcut
    [InlineData(12, 2)]
    public void Offcuts_hold_pieces_as_long_as_there_are_any(int pieces, int sheets)
    {
        var problem = GivenSheets.On12([(4, 4, pieces)], (8, 4, 1));
        var incumbent = Begun(problem, problem.OneOnEach());
        List(problem, incumbent, [1]);
        Assert.Equal((sheets, true), (incumbent.Best!.Sheets, incumbent.IsSettled));
        problem.CanBeCut(incumbent.Best.Uses);
    }

    [Fact]
    public void As_few_pieces_as_possible_are_left_out()
    {
        // Two of the long strips fit the offcut, and none a sheet.
        var problem = GivenSheets.On12([(13, 1, 3), (4, 4, 1)], (13, 2, 1));
        var incumbent = Begun(problem, (problem.Row(problem.Sheet, 0), 1));
        List(problem, incumbent, [1, 1]);
        Assert.Equal((1, 1, true), (incumbent.Best!.Sheets, incumbent.Best.LeftOut, incumbent.IsSettled));
    }

    [Theory]
    [InlineData(1, true)] // four on a sheet
    [InlineData(0.9, false)]
    public void Only_with_all_waste_that_can_be_afforded_is_anything_proved(double share, bool isProved)
    {
        var problem = GivenSheets.On12((5, 5, 5));
        var incumbent = Begun(problem, (problem.Row(problem.Sheet, 0, 0), 2), (problem.Row(problem.Sheet, 0), 1));
        List(problem, incumbent, [1], share);
        Assert.Equal((2, isProved), (incumbent.Best!.Sheets, incumbent.IsSettled));
    }

    [Theory]
    [InlineData(0, 1_000_000_000)]
    [InlineData(Effort, 0)]
    public void Without_effort_or_budget_nothing_is_proved(long effort, long budget)
    {
        var problem = GivenSheets.On12((4, 4, 9));
        var incumbent = Begun(problem, problem.OneOnEach());
        new Listing(problem, incumbent, () => Table(problem, isExact: true), new(budget)).Run([1], 1, effort);
        Assert.Equal((9, false), (incumbent.Best!.Sheets, incumbent.IsSettled));
    }

    private static Incumbent Begun(Reduced problem, params (Pattern Pattern, int Times)[] plan)
    {
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer(plan);
        return incumbent;
    }

    private static void List(Reduced problem, Incumbent incumbent, int[] prices, double share = 1, bool isExact = true) =>
        new Listing(problem, incumbent, () => Table(problem, isExact), Given.Work()).Run(prices, share, Effort);

    private static LayoutTable Table(Reduced problem, bool isExact)
    {
        var most = isExact ? int.MaxValue : 1;
        return new(
            Points(w => w.Width, problem.Stocks.Max(s => s.Width)), Points(w => w.Height, problem.Stocks.Max(s => s.Height)),
            problem.Kinds);

        CutPoints Points(Func<(long Width, long Height), long> side, long limit) =>
            CutPoints.For(problem.Kinds.SelectMany(k => k.Ways().Select(w => (side(w), k.Demand))), limit, most);
    }
}
