using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Planning.Plans;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>The work of cutting one paper: its stacks of sheets, one after the other.</summary>
/// <param name="Paper">The plan of the paper.</param>
/// <param name="Stacks">The stacks in the order of work.</param>
public sealed record PaperWork(PaperPlan Paper, ImmutableArray<SheetWork> Stacks)
{
    /// <summary>
    /// How often the stop of the trimmer is moved: once for the first step of the paper, and for each step whose distance from stop to
    /// blade differs from that of the step before it. Turning the part in hand against the same stop is no setting.
    /// </summary>
    public int Settings { get; } = Changes(Stacks.SelectMany(s => s.Steps).Select(s => s.Setting));

    /// <summary>
    /// How often the blade comes down. Sheets that are cut alike lie in one stack, so that a cut through them counts once.
    /// </summary>
    public int Cuts { get; } = Stacks.Sum(s => s.Steps.Sum(t => t.Cuts.Length));

    /// <summary>The work of one paper.</summary>
    public static PaperWork Of(BatchPlan plan, PaperPlan paper) => new(paper, SheetWork.Of(plan, paper));

    /// <summary>The work of all papers of a plan, in its order.</summary>
    public static ImmutableArray<PaperWork> Of(BatchPlan plan) => [.. plan.Papers.Select(p => Of(plan, p))];

    /// <summary>The settings of a plan by itself, in the order of its layouts.</summary>
    public static int SettingsOf(CuttingPlan plan) =>
        Changes(plan.Layouts.DistinctBy(SheetWork.Geometry).SelectMany(l => CutSequence.Of(l)).Select(s => s.Setting));

    private static int Changes(IEnumerable<Length> settings)
    {
        var (changes, last) = (0, (Length?)null);
        foreach (var setting in settings)
        {
            changes += setting == last ? 0 : 1;
            last = setting;
        }

        return changes;
    }
}
