using System.Globalization;
using System.Text;
using Sketch.Reports;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>All cuts of a plan as comma-separated values (RFC 4180), a step a line; settings are decimal numbers in the batch's unit.</summary>
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
                text.Append(CultureInfo.InvariantCulture,
                    $"{Quoted(work.Paper)},{work.Number},{work.Times},{(work.IsOffcut ? "yes" : "no")},{step.Number},{(step.IsUpright ? "down" : "across")},{(lengths.Metric ? "mm" : "in")},{Number(step.Setting, lengths)},\"{lengths.Text(step.Setting)}\",{step.Cuts.Length}\r\n");
            }
        }

        return text.ToString();
    }

    private static string Number(Length length, LengthStyle lengths) =>
        Math.Round((decimal)length.Nanometres / (lengths.Metric ? Length.NanometresPerMillimetre : Length.NanometresPerInch), 6).ToString("0.######", CultureInfo.InvariantCulture);

    // A spreadsheet would run text that begins like a formula.
    private static string Quoted(string text) => $"\"{(text.Length > 0 && "=+-@".Contains(text[0], StringComparison.Ordinal) ? "'" : "")}{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
