using Xunit;

namespace Sketch.Tests.Planning.Advice;

/// <summary>A sheet that is cut for one small piece alone is named with what would save it.</summary>
public sealed class LonePiecesTests
{
    // By hand: 12 x 12 holds four of 4 1/8 x 5 3/8 and six of 4 x 5 1/4.
    private static PlanRun Loose(int count) =>
        PlanRun.Of($"batch \"Lamp day\"\nstash \"shelf.stash\"\ncut {count} of 4 1/8 x 5 3/8 from gulls\n");

    [Fact]
    public void A_change_that_saves_the_sheet_is_named() => Assert.Equal(
        ("One of 2 sheets of gulls is cut for a single piece: a loose piece, 4 1/8 x 5 3/8.",
            "Write 4 x 5 1/4 in line 3 (cut 4 x 5 1/4 instead of 4 1/8 x 5 3/8): 1 sheet of gulls instead of 2."),
        (Loose(5).Single("SK733").Message, Loose(5).Single("SK733").Hint));

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(6)]
    public void A_first_sheet_and_one_with_more_pieces_are_not_named(int count) =>
        Assert.DoesNotContain(Loose(count).Findings, f => f.Code == "SK733");
}
