using System.Collections.Immutable;
using System.Globalization;
using Sketch.Planning.Demand;
using Sketch.Planning.Post;
using Sketch.Units;

namespace Sketch.Planning.Summary;

/// <summary>The cards that are posted: how thick and heavy each is in its envelope, and as what the services carry it.</summary>
internal static class PostSection
{
    /// <summary>The part of the summary; null if nothing is posted.</summary>
    public static ReportSection? Of(BatchFiles files, LengthFormat lengths)
    {
        var items = files.Posted.Select(d => (d.Card.Title, Item: PostalItem.Of(d.Card, files.Stash))).ToList();
        if (items.Count == 0)
        {
            return null;
        }

        var sentences = ImmutableArray.CreateBuilder<string>();
        sentences.Add("Estimates; foam, gems, glue and ink are not weighed. Postal limits are guidance, last checked "
            + $"{string.Join(", ", files.LetterClasses.Select(c => c.Checked).Distinct())}: the local post office decides.");
        sentences.AddRange(items.Where(i => i.Item is null).Select(i => $"{i.Title}: no envelope of its size is known."));
        var rows = from posted in items
                   where posted.Item is not null
                   from verdict in PostalVerdict.Of(posted.Item, files.LetterClasses)
                   select ImmutableArray.Create(
                       posted.Title, posted.Item.EnvelopeName ?? lengths.Text(posted.Item.Envelope), Text(posted.Item.Thickness, "mm"),
                       Text(posted.Item.Weight, "g"), verdict.Service, verdict.Class, string.Join(" ", verdict.Reasons));
        return new("Post", sentences.ToImmutable(),
            ReportTable.Of(["Card", "Envelope", "Thick", "Weight", "Service", "Goes as", "Because"], rows));
    }

    private static string Text(Spread spread, string unit) => string.Create(
        CultureInfo.InvariantCulture, $"{Math.Round(spread.Low, 1):0.0} to {Math.Round(spread.High, 1):0.0} {unit}");
}
