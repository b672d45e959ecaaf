using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;

namespace Sketch.Cutting;

/// <summary>
/// Plans how to cut rectangles from sheets by cuts from edge to edge, any number of stages deep: first the fewest sheets, then the
/// fewest different layouts and settings of the trimmer, then the largest possible leftovers. It keeps no state between calls.
/// </summary>
public static class SheetPlanner
{
    // The rest is for arranging the sheets.
    private const double ShareOfSearch = 0.6;
    private const double ShareOfLayouts = 0.6;

    /// <summary>
    /// Makes a plan; the same problem and budget always give the same plan, unless a cancellation cuts the search short.
    /// </summary>
    /// <param name="problem">What to cut from one paper.</param>
    /// <param name="work">How much to search; when it is used up or cancelled, the best plan so far is returned, and there always is
    /// one.</param>
    /// <param name="progress">Reported whenever the plan or the bound gets better.</param>
    /// <exception cref="ArgumentException">The problem contains a size or count that the file readers reject.</exception>
    public static CuttingPlan Plan(CuttingProblem problem, WorkBudget work, IProgress<PlanProgress>? progress = null) =>
        Plan(problem, work, progress, isRoomy: false);

    /// <summary>A plan with one sheet more than the fewest found, which can be much less work to cut.</summary>
    /// <param name="problem">What to cut from one paper, at least one sheet.</param>
    /// <param name="work">How much to search.</param>
    /// <exception cref="ArgumentException">The problem contains a size or count that the file readers reject.</exception>
    public static CuttingPlan PlanWithSpareSheet(CuttingProblem problem, WorkBudget work) => Plan(problem, work, null, isRoomy: true);

    private static CuttingPlan Plan(CuttingProblem problem, WorkBudget work, IProgress<PlanProgress>? progress, bool isRoomy)
    {
        problem.Validate();
        var reduced = Reduced.From(problem);
        var misfits = MisfitsOf(problem, reduced);
        if (reduced.Kinds.Length == 0)
        {
            return new(0, 0, [], misfits);
        }

        var found = SheetSearch.Run(reduced, progress, work.Part(ShareOfSearch));
        if (isRoomy && found.Best!.Sheets > 0)
        {
            found = found.WithSpareSheet();
        }

        var settings = new StopSettings(problem);
        FewLayouts.Run(reduced, found, settings, work.Part(ShareOfLayouts));
        var uses = Leftovers.KeepWhole(problem, reduced, found, settings, work);
        var naming = new Naming(problem, reduced);
        var layouts = naming.Layouts(uses);
        var sheets = uses.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times);
        return new(sheets, Math.Min(found.LowerBound, sheets), layouts, [.. misfits, .. naming.LeftOver()]);
    }

    /// <summary>
    /// The number of sheets that a plan would take, without arranging it; null if a piece fits nowhere or the search is stopped.
    /// </summary>
    /// <param name="problem">What to cut from one paper.</param>
    /// <param name="work">How much to search.</param>
    /// <exception cref="ArgumentException">The problem contains a size or count that the file readers reject.</exception>
    public static int? Sheets(CuttingProblem problem, WorkBudget work) =>
        Search(problem, reduced => SheetSearch.Run(reduced, null, work).Best!, work);

    /// <summary>Whether this many sheets are enough; false if the search does not show it.</summary>
    /// <param name="problem">What to cut from one paper.</param>
    /// <param name="sheets">How many sheets there are.</param>
    /// <param name="work">How much to search.</param>
    /// <exception cref="ArgumentException">The problem contains a size or count that the file readers reject.</exception>
    public static bool Suffice(CuttingProblem problem, int sheets, WorkBudget work) =>
        Search(problem, reduced => SheetSearch.Within(reduced, sheets, work), work) <= sheets;

    /// <summary>The pieces that fit no sheet and no offcut, which no plan can place.</summary>
    /// <param name="problem">What to cut from one paper.</param>
    /// <exception cref="ArgumentException">The problem contains a size or count that the file readers reject.</exception>
    public static ImmutableArray<UnplacedPieces> Misfits(CuttingProblem problem)
    {
        problem.Validate();
        return MisfitsOf(problem, Reduced.From(problem));
    }

    private static ImmutableArray<UnplacedPieces> MisfitsOf(CuttingProblem problem, Reduced reduced) =>
        [.. reduced.Misfits.Select(i => new UnplacedPieces(problem.Pieces[i].Id, problem.Pieces[i].Count))];

    private static int? Search(CuttingProblem problem, Func<Reduced, WholePlan> search, WorkBudget work)
    {
        problem.Validate();
        var reduced = Reduced.From(problem);
        if (reduced.Misfits.Length > 0)
        {
            return null;
        }

        return reduced.Kinds.Length == 0
            ? 0 : search(reduced) is { LeftOut: 0 } plan && !work.Cancellation.IsCancellationRequested ? plan.Sheets : null;
    }
}
