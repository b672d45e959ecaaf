using System.Collections.Immutable;
using Sketch.Diagnostics;

namespace Sketch.Planning.Demand;

/// <summary>Several batches put together, so that their paper is bought and cut at once.</summary>
public static class JoinedBatches
{
    /// <summary>
    /// One batch with the designs and loose pieces of all. It has no recipients, since those of each batch get only the cards of that
    /// batch. The problem, as a whole sentence, if the batches cannot be cut together.
    /// </summary>
    /// <param name="all">The batches, at least one.</param>
    public static Result<BatchFiles> Of(ImmutableArray<BatchFiles> all)
    {
        var first = all[0];
        foreach (var other in all.Skip(1))
        {
            var different = other.Batch.Units != first.Batch.Units ? "units"
                : other.Stash?.Location.Source.Path != first.Stash?.Location.Source.Path ? "stashes"
                : other.Batch.Kerf != first.Batch.Kerf ? "kerfs"
                : other.Batch.BlankStep != first.Batch.BlankStep ? "blank steps"
                : other.Batch.Hollow != first.Batch.Hollow ? "hollow margins" : null;
            if (different is not null)
            {
                return new Failure($"\"{first.Batch.Title}\" and \"{other.Batch.Title}\" have different {different}, so they cannot be "
                    + "planned together.");
            }
        }

        return Result.Of(all.Length == 1 ? first : first with
        {
            Batch = first.Batch with
            {
                Title = string.Join(" and ", all.Select(f => f.Batch.Title)),
                For = [],
                RuleSets = [],
                MakerNames = [],
                Date = null,
                OnHand = [],
                OtherOnHand = 0,
                Makes = [.. all.SelectMany(f => f.Batch.Makes)],
                Cuts = [.. all.SelectMany(f => f.Batch.Cuts)],
            },
            Designs = [.. all.SelectMany(f => f.Designs)],
            LeftOut = [.. all.SelectMany(f => f.LeftOut)],
            Files = [.. all.SelectMany(f => f.Files).DistinctBy(f => f.Path)],
            People = ImmutableDictionary<Batches.Recipients, ImmutableArray<Batches.Person>>.Empty,
            Count = null,
        });
    }
}
