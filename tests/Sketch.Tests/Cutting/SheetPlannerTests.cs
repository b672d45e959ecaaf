using CsCheck;
using Sketch.Cutting;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting;

public class SheetPlannerTests
{
    private static readonly Gen<CuttingProblem> Tiny =
        from width in Gen.Int[4, 9]
        from height in Gen.Int[4, 9]
        from trim in Gen.Int[0, 1]
        from pieces in Gen.Select(Gen.Int[1, 7], Gen.Int[1, 7], Gen.Int[1, 3], Gen.Bool).Array[1, 4]
        from offcuts in Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Int[1, 2]).Array[0, 2]
        where pieces.Sum(p => p.Item3) <= 6
        select new CuttingProblem(
            new(new(new(width), new(height)), new(Length.Zero, Length.Zero, new(trim), Length.Zero)),
            [.. offcuts.Select(o => new Offcut(new(new(o.Item1), new(o.Item2)), o.Item3))],
            [.. pieces.Select((p, i) => new PieceDemand($"p{i}", new(new(p.Item1), new(p.Item2)), p.Item3, p.Item4))])
        {
            SmallestUse = new(1),
        };

    [Fact]
    public void Six_mats_of_4_by_5_and_a_quarter_come_from_one_sheet_of_12_by_12()
    {
        var plan = Given.Problem(Given.Sheet(12, 12), (Given.Inches(4, 5.25), 6, true)).Planned();
        Assert.Equal((1, 1), (plan.Sheets, plan.LowerBound));
    }

    [Fact]
    public void Seven_mats_of_4_by_5_and_a_quarter_need_two_sheets()
    {
        var plan = Given.Problem(Given.Sheet(12, 12), (Given.Inches(4, 5.25), 7, true)).Planned();
        Assert.Equal((2, 2), (plan.Sheets, plan.LowerBound));
    }

    [Fact]
    public void Tiny_plans_are_carried_out_as_written()
    {
        Tiny.Sample(problem => Assert.Empty(PlanChecker.Faults(problem, problem.Planned())), iter: 1000);
    }

    [Fact]
    public void Tiny_plans_have_as_few_sheets_as_trying_everything_finds()
    {
        Tiny.Sample(problem =>
        {
            if (BruteForce.Sheets(problem) is { } fewest)
            {
                var plan = problem.Planned();
                Assert.Equal((fewest, fewest, 0), (plan.Sheets, plan.LowerBound, plan.Unplaced.Length));
            }
        }, iter: 1000);
    }
}
