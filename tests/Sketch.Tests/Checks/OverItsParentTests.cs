using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class OverItsParentTests
{
    [Fact]
    public void A_strip_wider_than_its_panel_hangs_over_both_sides()
    {
        var finding = Fit.OnA2("  sea: panel 2 x 3, of navy\n    rope: strip 2 1/2 x 1/2, of white").The(FindingCatalogue.OverItsParent);
        Assert.Equal("rope hangs 1/4 in over the left edge and 1/4 in over the right edge of sea."
            .Replace("rope", "sea/rope", StringComparison.Ordinal), finding.Message);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(5, finding.Line());
    }

    [Fact]
    public void A_flush_strip_does_not_hang_over() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    strip full x 1/2, of white"));

    [Fact]
    public void The_mat_of_the_parent_is_not_part_of_it() =>
        Assert.Single(Fit.OnA2("  panel 2 x 3, of navy\n    mat +1/4, of white\n    strip 2 1/8 x 1/2, of white")
            .Of(FindingCatalogue.OverItsParent));

    [Fact]
    public void The_mat_of_a_piece_hangs_over_with_it() => Assert.Equal(
        "sea/lamp hangs 1/16 in over the left edge of sea.",
        Fit.OnA2("  sea: panel 2 x 3, of navy\n    lamp: square 1, left -1/16, of gold\n      mat +1/8, of white")
            .The(FindingCatalogue.OverItsParent).Message);

    [Fact]
    public void A_wrap_is_not_an_overhang() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    line 1/16, along top, wrap 1/2, of silver"));

    [Fact]
    public void A_side_reported_as_past_the_edge_is_not_reported_again() => Assert.Equal(
        FindingCatalogue.PastTheEdge,
        Assert.Single(Fit.OnA2("  panel full x 2, of navy\n    circle 1, right -1/4, of white")).Kind);

    [Fact]
    public void A_square_on_a_circle_hangs_over_its_outline_within_its_box()
    {
        // The corner of a square of 40 lies 20 √2 = 28.28 from the middle, the circle's edge 25.
        var finding = Fit.InMillimetres("  lens: circle 50, of navy\n    square 40, of white").The(FindingCatalogue.OverItsParent);
        Assert.Equal("The square of line 6 hangs 3.28 mm over the outline of lens.", finding.Message);
    }

    [Fact]
    public void A_square_within_a_circle_does_not_hang_over() =>
        Assert.Empty(Fit.InMillimetres("  circle 50, of navy\n    square 35, of white"));

    [Fact]
    public void A_piece_turned_with_its_parent_is_compared_as_if_neither_were_turned() =>
        Assert.Empty(Fit.InMillimetres("  panel 50 x 60, turn right 10, of navy\n    strip full x 10, of white"));

    /// <summary>A strip of 50 x 10 turned by 45° reaches (50 + 10) / √2 = 42.43 across and down.</summary>
    [Fact]
    public void A_turned_piece_is_compared_by_its_true_outline() => Assert.Equal(
        "The strip of line 6 hangs 1.21 mm over the left edge and 1.21 mm over the right edge of sea.",
        Fit.InMillimetres("  sea: panel 40 x 60, of navy\n    strip 50 x 10, turn right 45, of white").The(FindingCatalogue.OverItsParent)
            .Message);

    [Fact]
    public void Copies_of_one_line_are_one_note() => Assert.StartsWith(
        "All 3 copies of the square of line 5 hang up to 3/16 in over the left edge and 3/16 in over the right edge",
        Fit.OnA2("  panel 3/4 x full, of navy\n    3 square 1 1/8, in a column, spread, of white").The(FindingCatalogue.OverItsParent)
            .Message,
        StringComparison.Ordinal);
}
