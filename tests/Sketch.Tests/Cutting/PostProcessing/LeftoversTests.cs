using CsCheck;
using Sketch.Cutting.Layouts;
using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;
using Sketch.Tests.Cutting.Sheets;
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

    [Theory]
    [InlineData(2)]
    [InlineData(1.25)] // 15 in of strips take so many sheets, so it is tried first with less of the last one
    public void Sheets_are_filled_again_so_that_the_leftover_is_on_one_of_them(double fractional) =>
        Assert.Equal(["1,0 x 1", "2,3 x 1"], Kept(fractional, 3, 3, [("aab", 1), ("abb", 1)]));

    [Fact]
    public void Any_plan_that_is_kept_holds_exactly_what_is_wanted_on_no_more_sheets() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[1, 4]).Array[1, 4].Sample(pieces =>
        {
            var problem = Given.Problem(Given.Sheet(12, 12), [.. pieces.Select(p => (Given.Inches(p.Item1, p.Item2), p.Item3, true))])
                .With((Given.Inches(6, 5), 2));
            var reduced = Reduced.From(problem);
            var incumbent = new Incumbent(reduced, null);
            incumbent.Offer(new FirstFit(reduced).OnShelves(reduced.Demand, reduced.OnHand()));
            incumbent.Fractional = reduced.Kinds.Sum(k => k.Area * k.Demand) / ((double)reduced.Sheet.Width * reduced.Sheet.Height);
            var kept = Leftovers.KeepWhole(problem, reduced, incumbent, new StopSettings(problem), Given.Work());
            reduced.CanBeCut(kept);
            Assert.All(reduced.Kinds, k => Assert.Equal(k.Demand, kept.Sum(u => u.Times * u.Pattern.Counts[k.Index])));
            Assert.InRange(kept.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times), 0, incumbent.Best!.Sheets);
        }, iter: 10);

    [Fact]
    public void What_exceeds_the_demand_is_not_cut() => Assert.Equal(["1,0 x 1", "4,0 x 1"], Kept(5, 0, [("aaaa", 2)]));

    private static IEnumerable<string> Kept(int a, int b, params (string Strips, int Times)[][] plans) => Kept(2, a, b, plans);

    private static IEnumerable<string> Kept(double fractional, int a, int b, params (string Strips, int Times)[][] plans)
    {
        var problem = Given.Problem(Given.Sheet(12, 12), [
            .. new[] { (Given.Inches(12, 3), a, true), (Given.Inches(12, 2), b, true) }.Where(p => p.Item2 > 0)]);
        var reduced = Reduced.From(problem);
        var incumbent = new Incumbent(reduced, null) { Fractional = fractional };
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
