using System.Globalization;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;
using Sketch.Output.Folders;
using Sketch.Output.Rendering;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Planning.Remainder;
using Sketch.Planning.Reports;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Fuzz.Targets;

/// <summary>From a batch with its cards, stash, names and count to its plan and workbook.</summary>
internal sealed class BatchTarget : IFuzzTarget
{
    private const string Main = "day.batch";
    private const string Count = "day.count";
    private const string Options = "options.txt";

    private static readonly DateOnly Today = new(2026, 11, 29);

    private static readonly string[] Names = ["Ann Lamp\nBeth,\"Ahoy, {name}\"\n", "\n", "\"Ann\n", "=Ann,+1\n", "Ann;Beth\n\u00c5sa\n",
        ",\n,,\n"];

    private static readonly string[] Entries = ["2026-11-24 19:05 cut 12 \"Card 0\" #5d2c8e0b71f4a936",
        "2026-11-27 16:40 given 6 \"Card 1\" to "
        + "\"Cliff ward\" #c4a8e6f213579bd0", "2026-11-26 10:15 spoilt 1 \"first.card\" #93b1d7c20a4e5f68", "# a comment",
            "2026-02-30 25:61 cut 1"];

    private static readonly string[] AllOptions = ["easy", "left", "workbook"];

    public string Name => "batch";

    public int Weight => 1;

    public FuzzInput Make(Draws draws)
    {
        var stashes = new GrammarStashes(draws);
        var cards = new List<FuzzFile>();
        for (var count = draws.From(1, 3); count > 0; count--)
        {
            cards.Add(new($"{cards.Count}.card", draws.OnceIn(3) ? GrammarCards.Text(draws) : RandomCards.Text(draws.Below(1_000_000))));
        }

        var (batch, stash) = (stashes.Batch([.. cards.Select(c => c.Name)]), stashes.Stash());
        if (draws.OnceIn(4))
        {
            (batch, stash) = draws.OnceIn(2) ? (Damage.OfText(batch, Corpus.All, draws), stash) : (batch, Damage.OfText(stash, Corpus.All,
                draws));
        }

        var log = string.Concat(Enumerable.Range(0, draws.Below(4)).Select(_ => draws.Any(Entries) + "\n"));
        log = draws.OnceIn(3) && log.Length > 0 ? Damage.OfText(log, Entries, draws) : log;
        string[] options = [.. AllOptions.Where(_ => draws.OnceIn(4)), .. draws.OnceIn(20) ? ["pdf"]
            : Array.Empty<string>()];
        return new([new(Main, batch), new("shelf.stash", stash), .. cards, new("names.csv", draws.Any(Names)), new(Count, log),
            new(Options, string.Join(' ', options))]);
    }

    public void Run(FuzzInput input)
    {
        var options = input[Options].Text.Split(' ').ToHashSet();
        var source = new SourceText(Main, input[Main].Text);
        var world = input.Files.Aggregate(new MemoryFiles(), (files, file) => files.With(file.Name, file.Content));
        var compilation = Compiler.Compile(source, world);
        FindingRules.Check(BatchCheck.Of(compilation, world).Findings);
        var findings = new FindingBag();
        var files = BatchFiles.Read(source, world, findings);
        if (files is not null)
        {
            files = files with { IsEasy = options.Contains("easy") };
            var counted = CountOf(files, input[Count].Text, world, findings);
            files = options.Contains("left") ? LeftToMake.Of(files, counted) : files;
        }

        var plan = files is null ? null : BatchPlanner.Plan(files, BatchPlanner.UsualTime, findings);
        FindingRules.Check(findings.ToImmutable());
        using var json = new StringWriter();
        ReportJson.WriteDocument(json, document => PlanJson.Write(document, files?.Batch, plan, findings.ToImmutable()));
        var written = WellFormed.Json(json.ToString());
        if (plan is not null)
        {
            var faults = StepFollower.Faults(written, plan.Files.Batch.Kerf.Nanometres);
            BrokenInvariantException.Unless(faults.Count == 0, "the steps of a plan give its pieces", string.Join("; ", faults));
            Check(plan, world, options, findings.HasErrors);
        }
    }

    private static BatchCount CountOf(BatchFiles files, string log, MemoryFiles world, FindingBag findings)
    {
        var read = CountLog.Read(new(Count, log), findings);
        var count = BatchCount.Of(files.Batch, CountedCard.Of(files.Batch, Main, world), read, findings);
        using var text = new StringWriter();
        CountText.Write(text, count, Today);
        return count;
    }

    private static void Check(BatchPlan plan, MemoryFiles world, HashSet<string> options, bool hasErrors)
    {
        foreach (var paper in plan.Papers)
        {
            foreach (var piece in paper.Order.Pieces)
            {
                var cut = paper.Plan.Layouts.Sum(l => (long)l.Times * l.Pieces.Count(p => p.Id == piece.Id));
                var unplaced = paper.Plan.Unplaced.Where(u => u.Id == piece.Id).Sum(u => (long)u.Count);
                BrokenInvariantException.Unless(cut + unplaced == piece.Count, "a plan gives as many pieces as are ordered",
                    string.Create(CultureInfo.InvariantCulture,
                        $"{piece.Name} of {paper.Order.Paper}: {cut} cut, {unplaced} fit nowhere, {piece.Count} ordered"));
            }
        }

        using var text = new StringWriter();
        PlanText.Write(text, plan);
        var left = Compiler.Compile(new SourceText("left.stash", StashAfter.Write(plan)), world);
        var isRead = left is { Stash: not null, HasErrors: false };
        BrokenInvariantException.Unless(isRead || hasErrors, "the stash that is left can be read",
            string.Join("; ", left.Findings.Select(f => f.Message)));
        if (!options.Contains("workbook"))
        {
            return;
        }

        var pages = new PlanPages(plan, world);
        PlanHtml.Write(plan, pages);
        WellFormed.Csv(CutListCsv.Write(plan, pages));
        foreach (var work in pages.Work.Take(20))
        {
            WellFormed.Svg(pages.Sheet(work).Svg);
        }

        foreach (var message in pages.Messages())
        {
            WellFormed.Svg(message.Svg);
        }

        if (options.Contains("pdf"))
        {
            using var pdf = new MemoryStream();
            SvgRenderer.WritePdf(pages.Workbook(), plan.Files.Batch.Title, pdf);
        }
    }
}
