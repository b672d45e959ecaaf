using CsCheck;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.CutSteps;

/// <summary>The words of the steps are enough to cut out every piece at its size.</summary>
public sealed class CutStepTests
{
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
    public void The_words_give_every_piece_of_a_random_batch() =>
        Batches.Sample(texts =>
            Assert.Empty(Faults(PlanRun.Of(texts[0], ("shelf.stash", "stash \"Shelf\"\n" + texts[1])).Plan!, Inches, Length.Zero)),
            seed: "0000KeepersX", iter: 200);

    [Fact]
    public void The_words_give_every_piece_of_the_sample()
    {
        var path = Project.Repository.PathTo("sketches/lamp-day.batch");
        var findings = new FindingBag();
        var plan = BatchPlanner.Plan(
            BatchFiles.Read(FolderFiles.ReadFile(path).Source!, new FolderFiles(), findings)!, TimeSpan.FromSeconds(60), findings,
            cancellation: TestContext.Current.CancellationToken);
        Assert.Empty(Faults(plan!, Millimetres, Rounding));
    }

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
