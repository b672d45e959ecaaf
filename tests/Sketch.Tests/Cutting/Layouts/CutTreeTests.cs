using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>Layouts without places: what they hold, and what is left without some of it.</summary>
public sealed class CutTreeTests
{
    private static readonly PieceLeaf _large = new(new(0, 4, 2, false, 9), 4, 2);
    private static readonly PieceLeaf _small = new(new(1, 3, 1, false, 9), 3, 1);

    [Theory]
    [InlineData(true, 7, 2)]
    [InlineData(false, 4, 3)]
    public void Two_layouts_take_the_room_of_both(bool sideBySide, long width, long height) =>
        Assert.Equal((width, height), Size(new Join(sideBySide, _large, _small)));

    [Theory]
    [InlineData(0, 0, "2,1", 7, 4)]
    [InlineData(1, 0, "1,1", 7, 2)]
    [InlineData(0, 1, "2,0", 4, 4)]
    [InlineData(2, 0, "0,1", 3, 1)]
    public void What_is_dropped_leaves_the_rest_as_it_lies(int large, int small, string counts, long width, long height)
    {
        var tree = new Join(SideBySide: true, new Join(SideBySide: false, _large, _large), _small);
        int[] surplus = [large, small];
        var left = tree.Without(surplus)!;
        Assert.Equal((counts, (width, height)), (string.Join(',', left.Counts(2)), Size(left)));
        Assert.Equal([0, 0], surplus);
    }

    [Fact]
    public void A_layout_that_drops_nothing_is_the_same()
    {
        var tree = new Join(SideBySide: true, _large, _small);
        Assert.Same(tree, tree.Without([0, 0]));
    }

    [Fact]
    public void Without_all_pieces_there_is_no_layout() => Assert.Null(new Join(SideBySide: true, _large, _small).Without([1, 1]));

    [Theory]
    [InlineData(5, 5, "2,1")]
    [InlineData(1, 1, "1,1")]
    [InlineData(0, 1, "0,1")]
    public void At_most_as_many_as_wanted_are_kept(int large, int small, string counts)
    {
        var tree = new Join(SideBySide: true, new Join(SideBySide: true, _large, _large), _small);
        Assert.Equal(counts, string.Join(',', tree.AtMost([large, small])!.Counts(2)));
    }

    [Theory]
    [InlineData(4, 2, true, "4 x 2, 2 x 4")]
    [InlineData(4, 2, false, "4 x 2")]
    [InlineData(3, 3, true, "3 x 3")]
    public void A_piece_lies_in_two_ways_if_it_may_turn(long width, long height, bool mayTurn, string ways) => Assert.Equal(
        ways, string.Join(", ", new Kind(0, width, height, mayTurn, 1).Ways().Select(w => $"{w.Width} x {w.Height}")));

    [Theory]
    [InlineData(4, 2, false, true)]
    [InlineData(3, 2, false, false)]
    [InlineData(4, 1, false, false)]
    [InlineData(2, 4, false, false)]
    [InlineData(2, 4, true, true)]
    [InlineData(1, 4, true, false)]
    [InlineData(2, 3, true, false)]
    public void A_piece_fits_a_rectangle_of_its_size(long width, long height, bool mayTurn, bool fits) =>
        Assert.Equal(fits, new Kind(0, 4, 2, mayTurn, 1).Fits(width, height));

    private static (long, long) Size(CutTree tree) => (tree.Width, tree.Height);
}
