using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;
using Sketch.Tests.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>
/// Plans that are found beside one with as many sheets, of strips of 12 x 4 in (a), 12 x 3 in (b) and 12 x 2 in (c) on sheets of
/// 12 x 12 in; the layouts are counted by hand.
/// </summary>
public sealed class FewerLayoutsTests
{
    private const string Strips = "abc";

    [Fact]
    public void The_same_pieces_on_each_sheet_are_one_layout()
    {
        var (pattern, times) = Assert.Single(Fewest(("bbbc", 1), ("bccc", 1)));
        Assert.Equal((2, 2, 2), (pattern.Counts[0], pattern.Counts[1], times));
    }

    // Three strips of 12 x 4 in fill a sheet; the others share out evenly over two more.
    [Fact]
    public void The_same_pieces_on_a_half_of_the_sheets_are_one_layout() =>
        Assert.Equal(2, Fewest(("aaa", 2), ("bbbc", 1), ("bccc", 1)).Count);

    // Of seven and five, two sheets hold three and one each, and a third one the rest.
    [Fact]
    public void What_cannot_be_shared_out_is_a_layout_of_its_own() =>
        Assert.Equal(2, Fewest(("bbb", 1), ("bbbc", 1), ("bcccc", 1)).Count);

    [Fact]
    public void No_plan_is_added_with_more_sheets_or_with_pieces_left_out() => Assert.All(
        Found(Given.Work(), ("aac", 3), ("abbc", 1), ("bccc", 1)).Alternatives,
        plan => Assert.Equal((5, 0), (plan.Sheets, plan.LeftOut)));

    [Fact]
    public void A_single_layout_is_left_as_it_is() => Assert.Single(Found(Given.Work(), ("bbcc", 2)).Alternatives);

    [Fact]
    public void A_plan_that_leaves_pieces_out_is_left_as_it_is()
    {
        var problem = GivenSheets.On12((4, 4, 9), (3, 3, 1));
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer([(problem.Row(problem.Sheet, 0), 1), (problem.Row(problem.Sheet, 1), 1)]);
        FewLayouts.Run(problem, incumbent, new(Given.Problem(Given.Sheet(12, 12))), Given.Work());
        Assert.Single(incumbent.Alternatives);
    }

    [Fact]
    public void Without_a_budget_no_plan_is_added() => Assert.Single(Found(new(0), ("bbbc", 1), ("bccc", 1)).Alternatives);

    [Fact]
    public void No_more_offcuts_are_used_than_there_are()
    {
        // Two squares lie on the offcut; the other nine fill a sheet.
        var given = Given.Problem(Given.Sheet(12, 12), (Given.Inches(4, 4), 11, true)).With((Given.Inches(8, 4), 1));
        var problem = Reduced.From(given);
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer(new FirstFit(problem).OnShelves(problem.Demand, problem.OnHand()));
        FewLayouts.Run(problem, incumbent, new(given), Given.Work());
        Assert.All(incumbent.Alternatives, plan => problem.CanBeCut(plan.Uses));
        Assert.All(incumbent.Alternatives, plan => Assert.Equal(1, plan.Sheets));
    }

    private static IReadOnlyList<(Pattern Pattern, int Times)> Fewest(params (string Strips, int Times)[] plan) =>
        Found(Given.Work(), plan).Alternatives.MinBy(p => p.Uses.Count)!.Uses;

    private static Incumbent Found(WorkBudget work, params (string Strips, int Times)[] plan)
    {
        var used = Strips.Where(strip => plan.Any(p => p.Strips.Contains(strip))).ToList();
        var given = Given.Problem(Given.Sheet(12, 12), [.. used.Select(strip =>
            (Given.Inches(12, 4 - Strips.IndexOf(strip)), plan.Sum(p => p.Times * p.Strips.Count(s => s == strip)), false))]);
        var problem = Reduced.From(given);
        var incumbent = new Incumbent(problem, null);
        incumbent.Offer([.. plan.Select(p => (new Pattern(problem.Sheet, p.Strips.Select(strip => problem.Kinds[used.IndexOf(strip)])
            .Select(k => (CutTree)new PieceLeaf(k, k.Width, k.Height))
            .Aggregate((above, below) => new Join(SideBySide: false, above, below)), problem.Kinds.Length), p.Times))]);
        FewLayouts.Run(problem, incumbent, new(given), work);
        return incumbent;
    }
}
