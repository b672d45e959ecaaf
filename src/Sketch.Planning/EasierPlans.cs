using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Plans;

namespace Sketch.Planning;

/// <summary>Spends a sheet more on papers that are then much easier to cut.</summary>
internal static class EasierPlans
{
    // A sheet is worth a quarter of the settings, and at least three.
    private const double LeastSaving = 0.25;
    private const int LeastSettings = 3;

    /// <summary>
    /// The plans, each exchanged for one with a sheet more if that is on hand or can be had, and saves enough settings of the stop.
    /// </summary>
    /// <param name="plans">The plans with the fewest sheets.</param>
    /// <param name="work">How much to search for all of them.</param>
    public static ImmutableArray<PaperPlan> Of(ImmutableArray<PaperPlan> plans, WorkBudget work)
    {
        var open = Enumerable.Range(0, plans.Length).Where(i => MayTakeMore(plans[i])).ToList();
        var easier = plans.ToArray();
        work.Share(open, (i, own) => easier[i] = Easier(plans[i], own));
        return [.. easier];
    }

    private static bool MayTakeMore(PaperPlan paper) =>
        paper.Plan is { Sheets: > 0, Layouts.Length: > 1 } && !(paper.Order.Sheet.OnHand <= paper.Plan.Sheets);

    private static PaperPlan Easier(PaperPlan paper, WorkBudget work)
    {
        var roomy = SheetPlanner.PlanWithSpareSheet(paper.Problem, work);
        var (now, then) = (PaperWork.SettingsOf(paper.Plan), PaperWork.SettingsOf(roomy));
        return roomy.Sheets == paper.Plan.Sheets + 1 && roomy.Unplaced.Length == paper.Plan.Unplaced.Length
            && now - then >= Math.Max(LeastSettings, LeastSaving * now)
            ? paper with { Plan = roomy, Fewest = paper.Plan } : paper;
    }
}
