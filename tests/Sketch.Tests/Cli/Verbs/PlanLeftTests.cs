using System.Text.Json;
using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

/// <summary>A plan of what is not cut yet, according to the count beside the batch.</summary>
public sealed class PlanLeftTests : IDisposable
{
    private const string Gem = "  gem 1/8, bottom 1, of red\n";

    private readonly CommandLineRun _line = new();
    private readonly string _batch;
    private int _entries;

    public PlanLeftTests()
    {
        _line.File("shelf.stash", PlanRun.Shelf.Replace("12 x 12, 3", "12 x 12, 2", StringComparison.Ordinal));
        _line.File("gull.card", PlanRun.Card + Gem);
        _batch = _line.File("day.batch", "batch \"Day\"\nstash \"shelf.stash\"\nfor \"Ward\", 12 cards\n"
            + "make 8 of \"gull.card\"\nmake 4 of \"gull.card\"\n  role sky: navy\n");
    }

    public void Dispose() => _line.Dispose();

    private void Count(params string[] entries) => _line.File("day.count",
        string.Concat(entries.Select(e => $"2026-11-24 19:05 {e} \"Gull\" #{++_entries:x16}\n")));

    private JsonElement Plan(params string[] options)
    {
        _line.Run(TestContext.Current.CancellationToken, ["plan", _batch, "--json", .. options]);
        return _line.Json;
    }

    private static Dictionary<string, int> Pieces(JsonElement plan) => plan.GetProperty("papers").EnumerateArray()
        .SelectMany(p => p.GetProperty("layouts").EnumerateArray())
        .SelectMany(l => l.GetProperty("pieces").EnumerateArray(), (l, p) => (Path: $"{p.GetProperty("path")}", Times: Times(l)))
        .GroupBy(p => p.Path).ToDictionary(g => g.Key, g => g.Sum(p => p.Times));

    private static int Times(JsonElement layout) => layout.GetProperty("times").GetInt32();

    private static long Needed(JsonElement plan, string supply) => plan.GetProperty("supplies").EnumerateArray()
        .Single(s => s.GetProperty("name").GetString() == supply).GetProperty("needed").GetInt64();

    [Fact]
    public void Without_a_count_all_is_left() =>
        Assert.Equal(JsonSerializer.Serialize(Pieces(Plan())), JsonSerializer.Serialize(Pieces(Plan("--left"))));

    [Fact]
    public void Cards_that_are_cut_are_not_cut_again()
    {
        Count("cut 7");
        Assert.All(Pieces(Plan("--left")).Values, n => Assert.Equal(5, n));
    }

    [Fact]
    public void A_card_counted_at_a_later_stage_is_cut_as_well()
    {
        Count("cut 3", "glued 10");
        Assert.All(Pieces(Plan("--left")).Values, n => Assert.Equal(2, n));
    }

    [Fact]
    public void Spoilt_cards_are_cut_again()
    {
        Count("cut 10", "spoilt 1");
        var plan = Plan("--left");
        Assert.All(Pieces(plan).Values, n => Assert.Equal(3, n));
        Assert.Contains(plan.GetProperty("findings").EnumerateArray(), f =>
            $"{f.GetProperty("message")}".StartsWith(
                "Still to cut: 3 of 12 cards (including 1 to replace spoilt cards)", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_done_counts_for_the_first_line_of_a_card_first()
    {
        Count("cut 8");
        // The second line makes all of its layers from navy.
        Assert.DoesNotContain(Plan("--left").GetProperty("papers").EnumerateArray(), p => p.GetProperty("paper").GetString() == "gulls");
    }

    [Fact]
    public void Supplies_are_those_of_cards_that_are_not_put_together()
    {
        Count("cut 12", "glued 9", "enveloped 5");
        var plan = Plan("--left");
        Assert.Empty(Pieces(plan));
        Assert.Equal(3, Needed(plan, "red"));
        Assert.Equal(7, Needed(plan, "US A2"));
    }

    [Fact]
    public void Finished_cards_leave_nothing_to_plan()
    {
        Count("enveloped 12");
        Assert.Equal(0, _line.Run(TestContext.Current.CancellationToken, "plan", _batch, "--left"));
        Assert.Contains("Nothing is left to make", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_says_whether_the_paper_is_enough_after_what_was_spoilt()
    {
        Count("cut 12", "spoilt 2");
        _line.Run(TestContext.Current.CancellationToken, "plan", _batch, "--left");
        Assert.Contains("The paper is enough for what is left to cut, with 2 cards to cut again for those that were spoilt.",
            _line.Output, StringComparison.Ordinal);
        _line.File("shelf.stash", PlanRun.Shelf.Replace("25 sheets", "0 sheets", StringComparison.Ordinal));
        Assert.Equal(1, _line.Run(TestContext.Current.CancellationToken, "plan", _batch, "--left"));
        Assert.Contains("There is not enough paper for what is left to cut", _line.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_workbook_of_what_is_left_is_written()
    {
        Count("cut 12", "glued 9");
        Assert.Equal(0, _line.Run(TestContext.Current.CancellationToken, "plan", _batch, "--left", "--out", _line.InFolder("plan")));
        Assert.True(File.Exists(_line.InFolder(Path.Combine("plan", "day.pdf"))));
    }
}
