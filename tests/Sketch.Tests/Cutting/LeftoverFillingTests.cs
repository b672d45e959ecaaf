using CsCheck;
using Sketch.Cutting;
using Sketch.Cutting.Model;
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
