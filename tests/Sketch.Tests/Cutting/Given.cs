using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting;

/// <summary>Short ways to write problems down.</summary>
internal static class Given
{
    public static Size Inches(double width, double height) =>
        new(new((long)(width * Length.NanometresPerInch)), new((long)(height * Length.NanometresPerInch)));

    public static StockSheet Sheet(double width, double height) => new(Inches(width, height), default);

    public static CuttingProblem Problem(StockSheet sheet, params (Size Size, int Count, bool MayTurn)[] pieces) =>
        new(sheet, [], [.. pieces.Select((p, i) => new PieceDemand($"p{i}", p.Size, p.Count, p.MayTurn))]);

    public static CuttingProblem With(this CuttingProblem problem, params (Size Size, int Count)[] offcuts) =>
        problem with { Offcuts = [.. offcuts.Select(o => new OffcutStock(o.Size, o.Count)).ToImmutableArray()] };

    public static CuttingPlan Planned(this CuttingProblem problem) =>
        SheetPlanner.Plan(problem, Work());

    /// <summary>The usual budget, which ends with the test.</summary>
    public static WorkBudget Work() => new(WorkBudget.Usual, TestContext.Current.CancellationToken);
}
