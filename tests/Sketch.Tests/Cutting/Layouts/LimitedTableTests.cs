using CsCheck;
using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>Good layouts of a few copies, checked by hand and by trying every layout.</summary>
public sealed class LimitedTableTests
{
    private const int MostPoints = 100;

    [Fact]
    public void A_layout_fits_and_holds_no_more_than_wanted() => SmallLayouts.Any.Sample((kinds, worth) =>
    {
        var wanted = Wanted(kinds);
        if (LimitedTable.Best(SmallLayouts.Side, SmallLayouts.Side, kinds, worth, wanted, MostPoints, Given.Work()) is { } tree)
        {
            Assert.All(tree.Counts(kinds.Length).Zip(wanted), c => Assert.InRange(c.First, 0, c.Second));
            Assert.True(tree.Width <= SmallLayouts.Side && tree.Height <= SmallLayouts.Side);
        }
    }, iter: 300);

    [Fact]
    public void Pieces_that_fill_the_rectangle_together_are_all_placed()
    {
        // A square of 8 with a strip at its side and one above it.
        Kind[] kinds = [new(0, 8, 8, true, 1), new(1, 4, 12, true, 1), new(2, 8, 4, true, 1)];
        Assert.Equal([1, 1, 1], LimitedTable.Best(12, 12, kinds, [64, 48, 32], [1, 1, 1], MostPoints, Given.Work())!.Counts(3));
    }

    [Fact]
    public void Where_only_one_fits_the_most_valuable_piece_is_taken()
    {
        Kind[] kinds = [new(0, 5, 5, true, 1), new(1, 6, 6, true, 1), new(2, 7, 7, true, 1)];
        Assert.Equal([0, 1, 0], LimitedTable.Best(8, 8, kinds, [3, 5, 4], [1, 1, 1], MostPoints, Given.Work())!.Counts(3));
    }

    [Fact]
    public void More_kinds_than_64_are_told_apart()
    {
        Kind[] kinds = [.. Enumerable.Range(0, 65).Select(i => new Kind(i, i == 0 ? 5 : i == 64 ? 3 : 8, 8, false, 1))];
        int[] worth = [.. kinds.Select(k => k.Index == 0 ? 100 : k.Index == 64 ? 60 : 1)];
        var counts = LimitedTable.Best(8, 8, kinds, worth, Wanted(kinds), MostPoints, Given.Work())!.Counts(kinds.Length);
        Assert.Equal((1, 1, 2), (counts[0], counts[64], counts.Sum()));
    }

    [Fact]
    public void Pieces_that_are_not_wanted_are_left_out()
    {
        Kind[] kinds = [new(0, 4, 4, true, 9), new(1, 4, 8, false, 9)];
        Assert.Equal([4, 0], LimitedTable.Best(8, 8, kinds, [1, 9], [5, 0], MostPoints, Given.Work())!.Counts(2));
    }

    [Fact]
    public void Without_a_budget_there_is_no_layout() =>
        Assert.Null(LimitedTable.Best(8, 8, [new(0, 4, 4, true, 9)], [1], [4], MostPoints, new(0)));

    [Theory]
    [InlineData(10, 10, "6 x 2, 3 x 4")] // side by side or one above the other, wider ones first
    [InlineData(5, 10, "3 x 4")]
    [InlineData(10, 3, "6 x 2")]
    [InlineData(5, 3, "")]
    public void The_smallest_rectangles_that_hold_all_are_listed(long width, long height, string expected)
    {
        Kind[] kinds = [new(0, 3, 2, false, 2)];
        var trees = LimitedTable.Smallest(width, height, kinds, [1], [2], MostPoints, Given.Work());
        Assert.Equal(expected, string.Join(", ", trees.Select(t => $"{t.Width} x {t.Height}")));
    }

    [Fact]
    public void The_smallest_rectangles_hold_all_and_get_narrower_and_taller() => SmallLayouts.Any.Sample((kinds, worth) =>
    {
        var wanted = Wanted(kinds);
        var trees = LimitedTable.Smallest(
            SmallLayouts.Side, SmallLayouts.Side, kinds, worth, wanted, MostPoints, Given.Work()).ToList();
        Assert.All(trees, tree => Assert.Equal(wanted, tree.Counts(kinds.Length)));
        Assert.All(trees.Zip(trees.Skip(1)), pair =>
            Assert.True(pair.First.Width > pair.Second.Width && pair.First.Height < pair.Second.Height));
    }, iter: 300);

    private static int[] Wanted(Kind[] kinds) => [.. kinds.Select(k => k.Demand)];
}
