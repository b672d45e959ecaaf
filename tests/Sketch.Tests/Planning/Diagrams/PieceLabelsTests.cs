using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Planning.Diagrams;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.Diagrams;

public sealed class PieceLabelsTests
{
    [Fact]
    public void The_name_is_on_the_first_piece_that_has_room_for_it()
    {
        var (plan, world) = (PlanRun.Of("batch \"Cut\"\nstash \"shelf.stash\"\ncut 2 of 4 x 4 from gulls\n").Plan!, new TestWorld());
        var labels = new PieceLabels(new PlanPages(plan, world).Work[0], UnitSystem.Inches.Format(), new(world), []);
        Assert.False(labels.AddPiece("A", new(0, 0, 1, 1)));

        labels.AddPiece("A", new(10, 10, 110, 110));

        var svg = SvgWriter.Sheet(new(Length.Inch(8), Length.Inch(8)), true, "Labels");
        labels.Write(svg);
        Assert.Contains("4 x 4", svg.Close().ToString(), StringComparison.Ordinal);
    }
}
