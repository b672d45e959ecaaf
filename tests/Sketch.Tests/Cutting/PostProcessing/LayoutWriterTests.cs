using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.PostProcessing;
using Sketch.Cutting.Sheets;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting.PostProcessing;

/// <summary>Where pieces, leftovers and trim lie on a sheet of 12 x 10 in.</summary>
public sealed class LayoutWriterTests
{
    private static readonly Insets _allSides = Trim(1, 2, 3, 4);

    [Theory]
    [InlineData(0, 0, 0, 0, "")]
    [InlineData(1, 0, 0, 0, "0, 0: 1 x 10")]
    [InlineData(0, 1, 0, 0, "0, 0: 12 x 1")]
    [InlineData(0, 0, 1, 0, "11, 0: 1 x 10")]
    [InlineData(0, 0, 0, 1, "0, 9: 12 x 1")]
    [InlineData(1, 2, 3, 4, "0, 0: 1 x 10; 9, 0: 3 x 10; 1, 0: 8 x 2; 1, 6: 8 x 4")]
    public void Trim_is_cut_from_left_right_top_and_bottom(int left, int top, int right, int bottom, string trim) =>
        Assert.Equal(trim, string.Join("; ", Layout(Trim(left, top, right, bottom)).Trim.Select(Written)));

    [Fact]
    public void Pieces_and_leftovers_lie_inside_the_trim()
    {
        var layout = Layout(_allSides);
        Assert.Equal(["1, 2: 2 x 2", "3, 2: 2 x 2"], layout.Pieces.Select(p => Written(p.Place)));
        Assert.Equal(["1, 4: 8 x 2", "5, 2: 4 x 2"], layout.Leftovers.Select(Written));
    }

    [Fact]
    public void The_largest_leftover_comes_first() =>
        Assert.Equal(["0, 2: 12 x 8", "4, 0: 8 x 2"], Layout(default).Leftovers.Select(Written));

    [Fact]
    public void The_blade_runs_in_the_trim()
    {
        var layout = Layout(_allSides, kerf: 1);
        Assert.Equal("1, 2: 2 x 2", Written(layout.Pieces[0].Place));
        Assert.Equal(["10, 0: 2 x 10", "1, 0: 8 x 1", "1, 7: 8 x 3"], layout.Trim.Select(Written)); // nothing is left of 1 in
        Assert.Empty(PlanChecker.Faults(Problem(_allSides, 1), new(1, 1, [layout], [])));
    }

    [Fact]
    public void A_cut_runs_from_edge_to_edge_of_the_part_in_hand() => Assert.Equal(
        ["1, 0 to 1, 10", "9, 0 to 9, 10", "1, 2 to 9, 2", "1, 6 to 9, 6", "1, 4 to 9, 4", "3, 2 to 3, 4", "5, 2 to 5, 4"],
        Layout(_allSides).Cuts.Select(c =>
            $"{Inches(c.From.Left)}, {Inches(c.From.Top)} to {Inches(c.To.Left)}, {Inches(c.To.Top)}"));

    private static SheetLayout Layout(Insets trim, int kerf = 0)
    {
        var problem = Problem(trim, kerf);
        var reduced = Reduced.From(problem);
        var leaf = new PieceLeaf(reduced.Kinds[0], reduced.Kinds[0].Width, reduced.Kinds[0].Height);
        return new Naming(problem, reduced).Layouts([(new(reduced.Sheet, new Join(SideBySide: true, leaf, leaf), 1), 1)]).Single();
    }

    private static CuttingProblem Problem(Insets trim, int kerf) =>
        Given.Problem(new(Given.Inches(12, 10), trim), (Given.Inches(2, 2), 2, true)) with { Kerf = Length.Inch(kerf) };

    private static Insets Trim(int left, int top, int right, int bottom) =>
        new(Length.Inch(left), Length.Inch(top), Length.Inch(right), Length.Inch(bottom));

    private static string Written(Rect rect) =>
        $"{Inches(rect.Left)}, {Inches(rect.Top)}: {Inches(rect.Width)} x {Inches(rect.Height)}";

    private static long Inches(Length length) => length.Nanometres / Length.NanometresPerInch;
}
