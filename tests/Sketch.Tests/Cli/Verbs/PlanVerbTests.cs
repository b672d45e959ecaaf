using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class PlanVerbTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    private string Batch(string lines = "make 6 of \"gull.card\"\n", string stash = "shelf.stash")
    {
        _line.File("gull.card", PlanRun.Card);
        _line.File(stash, PlanRun.Shelf);
        return _line.File("day.batch", $"batch \"Lamp day\"\nstash \"{stash}\"\n{lines}");
    }

    [Fact]
    public void A_batch_that_can_be_made_ends_well()
    {
        Assert.Equal(0, _line.Run("plan", Batch(), "--json"));
        Assert.Equal(("Lamp day", 6), (_line.Json.GetProperty("batch").GetString(), _line.Json.GetProperty("cards").GetInt32()));
    }

    [Fact]
    public void A_batch_that_is_short_of_paper_is_an_error() => Assert.Equal(1, _line.Run("plan", Batch("cut 40 of 4 x 5 from gulls\n")));

    [Fact]
    public void A_file_that_is_no_batch_is_reported()
    {
        Assert.Equal(1, _line.Run("plan", _line.File("gull.card", PlanRun.Card)));
        Assert.Contains("SK701", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_card_to_plan_there_are_findings_alone()
    {
        Assert.Equal(1, _line.Run("plan", Batch("make 4 of \"gone.card\"\n"), "--out", _line.InFolder("out")));
        Assert.Equal(("", false), (_line.Output, Directory.Exists(_line.InFolder("out"))));
    }

    [Fact]
    public void Check_reports_the_mistakes_of_a_batch()
    {
        Assert.Equal(1, _line.Run("check", Batch("front\n")));
        Assert.Contains("day.batch:3:1: error SK115", _line.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_there_is_wrong_usage() => Assert.Equal(2, _line.Run("plan", _line.InFolder("none.batch")));

    [Fact]
    public void More_than_100_diagrams_are_in_the_workbook_only()
    {
        // Two pieces wider and higher than half a sheet of 12 x 12 never share one.
        var sizes = from w in Enumerable.Range(25, 17) from h in Enumerable.Range(w, 42 - w) select $"cut 1 of {w}/4 x {h}/4 from navy\n";
        var batch = _line.File("day.batch", "batch \"Day\"\nstash \"shelf.stash\"\n" + string.Concat(sizes.Take(101)));
        _line.File("shelf.stash", "stash \"Shelf\"\npaper navy: 12 x 12, any sheets\n");
        Assert.Equal(0, _line.Run("plan", batch, "--out", _line.InFolder("out")));
        Assert.Contains("The 101 diagrams are in the workbook only", _line.Output, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_line.InFolder("out"), "*.svg"));
    }

    [Fact]
    public void Booklets_diagrams_cut_list_and_stash_are_written()
    {
        Assert.Equal(0, _line.Run("plan", Batch(), "--out", _line.InFolder("out")));
        Assert.Equal(
            ["day-cuts.csv", "day-sheet-01-white.svg", "day-sheet-02-navy.svg", "day-sheet-03-gulls.svg",
                "day.html", "day.pdf", "left.stash"],
            Directory.GetFiles(_line.InFolder("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Diagrams_of_an_earlier_larger_plan_go_away()
    {
        _line.Run("plan", Batch(), "--out", _line.InFolder("out"));
        _line.Run("plan", Batch("cut 1 of 1 x 1 from gulls\n"), "--out", _line.InFolder("out"));
        Assert.Single(Directory.GetFiles(_line.InFolder("out"), "*.svg"));
    }

    [Fact]
    public void The_stash_that_was_read_is_never_overwritten()
    {
        var batch = Batch(stash: "left.stash");
        Assert.Equal(2, _line.Run("plan", batch, "--out", _line.Folder));
        Assert.Equal(PlanRun.Shelf, File.ReadAllText(_line.InFolder("left.stash")));
    }

    [Fact]
    public void The_best_plan_so_far_is_given_when_the_run_is_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(130, _line.Run(stop.Token, "plan", Batch(), "--json"));
        Assert.Equal(3, _line.Json.GetProperty("papers").GetArrayLength());
    }
}
