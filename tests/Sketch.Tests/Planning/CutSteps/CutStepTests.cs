using System.Globalization;
using CsCheck;
using Sketch.Fuzz.Invariants;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Plans;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.CutSteps;

/// <summary>The words of the steps are enough to cut out every piece at its size.</summary>
public sealed class CutStepTests
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    private static readonly LengthFormat Inches = new(false);
    private static readonly LengthFormat Millimetres = new(true);

    // A step in millimetres is rounded to a hundredth; a row has some ten of them.
    private static readonly Length Rounding = new(100_000);

    // Trims and the kerf in sixteenths of an inch: the blade may be wider than a trim.
    private static readonly Gen<string[]> Batches =
        from left in Gen.Int[0, 4]
        from top in Gen.Int[0, 4]
        from right in Gen.Int[0, 4]
        from bottom in Gen.Int[0, 4]
        from kerf in Gen.Int[0, 2]
        from cuts in Gen.Select(Gen.Int[8, 90], Gen.Int[8, 90], Gen.Int[1, 6]).Array[1, 3]
        select (string[])
        [
            $"batch \"Day\", kerf {kerf}/16\nstash \"shelf.stash\"\n"
                + string.Concat(cuts.Select(c => $"cut {c.Item3} of {c.Item1}/16 x {c.Item2}/16 from gulls\n")),
            $"paper gulls: 12 x 12, any sheets{Trim(left, "left")}{Trim(top, "top")}{Trim(right, "right")}{Trim(bottom, "bottom")}\n",
        ];

    [Theory]
    [InlineData("left", "set 11 3/4 from the right: 1 cut down, the left trim is waste")]
    [InlineData("right", "set 11 3/4 from the left: 1 cut down, the right trim is waste")]
    [InlineData("top", "set 11 3/4 from the bottom: 1 cut across, the top trim is waste")]
    [InlineData("bottom", "set 11 3/4 from the top: 1 cut across, the bottom trim is waste")]
    public void A_trim_is_cut_off_with_the_opposite_edge_against_the_stop(string edge, string words) =>
        Assert.Equal(words, Work(
            "batch \"Day\"\nstash \"shelf.stash\"\ncut 1 of 3 x 4 from gulls\n", $"paper gulls: 12 x 12, any sheets{Trim(4, edge)}\n")
            .Steps[0].Text(Inches));

    [Fact]
    public void A_step_names_the_parts_in_hand_by_their_size() =>
        Assert.Equal(
            ["set 6 from the top: 1 cut across", "set 6 from the left of 2 parts 12 x 6: 2 cuts down"],
            Work("batch \"Day\"\nstash \"shelf.stash\"\ncut 4 of 6 x 6 from gulls\n", "paper gulls: 12 x 12, any sheets\n")
                .Steps.Select(s => s.Text(Inches)));

    // Strips of 5, 4 and 3 in, cut into squares of the same settings.
    [Fact]
    public void A_setting_is_used_for_all_parts_before_the_stop_is_moved() =>
        Assert.Equal(3, PaperWork.Of(PlanRun.Of(
            "batch \"Day\"\nstash \"shelf.stash\"\ncut 3 of 4 x 4 from gulls\ncut 4 of 3 x 3 from gulls\n"
                + "cut 2 of 5 x 5 from gulls\ncut 1 of 5 x 2 from gulls\n").Plan!).Single().Settings);

    [Fact]
    public void The_words_give_every_piece_of_a_random_batch() =>
        Batches.Sample(texts =>
            Assert.Empty(Faults(PlanRun.Of(texts[0], ("shelf.stash", "stash \"Shelf\"\n" + texts[1])).Plan!, Inches, Length.Zero)),
            seed: "0000KeepersX", iter: 200);

    [Fact]
    public void The_words_give_every_piece_of_the_sample() => Assert.Empty(Faults(Sample.Plan!, Millimetres, Rounding));

    [Fact]
    public void The_steps_in_JSON_give_every_piece_of_a_random_batch() =>
        Batches.Sample(texts =>
        {
            var run = PlanRun.Of(texts[0], ("shelf.stash", "stash \"Shelf\"\n" + texts[1]));
            Assert.Empty(StepFollower.Faults(run.Json, run.Plan!.Files.Batch.Kerf.Nanometres));
        }, seed: "0000KeepersX", iter: 200);

    [Fact]
    public void The_steps_in_JSON_give_every_piece_of_the_sample() => Assert.Empty(StepFollower.Faults(Sample.Json, kerf: 0));

    // One cut down and one across each half: the stop stays where it is while the paper is turned.
    [Fact]
    public void Cuts_of_one_distance_are_one_setting() => Assert.Equal((1, 3), Totals("cut 4 of 6 x 6 from gulls\n"));

    [Fact]
    public void Sheets_cut_alike_are_stacked_and_count_once() => Assert.Equal((1, 3), Totals("cut 12 of 6 x 6 from gulls\n"));

    [Fact]
    public void The_totals_of_work_stand_in_every_form_of_the_plan()
    {
        var run = PlanRun.Of("batch \"Day\"\nstash \"shelf.stash\"\ncut 4 of 6 x 6 from gulls\ncut 2 of 4 x 5 from navy\n");
        var papers = run.Json.GetProperty("papers").EnumerateArray().Select(
            p => (p.GetProperty("settings").GetInt32(), p.GetProperty("cuts").GetInt32())).ToList();
        var summary = run.Summary.Sections.Single(s => s.Heading == "Paper");
        Assert.Equal(PaperWork.Of(run.Plan!).Select(w => (w.Settings, w.Cuts)), papers);
        Assert.Equal(papers, summary.Table!.Rows.Select(r => (int.Parse(r[^2], Invariant), int.Parse(r[^1], Invariant))));
        Assert.Contains(
            $"{papers.Sum(p => p.Item1)} settings of the stop and {papers.Sum(p => p.Item2)} cuts", string.Join('\n', summary.Sentences),
            StringComparison.Ordinal);
    }

    private static (int Settings, int Cuts) Totals(string cuts)
    {
        var run = PlanRun.Of($"batch \"Day\"\nstash \"shelf.stash\"\n{cuts}");
        var paper = run.Json.GetProperty("papers")[0];
        return (paper.GetProperty("settings").GetInt32(), paper.GetProperty("cuts").GetInt32());
    }

    private static PlanRun Sample => PlanRun.OfFile(Project.Repository.PathTo("sketches/lamp-day.batch"));

    private static SheetWork Work(string batch, string paper)
    {
        var plan = PlanRun.Of(batch, ("shelf.stash", "stash \"Shelf\"\n" + paper)).Plan!;
        return SheetWork.Of(plan, plan.Papers[0])[0];
    }

    // The place on the sheet counts as well as the size: a piece of the right size may still show the trim.
    private static IEnumerable<string> Faults(BatchPlan plan, LengthFormat lengths, Length tolerance) =>
        from paper in plan.Papers
        from work in SheetWork.Of(plan, paper)
        let parts = Trimmer.PartsOf(work, lengths, plan.Files.Batch.Kerf)
        from piece in work.Layout.Pieces
        where !parts.Exists(p => IsNear(p, piece.Place, tolerance))
        select $"{work.Heading(lengths)}: {piece.Place} is not among {string.Join("; ", parts)}";

    private static bool IsNear(Rect a, Rect b, Length tolerance) =>
        (a.Left - b.Left).Abs() <= tolerance && (a.Top - b.Top).Abs() <= tolerance
        && (a.Width - b.Width).Abs() <= tolerance && (a.Height - b.Height).Abs() <= tolerance;

    private static string Trim(int sixteenths, string edge) => sixteenths == 0 ? "" : $", trim {sixteenths}/16 {edge}";
}
