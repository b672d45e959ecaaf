using CsCheck;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting;

public class LeftoverFillingTests
{
    private static readonly CuttingProblem Mats = Given.Problem(Given.Sheet(12, 12), (Given.Inches(4, 5.25), 12, true));

    [Fact]
    public void A_strip_is_cut_from_what_a_sheet_leaves_over()
    {
        var (plans, _) = LeftoverFilling.Fill([(Mats, Mats.Planned())], [new("strip", Given.Inches(1, 11), 2)]);
        Assert.Equal((2, 2), (plans[0].Sheets, plans[0].Layouts.Sum(l => l.Times * l.Pieces.Count(p => p.Id == "strip"))));
    }

    [Fact]
    public void Pieces_that_do_not_fit_are_reported_and_add_no_sheet()
    {
        var (plans, unplaced) = LeftoverFilling.Fill([(Mats, Mats.Planned())], [new("strip", Given.Inches(1, 11), 5)]);
        Assert.Equal((2, 3), (plans[0].Sheets, Assert.Single(unplaced).Count));
    }

    [Fact]
    public void An_offcut_is_used_before_a_larger_leftover()
    {
        var problem = Mats.With((Given.Inches(2, 2), 1));
        var (plans, _) = LeftoverFilling.Fill([(problem, problem.Planned())], [new("square", Given.Inches(1.5, 1.5), 1)]);
        Assert.Equal("square", Assert.Single(plans[0].Layouts, l => l.IsOffcut).Pieces.Single().Id);
    }

    [Theory]
    [InlineData(10, "3 x 2")] // upright three in a row and no second row, turned two in each of two rows
    [InlineData(3, "2 x 3")]
    public void Pieces_lie_in_the_way_in_which_more_of_those_wanted_fit(int count, string lying)
    {
        var (pieces, _) = OnOffcut((6, 5, 1), new("p", Given.Inches(2, 3), count));
        Assert.Equal(Math.Min(4, count), pieces.Length);
        Assert.All(pieces, p => Assert.Equal(lying, $"{p.Place.Width.Nanometres / Length.NanometresPerInch} x "
            + $"{p.Place.Height.Nanometres / Length.NanometresPerInch}"));
    }

    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 1)]
    public void A_piece_turns_only_if_it_may(bool mayTurn, int unplaced) =>
        Assert.Equal(unplaced, OnOffcut((6, 2, 1), new("p", Given.Inches(2, 6), 1, mayTurn)).Unplaced);

    [Theory]
    [InlineData(0, 2)]
    [InlineData(0.25, 1)]
    public void Between_pieces_a_kerf_is_lost(double kerf, int pieces) =>
        Assert.Equal(pieces, OnOffcut((4, 2, 1), new("p", Given.Inches(2, 2), 5), kerf).Pieces.Length);

    [Fact]
    public void The_largest_pieces_are_placed_first()
    {
        var (plans, unplaced) = LeftoverFilling.Fill(
            [Unused((5, 5, 1))], [new("small", Given.Inches(3, 3), 1), new("large", Given.Inches(4, 4), 1)]);
        Assert.Equal(("large", "small"), (Assert.Single(Assert.Single(plans[0].Layouts).Pieces).Id, Assert.Single(unplaced).Id));
    }

    [Fact]
    public void Offcuts_that_are_filled_alike_stay_one_layout()
    {
        var (plans, unplaced) = LeftoverFilling.Fill([Unused((4, 2, 3))], [new("p", Given.Inches(2, 2), 5)]);
        Assert.Equal([(2, 2), (1, 1)], plans[0].Layouts.Select(l => (l.Times, l.Pieces.Length)));
        Assert.Empty(unplaced);
    }

    [Fact]
    public void An_offcut_that_is_planned_is_not_used_again()
    {
        var problem = Given.Problem(Given.Sheet(12, 12), (Given.Inches(4, 4), 1, true)).With((Given.Inches(4, 4), 2));
        var (_, unplaced) = LeftoverFilling.Fill([(problem, problem.Planned())], [new("p", Given.Inches(4, 4), 2)]);
        Assert.Equal(1, Assert.Single(unplaced).Count);
    }

    [Fact]
    public void A_piece_comes_from_a_paper_that_it_may_come_from()
    {
        var (plans, _) = LeftoverFilling.Fill(
            [Unused((2, 2, 1)), Unused((3, 3, 1))], [new("p", Given.Inches(2, 2), 1)], (_, paper) => paper == 1);
        Assert.Equal([0, 1], plans.Select(p => p.Layouts.Length));
    }

    [Fact]
    public void Of_all_papers_the_smallest_room_is_taken()
    {
        var (plans, _) = LeftoverFilling.Fill(
            [Unused((4, 4, 1)), Unused((3, 3, 1)), Unused((5, 2, 1))], [new("p", Given.Inches(3, 3), 1)]);
        Assert.Equal([0, 1, 0], plans.Select(p => p.Layouts.Length));
    }

    [Fact]
    public void What_a_piece_frees_is_filled_under_its_name()
    {
        var problem = new CuttingProblem(Given.Sheet(1, 1), [new(Given.Inches(2, 2), 1) { FreedBy = "frame" }], []);
        var (plans, _) = LeftoverFilling.Fill([(problem, new(0, 0, [], []))], [new("p", Given.Inches(1, 1), 1)]);
        Assert.Equal("frame", Assert.Single(plans[0].Layouts).FreedBy);
    }

    private static (PlacedPiece[] Pieces, int Unplaced) OnOffcut(
        (int Width, int Height, int Count) offcut, PieceDemand piece, double kerf = 0)
    {
        var (problem, plan) = Unused(offcut);
        problem = problem with { Kerf = new((long)(kerf * Length.NanometresPerInch)) };
        var (plans, unplaced) = LeftoverFilling.Fill([(problem, plan)], [piece]);
        return ([.. plans[0].Layouts.SelectMany(l => l.Pieces)], unplaced.Sum(u => u.Count));
    }

    /// <summary>An uncut paper with offcuts of one size.</summary>
    private static (CuttingProblem, CuttingPlan) Unused((int Width, int Height, int Count) offcut) => (
        new(Given.Sheet(1, 1), [new(Given.Inches(offcut.Width, offcut.Height), offcut.Count)], []), new(0, 0, [], []));

    [Fact]
    public void Filled_plans_are_carried_out_as_written()
    {
        var size = Gen.Select(Gen.Int[2, 40], Gen.Int[2, 40], Gen.Int[1, 30], Gen.Bool);
        Gen.Select(size.Array[1, 4], size.Array[1, 4], Gen.Int[0, 3]).Sample((pieces, fillers, offcuts) =>
        {
            PieceDemand[] Demands(string name, (int Width, int Height, int Count, bool MayTurn)[] of) =>
                [.. of.Select((p, i) => new PieceDemand($"{name}{i}", Given.Inches(p.Width / 8.0, p.Height / 8.0), p.Count, p.MayTurn))];
            var problem = new CuttingProblem(Given.Sheet(12, 12), [new(Given.Inches(5, 3), offcuts)], [.. Demands("p", pieces)]);
            var (plans, unplaced) = LeftoverFilling.Fill([(problem, problem.Planned())], [.. Demands("f", fillers)]);
            var whole = plans[0] with { Unplaced = plans[0].Unplaced.AddRange(unplaced) };
            Assert.Empty(PlanChecker.Faults(problem with { Pieces = problem.Pieces.AddRange(Demands("f", fillers)) }, whole));
        }, iter: 60);
    }
}
