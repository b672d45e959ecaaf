using System.Collections.Immutable;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>How many cards of a title are counted for a stage.</summary>
/// <param name="Stage">The word for the stage.</param>
/// <param name="Title">What people read for it.</param>
/// <param name="Number">How many.</param>
internal sealed record StageView(string Stage, string Title, long Number);

/// <summary>How many cards of a title are at which stage.</summary>
/// <param name="Card">The title.</param>
/// <param name="Make">How many the batch makes.</param>
/// <param name="Left">How many are still to make.</param>
/// <param name="Stages">Each stage, and what is spoilt.</param>
internal sealed record DesignCountView(string Card, int Make, long Left, IEnumerable<StageView> Stages);

/// <summary>How far a batch is.</summary>
/// <param name="Sentences">The same in sentences.</param>
/// <param name="Designs">Each card.</param>
/// <param name="Recipients">Each recipient.</param>
/// <param name="Findings">What is wrong in the log.</param>
internal sealed record CountView(
    IEnumerable<string> Sentences, IEnumerable<DesignCountView> Designs, IEnumerable<RecipientCountRecord> Recipients,
    IEnumerable<PageFinding> Findings)
{
    /// <summary>A count for the page.</summary>
    /// <param name="count">The count.</param>
    /// <param name="today">The present day.</param>
    /// <param name="findings">What is wrong in the log.</param>
    /// <param name="batch">The text of the batch.</param>
    /// <param name="folder">The opened folder.</param>
    public static CountView Of(
        BatchCount count, DateOnly today, ImmutableArray<Finding> findings, SourceText batch, OpenedFolder folder) => new(
            CountSummary.Of(count, today),
            count.Designs.Select(d => new DesignCountView(d.Card, d.Make, d.Left,
                CountStages.OfWork.Append(CountStage.Spoilt).Select(s => new StageView(s.Word(), s.Title(), d.Of(s))))),
            count.Recipients.Select(r => new RecipientCountRecord(r.Name, r.Cards, r.Given, r.Left)),
            PageFinding.Of(findings, batch, folder));
}
