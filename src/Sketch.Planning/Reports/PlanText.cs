using System.Globalization;
using Sketch.Panels;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Plans;
using Sketch.Planning.Summary;
using Sketch.Reports;

namespace Sketch.Planning.Reports;

/// <summary>A plan in plain text: the summary, then the sheets of each paper with the cuts in order.</summary>
public static class PlanText
{
    /// <summary>Writes the plan.</summary>
    public static void Write(TextWriter output, BatchPlan plan)
    {
        var lengths = plan.Files.Batch.Units.Format();
        var work = PaperWork.Of(plan);
        foreach (var line in PlanSummary.Of(plan, work, lengths).Lines())
        {
            output.Write(Printable.Line(line) + "\n");
        }

        output.Write($"\n{CutStep.Instruction}.\n");
        foreach (var paper in work)
        {
            foreach (var sheet in paper.Stacks)
            {
                output.Write($"\n{Printable.Line(sheet.Heading(lengths))}\n");
                foreach (var step in sheet.Steps)
                {
                    output.Write($"  {step.Number.ToString(CultureInfo.InvariantCulture),2}. {step.Text(lengths)}\n");
                }

                foreach (var piece in sheet.Pieces)
                {
                    output.Write($"      {piece.Key} {Printable.Line(piece.Text(lengths))}\n");
                }
            }
        }
    }
}
