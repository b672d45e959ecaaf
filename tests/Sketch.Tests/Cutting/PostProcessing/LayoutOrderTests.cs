using Sketch.Cutting.Model;
using Sketch.Cutting.PostProcessing;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>What is cut first.</summary>
public sealed class LayoutOrderTests
{
    private static readonly CuttingProblem _problem = Given.Problem(
        Given.Sheet(12, 12), (Given.Inches(4, 4), 1, true), (Given.Inches(6, 3), 1, true), (Given.Inches(1, 9), 1, true));

    [Fact]
    public void Offcuts_come_before_sheets_and_what_pieces_free_comes_last_the_largest_first() => Assert.Equal(
        ["offcut", "another offcut", "sheet", "in p1", "in p0", "in p2"],
        LayoutOrder.Of(_problem,
            [Freed("p2", 1), Freed("p0", 2), Sheet(3), Freed("p1", 4), Offcut(5), Offcut(6)]).Select(Name));

    private static string Name(SheetLayout layout) => layout.FreedBy is { } by ? $"in {by}" : !layout.IsOffcut ? "sheet"
        : layout.Times == 5 ? "offcut" : "another offcut";

    private static SheetLayout Freed(string by, int times) => Offcut(times) with { FreedBy = by };

    private static SheetLayout Offcut(int times) => Layout(true, times);

    private static SheetLayout Sheet(int times) => Layout(false, times);

    private static SheetLayout Layout(bool isOffcut, int times) => new(
        Given.Inches(1, 1), isOffcut, times, new SheetRest(new(Length.Zero, Length.Zero, Length.Inch(1), Length.Inch(1)), IsTrim: false));
}
