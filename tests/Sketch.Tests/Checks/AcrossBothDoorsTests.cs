using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>A gate fold opens only if nothing is glued to both of its doors. A2 is 4 1/4 in wide, so the doors meet at 2 1/8.</summary>
public sealed class AcrossBothDoorsTests
{
    private static IReadOnlyList<Finding> OnAGate(string pieces, string fold = "gate") =>
        Fit.In($"card \"Lamp day\"\nbase A2, fold {fold}, of white\nfront\n{pieces}");

    [Fact]
    public void A_piece_across_both_doors_ties_them_together()
    {
        var finding = Assert.Single(OnAGate("  lamp: star 1, of gold\n"));
        Assert.Equal((FindingCatalogue.AcrossBothDoors, Severity.Warning, 4), (finding.Kind, finding.Severity, finding.Line()));
        Assert.Equal("Lamp lies across both doors and ties them together.", finding.Message, ignoreCase: true);
        Assert.StartsWith("Indent it under a piece of one door", finding.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("  ribbon 3/8, along top, of red\n")]
    [InlineData("  square 2, left 1/16, of red\n    mat +1/4, of gold\n")]
    [InlineData("  group 3 x 3\n    circle 1, of red\n")]
    [InlineData("  strip 1/4 x 4, left 1 1/2, turn 20, of red\n")]
    [InlineData("  3 circle 3/4, in a row, gap 1/8, of red\n")]
    public void So_does_anything_glued_on_both_sides_of_the_middle(string pieces) =>
        OnAGate(pieces).The(FindingCatalogue.AcrossBothDoors);

    [Theory]
    // What lies on a piece of one door is glued to that door; ink glues nothing; what only touches the middle does not cross it.
    [InlineData("  door: panel 1 5/8 x 5, left 1/4, of navy\n    star 1, right -3/4, of gold\n")]
    [InlineData("  text \"fair winds\", top 1\n")]
    [InlineData("  panel 2 1/8 x 5, left 0, of navy\n  panel 2 1/8 x 5, right 0, of red\n")]
    [InlineData("inside\n  star 1, of gold\n")]
    public void Doors_that_nothing_ties_open(string pieces) =>
        Assert.Empty(OnAGate(pieces).Of(FindingCatalogue.AcrossBothDoors));

    [Fact]
    public void Other_folds_have_no_doors() => Assert.Empty(OnAGate("  star 1, of gold\n", "left"));
}
