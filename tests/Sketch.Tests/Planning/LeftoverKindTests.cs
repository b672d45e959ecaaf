using Xunit;

namespace Sketch.Tests.Planning;

public sealed class LeftoverKindTests
{
    private const string Shelf = "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front waves #cfe3ea navy\n"
        + "cardstock navy: letter, 25 sheets, front #16324f\ncardstock white: letter, any sheets\n";

    private static PlanRun Run(string offcut, string shelf = Shelf) => PlanRun.Of(
        "batch \"Day\"\nstash \"shelf.stash\"\nmake 4 of \"gull.card\"\n",
        ("gull.card", PlanRun.Card.Replace("front\n", $"role scrap: {offcut}\nfront\n", StringComparison.Ordinal)
            + "    snip: square 1/2, top 1/4, of scrap\n"),
        ("shelf.stash", shelf));

    private static string[] From(string offcut, string shelf = Shelf) =>
        [.. Run(offcut, shelf).Plan!.FromLeftovers.Where(f => f.Piece.Name == "sky/snip").Select(f => f.Paper).Distinct()];

    [Theory]
    [InlineData("any offcut of patterned", "gulls")]
    [InlineData("any offcut of navy", "navy")]
    [InlineData("any offcut of gulls", "gulls")]
    public void A_kind_of_offcut_is_cut_from_leftovers_of_that_kind_alone(string offcut, string paper) =>
        Assert.Equal([paper], From(offcut));

    [Fact]
    public void Cardstock_is_never_cut_from_patterned_paper() => Assert.DoesNotContain("gulls", From("any offcut of cardstock"));

    [Fact]
    public void Offcuts_of_the_stash_serve_too() =>
        Assert.Equal(["brick"], From("any offcut of red",
            Shelf + "cardstock brick: letter, 0 sheets, front #b03a30\noffcut brick: 3 x 3, 1\n"));

    [Fact]
    public void Where_no_leftover_is_of_the_kind_it_is_named()
    {
        var finding = Run("any offcut of red").Single("SK712");
        Assert.Contains("may come from any offcut of red, and for 4 of 4 no leftover is large enough", finding.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_names_the_papers_of_leftovers()
    {
        var run = Run("any offcut of patterned");
        Assert.Contains(run.Summary.Lines(), l => l.Contains("any offcut of patterned", StringComparison.Ordinal)
            && l.Contains("gulls", StringComparison.Ordinal));
        var row = run.Json.GetProperty("fromLeftovers").EnumerateArray().Single();
        Assert.Equal(("sky/snip", "patterned", "gulls", 4), (row.GetProperty("name").GetString(), row.GetProperty("of").GetString(),
            row.GetProperty("paper").GetString(), row.GetProperty("count").GetInt32()));
    }
}
