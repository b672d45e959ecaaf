using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Planning;

/// <summary>An extra sheet of a paper, where that saves a lot of trimming.</summary>
public sealed class EasierPlansTests
{
    private const string Batch = "batch \"Day\"\nstash \"shelf.stash\"\n"
        + "cut 20 of 3 1/16 x 4 15/16 from gulls\ncut 8 of 1 3/8 x 4 5/8 from gulls\ncut 20 of 2 15/16 x 4 1/4 from gulls\n";

    [Fact]
    public void It_takes_one_sheet_more_and_saves_a_quarter_of_the_settings()
    {
        var usual = Paper(PlanRun.Of(Batch, ("shelf.stash", Shelf("40 sheets"))));
        var easy = Paper(PlanRun.EasyOf(Batch, Shelf("40 sheets")));
        Assert.Equal(Number(usual, "sheets") + 1, Number(easy, "sheets"));
        Assert.InRange(Number(easy, "settings"), 1, Number(usual, "settings") * 3 / 4);
    }

    [Fact]
    public void The_plan_gives_both_numbers()
    {
        var easy = PlanRun.EasyOf(Batch, Shelf("40 sheets"));
        var fewest = Paper(easy).GetProperty("fewest");
        Assert.Contains(
            $"Easier to cut: gulls takes {Number(Paper(easy), "sheets")} sheets instead of {Number(fewest, "sheets")}, and "
                + $"{Number(Paper(easy), "settings")} settings instead of {Number(fewest, "settings")}.",
            easy.Summary.Sections.Single(s => s.Heading == "Paper").Sentences);
    }

    [Fact]
    public void A_sheet_that_is_not_on_hand_is_not_spent()
    {
        var least = Number(Paper(PlanRun.Of(Batch, ("shelf.stash", Shelf("40 sheets")))), "sheets");
        Assert.Equal(least, Number(Paper(PlanRun.EasyOf(Batch, Shelf($"{least} sheets"))), "sheets"));
    }

    [Fact]
    public void An_easier_plan_is_not_reported_as_unproved() =>
        Assert.DoesNotContain(PlanRun.EasyOf(Batch, Shelf("40 sheets")).Findings, f => f.Code == "SK731");

    private static string Shelf(string sheets) => $"stash \"Shelf\"\npaper gulls: 12 x 12, {sheets}\n";

    private static JsonElement Paper(PlanRun run) => run.Json.GetProperty("papers")[0];

    private static int Number(JsonElement of, string name) => of.GetProperty(name).GetInt32();
}
