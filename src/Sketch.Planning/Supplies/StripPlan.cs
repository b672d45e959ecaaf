using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Stashes;
using Sketch.Units;

namespace Sketch.Planning.Supplies;

/// <summary>
/// Which lengths are cut from which strip, by the planner of sheets: a strip is a sheet as high as its pieces, which may not be turned,
/// and scissors remove nothing. Strips of other lengths in the stash are used first, as offcuts are.
/// </summary>
/// <param name="Strip">The length of a strip: that of the longest in the stash.</param>
/// <param name="OnHand">Strips of that length on hand.</param>
/// <param name="Plan">The fewest strips.</param>
/// <param name="Lengths">The length of each piece by its id in the plan.</param>
public sealed record StripPlan(Length Strip, int OnHand, CuttingPlan Plan, ImmutableDictionary<string, Length> Lengths)
{
    /// <summary>What the maker calls a strip: strip or roll.</summary>
    public string Noun { get; init; } = "strip";

    /// <summary>The search for one supply: a check finds the same strips as a plan.</summary>
    private const long Work = WorkBudget.Usual / 8;

    private static readonly Length Height = Length.Millimetre(1);

    /// <summary>Cuts lengths from strips.</summary>
    /// <param name="stock">The strips; at least one line that gives their length.</param>
    /// <param name="wanted">Each length with its number.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static StripPlan Of(
        ImmutableArray<Supply> stock, IEnumerable<(Length Length, int Count)> wanted, CancellationToken cancellation = default)
    {
        var strip = stock.Max(s => s.StripLength)!.Value;
        var onHand = stock.Where(s => s.StripLength == strip).Sum(s => s.Strips ?? 0);
        var shorter = stock.Where(s => s.StripLength is { } other && other < strip && s.Strips > 0)
            .Select(s => new OffcutStock(new(s.StripLength!.Value, Height), s.Strips!.Value));
        var pieces = wanted.GroupBy(w => w.Length).OrderByDescending(g => g.Key)
            .Select((g, i) => new PieceDemand($"length{i}", new(g.Key, Height), g.Sum(w => w.Count), MayTurn: false)).ToImmutableArray();
        var problem = new CuttingProblem(new(new(strip, Height), default, onHand), [.. shorter], pieces) { SmallestUse = Height };
        return new(strip, onHand, SheetPlanner.Plan(problem, new(Work, cancellation)),
            pieces.ToImmutableDictionary(p => p.Id, p => p.Size.Width))
        {
            Noun = stock.Any(s => s.IsOnRolls) ? "roll" : "strip",
        };
    }

    /// <summary>What one layout cuts from its strip: each length with its number, longest first.</summary>
    public IEnumerable<(Length Length, int Count)> Cut(SheetLayout layout) =>
        layout.Pieces.GroupBy(p => Lengths[p.Id]).OrderByDescending(g => g.Key).Select(g => (g.Key, g.Count()));

    /// <summary>What is left of a strip cut that way.</summary>
    public Length Left(SheetLayout layout) => new(layout.Stock.Width.Nanometres - layout.Pieces.Sum(p => Lengths[p.Id].Nanometres));

    /// <summary>Lengths that are longer than any strip, with their number.</summary>
    public IEnumerable<(Length Length, int Count)> TooLong => Plan.Unplaced.Select(u => (Lengths[u.Id], u.Count));
}
