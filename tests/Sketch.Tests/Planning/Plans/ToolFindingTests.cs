using Xunit;

namespace Sketch.Tests.Planning.Plans;

/// <summary>Dies and rubber stamps that cards name are compared with their pieces.</summary>
public sealed class ToolFindingTests
{
    private static PlanRun Run(string piece, string tool) => PlanRun.Of(
        "batch \"Day\"\nstash \"shelf.stash\"\nmake 2 of \"gull.card\"\n",
        ("gull.card", PlanRun.Card + "    " + piece + "\n"), ("shelf.stash", PlanRun.Shelf + tool + "\n"));

    [Theory]
    [InlineData("tag 1, of navy, using small-tag", "die small-tag: 3/4 x 1 1/2",
        "Die small-tag cuts 3/4 x 1 1/2 in, but sky/tag is 1 x 2 in.", "Make it 3/4 x 1 1/2, or use a die of its size.")]
    [InlineData("circle 1, of navy, using ring", "die ring: 1 1/4", "Die ring cuts 1 1/4 in, but sky/circle is 1 x 1 in.",
        "Make it 1 1/4 wide, or use a die of its size.")]
    [InlineData("panel 1 x 1 \"ahoy\", of navy, using hello", "stamp hello: 2 x 1",
        "Stamp hello is 2 x 1 in, and sky/panel is only 1 x 1 in.",
        "Make it larger, or use a smaller stamp.")]
    public void A_tool_of_another_size_is_reported(string piece, string tool, string message, string hint)
    {
        var finding = Run(piece, tool).Single("SK728");
        Assert.Equal((message, hint, "gull.card"), (finding.Message, finding.Hint, finding.Location.Source.Path));
    }

    [Theory]
    [InlineData("tag 1, of navy, using small-tag", "die small-tag: 1 x 2")]
    [InlineData("tag 1, turn 90, of navy, using small-tag", "die small-tag: 2 x 1")]
    [InlineData("circle 1, of navy, using ring", "die ring: 1")]
    [InlineData("tag 1, of navy, using small-tag", "die small-tag: 3/4 x 1 1/2\ndie small-tag: 1 x 2")]
    [InlineData("tag 1, of navy, using small-tag", "die other: 3 x 3")]
    public void A_tool_that_suits_its_piece_is_not(string piece, string tool) =>
        Assert.DoesNotContain(Run(piece, tool).Findings, f => f.Code == "SK728");
}
