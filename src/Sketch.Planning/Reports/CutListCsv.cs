using System.Globalization;
using System.Text;
using Sketch.Panels;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Reports;
using Sketch.Units;

namespace Sketch.Planning.Reports;

/// <summary>All cuts of a plan as comma-separated values, one step per line; settings are decimal numbers in the batch's unit.</summary>
public static class CutListCsv
{
    /// <summary>The text of the file.</summary>
    public static string Write(BatchPlan plan, PlanPages pages)
    {
        var lengths = plan.Files.Batch.Units.Format();
        var text = new StringBuilder("paper,stack,sheets,offcut,step,direction,unit,setting,ruler,cuts,against\r\n");
        foreach (var work in pages.Work)
        {
            foreach (var step in work.Steps)
            {
                text.Append(CsvText.Line(
                [
                    CsvText.Words(work.Paper), Number(work.Number), Number(work.Times), work.IsOffcut ? "yes" : "no", Number(step.Number),
                    step.IsUpright ? "down" : "across", lengths.Unit, lengths.Number(step.Setting), lengths.Text(step.Setting),
                    Number(step.Cuts.Length), step.Against.Name(),
                ]));
            }
        }

        return text.ToString();
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
