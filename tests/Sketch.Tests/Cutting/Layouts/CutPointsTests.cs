using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>At which distances cuts are tried: sums of sides, each used no more often than there are pieces.</summary>
public sealed class CutPointsTests
{
    private static readonly (long Side, int Copies)[] _twoThreesAndAFive = [(3, 2), (5, 1)];
    private static readonly (long Side, int Copies)[] _fourThreesAndAFive = [(3, 4), (5, 1)];

    [Theory]
    [InlineData(11, "0 3 5 6 8 11")] // up to the distance itself
    [InlineData(10, "0 3 5 6 8")]
    [InlineData(4, "0 3")]
    [InlineData(2, "0")]
    public void Points_are_the_sums_of_sides_up_to_a_distance(long limit, string points)
    {
        var cuts = CutPoints.For(_twoThreesAndAFive, limit, 100);
        Assert.Equal((points, true), (Written(cuts), cuts.IsComplete));
    }

    [Fact]
    public void Copies_of_one_side_count_together() => Assert.Equal("0 3 6", Written(CutPoints.For([(3, 1), (3, 1), (4, 0)], 12, 100)));

    [Theory]
    [InlineData(8, true)]
    [InlineData(7, false)]
    public void As_many_points_as_allowed_are_complete(int most, bool isComplete)
    {
        // 0 3 5 6 8 9 11 12 are all.
        var cuts = CutPoints.For(_fourThreesAndAFive, 12, most);
        Assert.Equal((most, isComplete), (cuts.Count, cuts.IsComplete));
    }

    [Fact]
    public void Rows_of_one_side_are_kept_first() =>
        Assert.Subset(Points(CutPoints.For(_fourThreesAndAFive, 12, 7)).ToHashSet(), new HashSet<long> { 0, 3, 5, 6, 9, 12 });

    [Fact]
    public void If_not_all_points_are_kept_far_fewer_are() =>
        Assert.InRange(CutPoints.For([(7, 1000), (11, 1000)], 5000, 1000).Count, 200, 241);

    [Fact]
    public void Without_room_for_all_sums_those_kept_are_still_sums_of_sides_that_are_wanted() => Assert.All(
        Points(CutPoints.For([(7, 3), (11, 3), (5, 0)], 100, 12)), point => Assert.Contains(point,
            from sevens in Enumerable.Range(0, 15) from elevens in Enumerable.Range(0, 10) select sevens * 7L + elevens * 11L));

    [Fact]
    public void No_point_lies_beyond_the_distance() =>
        Assert.All(Points(CutPoints.For([(7, 1000), (11, 1000)], 1000, 200)), point => Assert.InRange(point, 0, 1000));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(2, 0)]
    [InlineData(3, 1)]
    [InlineData(7, 3)]
    [InlineData(100, 5)]
    public void The_point_before_a_distance_may_lie_on_it(long distance, int index) =>
        Assert.Equal(index, CutPoints.For(_twoThreesAndAFive, 11, 100).Floor(distance));

    [Fact]
    public void A_grid_has_all_whole_numbers()
    {
        var grid = CutPoints.Grid(3);
        Assert.Equal(("0 1 2 3", true), (Written(grid), grid.IsComplete));
    }

    [Fact]
    public void Beside_each_point_up_to_the_middle_the_last_one_with_room_is_known()
    {
        // Of 6: 3 beside 3; of 8: 3 beside 5; of 11: 3 beside 8, and 5 beside 6.
        var cuts = CutPoints.For(_twoThreesAndAFive, 11, 100);
        Assert.Equal(["", "", "", "3", "5", "8 6"], cuts.Rests().Select(rests => string.Join(' ', rests.Select(r => cuts[r]))));
    }

    private static string Written(CutPoints points) => string.Join(' ', Points(points));

    private static IEnumerable<long> Points(CutPoints points) => Enumerable.Range(0, points.Count).Select(i => points[i]);
}
