using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Supplies;
using Sketch.Stashes;

namespace Sketch.Planning.Advice;

/// <summary>
/// Computes how many of each card can be made from the stash: first in the proportions of the batch, then what else fits, in its
/// order. Loose pieces are cut first. Estimates of foam and adhesive do not count.
/// </summary>
internal sealed class Makeable
{
    private readonly ImmutableArray<Design> _designs;
    private readonly ImmutableArray<PaperPlan> _papers;
    private readonly ImmutableArray<SupplyNeed> _supplies;
    private readonly Trial _trial;

    private Makeable(BatchPlan plan, Trial trial)
    {
        _designs = plan.Files.Designs;
        _papers = [.. plan.Papers.Where(p => p.Short > 0 && p.Order.Pieces.Any(x => x.Design is not null))];
        _supplies = [.. plan.Supplies.Where(s => s is { Short: > 0, IsEstimate: false, Stock.IsEmpty: false })];
        _trial = trial;
    }

    /// <summary>One entry for each design; empty if everything can be made or the work is used up.</summary>
    public static ImmutableArray<MakeableCards> Of(BatchPlan plan, WorkBudget work)
    {
        var search = new Makeable(plan, new(plan.Files.Batch, work));
        if (search._papers.IsEmpty && search._supplies.IsEmpty)
        {
            return [];
        }

        var counts = search.Counts();
        return work.IsOver ? [] : [.. plan.Files.Designs.Select((d, i) => new MakeableCards(d, counts[i]))];
    }

    private int[] Counts()
    {
        var wanted = _designs.Select(d => d.Order.Count).ToArray();
        var free = _designs.Select(IsFree).ToArray();
        int[] Share(int parts, int of) => [.. wanted.Select((w, i) => free[i] ? w : (int)((long)w * parts / of))];

        const int fine = 1024;
        var counts = Share(Largest(fine, parts => IsEnough(Share(parts, fine))), fine);
        for (var i = 0; i < counts.Length; i++)
        {
            var start = counts[i];
            counts[i] = start + Largest(wanted[i] - start, more => IsEnough([.. counts.Select((c, j) => j == i ? start + more : c)]));
        }

        return counts;
    }

    private bool IsFree(Design design) =>
        !_papers.Any(p => p.Order.Pieces.Any(x => x.Design == design)) && !_supplies.Any(s => s.Shares.Any(x => x.Design == design));

    // The largest number from 0 to most that works, if every smaller one works.
    private static int Largest(int most, Func<int, bool> willDo)
    {
        if (most == 0 || willDo(most))
        {
            return most;
        }

        var (good, bad) = (0, most);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            (good, bad) = willDo(middle) ? (middle, bad) : (good, middle);
        }

        return good;
    }

    private static bool Suffices(SupplyNeed need, Func<Design, int> countOf) => need.Cutting is null
        ? need.Kind.Traits.Count == SupplyCount.Tool || need.Shares.Sum(x => x.PerCard * countOf(x.Design)) <= need.OnHand
        : StripPlan.Of(need.Stock, need.Shares.SelectMany(x => x.Lengths.Select(l => (l, countOf(x.Design))))) is var cut
            && cut.Plan.Sheets <= cut.OnHand;

    private bool IsEnough(int[] counts)
    {
        int CountOf(Design design) => counts[_designs.IndexOf(design)];
        return _supplies.All(s => Suffices(s, CountOf))
            && _papers.All(p => _trial.Suffice(
                Trial.With(p.Order, p.Order.Pieces.Select(x => x.Design is { } design ? x with { Count = CountOf(design) } : x)),
                    p.Order.Sheet.OnHand ?? int.MaxValue));
    }
}
