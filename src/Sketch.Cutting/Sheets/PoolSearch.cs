using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>Looks for better plans among all patterns found so far, and for patterns that make such plans possible.</summary>
internal sealed class PoolSearch(Reduced problem, Incumbent incumbent, WorkBudget work)
{
    private const int MostPoints = 120;
    private const int Rounds = 3;
    private const int PatternsInRound = 20;
    private const double Effort = 1;

    private readonly FixedDraws _draws = new();

    /// <summary>Offers the best plan of the patterns in the pool, if it is better than the best known one.</summary>
    public void Choose()
    {
        var patterns = incumbent.Pool.Patterns;
        if (WholeSheets.Choose(problem, patterns, incumbent.LowerBound, incumbent.Best!.Sheets - 1, Effort, work).Times is { } times)
        {
            incumbent.Offer([.. patterns.Zip(times)]);
        }
    }

    /// <summary>
    /// Fills sheets with pieces that are worth more or less than their areas, by chance, adds these patterns to the pool, and chooses from
    /// it again. Patterns that the linear program does not ask for can complete those that it uses.
    /// </summary>
    public void Vary()
    {
        for (var round = 0; round < Rounds && !incumbent.IsSettled && !work.IsOver; round++)
        {
            for (var i = 0; i < PatternsInRound && !work.IsOver; i++)
            {
                var noise = problem.Kinds.Select(_ => _draws.About(1, 0.3)).ToArray();
                if (LimitedTable.Best(problem.Sheet.Width, problem.Sheet.Height, problem.Kinds,
                    incumbent.Worth(k => k.Area * noise[k.Index]), problem.Demand, MostPoints, work) is { } tree)
                {
                    incumbent.Pool.Add(new(problem.Sheet, tree, problem.Kinds.Length));
                }
            }

            Choose();
        }
    }
}
