using System.Collections.Immutable;
using System.Globalization;
using Sketch.Planning.Demand;
using Sketch.Planning.Post;
using Sketch.Units;

namespace Sketch.Planning.Summary;

/// <summary>The cards that are posted: how thick and heavy each is in its envelope, as what services carry it, and why.</summary>
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
        sentences.Add("Estimates: foam, glue and ready-made things are weighed by rule of thumb; ink is ignored. "
            + "Postal limits are guidance, last checked "
            + $"{string.Join(", ", files.LetterClasses.Select(c => c.Checked).Distinct())}: the local post office decides.");
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (var (title, item) in items)
        {
            if (item is null)
            {
                sentences.Add($"{title}: no envelope of its size is known.");
                continue;
            }

            var verdicts = PostalVerdict.Of(item, files.LetterClasses);
            sentences.AddRange(verdicts.Where(v => !v.Reasons.IsEmpty)
                .Select(v => $"{title}, {v.Service}: {v.Class}. {string.Join(" ", v.Reasons)}"));
            rows.Add([title, item.EnvelopeName ?? lengths.Text(item.Envelope), Text(item.Thickness, "mm"), Text(item.Weight, "g"),
                string.Join(", ", verdicts.Where(v => v.Reasons.IsEmpty).Select(v => v.Service))]);
        }

        return new("Post", sentences.ToImmutable(), ReportTable.Of(["Card", "Envelope", "Thick", "Weight", "A letter for"], rows));
    }

    private static string Text(Spread spread, string unit) => string.Create(
        CultureInfo.InvariantCulture, $"{Math.Round(spread.Low, 1):0.0} to {Math.Round(spread.High, 1):0.0} {unit}");
}
