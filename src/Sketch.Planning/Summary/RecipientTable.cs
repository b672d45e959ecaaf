using System.Collections.Immutable;
using System.Globalization;
using Sketch.Batches;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;

namespace Sketch.Planning.Summary;

/// <summary>Who gets what: each recipient with its cards, the share of each maker, and the designs meant for it.</summary>
internal static class RecipientTable
{
    /// <summary>The part of the summary; columns that say nothing are left out.</summary>
    public static ReportSection Of(BatchPlan plan)
    {
        var batch = plan.Files.Batch;
        var isShared = batch.Shares.Any(s => s.Makers > 1);
        return new(
            "For whom", [.. batch.For.SelectMany(f => Lines(f.Notes).Select(n => $"{f.Whom}: {n}"))],
            ReportTable.Of(["For", "Cards", "Makers", "Each makes", "By", "How", "Designs"], batch.For.Select(f =>
            {
                var makers = batch.MakersOf(f);
                return ImmutableArray.Create(
                    f.Whom, Number(f.Cards), isShared ? Number(makers) : "", isShared ? Share(f.Cards, makers) : "",
                    f.Date ?? "", Way(f.Delivery), Designs(plan.Files, f));
            })));
    }

    /// <summary>The titles of the designs that a recipient gets, each once.</summary>
    public static IEnumerable<string> TitlesFor(BatchFiles files, Recipients recipient) =>
        files.Designs.Where(d => Batch.Gets(recipient, d.Order)).Select(d => d.Card.Title).Distinct();

    // All designs go without saying.
    private static string Designs(BatchFiles files, Recipients recipient) =>
        files.Designs.All(d => Batch.Gets(recipient, d.Order)) ? "" : string.Join(", ", TitlesFor(files, recipient));

    // Cards that cannot be shared evenly: some makers make one more.
    private static string Share(int cards, int makers) =>
        cards % makers == 0 ? Number(cards / makers) : $"{Number(cards / makers)} or {Number((cards / makers) + 1)}";

    private static string Way(Delivery delivery) => delivery switch
    {
        Delivery.ByHand => "by hand",
        Delivery.ByPost => "by post",
        _ => "",
    };

    private static string[] Lines(string notes) => notes.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
