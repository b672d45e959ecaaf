using System.Collections.Immutable;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Stashes;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>What a card of one design costs.</summary>
/// <param name="Design">The design.</param>
/// <param name="Amount">In the stash's currency: its share by area of every sheet that the batch takes, waste included, and what is
/// stuck on.</param>
public sealed record CardCost(Design Design, decimal Amount)
{
    /// <summary>The cost of each design, and the names of what has no price in the stash; no costs if nothing has a price.</summary>
    public static (ImmutableArray<CardCost> Costs, ImmutableArray<string> Unpriced) Of(BatchPlan plan)
    {
        var total = plan.Files.Designs.ToDictionary(d => d, _ => 0m);
        var unpriced = ImmutableArray.CreateBuilder<string>();
        var priced = false;
        foreach (var paper in plan.Papers.Where(p => p.Plan.Sheets > 0))
        {
            if (paper.Order.Stock?.Price is not { } price)
            {
                unpriced.Add(paper.Order.Paper);
                continue;
            }

            priced = true;
            var area = paper.Order.Pieces.Sum(Area);
            foreach (var design in paper.Order.Pieces.GroupBy(p => p.Design).Where(g => g.Key is not null))
            {
                total[design.Key!] += price * paper.Plan.Sheets * design.Sum(Area) / area;
            }
        }

        foreach (var need in plan.Supplies.Where(n => n.IsExpected || !n.Stock.IsEmpty))
        {
            if (need.Kind.Traits.Count == SupplyCount.Tool)
            {
                // A die or stamp stays in the stash.
                continue;
            }

            if (need.Stock is not [{ Price: { } price } stock, ..])
            {
                unpriced.Add(need.Name);
                continue;
            }

            priced = true;
            var roll = stock.StripLength ?? stock.Long;
            var each = need.Cutting is { } cutting && need.Total > 0 ? price * cutting.Plan.Sheets / need.Total
                : !need.ByLength ? price
                : roll is { } length && length > Length.Zero ? price / length.Nanometres : 0;
            foreach (var share in need.Shares)
            {
                total[share.Design] += each * share.PerCard * need.CardsOf(share.Design);
            }
        }

        var cut = plan.Files.Designs.Where(d => d.Order.Count > 0);
        return priced ? ([.. cut.Select(d => new CardCost(d, total[d] / d.Order.Count))], unpriced.ToImmutable()) : ([], []);
    }

    private static decimal Area(PieceOrder piece) => (decimal)(piece.Size.Width.Millimetres * piece.Size.Height.Millimetres) * piece.Count;
}
