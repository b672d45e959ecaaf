using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>
/// The most valuable layout of one rectangle when the copies of each kind are limited: the planner's two generators of
/// layouts, put to the task that values are published for.
/// </summary>
internal static class LimitedLayout
{
    /// <summary>Searches, first among good layouts, then among all that could be better.</summary>
    /// <param name="width">Across, in nanometres.</param>
    /// <param name="height">Down.</param>
    /// <param name="kinds">The kinds, in the order of their indexes; <see cref="Kind.Demand"/> limits the copies.</param>
    /// <param name="worth">The worth of one piece of each kind, positive; no rectangle may be worth more than
    /// <see cref="LayoutTable.MostValue"/>.</param>
    /// <param name="effort">Work allowed.</param>
    /// <param name="stop">Ends the search early.</param>
    /// <returns>The layout, null when nothing fits; its worth; and what no layout exceeds, the same when it is the best.</returns>
    public static (CutTree? Tree, long Worth, long Most) Best(
        long width, long height, Kind[] kinds, int[] worth, long effort, CancellationToken stop)
    {
        const int MostPoints = 640;
        var work = new WorkBudget(long.MaxValue, stop);
        var ways = kinds.SelectMany(k => k.Ways().Select(way => (way, k.Demand))).ToList();
        var table = new LayoutTable(
            CutPoints.For(ways.Select(w => (w.way.Width, w.Demand)), width, MostPoints),
            CutPoints.For(ways.Select(w => (w.way.Height, w.Demand)), height, MostPoints),
            kinds);
        table.Fill(worth);
        int[] wanted = [.. kinds.Select(k => k.Demand)];
        var good = LimitedTable.Best(width, height, kinds, worth, wanted, MostPoints, work);
        var known = good is null ? 0 : WorthOf(good, worth);
        var most = table.IsExact ? table.Best(width, height) : long.MaxValue;
        if (known >= most || !table.IsExact)
        {
            return (good, known, most);
        }

        int[] fitting = [.. kinds.Select(k => (int)Math.Min(k.Demand, (double)width * height / k.Area))];
        var limits = new PieceSets.Limits(double.PositiveInfinity, [new(table, worth, most - known - 1)]);
        if (PieceSets.TryList(kinds, [(width, height)], fitting, limits, effort, work) is not { } sets)
        {
            return (good, known, most);
        }

        var best = sets.Fullest(width, height, limits).MaxBy(tree => WorthOf(tree, worth));
        return best is null ? (good, known, known) : (best, WorthOf(best, worth), WorthOf(best, worth));
    }

    private static long WorthOf(CutTree tree, int[] worth)
    {
        var counts = new int[worth.Length];
        tree.Count(counts);
        return counts.Select((count, kind) => (long)count * worth[kind]).Sum();
    }
}
