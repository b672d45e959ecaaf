using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Counts;

/// <summary>What one recipient was given.</summary>
/// <param name="Name">Who.</param>
/// <param name="Cards">How many cards the batch asks for.</param>
/// <param name="Given">How many were given.</param>
public sealed record RecipientCount(string Name, int Cards, long Given)
{
    /// <summary>How many are still to be given.</summary>
    public long Left => Math.Max(0, Cards - Given);
}

/// <summary>How far a batch is, according to its log.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Designs">Each card, those that the batch no longer makes last.</param>
/// <param name="Recipients">Each recipient.</param>
/// <param name="First">The day of the first entry, or null.</param>
public sealed record BatchCount(
    Batch Batch, ImmutableArray<DesignCount> Designs, ImmutableArray<RecipientCount> Recipients, DateOnly? First)
{
    /// <summary>Cards that are finished.</summary>
    public long Made => Designs.Sum(d => d.Made);

    /// <summary>Cards whose cut pieces were spoilt.</summary>
    public long Spoilt => Designs.Sum(d => d.Spoilt);

    /// <summary>Cards that are still to make.</summary>
    public long Left => Designs.Sum(d => d.Left);

    /// <summary>
    /// Adds up a log. An entry that takes back more than there is, is an error and left out; one of a card or recipient that the batch
    /// does not have is a warning and still counted.
    /// </summary>
    /// <param name="batch">The batch.</param>
    /// <param name="cards">The cards that it makes.</param>
    /// <param name="log">The log.</param>
    /// <param name="findings">Receives what is wrong with the entries.</param>
    public static BatchCount Of(Batch batch, ImmutableArray<CountedCard> cards, CountLog log, FindingBag findings)
    {
        var designs = cards.Select(c => DesignCount.None(c.Title, c.Make)).ToList();
        var recipients = batch.For.GroupBy(f => f.Whom, StringComparer.OrdinalIgnoreCase)
            .Select(g => new RecipientCount(g.Key, (int)Math.Min(int.MaxValue, g.Sum(f => (long)f.Cards)), 0)).ToList();
        foreach (var logged in log.Entries)
        {
            var entry = logged.Entry;
            var index = designs.FindIndex(d => d.Card.Equals(entry.Card, StringComparison.OrdinalIgnoreCase));
            if (index < 0)
            {
                findings.Add(FindingCatalogue.CountedStranger, logged.Location, $"The batch makes no card \"{entry.Card}\".",
                    Suggest(entry.Card, cards.Select(c => c.Title), "Take these cards back, or make the card in the batch."));
                index = designs.Count;
                designs.Add(DesignCount.None(entry.Card, 0));
            }

            if (designs[index].ProblemWith(entry.Stage, entry.Number) is { } problem)
            {
                findings.Add(FindingCatalogue.TakenTooMany, logged.Location, $"{problem} The entry is not counted.",
                    "Delete this line, or add the missing cards before it.");
                continue;
            }

            designs[index] = designs[index].With(entry.Stage, entry.Number);
            Give(entry, logged.Location);
        }

        return new(batch, [.. designs], [.. recipients],
            log.Entries.IsEmpty ? null : log.Entries.Min(e => DateOnly.FromDateTime(e.Entry.At)));

        void Give(CountEntry entry, Location location)
        {
            if (entry.Recipient is not { } name)
            {
                return;
            }

            var to = recipients.FindIndex(r => r.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (to < 0)
            {
                findings.Add(FindingCatalogue.CountedStranger, location, $"The batch has no recipient \"{name}\".",
                    Suggest(name, recipients.Select(r => r.Name), "Add the recipient to the batch."));
                to = recipients.Count;
                recipients.Add(new(name, 0, 0));
            }

            recipients[to] = recipients[to] with { Given = recipients[to].Given + entry.Number };
        }
    }

    /// <summary>Why an entry cannot be added, as a sentence for its writer; null if it can.</summary>
    public string? ProblemWith(CountEntry entry) =>
        Designs.FirstOrDefault(d => d.Card == entry.Card) is not { } design
            ? $"This batch makes no card \"{entry.Card}\"." : design.ProblemWith(entry.Stage, entry.Number);

    /// <summary>When the rest is made if the work goes on as it did; null before a card is finished, or when none is left.</summary>
    /// <param name="today">The present day.</param>
    public Pace? PaceOn(DateOnly today) => First is { } first && Made > 0 && Left > 0 && today >= first
        ? Pace.Of(Made, today.DayNumber - first.DayNumber + 1, Left, today) : null;

    private static string Suggest(string name, IEnumerable<string> known, string otherwise) =>
        Nearest.Find(name, known) is { } near ? $"Did you mean \"{near}\"?" : otherwise;
}

/// <summary>How fast cards are finished.</summary>
/// <param name="Made">Cards finished so far.</param>
/// <param name="Days">In so many days, the first and the present one included.</param>
/// <param name="By">The day on which the rest is finished at this pace.</param>
public sealed record Pace(long Made, int Days, DateOnly By)
{
    /// <summary>The pace so far, and the day it leads to: whole days, rounded up.</summary>
    internal static Pace Of(long made, int days, long left, DateOnly today)
    {
        var needed = ((left * days) + made - 1) / made;
        return new(made, days, today.DayNumber + needed < DateOnly.MaxValue.DayNumber ? today.AddDays((int)needed) : DateOnly.MaxValue);
    }
}
