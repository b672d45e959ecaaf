using CsCheck;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Plain plans on a sheet of 12 x 12 in; the sheets are counted by hand.</summary>
public sealed class FirstFitTests
{
    private static readonly Gen<Reduced> Any =
        from pieces in Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[1, 5]).Array[1, 6]
        from offcuts in Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[1, 3]).Array[0, 2]
        select GivenSheets.On12([.. pieces.Select(p => ((double)p.Item1, (double)p.Item2, p.Item3))],
            [.. offcuts.Select(p => ((double)p.Item1, (double)p.Item2, p.Item3))]);

    [Theory]
    [InlineData(4, 4, 9, 1)]
    [InlineData(4, 4, 10, 2)]
    [InlineData(6, 12, 3, 2)]
    [InlineData(12, 1, 13, 2)]
    [InlineData(7, 7, 3, 3)]
    public void Equal_pieces_fill_shelf_after_shelf(double width, double height, int pieces, int sheets)
    {
        var problem = GivenSheets.On12((width, height, pieces));
        Assert.Equal(sheets, Sheets(problem, new FirstFit(problem).OnShelves(problem.Demand, problem.OnHand())));
    }

    [Fact]
    public void An_offcut_is_used_before_a_sheet()
    {
        var problem = GivenSheets.On12([(4, 4, 11)], (8, 4, 1));
        var uses = new FirstFit(problem).OnShelves(problem.Demand, problem.OnHand());
        Assert.Equal(2, uses.Where(u => !u.Pattern.Stock.IsSheet).Sum(u => u.Times * u.Pattern.Counts[0]));
        Assert.Equal(1, Sheets(problem, uses));
    }

    [Fact]
    public void Parts_of_a_sheet_hold_what_shelves_do_not()
    {
        // The strip goes along the square of 8 over the whole height, which no shelf across does; the other strip goes above the square.
        var problem = GivenSheets.On12((8, 8, 1), (4, 12, 1), (8, 4, 1));
        Assert.Equal(1, Sheets(problem, new FirstFit(problem).InParts(problem.Demand, problem.OnHand(), Given.Work())!));
    }

    [Fact]
    public void Plans_on_shelves_can_be_cut() => Any.Sample(problem =>
        problem.CanBeCut(new FirstFit(problem).OnShelves(problem.Demand, problem.OnHand())), iter: 200);

    [Fact]
    public void Plans_in_parts_can_be_cut() => Any.Sample(problem =>
        problem.CanBeCut(new FirstFit(problem).InParts(problem.Demand, problem.OnHand(), Given.Work())!), iter: 200);

    private static int Sheets(Reduced problem, IEnumerable<(Pattern Pattern, int Times)> uses)
    {
        var whole = WholePlan.From(uses, problem.Demand);
        Assert.Equal(0, whole.LeftOut);
        return whole.Sheets;
    }
}
