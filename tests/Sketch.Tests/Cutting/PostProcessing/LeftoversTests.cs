using Sketch.Cutting.Layouts;
using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>
/// Which of several plans with as many sheets is carried out: strips of 12 x 3 in and of 12 x 2 in on sheets of 12 x 12 in.
/// </summary>
public sealed class LeftoversTests
{
    [Fact]
    public void Fewer_layouts_are_better() =>
        Assert.Equal(["2,2 x 2"], Kept(4, 4, [("aaab", 1), ("abbb", 1)], [("aabb", 2)]));

    [Fact]
    public void Of_as_much_work_the_larger_leftover_is_better() =>
        Assert.Equal(["0,1 x 1", "0,6 x 1"], Kept(0, 7, [("bbbb", 1), ("bbb", 1)], [("bbbbbb", 1), ("b", 1)]));

    [Fact]
    public void Sheets_are_filled_again_so_that_the_leftover_is_on_one_of_them() =>
        Assert.Equal(["1,0 x 1", "2,3 x 1"], Kept(3, 3, [("aab", 1), ("abb", 1)]));

    [Fact]
    public void What_exceeds_the_demand_is_not_cut() => Assert.Equal(["1,0 x 1", "4,0 x 1"], Kept(5, 0, [("aaaa", 2)]));

    private static IEnumerable<string> Kept(int a, int b, params (string Strips, int Times)[][] plans)
    {
        var problem = Given.Problem(Given.Sheet(12, 12), [
            .. new[] { (Given.Inches(12, 3), a, true), (Given.Inches(12, 2), b, true) }.Where(p => p.Item2 > 0)]);
        var reduced = Reduced.From(problem);
        var incumbent = new Incumbent(reduced, null) { Fractional = 2 };
        foreach (var plan in plans)
        {
            incumbent.Offer([.. plan.Select(p => (new Pattern(reduced.Sheet, p.Strips.Select(Leaf)
                .Aggregate((above, below) => new Join(SideBySide: false, above, below)), reduced.Kinds.Length), p.Times))]);
        }

        return Leftovers.KeepWhole(problem, reduced, incumbent, new StopSettings(problem), Given.Work())
            .Select(u => $"{Count(u.Pattern, 3)},{Count(u.Pattern, 2)} x {u.Times}").Order(StringComparer.Ordinal);

        CutTree Leaf(char strip) => reduced.Kinds.Single(k => Height(k) == (strip == 'a' ? 3 : 2)) switch
        {
            var kind => new PieceLeaf(kind, Math.Max(kind.Width, kind.Height), Math.Min(kind.Width, kind.Height)),
        };

        int Count(Pattern pattern, int height) => reduced.Kinds.Where(k => Height(k) == height).Sum(k => pattern.Counts[k.Index]);
    }

    private static long Height(Kind kind) => Math.Min(kind.Width, kind.Height) / Sketch.Units.Length.NanometresPerInch;
}
