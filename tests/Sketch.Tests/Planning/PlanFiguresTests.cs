using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Planning;

public class PlanFiguresTests
{
    private static readonly MemoryFiles Files = new MemoryFiles().With("c.card", "card \"C\"\nbase A2, of white\n");

    [Fact]
    public void The_sheets_come_first_then_the_designs() => Assert.Equal(
        ["white 1: 1 sheet of letter", "C: 2 cards"],
        PlanFigures.Of(new SourceText("d.batch", "batch \"D\"\nmake 2 of \"c.card\"\n"), Files, "a-").Select(f => f.Caption));

    [Fact]
    public void A_batch_that_cannot_be_planned_has_no_drawings() =>
        Assert.Empty(PlanFigures.Of(new SourceText("d.batch", "batch \"D\"\nmake 2 of \"gone.card\"\n"), Files, "a-"));
}
