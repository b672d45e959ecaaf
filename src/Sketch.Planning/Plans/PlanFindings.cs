using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Plans;

/// <summary>Reports what is wrong or worth knowing according to a plan.</summary>
internal sealed class PlanFindings(BatchPlan plan, FindingBag findings, string hintForTime)
{
    private readonly LengthFormat _lengths = plan.Files.Batch.Units.Format();

    /// <summary>Adds the findings of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="noLeftover">Pieces for any offcut that fit nowhere.</param>
    /// <param name="findings">Where to.</param>
    /// <param name="hintForTime">What to do about a plan that is not proved in time.</param>
    public static void Report(BatchPlan plan, ImmutableArray<UnplacedPieces> noLeftover, FindingBag findings, string hintForTime)
    {
        var orders = new OrderFindings(plan.Files, findings);
        var own = new PlanFindings(plan, findings, hintForTime);
        orders.Recipients();
        own.MissingSolver();
        foreach (var paper in plan.Papers)
        {
            orders.Misfits(paper.Order, paper.Plan.Unplaced);
            own.Shortage(paper);
        }

        own.NoLeftover(noLeftover);
        orders.Shortages(plan.Supplies);
    }

    private void MissingSolver()
    {
        if (!SolverLibrary.IsThere && !plan.Papers.IsEmpty)
        {
            findings.Add(FindingCatalogue.NotProved, plan.Files.Batch.Location,
                "The solver that looks for the fewest sheets does not load on this machine, so the plan is made without it and may take "
                    + "more sheets than it must.",
                "Use the plan as it is, or install the package of Sketch that is made for this machine.");
        }
    }

    private void Shortage(PaperPlan paper)
    {
        if (paper.Short == 0)
        {
            if (!paper.IsProved && SolverLibrary.IsThere)
            {
                findings.Add(FindingCatalogue.NotProved, OrderFindings.PlaceOf(plan.Files, paper.Order),
                    $"{paper.Order.Paper} takes {Counted.Of(paper.Plan.Sheets, "sheet")}; {paper.Plan.LowerBound} might be enough; "
                        + "this is not proved.", hintForTime);
            }

            return;
        }

        var needed = $"{paper.Order.Paper}: {Counted.Of(paper.Plan.Sheets, "sheet")} {(paper.Plan.Sheets == 1 ? "is" : "are")} needed";
        if (paper.Order.Stock is { } stock)
        {
            findings.Add(FindingCatalogue.PaperShort, OrderFindings.PlaceOf(plan.Files, paper.Order),
                $"{needed} and {stock.Sheets} {(stock.Sheets == 1 ? "is" : "are")} on hand, so {paper.Short} "
                    + $"{(paper.Short == 1 ? "is" : "are")} missing.",
                        $"Buy {Counted.Of(paper.Short, "sheet")}, or see in the plan what would help.");
        }
        else if (!plan.Files.IsStashUnreadable)
        {
            findings.Add(FindingCatalogue.PaperShort, OrderFindings.PlaceOf(plan.Files, paper.Order),
                $"{needed}, {_lengths.Text(paper.Order.Sheet.Size)} each, and "
                    + (plan.Files.Batch.Stash is null ? "the batch names no stash." : "the stash has no paper of that name."),
                OrderFindings.MissingPaperHint(plan.Files, paper.Order));
        }
    }

    private void NoLeftover(ImmutableArray<UnplacedPieces> unplaced)
    {
        foreach (var piece in unplaced)
        {
            var order = plan.Pieces[piece.Id];
            findings.Add(FindingCatalogue.NoLeftover, order.Location,
                $"{OrderFindings.Called(order)}, {_lengths.Text(order.Size)}, may come from {order.OffcutName}, and for {piece.Count} of "
                    + $"{order.Count} no leftover is large enough.", "Name a paper for it, such as kraft.");
        }
    }
}
