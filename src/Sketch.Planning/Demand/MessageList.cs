using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Panels;

namespace Sketch.Planning.Demand;

/// <summary>A message in some cards of a design.</summary>
/// <param name="Design">The design.</param>
/// <param name="For">Who gets the cards; null for spare cards, and in a batch without recipients.</param>
/// <param name="Message">The message, for a person with the name.</param>
/// <param name="Person">The person who gets the card, or null.</param>
/// <param name="Cards">In how many cards.</param>
public sealed record WrittenMessage(Design Design, Recipients? For, CardMessage Message, string? Person, int Cards);

/// <summary>Which message goes into which card.</summary>
public static class MessageList
{
    /// <summary>
    /// The messages of the cards that this maker makes, by design. Each recipient gets its share of the designs meant for it, those meant
    /// for few recipients first; each person of a list gets a card, even if the designs make too few.
    /// </summary>
    public static ImmutableArray<WrittenMessage> Of(BatchFiles files)
    {
        var (batch, left) = (files.Batch, files.Designs.ToDictionary(d => d, d => d.ToEnclose));
        var written = new List<WrittenMessage>();
        foreach (var recipient in batch.For.OrderBy(f => files.Designs.Count(d => Batch.Gets(f, d.Order))))
        {
            var designs = files.Designs.Where(d => Batch.Gets(recipient, d.Order))
                .OrderBy(d => d.Order.For.IsEmpty ? batch.For.Length : d.Order.For.Length).ToList();
            var people = files.PeopleOf(recipient);
            if (designs.Count > 0 && !people.IsEmpty)
            {
                written.AddRange(people.Select(p => Personal(Next(), recipient, p)).OfType<WrittenMessage>());
                continue;
            }

            var wanted = batch.CardsHere(recipient);
            foreach (var design in designs)
            {
                var cards = (int)Math.Min(wanted, left[design]);
                (wanted, left[design]) = (wanted - cards, left[design] - cards);
                if (cards > 0 && design.MessageFor(recipient) is { IsPersonal: false } message)
                {
                    written.Add(new(design, recipient, message, null, cards));
                }
            }

            Design Next()
            {
                var design = designs.Find(d => left[d] > 0) ?? designs[^1];
                left[design] = Math.Max(0, left[design] - 1);
                return design;
            }
        }

        written.AddRange(left.Where(l => l.Value > 0 && l.Key.Message is { IsPersonal: false })
            .Select(l => new WrittenMessage(l.Key, null, l.Key.Message!, null, l.Value)));
        return [.. written.OrderBy(w => files.Designs.IndexOf(w.Design))];
    }

    private static WrittenMessage? Personal(Design design, Recipients recipient, Person person) =>
        (person.Message?.InsteadOf(design.MessageFor(recipient)) ?? design.MessageFor(recipient)) is { } message
            ? new(design, recipient, message.For(person.Name), person.Name, 1) : null;
}
