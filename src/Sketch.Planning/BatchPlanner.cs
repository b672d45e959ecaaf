using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Planning.Advice;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Supplies;

namespace Sketch.Planning;

/// <summary>Plans a batch: from its files to sheets, supplies and findings.</summary>
public static class BatchPlanner
{
    /// <summary>
    /// Plans all papers; null if no card is free of errors and there are no loose pieces, which is already reported. The same files
    /// always give the same plan, unless the time limit or a cancellation cuts a search short.
    /// </summary>
    /// <param name="files">The batch and what it names.</param>
    /// <param name="timeLimit">For all papers together, and again for advice; when it is over, the best plan so far counts.</param>
    /// <param name="findings">Receives what is short, what fits nowhere and how the cards add up.</param>
    /// <param name="progress">Reported whenever a plan or bound gets better, from several threads.</param>
    /// <param name="hintForTime">What to do about a plan that is not proved in time; it depends on who can change the limit.</param>
    /// <param name="cancellation">Ends the search; the best plan so far is returned.</param>
    public static BatchPlan? Plan(
        BatchFiles files, TimeSpan timeLimit, FindingBag findings, IProgress<BatchProgress>? progress = null,
            string hintForTime = "Use the plan as it is, or allow more time.", CancellationToken cancellation = default)
    {
        if (!files.HasWork)
        {
            return null;
        }

        var book = OrderBook.Of(files, findings);
        var planned = Cut(book.Papers, files.Batch.Kerf, timeLimit, progress, cancellation);
        var demands = book.AnyOffcut.Select(p => new PieceDemand(p.Id, p.Size, p.Count)).ToImmutableArray();
        var (plans, unplaced) = demands.IsEmpty
            ? ([.. planned.Select(p => p.Plan)], []) : LeftoverFilling.Fill([.. planned.Select(p => (p.Problem, p.Plan))], demands);
        var filled = planned.Zip(plans, (paper, plan) => paper with { Plan = plan }).ToList();
        var result = new BatchPlan(
            files,
            [.. filled.Where(p => IsUsed(p))],
            [.. filled.Where(p => !IsUsed(p)).Select(p => p.Order)],
            SupplyList.Of(files, book),
            book.Papers.SelectMany(p => p.Pieces).Concat(book.AnyOffcut).ToImmutableDictionary(p => p.Id));
        PlanFindings.Report(result, unplaced, findings, hintForTime);
        return result with { Advice = Advisor.Advise(result, timeLimit, cancellation) };
    }

    /// <summary>Plans each paper separately, on all cores.</summary>
    internal static ImmutableArray<PaperPlan> Cut(
        ImmutableArray<PaperOrder> papers, Units.Length kerf, TimeSpan timeLimit, IProgress<BatchProgress>? progress,
            CancellationToken cancellation)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(timeLimit);
        var token = limit.Token;
        var plans = new PaperPlan[papers.Length];
        Parallel.For(0, papers.Length, i =>
        {
            var problem = papers[i].Problem(kerf);
            var reported = progress is null ? null : new PaperProgress(papers[i].Paper, progress);
            plans[i] = new(papers[i], problem, SheetPlanner.Plan(problem, new(timeLimit), reported, token));
        });
        return [.. plans];
    }

    private static bool IsUsed(PaperPlan paper) => !paper.Order.Pieces.IsEmpty || !paper.Plan.Layouts.IsEmpty;

    private sealed class PaperProgress(string paper, IProgress<BatchProgress> progress) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => progress.Report(new(paper, value.Sheets, value.LowerBound));
    }
}
