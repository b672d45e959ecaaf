using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Batches;

/// <summary>Finished cards of an earlier occasion.</summary>
public sealed class CardsOnHandTests
{
    private const string Head = "batch \"Day\"\nstash \"shelf.stash\"\n";
    private const string Lamp = "card \"Lamp\"\nbase A2, of white\n";

    private static PlanRun Run(string batch) => PlanRun.Of(Head + batch, ("lamp.card", Lamp));

    private static int Bases(PlanRun run) =>
        run.Paper("white").Plan.Layouts.Sum(l => l.Pieces.Length * l.Times);

    [Fact]
    public void Cards_on_hand_are_neither_made_nor_cut()
    {
        var run = Run("use 4 of \"gull.card\" on hand\nmake 12 of \"gull.card\"\n");
        Assert.Equal(8, run.Json.GetProperty("cards").GetInt32());
        Assert.Equal(8, Bases(run));
    }

    [Fact]
    public void The_first_line_of_the_card_makes_fewer_first() => Assert.Equal([0, 2, 6],
        Run("make 3 of \"gull.card\"\nmake 3 of \"gull.card\"\nmake 6 of \"lamp.card\"\nuse 4 of \"gull.card\" on hand\n")
            .Files!.Batch.Makes.Select(m => m.Count));

    [Fact]
    public void They_count_for_the_recipients()
    {
        var run = Run("for \"Ward\", 12 cards\nuse 4 of \"gull.card\" on hand\nmake 12 of \"gull.card\"\n");
        Assert.Equal("12 cards are asked for; the design makes 8, and 4 are on hand, with none to spare.", run.Single("SK730").Message);
    }

    [Fact]
    public void A_card_that_no_line_makes_counts_too() =>
        Assert.Equal(0, Run("for \"Ward\", 12 cards\nuse 4 of \"lamp.card\" on hand\nmake 8 of \"gull.card\"\n").Files!.Batch.Surplus);

    [Fact]
    public void A_line_whose_cards_are_all_on_hand_is_not_left_out_because_of_errors()
    {
        var run = Run("use 12 of \"gull.card\" on hand\nmake 12 of \"gull.card\"\nmake 1 of \"lamp.card\"\n");
        Assert.Empty(run.Files!.LeftOut);
        Assert.Equal(1, Bases(run));
    }

    [Fact]
    public void Named_makers_share_what_is_on_hand()
    {
        var run = Run("makers \"Ann\" \"Beth\"\nfor \"Ward\", 12 cards\nuse 5 of \"gull.card\" on hand\nmake 6 of \"gull.card\"\n");
        Assert.Equal(7, run.Json.GetProperty("cards").GetInt32());
        Assert.DoesNotContain(run.Findings, f => f.Code == "SK721");
    }

    [Fact]
    public void A_card_that_does_not_exist_is_reported() => Assert.Equal(3,
        Run("use 4 of \"lost.card\" on hand\nmake 1 of \"gull.card\"\n").Single("SK206").Location.Start.Line);

    [Theory]
    [InlineData("use 4 of \"gull.card\"")]
    [InlineData("use 4 \"gull.card\" on hand")]
    [InlineData("use gull on hand")]
    public void A_line_that_is_not_complete_is_reported(string line) =>
        Assert.Contains(Run($"{line}\nmake 1 of \"gull.card\"\n").Findings, f => f.Location.Start.Line == 3);
}
