using Sketch.Cutting.Layouts;
using Sketch.Cutting.PostProcessing;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>In which order a layout is cut out of its sheet.</summary>
public sealed class CutOrderTests
{
    private static readonly HashSet<long> _sides = [3, 4, 5];

    // To cut off the right part first would leave more in one part, but 7 is the side of no piece.
    [Fact]
    public void The_stop_is_set_to_sides_of_pieces_even_if_the_leftover_is_smaller() =>
        Assert.Equal([5, 4, 3], Settings(CutOrder.For(Row, 20, 6, kerf: 0, smallestUse: 1, _sides)));

    [Fact]
    public void Of_equal_work_the_larger_leftover_is_kept() =>
        Assert.Equal([3, 5], Settings(CutOrder.For(Piece(3), 10, 9, kerf: 0, smallestUse: 1, _sides)));

    [Fact]
    public void Of_equal_work_and_leftovers_the_leftover_is_cut_off_first() =>
        Assert.Equal([7, 4], Settings(CutOrder.For(Row, 20, 5, kerf: 0, smallestUse: 1, new HashSet<long> { 4 })));

    // To cut off all that is below the columns is one cut less, but 5 is the side of no piece.
    [Fact]
    public void One_cut_more_is_less_work_than_a_new_setting_of_the_stop() =>
        Assert.Equal([3, 3, 2, 3, 2], Settings(CutOrder.For(Columns(2), 6, 9, kerf: 0, smallestUse: 1, new HashSet<long> { 2, 3 })));

    // Here it is two cuts less, which is as much work as a setting, so that the leftovers decide: one of 9 x 4, or three of 3 x 4.
    [Theory]
    [InlineData(4)]
    [InlineData(5)] // none of use, however many there are
    public void Two_cuts_more_are_as_much_work_as_a_new_setting_of_the_stop(long smallestUse) => Assert.Equal(
        [5, 3, 3, 3, 3, 3], Settings(CutOrder.For(Columns(3), 9, 9, kerf: 0, smallestUse, new HashSet<long> { 2, 3 })));

    // A cut down leaves 7 x 9 and 3 x 4, one across 10 x 4 and 7 x 5.
    [Theory]
    [InlineData(0, 7, "3 5")]
    [InlineData(0, 8, "5 3")]
    [InlineData(1, 6, "3 5")]
    [InlineData(1, 7, "5 3")]
    public void A_leftover_counts_only_if_it_is_wide_enough_to_use(long kerf, long smallestUse, string settings) =>
        Assert.Equal(settings, string.Join(' ', Settings(CutOrder.For(Piece(3), 10, 9, kerf, smallestUse, _sides))));

    [Fact]
    public void A_piece_as_large_as_the_sheet_is_not_cut() =>
        Assert.IsType<PiecePart>(CutOrder.For(Piece(3), 3, 5, kerf: 0, smallestUse: 1, _sides));

    [Fact]
    public void In_a_row_the_taller_pieces_come_first_then_the_wider() => Assert.Equal(
        ["1 x 7", "5 x 6", "4 x 6"],
        Pieces(new Join(SideBySide: true, new Join(SideBySide: true, Piece(4, 6), Piece(5, 6)), Piece(1, 7)), 10, 7));

    [Fact]
    public void In_a_column_the_wider_pieces_come_first_then_the_taller() => Assert.Equal(
        ["7 x 1", "6 x 5", "6 x 4"],
        Pieces(new Join(SideBySide: false, Piece(6, 4), new Join(SideBySide: false, Piece(6, 5), Piece(7, 1))), 7, 10));

    [Fact]
    public void The_parts_of_a_layout_fill_its_sheet()
    {
        var column = new Join(SideBySide: false, Piece(3, 2), Piece(2, 3));
        var part = CutOrder.For(new Join(SideBySide: true, column, Piece(4, 6)), 9, 8, kerf: 0, smallestUse: 1, _sides);
        Assert.Equal((9, 8), (part.Width, part.Height));
        Assert.Equal(9 * 8, part.InOrder().Where(p => p is not CutPart).Sum(p => p.Width * p.Height));
        Assert.Equal(["4 x 6", "3 x 2", "2 x 3"], Written(part));
    }

    private static IEnumerable<string> Pieces(CutTree tree, long width, long height) =>
        Written(CutOrder.For(tree, width, height, kerf: 0, smallestUse: 1, _sides));

    private static IEnumerable<string> Written(Part part) => part.InOrder().OfType<PiecePart>().Select(p => $"{p.Width} x {p.Height}");

    /// <summary>Columns side by side of a piece of 3 x 3 with one of 3 x 2 below it.</summary>
    private static CutTree Columns(int count) => Enumerable.Repeat<CutTree>(new Join(SideBySide: false, Piece(3, 3), Piece(3, 2)), count)
        .Aggregate((left, right) => new Join(SideBySide: true, left, right));

    private static Join Row => new(SideBySide: true, Piece(3), Piece(4));

    private static PieceLeaf Piece(long width, long height = 5) =>
        new(new Kind(0, width, height, MayTurn: false, Demand: 1), width, height);

    private static IEnumerable<long> Settings(Part part) =>
        part.InOrder().OfType<CutPart>().Select(c => c.SideBySide ? c.First.Width : c.First.Height);
}
