using System.Collections.Immutable;
using System.Globalization;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Fuzz.Inputs;
using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Planning.Advice;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Tests.Cutting;

namespace Sketch.Benchmarks;

/// <summary>
/// The times of plans, their sheets and whether these are proved, compared with the area bound and with a plain shelf heuristic. Goals: a
/// batch of 54 cards proved in under 2 s, sixty kinds of piece in seconds, and the same time for 5,000 cards as for 500.
/// </summary>
internal static class PlanningTimes
{
    private const int SixtyKindsBatches = 5;
    private const int Repeats = 5;

    private static readonly TimeSpan TimeLimit = TimeSpan.FromSeconds(60);

    /// <summary>Prints tables.</summary>
    /// <param name="sample">The path of a batch.</param>
    /// <param name="count">The number of random batches.</param>
    public static int Run(string sample, int count)
    {
        Cut(RandomBatches.OfFiveDesigns(0)); // loads the solver
        Sample(sample);
        Random(count);
        Large();
        return 0;
    }

    private static void Sample(string path)
    {
        var files = BatchFiles.Read(FolderFiles.ReadFile(path).Source!, new FolderFiles(), new FindingBag())
            ?? throw new InvalidOperationException($"{path} is no batch");
        var (papers, first) = Cut(files);
        var again = Enumerable.Range(0, Repeats).Select(_ => Cut(files).Spent).ToList();
        Clock.Print($"{papers.Length} papers, {RandomBatches.Kinds(papers.Select(p => p.Order))} kinds of piece. Sheets, ms (of "
            + $"processor): the first time {Reported(first)}, then median of {Repeats} {Reported(Median(again))}");
        var scarce = files with
        {
            Stash = files.Stash! with
            {
                Papers = [.. files.Stash.Papers.Select(
            p => p with { Sheets = p.Sheets / 4 })]
            }
        };
        var plan = BatchPlanner.Plan(scarce, TimeLimit, new FindingBag())!;
        var advice = Enumerable.Range(0, Repeats).Select(_ => Clock.Time(() => Advisor.Advise(plan, new(WorkBudget.Usual)))).ToList();
        Clock.Print($"Advice with a quarter of the paper in the stash, {plan.Papers.Count(p => p.Short > 0)} papers short, "
            + $"{plan.Advice.Suggestions.Length} suggestions: median of {Repeats} {Reported(Median(advice))}\n");
        Clock.Print($"| paper | kinds | pieces | area bound | bound | sheets | shelves | proved |");
        Clock.Print($"| --- | ---: | ---: | ---: | ---: | ---: | ---: | --- |");
        foreach (var p in papers)
        {
            Clock.Print($"| {p.Order.Paper} | {RandomBatches.Kinds([p.Order])} | {p.Order.Pieces.Sum(x => x.Count)} | "
                + $"{ByArea(p.Problem)} | {p.Plan.LowerBound} | {p.Plan.Sheets} | {ShelfFirstFit.Sheets(p.Problem)} | "
                + $"{(p.Plan.IsProved ? "yes" : "no")} |");
        }

        Clock.Print($"");
    }

    private static void Random(int count)
    {
        var runs = Enumerable.Range(1, count).Select(i => (Number: i, Run: Cut(RandomBatches.OfFiveDesigns(i)))).ToList();
        var papers = runs.SelectMany(r => r.Run.Papers).ToList();
        var proved = runs.Count(r => r.Run.Papers.All(p => p.Plan.IsProved));
        Clock.Print($"{count} batches of 54 cards, {papers.Count} papers, "
            + $"{RandomBatches.Kinds(papers.Select(p => p.Order)) / (double)count:0.0} kinds of piece each; proved: {proved} batches, "
            + $"{papers.Count(p => p.Plan.IsProved)} papers; not proved: "
            + $"{string.Join(", ", runs.SelectMany(r => r.Run.Papers.Where(p => !p.Plan.IsProved)
                .Select(p => $"{r.Number} {p.Order.Paper} {p.Plan.LowerBound}/{p.Plan.Sheets}")))}");
        Clock.Print($"slowest: {string.Join(", ", runs.OrderByDescending(r => r.Run.Spent.Processor).Take(5).Select(r => r.Number))}\n");
        Clock.Print($"| each batch | median | 95 % below | most |");
        Clock.Print($"| --- | ---: | ---: | ---: |");
        Quantiles("ms by the clock", [.. runs.Select(r => r.Run.Spent.Wall)]);
        Quantiles("ms of processor", [.. runs.Select(r => r.Run.Spent.Processor)]);
        Clock.Print($"");
        Sums(papers);
    }

    private static void Large()
    {
        Clock.Print("| batch | cards | pieces | ms by the clock | ms of processor | area bound | bound | sheets | shelves | papers "
            + "proved | largest gap |");
        Clock.Print($"| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        for (var batch = 1; batch <= SixtyKindsBatches; batch++)
        {
            foreach (var cards in (int[])[500, 5000])
            {
                var (papers, spent) = Cut(RandomBatches.OfSixtyKinds(batch, cards));
                Clock.Print($"| {batch} | {cards} | {papers.Sum(p => p.Order.Pieces.Sum(x => x.Count))} | {spent.Wall:0} | "
                    + $"{spent.Processor:0} | {papers.Sum(p => ByArea(p.Problem))} | {papers.Sum(p => p.Plan.LowerBound)} | "
                    + $"{papers.Sum(p => p.Plan.Sheets)} | {papers.Sum(p => ShelfFirstFit.Sheets(p.Problem))} | "
                    + $"{papers.Count(p => p.Plan.IsProved)} of {papers.Length} | {papers.Max(p => p.Plan.Sheets - p.Plan.LowerBound)} |");
            }
        }
    }

    private static (ImmutableArray<PaperPlan> Papers, Spent Spent) Cut(BatchFiles files)
    {
        var papers = ImmutableArray<PaperPlan>.Empty;
        var spent = Clock.Time(() =>
            papers = BatchPlanner.Cut(
                [.. OrderBook.Of(files, new FindingBag()).Papers.Where(p => !p.Pieces.IsEmpty)], files.Batch.Kerf,
                    new(WorkBudget.Usual)));
        return (papers, spent);
    }

    private static void Sums(List<PaperPlan> papers)
    {
        Clock.Print($"| sheets in all | area bound | bound | sheets | shelves |");
        Clock.Print($"| --- | ---: | ---: | ---: | ---: |");
        Clock.Print($"| | {papers.Sum(p => ByArea(p.Problem))} | {papers.Sum(p => p.Plan.LowerBound)} | "
            + $"{papers.Sum(p => p.Plan.Sheets)} | {papers.Sum(p => ShelfFirstFit.Sheets(p.Problem))} |\n");
    }

    // Pieces that fit only offcuts are not counted.
    private static long ByArea(CuttingProblem problem)
    {
        var sheet = Area(problem.Sheet.Usable.Size);
        var missing = problem.Pieces.Sum(p => Area(p.Size) * p.Count) - problem.Offcuts.Sum(o => Area(o.Size) * o.Count);
        return Math.Max(0, (long)Math.Ceiling(missing / sheet - 1e-9));
    }

    private static double Area(Units.Size size) => size.Width.Millimetres * size.Height.Millimetres;

    private static Spent Median(List<Spent> spent) =>
        new(Clock.Quantile(spent.Select(s => s.Wall), 0.5), Clock.Quantile(spent.Select(s => s.Processor), 0.5));

    private static string Reported(Spent spent) => string.Create(CultureInfo.InvariantCulture, $"{spent.Wall:0} ({spent.Processor:0})");

    private static void Quantiles(string what, double[] values) => Clock.Print(
        $"| {what} | {Clock.Quantile(values, 0.5):0} | {Clock.Quantile(values, 0.95):0} | {values.Max():0} |");
}
