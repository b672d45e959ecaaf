using System.Globalization;
using System.Text;
using Sketch.Reports;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>All cuts of a plan as comma-separated values, a step a line; settings are decimal numbers in the batch's unit.</summary>
public static class CutListCsv
{
    /// <summary>The text of the file.</summary>
    public static string Write(BatchPlan plan, PlanPages pages)
    {
        var lengths = LengthStyle.For(plan.Files.Batch.Units);
        var text = new StringBuilder("paper,stack,sheets,offcut,step,direction,unit,setting,ruler,cuts\r\n");
        foreach (var work in pages.Work)
        {
            foreach (var step in work.Steps)
            {
                text.Append(CsvText.Line(
                [
                    CsvText.Words(work.Paper), Number(work.Number), Number(work.Times), work.IsOffcut ? "yes" : "no", Number(step.Number),
                    step.IsUpright ? "down" : "across", lengths.Metric ? "mm" : "in", Number(step.Setting, lengths), lengths.Text(step.Setting),
                    Number(step.Cuts.Length),
                ]));
            }
        }

        return text.ToString();
    }

    private static string Number(Length length, LengthStyle lengths) =>
        Math.Round((decimal)length.Nanometres / (lengths.Metric ? Length.NanometresPerMillimetre : Length.NanometresPerInch), 6).ToString("0.######", CultureInfo.InvariantCulture);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
