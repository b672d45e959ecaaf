using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Planning.Demand;
using Sketch.Planning.Supplies;
using Sketch.Units;

namespace Sketch.Planning.Plans;

/// <summary>How everything of one paper is cut.</summary>
/// <param name="Order">The pieces to cut.</param>
/// <param name="Problem">The same for the planner.</param>
/// <param name="Plan">The layouts, with pieces of any paper that fit into their leftovers.</param>
public sealed record PaperPlan(PaperOrder Order, CuttingProblem Problem, CuttingPlan Plan)
{
    /// <summary>Paper that its pieces free when they are cut hollow, used or not.</summary>
    public ImmutableArray<FreedStock> Freed { get; init; } = [];

    /// <summary>How many rectangles of freed paper the plan cuts up.</summary>
    public int Used(FreedStock freed) =>
        Plan.Layouts.Where(l => l.FreedBy == freed.From.Id && l.Stock == freed.Size).Sum(l => l.Times);

    /// <summary>The plan with the fewest sheets, if this one takes more of them to save work; else null.</summary>
    public CuttingPlan? Fewest { get; init; }

    /// <summary>Whether no plan needs fewer sheets, apart from those that this one spends on purpose.</summary>
    public bool IsProved => (Fewest ?? Plan).IsProved;

    /// <summary>Sheets missing in the stash.</summary>
    public int Short => Plan.Short(Order.Sheet);
}

/// <summary>How a batch is made.</summary>
/// <param name="Files">The batch and what it names.</param>
/// <param name="Papers">A plan for each paper to cut from.</param>
/// <param name="Idle">Papers of the stash that nothing is cut from.</param>
/// <param name="Supplies">What else is needed.</param>
/// <param name="Pieces">Every order of pieces by its id, including those of any offcut.</param>
public sealed record BatchPlan(
    BatchFiles Files,
    ImmutableArray<PaperPlan> Papers,
    ImmutableArray<PaperOrder> Idle,
    ImmutableArray<SupplyNeed> Supplies,
    ImmutableDictionary<string, PieceOrder> Pieces)
{
    /// <summary>What to do if the stash is not enough.</summary>
    public PlanAdvice Advice { get; init; } = PlanAdvice.None;

    /// <summary>Cards that all lines together make, without those left out because of errors.</summary>
    public long Cards => Files.Cards;

    /// <summary>The leftovers that give the pieces of any offcut, and how many pieces each gives.</summary>
    public IEnumerable<LeftoverUse> FromLeftovers =>
        from paper in Papers
        from cut in paper.Plan.Layouts.SelectMany(l => l.Pieces, (l, p) => (p.Id, l.FreedBy, l.Times))
        where Pieces[cut.Id].IsAnyOffcut
        group cut.Times by (cut.Id, paper.Order.Paper, cut.FreedBy) into same
        select new LeftoverUse(
            Pieces[same.Key.Id], same.Key.Paper, same.Key.FreedBy is { } freed ? Pieces[freed] : null, same.Sum());

    /// <summary>Whether all papers are enough.</summary>
    public bool IsEnough => Papers.All(p => p.Short == 0);

    /// <summary>The smallest side that makes a leftover worth keeping.</summary>
    public static Length SmallestUse => Length.Inch(0, 1, 2);
}

/// <summary>Pieces of any offcut that are cut from leftovers of one paper.</summary>
/// <param name="Piece">The pieces.</param>
/// <param name="Paper">The paper's name.</param>
/// <param name="FreedBy">The piece that frees the leftover, or null for what is left of sheets and offcuts.</param>
/// <param name="Count">How many.</param>
public sealed record LeftoverUse(PieceOrder Piece, string Paper, PieceOrder? FreedBy, int Count);

/// <summary>The progress of planning a batch.</summary>
/// <param name="Paper">The paper being planned.</param>
/// <param name="Sheets">Sheets of its best plan so far.</param>
/// <param name="LowerBound">No plan needs fewer.</param>
public readonly record struct BatchProgress(string Paper, int Sheets, int LowerBound);
