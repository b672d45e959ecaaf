using Sketch.Cutting.Model;
using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;
using Sketch.Tests.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>Which demanded piece each place of a plan is for.</summary>
public sealed class NamingTests
{
    [Fact]
    public void Demands_of_one_size_are_served_in_order_and_sheets_with_other_names_are_layouts_of_their_own() => Assert.Equal(
        ["1 x p0 p0", "1 x p0 p1", "2 x p1 p1"], Written(Squares(3, 5), r => [(r.Row(r.Sheet, 0, 0), 4)], []));

    [Fact]
    public void Layouts_that_are_cut_most_often_come_first_and_offcuts_before_them() => Assert.Equal(
        ["offcut 1 x p0", "3 x p0 p0", "1 x p0 p0 p0"],
        Written(Squares(10), r => [(r.Row(r.Sheet, 0, 0, 0), 1), (r.Row(r.Sheet, 0, 0), 3), (r.Row(r.Stocks[1], 0), 1)], (4, 4, 1)));

    [Fact]
    public void What_has_no_place_is_left_over_in_the_order_of_the_demands()
    {
        var problem = Squares(3, 5);
        var reduced = Reduced.From(problem);
        var naming = new Naming(problem, reduced);
        _ = naming.Layouts([(reduced.Row(reduced.Sheet, 0, 0), 2)]);
        Assert.Equal([new UnplacedPieces("p1", 4)], naming.LeftOver());
    }

    [Fact]
    public void Offcuts_on_hand_are_used_before_those_that_pieces_free()
    {
        var problem = Squares(5) with
        {
            Offcuts = [new(Given.Inches(4, 4), 2) { FreedBy = "frame" }, new(Given.Inches(4, 4), 1)],
        };
        var reduced = Reduced.From(problem);
        var layouts = new Naming(problem, reduced)
            .Layouts([(reduced.Row(reduced.Stocks[1], 0), 2), (reduced.Row(reduced.Sheet, 0, 0, 0), 1)]);
        Assert.Equal([(1, true, null), (1, false, null), (1, true, "frame")], layouts.Select(l => (l.Times, l.IsOffcut, l.FreedBy)));
    }

    [Fact]
    public void Offcuts_of_which_there_are_none_are_not_used()
    {
        var problem = Squares(1).With((Given.Inches(4, 4), 0), (Given.Inches(4, 4), 1));
        var reduced = Reduced.From(problem);
        Assert.Equal(1, Assert.Single(new Naming(problem, reduced).Layouts([(reduced.Row(reduced.Stocks[1], 0), 1)])).Times);
    }

    [Fact]
    public void A_piece_is_turned_if_it_does_not_lie_as_demanded()
    {
        var problem = Given.Problem(Given.Sheet(12, 12), (Given.Inches(3, 5), 1, true), (Given.Inches(5, 3), 1, true));
        var reduced = Reduced.From(problem);
        var layout = Assert.Single(new Naming(problem, reduced).Layouts([(reduced.Row(reduced.Sheet, 0, 0), 1)]));
        Assert.Equal([("p0", false), ("p1", true)], layout.Pieces.Select(p => (p.Id, p.Turned)));
    }

    private static CuttingProblem Squares(params int[] counts) =>
        Given.Problem(Given.Sheet(12, 12), [.. counts.Select(n => (Given.Inches(4, 4), n, true))]);

    private static IEnumerable<string> Written(
        CuttingProblem problem, Func<Reduced, IEnumerable<(Pattern, int)>> uses, params (int Width, int Height, int Count)[] offcuts)
    {
        problem = problem.With([.. offcuts.Select(o => (Given.Inches(o.Width, o.Height), o.Count))]);
        var reduced = Reduced.From(problem);
        return new Naming(problem, reduced).Layouts(uses(reduced))
            .Select(l => $"{(l.IsOffcut ? "offcut " : "")}{l.Times} x {string.Join(' ', l.Pieces.Select(p => p.Id))}");
    }
}
