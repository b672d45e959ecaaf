using CsCheck;
using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>
/// A plan is proved when it needs no more sheets than a bound says, so a bound that is too high proves what is false. The numbers are
/// counted by hand on a sheet of 12 x 12 in; brute force checks random ones.
/// </summary>
public sealed class SheetBoundTests
{
    private static readonly Gen<CuttingProblem> Small = GivenSheets.Random(9, 9, 10);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(9, 1)]
    [InlineData(10, 2)]
    [InlineData(18, 2)]
    public void By_area_nine_squares_of_4_fill_a_sheet(int squares, int sheets) =>
        Assert.Equal(sheets, SheetBound.ByArea(GivenSheets.On12((4, 4, squares))));

    [Fact]
    public void By_area_an_offcut_saves_its_own_area() =>
        Assert.Equal(1, SheetBound.ByArea(GivenSheets.On12([(4, 4, 10)], (4, 4, 1))));

    [Fact]
    public void By_area_what_fits_only_an_offcut_needs_no_sheet() =>
        Assert.Equal(0, SheetBound.ByArea(GivenSheets.On12([(13, 1, 1)], (14, 1, 1))));

    [Theory]
    [InlineData(7, 7, 3)]
    [InlineData(6.25, 11, 3)]
    [InlineData(6, 6, 0)]
    [InlineData(5, 11, 0)]
    public void Pieces_of_which_no_two_share_a_sheet_need_one_each(double width, double height, int sheets) =>
        Assert.Equal(sheets, SheetBound.ByLargePieces(GivenSheets.On12((width, height, 3))));

    [Fact]
    public void Different_pieces_that_share_no_sheet_are_added_up() =>
        Assert.Equal(4, SheetBound.ByLargePieces(GivenSheets.On12((7, 7, 2), (6.5, 8, 2), (5, 5, 9))));

    [Theory]
    [InlineData(7, 7, 2)]
    [InlineData(6, 7, 3)]
    [InlineData(13, 13, 0)]
    public void A_large_piece_on_an_offcut_needs_no_sheet(double width, double height, int sheets) =>
        Assert.Equal(sheets, SheetBound.ByLargePieces(GivenSheets.On12([(7, 7, 3), (2, 2, 1)], (width, height, 1))));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void By_value_four_squares_of_5_fill_a_sheet_though_their_area_does_not(bool isExact)
    {
        var problem = GivenSheets.On12((5, 5, 5));
        Assert.Equal(1, SheetBound.ByArea(problem));
        Assert.Equal(2, ByValue(problem, isExact, 1));
    }

    [Theory]
    [InlineData(true, 9, 1)]
    [InlineData(true, 10, 2)]
    [InlineData(false, 9, 1)]
    [InlineData(false, 10, 2)]
    public void By_value_nine_squares_of_4_fill_a_sheet(bool isExact, int squares, int sheets) =>
        Assert.Equal(sheets, ByValue(GivenSheets.On12((4, 4, squares)), isExact, 1));

    [Fact]
    public void By_value_a_single_piece_needs_a_sheet_however_little_it_is_worth() =>
        Assert.Equal(1, ByValue(GivenSheets.On12((4, 4, 1)), isExact: true, 1));

    [Fact]
    public void By_value_an_offcut_saves_what_it_can_hold() =>
        Assert.Equal(1, ByValue(GivenSheets.On12([(4, 4, 11)], (8, 5, 1)), isExact: true, 1));

    [Fact]
    public void By_value_what_fits_only_an_offcut_needs_no_sheet() =>
        Assert.Equal(1, ByValue(GivenSheets.On12([(13, 1, 1), (4, 4, 9)], (14, 1, 1)), isExact: true, 100, 1));

    [Fact]
    public void Pieces_without_value_bound_nothing() => Assert.Equal(0, ByValue(GivenSheets.On12((4, 4, 9)), isExact: true, 0));

    [Fact]
    public void Pieces_too_small_for_the_coarse_table_bound_nothing() =>
        Assert.Equal(0, ByValue(GivenSheets.On12((0.01, 4, 9)), isExact: false, 1));

    [Fact]
    public void No_bound_is_above_what_trying_everything_finds()
    {
        Small.Select(Gen.Int[1, 20].Array[3], Gen.Bool).Sample((given, worth, isExact) =>
        {
            if (BruteForce.Sheets(given) is { } fewest)
            {
                var problem = Reduced.From(given);
                Assert.InRange(SheetBound.ByArea(problem), 0, fewest);
                Assert.InRange(SheetBound.ByLargePieces(problem), 0, fewest);
                Assert.InRange(ByValue(problem, isExact, worth[..problem.Kinds.Length]), 0, fewest);
            }
        }, iter: 500);
    }

    /// <summary>The bound for a value of each kind, the largest pieces first.</summary>
    private static int ByValue(Reduced problem, bool isExact, params int[] worth)
    {
        var most = isExact ? int.MaxValue : 1;
        var pricing = new LayoutTable(
            Points(w => w.Width, problem.Stocks.Max(s => s.Width)), Points(w => w.Height, problem.Stocks.Max(s => s.Height)),
            problem.Kinds);
        pricing.Fill(worth);
        return SheetBound.For(problem, pricing).By(worth, problem.Demand, [.. problem.Stocks.Select(s => s.OnHand)]);

        CutPoints Points(Func<(long Width, long Height), long> side, long limit) =>
            CutPoints.For(problem.Kinds.SelectMany(k => k.Ways().Select(w => (side(w), k.Demand))), limit, most);
    }
}
