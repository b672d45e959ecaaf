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
                    f.Whom, Number(f.Cards), f.MadeBy.IsEmpty ? isShared ? Number(makers) : "" : Batch.NamesOf(f),
                    isShared ? Share(f.Cards, makers) : "",
                    f.Date ?? "", Way(f.Delivery), Designs(plan.Files, f));
            })));
    }

    /// <summary>What each named maker makes; null without names.</summary>
    public static ReportSection? OfMakers(BatchFiles files)
    {
        var makers = NamedMakers.Each(files.Batch).ToList();
        return makers.Count == 0 ? null : new("Who makes what",
            ["The plan is for all makers together. Write --maker and a name for the workbook of one of them."],
            ReportTable.Of(["Maker", "Needs", "Makes", "Designs", "For"], makers.Select(m => ImmutableArray.Create(
                m.Name, m.Own.Needed is { } needed ? Number(needed) : "", Number(m.Own.Makes.Sum(o => o.Count)),
                string.Join(", ", DesignsOf(files, m.Own).Select(d => $"{d.Cards} {d.Title}")),
                string.Join(", ", m.Own.For.Select(f => f.Whom))))));
    }

    /// <summary>The designs that the part of a maker makes, with the number of cards.</summary>
    public static IEnumerable<(string Title, int Cards)> DesignsOf(BatchFiles files, Batch own) =>
        own.Makes.Select(o => (files.Designs.FirstOrDefault(d => d.Order.Location == o.Location)?.Card.Title, o.Count))
            .Where(d => d.Title is not null).GroupBy(d => d.Title!, (title, of) => (title, of.Sum(d => d.Count)));

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
