using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Planning.Advice;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Supplies;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>Plans a batch: from its files to sheets, supplies and findings.</summary>
public static class BatchPlanner
{
    private const double ShareOfPlan = 0.7;
    private const double ShareOfHollow = 0.5;
    private const double ShareOfEasier = 0.7;
    private const double ShareOfLone = 0.3;
    private const double FirstShare = 0.6;

    /// <summary>The time limit of the usual amount of work, which hardly ever takes as long.</summary>
    public static readonly TimeSpan UsualTime = TimeSpan.FromSeconds(10);

    /// <summary>
    /// Plans all papers; null if no card is free of errors and there are no loose pieces, which is already reported. The same files
    /// and limit always give the same plan, as long as the machine does the work within the limit.
    /// </summary>
    /// <param name="files">The batch and what it names.</param>
    /// <param name="timeLimit">For all papers and advice together; when it is over, the best plan so far counts. A limit above
    /// <see cref="UsualTime"/> also allows more work in proportion.</param>
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
            if (files.Count is not null)
            {
                findings.Add(FindingCatalogue.LeftToCut, files.Batch.Location, "Nothing is left to make: all cards are in their envelopes.",
                    "Nothing needs to change.");
            }

            return null;
        }

        var book = OrderBook.Of(files, findings);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(timeLimit);
        var work = new WorkBudget((long)(WorkBudget.Usual * Math.Max(1, timeLimit / UsualTime)), limit.Token);
        var cut = HollowPlans.Of(
            Cut(book.Papers, files.Batch.Kerf, work.Part(ShareOfPlan), progress), files.Batch, work.Part(ShareOfHollow));
        var planned = files.IsEasy ? EasierPlans.Of(cut, work.Part(ShareOfEasier)) : cut;
        var demands = book.AnyOffcut.Select(p => new PieceDemand(p.Id, p.Size, p.Count)).ToImmutableArray();
        var kinds = book.AnyOffcut.ToDictionary(p => p.Id, p => p.OffcutOf);
        var (plans, unplaced) = demands.IsEmpty ? ([.. planned.Select(p => p.Plan)], [])
            : LeftoverFilling.Fill([.. planned.Select(p => (FreedStock.Added(p.Problem, p.Freed), p.Plan))], demands,
                (piece, paper) => planned[paper].Order.ServesAsOffcutOf(kinds[piece.Id]));
        var filled = planned.Zip(plans, (paper, plan) => paper with { Plan = plan }).ToList();
        var result = new BatchPlan(
            files,
            [.. filled.Where(p => IsUsed(p))],
            [.. filled.Where(p => !IsUsed(p)).Select(p => p.Order)],
            SupplyList.Of(files, book, limit.Token),
            book.Papers.SelectMany(p => p.Pieces).Concat(book.AnyOffcut).ToImmutableDictionary(p => p.Id));
        PlanFindings.Report(result, unplaced, findings, hintForTime);
        if (cancellation.IsCancellationRequested)
        {
            return result;
        }

        LonePieces.Report(result, findings, work.Part(ShareOfLone));
        return result with { Advice = Advisor.Advise(result, work) };
    }

    /// <summary>
    /// Plans each paper separately, on all cores. First each gets a small equal share of the work; those that it is not enough for are
    /// planned again with what is left.
    /// </summary>
    internal static ImmutableArray<PaperPlan> Cut(
        ImmutableArray<PaperOrder> papers, Length kerf, WorkBudget work, IProgress<BatchProgress>? progress = null)
    {
        var plans = new PaperPlan[papers.Length];
        var open = Enumerable.Range(0, papers.Length).ToList();
        foreach (var share in (double[])[open.Count > 1 ? FirstShare : 1, 1])
        {
            var isDone = new bool[papers.Length];
            work.Part(share).Share(open, (i, own) =>
            {
                var problem = papers[i].Problem(kerf);
                var reported = progress is null ? null : new PaperProgress(papers[i].Paper, progress);
                var plan = SheetPlanner.Plan(problem, own, reported);
                if (plans[i] is not { } before || plan.Sheets <= before.Plan.Sheets)
                {
                    plans[i] = new(papers[i], problem, plan);
                }

                isDone[i] = plans[i].Plan.IsProved && !own.IsOver;
            });
            open.RemoveAll(i => isDone[i]);
            if (open.Count == 0 || work.IsOver)
            {
                break;
            }
        }

        return [.. plans];
    }

    private static bool IsUsed(PaperPlan paper) => !paper.Order.Pieces.IsEmpty || !paper.Plan.Layouts.IsEmpty;

    private sealed class PaperProgress(string paper, IProgress<BatchProgress> progress) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => progress.Report(new(paper, value.Sheets, value.LowerBound));
    }
}
