using Sketch.Cutting.Layouts;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>How often to use each layout in fractions, on sheets of 12 x 12 in; the numbers are worked out by hand.</summary>
public sealed class PatternProgramTests
{
    private const double Close = 1e-6;

    [Fact]
    public void The_best_layout_is_used_as_often_as_needed()
    {
        var problem = GivenSheets.On12((4, 4, 10));
        using var program = Solved(problem, problem.Row(problem.Sheet, 0), problem.Row(problem.Sheet, 0, 0, 0));
        var (pattern, times) = Assert.Single(program.Use());
        Assert.Equal((3, 10 / 3.0), (pattern.Counts[0], times), (a, b) => a.Item1 == b.Item1 && Math.Abs(a.Item2 - b.Item2) < Close);
        Assert.Equal(1 / 3.0, Assert.Single(program.Prices()), Close);
        Assert.Equal(1, Assert.Single(program.StockPrices()), Close);
    }

    [Fact]
    public void An_offcut_costs_nothing_and_saves_what_it_holds()
    {
        var problem = GivenSheets.On12([(4, 4, 10)], (8, 4, 2));
        using var program = Solved(problem, problem.Row(problem.Sheet, 0, 0, 0), problem.Row(problem.Stocks[1], 0, 0));
        Assert.Equal([2.0, 2.0], program.Use().Select(u => Math.Round(u.Times, 6)));
        Assert.Equal([1, 2 / 3.0], program.StockPrices(), (a, b) => Math.Abs(a - b) < Close);
    }

    [Fact]
    public void A_piece_that_no_layout_holds_is_left_out_at_its_price()
    {
        var problem = GivenSheets.On12((4, 4, 3), (3, 3, 2));
        using var program = Solved(problem, problem.Row(problem.Sheet, 0, 0, 0));
        Assert.Equal([1 / 3.0, PatternProgram.LeftOut], program.Prices(), (a, b) => Math.Abs(a - b) < Close);
    }

    [Theory]
    [InlineData(4, 4, 18, 2, 2)] // nine on a sheet
    [InlineData(4, 4, 12, 4 / 3.0, 2)]
    [InlineData(6, 12, 3, 1.5, 2)]
    public void New_layouts_are_found_until_none_is_better(double width, double height, int pieces, double sheets, int bound)
    {
        var problem = GivenSheets.On12((width, height, pieces));
        var (found, use) = Generated(problem);
        Assert.Equal(bound, found);
        Assert.Equal(sheets, use.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times), Close);
    }

    [Fact]
    public void New_layouts_are_found_for_offcuts_too()
    {
        var problem = GivenSheets.On12([(4, 4, 13)], (8, 8, 1));
        var (bound, use) = Generated(problem);
        Assert.Equal(1, bound);
        Assert.Equal([4, 9], use.Select(u => u.Pattern.Counts[0]).Order());
    }

    private static (int Bound, List<(Pattern Pattern, double Times)> Use) Generated(Reduced problem)
    {
        var pool = new PatternPool();
        pool.Add(problem.Row(problem.Sheet, 0));
        var ways = problem.Kinds.SelectMany(k => k.Ways().Select(w => (w.Width, w.Height, k.Demand))).ToList();
        var table = new LayoutTable(
            CutPoints.For(ways.Select(w => (w.Width, w.Demand)), problem.Sheet.Width, 100),
            CutPoints.For(ways.Select(w => (w.Height, w.Demand)), problem.Sheet.Height, 100), problem.Kinds);
        return new ColumnGeneration(problem, table, pool).Run(problem.Demand, problem.OnHand(), Given.Work());
    }

    private static PatternProgram Solved(Reduced problem, params Pattern[] patterns)
    {
        var program = new PatternProgram(problem.Demand, problem.OnHand());
        foreach (var pattern in patterns)
        {
            program.Add(pattern);
        }

        Assert.True(program.Solve(Given.Work()));
        return program;
    }
}
