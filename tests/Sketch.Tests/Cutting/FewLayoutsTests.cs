using Xunit;

namespace Sketch.Tests.Cutting;

/// <summary>Of the plans with the fewest sheets, the one with the least work.</summary>
public sealed class FewLayoutsTests
{
    // Six sheets of two large pieces with a strip beside them; the small pieces share out evenly.
    [Fact]
    public void Sheets_that_can_be_cut_alike_are_cut_alike()
    {
        var problem = Given.Problem(
            Given.Sheet(12, 12), (Given.Inches(9, 6), 12, true), (Given.Inches(3, 4), 12, true), (Given.Inches(3, 2), 12, true));
        var plan = problem.Planned();
        Assert.Empty(PlanChecker.Faults(problem, plan));
        Assert.Equal((6, 1), (plan.Sheets, plan.Layouts.Length));
    }

    [Fact]
    public void Fewer_layouts_take_no_sheet_more()
    {
        var problem = Given.Problem(
            Given.Sheet(8.5, 11), (Given.Inches(8.5, 5.5), 44, true), (Given.Inches(9, 6.25), 10, true),
            (Given.Inches(1.875, 0.75), 12, true), (Given.Inches(0.75, 0.75), 36, true), (Given.Inches(2.625, 0.625), 10, true),
            (Given.Inches(0.875, 2.625), 10, true));
        var plan = problem.Planned();
        Assert.Empty(PlanChecker.Faults(problem, plan));
        Assert.Equal(32, plan.Sheets);
        Assert.InRange(plan.Layouts.Length, 1, 4);
    }
}
