using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>What is equal for cutting counts together.</summary>
public sealed class ReducedTests
{
    [Fact]
    public void Pieces_that_may_turn_are_equal_however_they_lie()
    {
        var reduced = Of((4, 5, 1, true), (5, 4, 2, true), (4, 5, 4, false), (5, 4, 8, false));
        Assert.Equal(["4 x 5 upright: 4", "4 x 5: 3", "5 x 4 upright: 8"], reduced.Kinds.Select(Written).Order(StringComparer.Ordinal));
        Assert.Equal([0, 1], reduced.Members[Array.FindIndex(reduced.Kinds, k => k.MayTurn)]);
    }

    [Fact]
    public void Squares_are_equal_whether_they_may_turn_or_not() =>
        Assert.Equal(["4 x 4: 3"], Of((4, 4, 1, true), (4, 4, 2, false)).Kinds.Select(Written));

    [Fact]
    public void The_largest_pieces_come_first() =>
        Assert.Equal(["5 x 5: 1", "3 x 4: 1", "1 x 10: 1"], Of((3, 4, 1, true), (10, 1, 1, true), (5, 5, 1, true)).Kinds.Select(Written));

    [Fact]
    public void Pieces_that_are_not_wanted_are_left_out() => Assert.Empty(Of((4, 4, 0, true)).Kinds);

    [Fact]
    public void Pieces_that_fit_nowhere_are_misfits_in_the_order_of_their_lines() =>
        Assert.Equal([0, 2], Of((13, 1, 1, true), (4, 4, 1, true), (14, 2, 1, true)).Misfits);

    [Fact]
    public void Sides_have_one_kerf_added()
    {
        var problem = Problem((4, 5, 1, true)) with { Kerf = Length.Inch(1) };
        var reduced = Reduced.From(problem.With((Given.Inches(6, 7), 1)));
        Assert.Equal(["13 x 13", "7 x 8"], reduced.Stocks.Select(Written));
        Assert.Equal("5 x 6: 1", Written(Assert.Single(reduced.Kinds)));
    }

    [Fact]
    public void A_sheet_has_no_trim()
    {
        var sheet = Given.Sheet(12, 12) with { Trim = new(Length.Inch(1), Length.Inch(2), Length.Inch(3), Length.Inch(4)) };
        Assert.Equal("8 x 6", Written(Reduced.From(Given.Problem(sheet, (Given.Inches(1, 1), 1, true))).Sheet));
    }

    [Fact]
    public void A_sheet_that_is_all_trim_holds_nothing()
    {
        var sheet = Given.Sheet(3, 3) with { Trim = new(Length.Inch(2), Length.Inch(2), Length.Inch(2), Length.Inch(2)) };
        Assert.Equal("0 x 0", Written(Reduced.From(Given.Problem(sheet, (Given.Inches(1, 1), 1, true))).Sheet));
    }

    [Fact]
    public void Equal_offcuts_count_together_and_the_smallest_come_first()
    {
        var reduced = Reduced.From(Problem((1, 1, 9, true)).With(
            (Given.Inches(5, 4), 1), (Given.Inches(3, 3), 2), (Given.Inches(5, 4), 3), (Given.Inches(2, 2), 0)));
        Assert.Equal([(0, null), (1, 2), (2, 4)], reduced.Stocks.Select(s => (s.Index, s.OnHand)));
        Assert.Equal(["12 x 12", "3 x 3", "5 x 4"], reduced.Stocks.Select(Written));
    }

    [Fact]
    public void An_offcut_that_no_piece_fits_is_left_out()
    {
        var reduced = Reduced.From(Problem((4, 5, 1, true)).With((Given.Inches(3, 20), 1), (Given.Inches(5, 4), 1)));
        Assert.Equal([(0, "12 x 12"), (1, "5 x 4")], reduced.Stocks.Select(s => (s.Index, Written(s))));
    }

    private static Reduced Of(params (double Width, double Height, int Count, bool MayTurn)[] pieces) => Reduced.From(Problem(pieces));

    private static CuttingProblem Problem(params (double Width, double Height, int Count, bool MayTurn)[] pieces) => Given.Problem(
        Given.Sheet(12, 12), [.. pieces.Select(p => (Given.Inches(p.Width, p.Height), p.Count, p.MayTurn))]);

    private static string Written(Sketch.Cutting.Layouts.Kind kind) =>
        $"{Inches(kind.Width)} x {Inches(kind.Height)}{(kind.MayTurn ? "" : " upright")}: {kind.Demand}";

    private static string Written(Stock stock) => $"{Inches(stock.Width)} x {Inches(stock.Height)}";

    private static long Inches(long nanometres) => nanometres / Length.NanometresPerInch;
}
