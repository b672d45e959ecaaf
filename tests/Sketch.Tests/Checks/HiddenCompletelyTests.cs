using CsCheck;
using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.Tests.Drawing;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class HiddenCompletelyTests
{
    [Fact]
    public void A_panel_under_a_larger_one_cannot_be_seen()
    {
        var finding = Fit.OnA2("  lamp: square 1, of gold\n  sea: panel 2 x 3, of navy").The(FindingCatalogue.HiddenCompletely);
        Assert.Equal("lamp cannot be seen: sea lies over all of it.", finding.Message);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(4, finding.Line());
    }

    [Fact]
    public void On_top_of_the_larger_one_it_can_be_seen() => Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n  square 1, of gold"));

    [Fact]
    public void A_sixteenth_showing_is_enough() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of gold\n  panel 1 15/16 x 3, left 1 1/8, of navy").Of(FindingCatalogue.HiddenCompletely));

    [Fact]
    public void A_mat_shows_its_border() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    mat +1/8, of white\n    mat +1/8, of cream"));

    [Fact]
    public void Two_panels_side_by_side_hide_what_lies_under_both()
    {
        var finding = Fit.OnA2("  lamp: square 1, of gold\n  one: panel 1 x 3, left 1 1/8, of navy\n  two: panel 1 x 3, left 2 1/8, of red")
            .The(FindingCatalogue.HiddenCompletely);
        Assert.Equal("lamp cannot be seen: one and two lie over all of it.", finding.Message);
    }

    [Fact]
    public void A_gap_between_two_panels_shows_what_lies_under_both() =>
        Assert.Empty(Fit.OnA2("  square 1, of gold\n  panel 1 x 3, left 1, of navy\n  panel 1 x 3, left 2 1/8, of red"));

    [Fact]
    public void Four_circles_that_meet_leave_their_middle_open() =>
        Assert.Empty(Fit.InMillimetres("  square 35, of gold\n  4 circle 40, in a grid 2 across, of navy"));

    [Fact]
    public void Four_circles_that_overlap_enough_hide_what_lies_under_them() =>
        Assert.Equal("The square of line 5 cannot be seen: all 4 copies of the circle of line 6 lie over all of it.",
            Fit.InMillimetres("  square 20, of gold\n  4 circle 40, in a grid 2 across, gap -20, of navy")
                .The(FindingCatalogue.HiddenCompletely).Message);

    [Fact]
    public void A_turned_panel_hides_by_its_true_outline() => Assert.Empty(
        Fit.InMillimetres("  square 38, of gold\n  square 40, turn right 45, of navy").Of(FindingCatalogue.HiddenCompletely));

    [Fact]
    public void A_window_shows_what_lies_beneath() =>
        Assert.Empty(Fit.OnA2("  square 1, of gold\n  panel 2 x 3, of navy\n    window circle 1/2"));

    [Theory]
    [InlineData("gem 2, of red")]
    [InlineData("tape 2 x 2, of red")]
    [InlineData("group 2 x 2")]
    public void Gems_and_tape_and_groups_hide_nothing(string piece) =>
        Assert.Empty(Fit.OnA2($"  square 1, of gold\n  {piece}").Of(FindingCatalogue.HiddenCompletely));

    [Fact]
    public void Gems_can_be_hidden() =>
        Assert.Equal("All 3 copies of the gem of line 4 cannot be seen: sea lies over all of them.",
            Fit.OnA2("  3 gem 1/8, in a row, gap 1/16, of red\n  sea: panel 2 x 3, of navy").The(FindingCatalogue.HiddenCompletely)
                .Message);

    [Fact]
    public void A_hidden_stack_is_reported_once_by_its_piece() => Assert.Equal(
        4, Fit.OnA2("  lamp: square 1, of gold\n    mat +1/8, of white\n    circle 1/2, of red\n  panel 2 x 3, of navy")
            .The(FindingCatalogue.HiddenCompletely).Line());

    [Fact]
    public void A_panel_covered_by_the_pieces_on_it_is_hidden() =>
        Assert.Equal(4, Fit.OnA2("  panel 2 x 3, of navy\n    panel full x full, of white").The(FindingCatalogue.HiddenCompletely).Line());

    [Fact]
    public void A_piece_tucked_under_its_parent_may_show_at_the_edge() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    circle 1, left -1/2, tucked under, of white")
            .Of(FindingCatalogue.HiddenCompletely));

    [Fact]
    public void Faces_do_not_hide_each_other() =>
        Assert.Empty(Fit.In("card \"Lamp day\"\nbase A2, fold left, of white\nfront\n  square 1, of gold\ninside\n  panel 2 x 3, of navy"));

    /// <summary>
    /// Twenty boxes on a grid of whole millimetres, each cell looked at by itself: a box is hidden when later ones cover all its cells.
    /// </summary>
    [Fact]
    public void Boxes_are_hidden_when_all_their_cells_are()
    {
        var gen = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[1, 6], Gen.Int[1, 6]).Array[20];
        gen.Sample(drawn =>
        {
            var fixture = new CardFixture();
            for (var i = 0; i < drawn.Length; i++)
            {
                var (left, top, width, height) = drawn[i];
                fixture.Add($"front/b{i}", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(left, top, width, height), "navy");
            }

            var card = fixture.Card();
            var source = new SourceText("boxes.card", new string(' ', drawn.Length));
            card = card with { Pieces = [.. card.Pieces.Select((p, i) => p with { Location = new(source, new(i, i + 1)) })] };
            var findings = new FindingBag();
            FitChecks.Run(card, findings);
            var reported = findings.ToImmutable().Where(f => f.Kind == FindingCatalogue.HiddenCompletely)
                .Select(f => f.Location.Span.Start);
            Assert.Equal(Enumerable.Range(0, drawn.Length).Where(i => AllCellsCovered(drawn, i)), reported);
        }, iter: 200);
    }

    private static bool AllCellsCovered((int Left, int Top, int Width, int Height)[] boxes, int index)
    {
        var (left, top, width, height) = boxes[index];
        return Enumerable.Range(left, width).All(x => Enumerable.Range(top, height).All(y => boxes.Skip(index + 1).Any(b =>
            x >= b.Left && x < b.Left + b.Width && y >= b.Top && y < b.Top + b.Height)));
    }

    [Fact]
    public void Too_many_overlapping_pieces_to_check_are_reported_as_left_out()
    {
        // Together these overlapping shapes have more corners than the check unites.
        var findings = Fit.In(
            "card \"Lamp day\"\nunits mm\nbase 400 x 100, fold left, of white\nfront\n  panel 110 x 30, of navy\n"
            + "  300 scallop 8, in a grid 30 across, gap -4, of red");
        var finding = findings.The(FindingCatalogue.HidingNotExamined);
        Assert.Equal("The card is so crowded that one of its pieces was not checked for being hidden completely, beginning on this line.",
            finding.Message);
    }
}
