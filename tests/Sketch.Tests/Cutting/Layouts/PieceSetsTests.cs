using CsCheck;
using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>Which collections of pieces can be cut from a rectangle, checked by trying every layout.</summary>
public sealed class PieceSetsTests
{
    private const long Effort = 1_000_000;
    private const int Side = 6;

    [Fact]
    public void The_fullest_collections_are_those_that_trying_every_layout_finds() => SmallLayouts.Any.Sample((kinds, _) =>
    {
        int[] most = [.. kinds.Select(k => k.Demand)];
        var possible = SmallLayouts.UpTo(most).Where(counts => SmallLayouts.CanBeCut(kinds, counts, Side, Side)).ToList();
        var fullest = possible.Where(counts => counts.Sum() > 0 && !possible.Exists(more => IsOneMore(counts, more)));
        var listed = PieceSets.TryList(kinds, [(Side, Side)], most, PieceSets.Limits.None, Effort, Given.Work())!
            .Fullest(Side, Side, PieceSets.Limits.None).ToList();
        Assert.Equal(fullest.Select(Written).Order(), listed.Select(tree => Written(tree.Counts(kinds.Length))).Order());
        Assert.All(listed, tree => Assert.True(tree.Width <= Side && tree.Height <= Side));
    }, iter: 150);

    [Fact]
    public void A_collection_may_fit_one_rectangle_and_not_another()
    {
        Kind[] kinds = [new(0, 4, 2, false, 3)];
        var sets = PieceSets.TryList(kinds, [(4, 4), (9, 2)], [3], PieceSets.Limits.None, Effort, Given.Work())!;
        Assert.Equal([2], Assert.Single(sets.Fullest(4, 4, PieceSets.Limits.None)).Counts(1));
        Assert.Equal((8, 2), Assert.Single(sets.Fullest(9, 2, PieceSets.Limits.None)) switch { var tree => (tree.Width, tree.Height) });
    }

    [Theory]
    [InlineData(8, 1)] // two pieces of 4 x 2 leave 8 of 24
    [InlineData(7, 0)]
    public void A_rectangle_that_wastes_more_than_allowed_is_left_out(double waste, int layouts)
    {
        Kind[] kinds = [new(0, 4, 2, false, 2)];
        var limits = new PieceSets.Limits(waste, []);
        var sets = PieceSets.TryList(kinds, [(4, 6)], [2], PieceSets.Limits.None, Effort, Given.Work())!;
        Assert.Equal(layouts, sets.Fullest(4, 6, limits).Count());
    }

    // 3 x 2 beside 2 x 2 is as wide as 1 x 3 beside 4 x 3: the four fill 5 x 5, and no three of them a rectangle.
    [Fact]
    public void Four_pieces_without_waste_are_listed_even_if_no_three_are()
    {
        Kind[] kinds = [new(0, 4, 3, false, 1), new(1, 3, 2, false, 1), new(2, 2, 2, true, 1), new(3, 1, 3, false, 1)];
        var noWaste = new PieceSets.Limits(0, []);
        var sets = PieceSets.TryList(kinds, [(5, 5)], [1, 1, 1, 1], noWaste, Effort, Given.Work())!;
        Assert.Equal([1, 1, 1, 1], Assert.Single(sets.Fullest(5, 5, noWaste)).Counts(4));
    }

    [Theory]
    [InlineData(4, true)] // the best layout of 4 x 6 is worth 12, two pieces 8
    [InlineData(3, false)]
    public void A_rectangle_that_loses_more_worth_than_allowed_is_left_out(int most, bool isAllowed)
    {
        Kind[] kinds = [new(0, 4, 2, false, 3)];
        var table = new LayoutTable(SmallLayouts.Points(kinds, across: true), SmallLayouts.Points(kinds, across: false), kinds);
        table.Fill([4]);
        Assert.Equal(isAllowed, new PieceSets.Limits(100, [new(table, [4], most)]).Allow(4, 6, 16, [8]));
    }

    [Fact]
    public void A_share_of_the_limits_is_a_share_of_each()
    {
        var table = new LayoutTable(CutPoints.Grid(1), CutPoints.Grid(1), []);
        var half = new PieceSets.Limits(10, [new(table, [], 8)]).Times(0.5);
        Assert.Equal((5.0, (Int128)4), (half.MostWaste, Assert.Single(half.Losses).Most));
    }

    [Theory]
    [InlineData(21, true)] // 3 bits each: two for the count up to 3, one that stays free
    [InlineData(22, false)]
    public void A_collection_has_room_in_64_bits(int kinds, bool isListed)
    {
        Kind[] all = [.. Enumerable.Range(0, kinds).Select(i => new Kind(i, 5, 5, true, 3))];
        Assert.Equal(isListed, PieceSets.TryList(
            all, [(5, 5)], [.. all.Select(_ => 3)], PieceSets.Limits.None, Effort, Given.Work()) is not null);
    }

    [Theory]
    [InlineData(100, 1000)]
    [InlineData(1000, 100)]
    public void With_too_little_effort_nothing_is_listed(long effort, long budget)
    {
        Kind[] kinds = [new(0, 1, 1, true, 30), new(1, 1, 2, true, 30)];
        Assert.Null(PieceSets.TryList(kinds, [(Side, Side)], [30, 30], PieceSets.Limits.None, effort, new(budget)));
    }

    private static bool IsOneMore(int[] counts, int[] more) =>
        more.Sum() == counts.Sum() + 1 && counts.Zip(more).All(c => c.First <= c.Second);

    private static string Written(int[] counts) => string.Join(',', counts);
}
