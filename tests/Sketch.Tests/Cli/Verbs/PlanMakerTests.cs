using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

/// <summary>The plan of one of several named makers.</summary>
public sealed class PlanMakerTests : IDisposable
{
    private readonly CommandLineRun _line = new();
    private readonly string _batch;

    public PlanMakerTests()
    {
        _line.File("shelf.stash", PlanRun.Shelf);
        _line.File("gull.card", PlanRun.Card);
        _line.File("names.csv", "Cy\nDee\nEve\nFay\n");
        _batch = _line.File("day.batch", "batch \"Day\"\nstash \"shelf.stash\"\nmakers \"Ann\" \"Beth\"\nfor \"Ward\", 4 cards\n"
            + "  names \"names.csv\"\n  message \"Dear {name}\"\nfor \"Room\", 1 card, made by \"Ann\"\nmake 2 of \"gull.card\"\n"
            + "make 1 of \"gull.card\", made by \"Ann\"\n");
    }

    public void Dispose() => _line.Dispose();

    private int Plan(params string[] options) => _line.Run(TestContext.Current.CancellationToken, ["plan", _batch, .. options]);

    [Theory]
    [InlineData("Ann", 3)]
    [InlineData("beth", 2)]
    public void It_has_the_cards_of_that_maker(string maker, int cards)
    {
        Assert.Equal(0, Plan("--maker", maker, "--json"));
        Assert.Equal(cards, _line.Json.GetProperty("cards").GetInt32());
    }

    [Fact]
    public void Its_workbook_has_the_makers_name_and_the_people_for_whom_she_cares()
    {
        Assert.Equal(0, Plan("--maker", "Beth", "--out", _line.InFolder("plan")));
        var html = File.ReadAllText(_line.InFolder(Path.Combine("plan", "day-beth.html")));
        Assert.Contains("Day: Beth", html, StringComparison.Ordinal);
        Assert.Contains("Eve", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Dee", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_maker_that_the_batch_does_not_name_is_wrong_usage()
    {
        Assert.Equal(2, Plan("--maker", "Cy"));
        Assert.Contains("Choose Ann, Beth.", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_cannot_be_planned_for_one_maker() => Assert.Equal(2, Plan("--maker", "Ann", "--left"));
}
