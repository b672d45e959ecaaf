using System.Collections.Immutable;
using Sketch.Text;

namespace Sketch.Batches;

/// <summary>Finished cards of an earlier occasion, which need not be made.</summary>
/// <param name="Count">How many.</param>
/// <param name="Card">The file of the card.</param>
/// <param name="Location">The line.</param>
public sealed record CardsOnHand(int Count, NamedFile Card, Location Location)
{
    /// <summary>
    /// A batch in which lines that make a card make as many fewer as are on hand, the first line first. What no line makes goes to the
    /// recipients as well.
    /// </summary>
    internal static Batch Used(Batch batch, ImmutableArray<CardsOnHand> onHand)
    {
        var makes = batch.Makes.ToBuilder();
        var rest = 0L;
        foreach (var cards in onHand)
        {
            var left = cards.Count;
            for (var i = 0; i < makes.Count; i++)
            {
                if (makes[i].Card.Path.Equals(cards.Card.Path, StringComparison.OrdinalIgnoreCase))
                {
                    var used = Math.Min(left, makes[i].Count);
                    left -= used;
                    makes[i] = makes[i] with { Count = makes[i].Count - used, OnHand = makes[i].OnHand + used };
                }
            }

            rest += left;
        }

        return batch with { Makes = makes.ToImmutable(), OnHand = onHand, OtherOnHand = rest };
    }
}
