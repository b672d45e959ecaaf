using Sketch.Counts;
using Sketch.Text;

namespace Sketch.Planning.Demand;

/// <summary>How many cards of a design are still to be worked on, apart from those to cut.</summary>
/// <param name="ToGlue">Cards to put together, those to cut included.</param>
/// <param name="ToEnclose">Cards to put into their envelopes, those to put together included.</param>
public readonly record struct Unfinished(int ToGlue, int ToEnclose);

/// <summary>What is left to do of a batch according to its count.</summary>
public static class LeftToMake
{
    /// <summary>
    /// The batch with the designs that are not finished, each with the cards that are still to be cut. What is done counts for the lines
    /// of a card in their order. Loose pieces are not counted, so they stay.
    /// </summary>
    /// <param name="files">The batch.</param>
    /// <param name="count">Its count.</param>
    public static BatchFiles Of(BatchFiles files, BatchCount count)
    {
        var done = count.Designs.ToDictionary(d => d.Card, d => new Done(d), StringComparer.Ordinal);
        return files with
        {
            Count = count,
            Designs = [.. files.Designs.Select(d => done.TryGetValue(d.Card.Title, out var of) ? of.Rest(d) : d).OfType<Design>()],
        };
    }

    /// <summary>How many cards are still to cut, to put together and to put into envelopes, as a sentence.</summary>
    /// <param name="files">What is left.</param>
    /// <param name="count">The count.</param>
    public static string Sentence(BatchFiles files, BatchCount count)
    {
        var all = count.Designs.Sum(d => (long)d.Make);
        var spoilt = count.Spoilt == 0 ? "" : $" (including {count.Spoilt} to replace spoilt cards)";
        return $"Still to cut: {files.Cards} of {Counted.Of(all, "card")}{spoilt}; to put together: "
            + $"{files.Designs.Sum(d => (long)d.ToGlue)}; to put into envelopes: {files.Designs.Sum(d => (long)d.ToEnclose)}.";
    }

    private sealed class Done(DesignCount count)
    {
        private long _cut = count.Reached(CountStage.Cut);
        private long _glued = count.Reached(CountStage.Glued);
        private long _enclosed = count.Reached(CountStage.Enveloped);

        public Design? Rest(Design design)
        {
            var make = design.Order.Count;
            var (toCut, toGlue, toEnclose) = (Rest(ref _cut, make), Rest(ref _glued, make), Rest(ref _enclosed, make));
            return toEnclose == 0 ? null : new(design.Order with { Count = toCut }, design.Card) { Unfinished = new(toGlue, toEnclose) };
        }

        private static int Rest(ref long done, int make)
        {
            var of = (int)Math.Min(done, make);
            done -= of;
            return make - of;
        }
    }
}
