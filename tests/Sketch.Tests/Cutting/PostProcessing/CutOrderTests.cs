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

    private static Join Row => new(SideBySide: true, Piece(3), Piece(4));

    private static PieceLeaf Piece(long width) => new(new Kind(0, width, 5, MayTurn: false, Demand: 1), width, 5);

    private static IEnumerable<long> Settings(Part part) =>
        part.InOrder().OfType<CutPart>().Select(c => c.SideBySide ? c.First.Width : c.First.Height);
}
