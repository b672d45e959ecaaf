using CsCheck;
using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>The most worth that edge-to-edge cuts get from a rectangle, checked by trying every cut.</summary>
public sealed class LayoutTableTests
{
    [Fact]
    public void Every_rectangle_has_the_worth_that_trying_every_cut_finds() => SmallLayouts.Any.Sample((kinds, worth) =>
    {
        var (table, best) = (Filled(kinds, worth), SmallLayouts.Best(kinds, worth));
        for (var width = 1; width <= SmallLayouts.Side; width++)
        {
            for (var height = 1; height <= SmallLayouts.Side; height++)
            {
                Assert.Equal(best[width, height], table.Best(width, height));
            }
        }
    }, iter: 300);

    [Fact]
    public void A_layout_read_from_the_table_fits_and_has_its_worth() => SmallLayouts.Any.Sample((kinds, worth) =>
    {
        var table = Filled(kinds, worth);
        for (var width = 1; width <= SmallLayouts.Side; width++)
        {
            for (var height = 1; height <= SmallLayouts.Side; height++)
            {
                var tree = table.Tree(width, height);
                Assert.Equal(table.Best(width, height), tree?.Counts(kinds.Length).Zip(worth, (n, each) => n * each).Sum() ?? 0);
                Assert.True(tree is null || (tree.Width <= width && tree.Height <= height));
            }
        }
    }, iter: 300);

    [Fact]
    public void A_table_is_filled_afresh_with_other_worths()
    {
        Kind[] kinds = [new(0, 3, 2, false, 9), new(1, 4, 4, true, 9)];
        var table = Filled(kinds, [5, 50]);
        table.Fill([5, 0]);
        Assert.Equal(8 * 5, table.Best(8, 8)); // two beside each other in four rows
    }

    [Theory]
    [InlineData(100, 100, true)]
    [InlineData(1, 100, false)]
    [InlineData(100, 1, false)]
    public void A_table_is_exact_if_no_point_is_missing_in_either_direction(int mostAcross, int mostDown, bool isExact) => Assert.Equal(
        isExact, new LayoutTable(CutPoints.For([(3, 3)], 9, mostAcross), CutPoints.For([(3, 3)], 9, mostDown), []).IsExact);

    private static LayoutTable Filled(Kind[] kinds, int[] worth)
    {
        var table = new LayoutTable(SmallLayouts.Points(kinds, across: true), SmallLayouts.Points(kinds, across: false), kinds);
        table.Fill(worth);
        return table;
    }
}
