using CsCheck;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Shapes;
using Sketch.Tests.Output.Rendering;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Planning.Diagrams;

/// <summary>Every page of a plan is readable at the cutter by people of seventy.</summary>
public sealed class ReadablePlanTests
{
    // The smallest letters that the makers of the club accept in print, in points.
    private const double Smallest = 12;
    private const double Rounding = 0.05;
    private const string Top = "batch \"Day\"\nstash \"shelf.stash\"\n";

    private static readonly (string, string) Plenty =
        ("shelf.stash", PlanRun.Shelf.Replace("3 sheets", "any sheets", StringComparison.Ordinal));

    private static IReadOnlyList<IReadOnlyList<PrintedWords>> Pages(BatchPlan plan, IWorld letters)
    {
        var pages = new PlanPages(plan, letters);
        return PrintedWords.On([.. pages.Workbook(), .. pages.Work.Select(pages.Sheet)]);
    }

    private static BatchPlan Sample()
    {
        var path = Project.Repository.PathTo("sketches/lamp-day.batch");
        var findings = new FindingBag();
        return BatchPlanner.Plan(
            BatchFiles.Read(FolderFiles.ReadFile(path).Source!, new FolderFiles(), findings)!, TimeSpan.FromSeconds(60), findings,
                cancellation: TestContext.Current.CancellationToken)!;
    }

    // Strips of a sixteenth of an inch, gem-sized pieces and cards on one sheet.
    private static readonly Gen<string> Batches = Gen.Select(
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 176], Gen.Int[1, 40]).Array[1, 3], Gen.Int[0, 9],
        (cuts, cards) => $"{Top}{string.Concat(cuts.Select(c => $"cut {c.Item3} of {c.Item1 / 16.0} x {c.Item2 / 16.0} from gulls\n"))}"
            + $"{(cards > 0 ? $"make {cards} of \"gull.card\"\n" : "")}");

    private static readonly Lazy<IReadOnlyList<BatchPlan>> RandomPlans =
        new(() => [.. Batches.Array[5].Single(_ => true, "0000KeepersX").Select(b => PlanRun.Of(b).Plan!)]);

    private static readonly Lazy<IReadOnlyList<IReadOnlyList<PrintedWords>>> RandomPages = new(
        () => [.. RandomPlans.Value.SelectMany(p => Pages(p, new FolderFiles(fonts: new FontLibrary([]))))]);

    [Fact]
    public void All_letters_of_the_sample_have_twelve_points_or_more() =>
        Assert.All(Pages(Sample(), new TestWorld()).SelectMany(p => p), w => Assert.True(w.Points >= Smallest - Rounding, $"{w}"));

    [Fact]
    public void All_letters_of_any_plan_have_twelve_points_or_more() =>
        Assert.All(RandomPlans.Value.SelectMany(p => Pages(p, new TestWorld()))
            .SelectMany(p => p), w => Assert.True(w.Points >= Smallest - Rounding, $"{w}"));

    [Fact]
    public void Words_do_not_overlap() =>
        Assert.Empty(RandomPages.Value.SelectMany(
            page => page.SelectMany((w, i) => page.Skip(i + 1).Where(o => o.Box.Overlaps(w.Box)).Select(o => $"{w.Words} and {o.Words}"))));

    [Fact]
    public void All_words_are_within_the_margins_of_their_page() =>
        Assert.Empty(RandomPages.Value.SelectMany(p => p).Where(w => !new Bounds(36, 36, 612 - 36, 792 - 36).Grow(Rounding).Covers(w.Box))
            .Select(w => $"{w}"));

    [Fact]
    public void The_summary_of_a_short_batch_is_one_page() =>
        Assert.Single(new PlanPages(PlanRun.Of($"{Top}make 6 of \"gull.card\"\n").Plan!, new TestWorld()).Summary());

    [Fact]
    public void Each_page_of_a_long_summary_starts_with_a_heading_or_the_column_heads_of_its_table()
    {
        var plan = PlanRun.Of(Top + string.Concat(Enumerable.Repeat("make 1 of \"gull.card\"\n", 78)), Plenty).Plan!;
        var pages = PrintedWords.On(new PlanPages(plan, new TestWorld()).Summary());
        Assert.Equal(["Day", "Card", "Paper"], pages.Select(p => p[0].Words));
    }

    [Fact]
    public void No_heading_is_alone_at_the_bottom_of_a_page()
    {
        for (var designs = 22; designs < 44; designs += 3)
        {
            var plan = PlanRun.Of(Top + string.Concat(Enumerable.Repeat("make 1 of \"gull.card\"\n", designs)), Plenty).Plan!;
            var pages = PrintedWords.On(new PlanPages(plan, new TestWorld()).Summary());
            Assert.All(pages, p => Assert.True(p[^1].Points < 13, $"{designs} designs: {p[^1].Words}"));
        }
    }

    [Fact]
    public void Every_page_of_a_stack_with_many_steps_names_its_sheet()
    {
        var cuts = Enumerable.Range(0, 40)
            .Select(i => $"cut {i % 5 + 1} of {i % 7 + 2}/8 x {i * 5 % 9 + 3}/8 from gulls\n"
            .Replace(" 8/8", " 1", StringComparison.Ordinal));
        var pages = new PlanPages(PlanRun.Of(Top + string.Concat(cuts), Plenty).Plan!, new TestWorld());
        var stacks = pages.Work.Select(w => w.Heading(new(false))).ToList();
        var headings = PrintedWords.On(pages.Sheets()).Select(p => p[0].Words).Skip(1).ToList();
        Assert.Empty(headings.Except(stacks));
        Assert.True(headings.Count > stacks.Count);
    }

    [Fact]
    public void Shortages_are_reported_first()
    {
        var summary = PlanRun.Of($"{Top}cut 40 of 4 x 5 1/4 from gulls\n").Summary;
        Assert.Equal("Shortages and remedies", summary.Sections[0].Heading);
    }
}
