using System.Collections.Immutable;
using System.Globalization;
using Sketch.Counts;
using Sketch.Text;

namespace Sketch.Reports;

/// <summary>How far a batch is, in sentences.</summary>
public static class CountSummary
{
    /// <summary>The sentences.</summary>
    /// <param name="count">The count.</param>
    /// <param name="today">The present day.</param>
    public static ImmutableArray<string> Of(BatchCount count, DateOnly today)
    {
        var sentences = ImmutableArray.CreateBuilder<string>();
        var all = count.Made + count.Left;
        sentences.Add(count.Left == 0
            ? $"{Cards(all)} {Are(all)} made; none {Are(0)} left to make."
            : $"{count.Made} of {Cards(all)} {Are(count.Made)} made; {count.Left} {Are(count.Left)} left to make.");
        if (count.PaceOn(today) is { } pace)
        {
            sentences.Add($"At this pace, {count.Made} in {Counted.Of(pace.Days, "day")}, the last one is made by {Day(pace.By)}.");
        }

        if (count.Batch.Date is { } date)
        {
            sentences.Add($"To be ready: {date}.");
        }

        foreach (var design in count.Designs)
        {
            sentences.AddRange(About(design));
        }

        if (!count.Recipients.IsEmpty && count.Recipients.All(r => r.Left == 0))
        {
            sentences.AddRange(count.Designs.Where(d => d.Made > d.Of(CountStage.Given)).Select(OnHand));
        }

        return sentences.ToImmutable();
    }

    private static string OnHand(DesignCount design)
    {
        var cards = design.Made - design.Of(CountStage.Given);
        return $"{design.Card}: {cards} {Are(cards)} on hand. In the next batch, write use {cards} of \"FILE.card\" on hand, "
            + "with the name of the card's file.";
    }

    /// <summary>A day as the log writes it.</summary>
    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static IEnumerable<string> About(DesignCount design)
    {
        if (design.Spoilt > 0)
        {
            yield return $"{design.Card}: {design.Spoilt} spoilt; {design.LeftToCut} {Are(design.LeftToCut)} to be cut.";
        }

        for (var i = 1; i < CountStages.OfWork.Length; i++)
        {
            var (earlier, later) = (CountStages.OfWork[i - 1], CountStages.OfWork[i]);
            if (design.Of(later) > design.Of(earlier))
            {
                yield return $"{design.Card}: {design.Of(later)} {Are(design.Of(later))} counted as {later.Word()}, "
                    + $"but only {design.Of(earlier)} as {earlier.Word()}.";
            }
        }

        if (design.Make > 0 && design.Made > design.Make)
        {
            yield return $"{design.Card}: {design.Made - design.Make} more than the batch makes.";
        }
    }

    private static string Cards(long number) => Counted.Of(number, "card");

    private static string Are(long number) => number == 1 ? "is" : "are";
}
