using Sketch.Diagnostics;
using Sketch.Messages;
using Sketch.Planning.Demand;
using Sketch.Text;

namespace Sketch.Planning.Plans;

/// <summary>Reports messages that do not go with their cards, and lists of names that do not go with their recipients.</summary>
internal static class MessageFindings
{
    // Names differ little in length, so that setting the longest messages finds those that do not fit.
    private const int MostSet = 50;

    /// <summary>Adds a finding at each message, once for all people who get it.</summary>
    public static void Report(BatchFiles files, FindingBag findings)
    {
        foreach (var recipient in files.Batch.For)
        {
            var people = files.PeopleOf(recipient);
            if (recipient.Part is null && people.Length > 0 && people.Length != recipient.Cards)
            {
                findings.Add(FindingCatalogue.NamesDoNotMatch, recipient.Names!.Location,
                    $"\"{recipient.Names.Path}\" has {Counted.Of(people.Length, "name")}, and \"{recipient.Whom}\" gets "
                        + $"{Counted.Of(recipient.Cards, "card")}.", "Correct the number of cards, or the list.");
            }

            if (people.IsEmpty && recipient.Names is null && files.Designs.Where(d => Batches.Batch.Gets(recipient, d.Order))
                .Select(d => d.MessageFor(recipient)).FirstOrDefault(m => m is { IsPersonal: true }) is { } personal)
            {
                findings.Add(FindingCatalogue.NoNames, personal.Location,
                    $"This message has a place for a name, and \"{recipient.Whom}\" has no list of names.",
                    $"Write names \"names.csv\" beneath the line of \"{recipient.Whom}\", or give it a message without {{name}}.");
            }
        }

        foreach (var same in MessageList.Of(files).Where(w => w.Person is not null || w.Message.Location != w.Design.Card.Message?.Location)
            .GroupBy(w => (w.Design, w.Message.Location)))
        {
            foreach (var written in same.DistinctBy(w => w.Message.ToString()).OrderByDescending(w => w.Message.ToString().Length)
                .Take(MostSet))
            {
                var found = new FindingBag();
                MessageChecks.Check(written.Message, written.Design.Card, files.World, found);
                if (found.ToImmutable() is [var first, ..])
                {
                    findings.Add(first);
                    break;
                }
            }
        }
    }
}
