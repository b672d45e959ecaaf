using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class PastTheEdgeTests
{
    [Fact]
    public void A_panel_past_the_right_edge_is_reported_with_the_distance()
    {
        var finding = Fit.OnA2("  lamp: panel 1 x 2, right -1/8, of navy").The(FindingCatalogue.PastTheEdge);
        Assert.Equal("lamp reaches 1/8 in past the right edge of the front.", finding.Message);
        Assert.Equal("Add shift left 1/8, or make it smaller.", finding.Hint);
        Assert.Equal(4, finding.Line());
    }

    [Fact]
    public void Following_the_hint_fixes_it() =>
        Assert.Empty(Fit.OnA2("  lamp: panel 1 x 2, right -1/8, shift left 1/8, of navy").Of(FindingCatalogue.PastTheEdge));

    [Fact]
    public void It_is_a_warning() => Assert.Equal(Severity.Warning, FindingCatalogue.PastTheEdge.Severity);

    [Theory]
    [InlineData("right 0, top 0")]
    [InlineData("left 0, bottom 0")]
    public void Flush_with_the_edge_is_not_past_it(string place) =>
        Assert.Empty(Fit.OnA2($"  panel 1 x 2, {place}, of navy"));

    [Fact]
    public void A_panel_larger_than_the_face_is_reported_with_the_largest_size()
    {
        var finding = Fit.OnA2("  panel 4 x 5 3/4, of navy").The(FindingCatalogue.PastTheEdge);
        Assert.Equal("The panel of line 4 reaches 1/8 in past the top edge and 1/8 in past the bottom edge of the front.", finding.Message);
        Assert.Equal("Make it at most 5 1/2 high.", finding.Hint);
    }

    [Fact]
    public void Mats_count_with_their_piece_and_are_reported_once() => Assert.Equal(
        "lamp reaches 1/8 in past the right edge of the front.",
        Assert.Single(Fit.OnA2("  lamp: panel 1 x 2, right -1/8, of navy\n    mat +1/8, of white\n    mat +1/8, of cream")
            .Of(FindingCatalogue.PastTheEdge)).Message);

    /// <summary>
    /// A square of 40 mm turned by 45° is 40 √2 = 56.57 mm wide, 8.28 mm more on each side; its edge lies 5 mm from the face's.
    /// </summary>
    [Fact]
    public void A_turned_square_is_measured_over_its_corners() => Assert.Equal(
        "lamp reaches 3.28 mm past the right edge of the front.",
        Fit.InMillimetres("  lamp: square 40, right 5, turn right 45, of navy").The(FindingCatalogue.PastTheEdge).Message);

    /// <summary>The corners of its box would reach past the edge; the circle itself does not.</summary>
    [Fact]
    public void A_turned_circle_is_measured_by_its_outline_and_not_its_box() =>
        Assert.Empty(Fit.InMillimetres("  circle 40, right 1, turn right 45, of navy"));

    [Fact]
    public void Copies_of_one_line_are_one_finding()
    {
        var finding = Fit.OnA2("  5 circle 3/4, in a row, gap 1/4, left 1/4, of navy").The(FindingCatalogue.PastTheEdge);
        Assert.Equal("1 of the 5 copies of the circle of line 4 reaches 3/4 in past the right edge of the front.", finding.Message);
    }

    [Fact]
    public void A_piece_flush_on_another_past_the_edge_is_not_reported_again() =>
        Assert.Equal(4, Fit.OnA2("  lamp: panel 1 x 2, right -1/8, of navy\n    strip full x 1/4, of white")
            .The(FindingCatalogue.PastTheEdge).Line());

    [Fact]
    public void A_piece_that_reaches_farther_than_the_one_beneath_is_also_reported() =>
        Assert.Equal(2, Fit.OnA2("  lamp: panel 1 x 2, right -1/8, of navy\n    strip 1 x 1/4, right -1/4, of white")
            .Of(FindingCatalogue.PastTheEdge).Count);

    [Fact]
    public void A_raised_piece_past_the_edge_is_reported_as_raised()
    {
        var finding = Assert.Single(Fit.OnA2("  lamp: panel 1 x 2, right -1/8, raised 1 mm, of navy"));
        Assert.Equal(FindingCatalogue.RaisedOverTheEdge, finding.Kind);
        Assert.Equal("lamp is raised 1 mm and reaches 1/8 in past the right edge of the front.", finding.Message);
    }

    [Theory]
    [InlineData("front", "fold left", "5 x 1",
        "lamp reaches 3/8 in across the fold at the left and 3/8 in past the right edge of the front.")]
    [InlineData("inside left", "fold left", "5 x 1",
        "lamp reaches 3/8 in past the left edge and 3/8 in across the fold at the right of the inside left.")]
    [InlineData("front", "fold top", "1 x 6",
        "lamp reaches 1/4 in across the fold at the top and 1/4 in past the bottom edge of the front.")]
    public void A_piece_too_large_for_the_face_is_one_mistake(string face, string fold, string size, string message)
    {
        var finding = Assert.Single(Fit.In($"card \"Lamp day\"\nbase A2, {fold}, of white\n{face}\n  lamp: panel {size}, of navy"));
        Assert.Equal((FindingCatalogue.PastTheEdge, message), (finding.Kind, finding.Message));
    }

    [Theory]
    [InlineData("front", "fold left", "left")]
    [InlineData("front", "fold top", "top")]
    [InlineData("inside", "fold left", "left")]
    [InlineData("inside", "fold top", "top")]
    [InlineData("inside left", "fold left", "right")]
    [InlineData("inside top", "fold top", "bottom")]
    [InlineData("back", "fold left", "right")]
    [InlineData("back", "fold top", "top")]
    public void Crossing_the_fold_is_a_separate_finding(string face, string fold, string side)
    {
        var finding = Assert.Single(
            Fit.In($"card \"Lamp day\"\nbase A2, {fold}, of white\n{face}\n  lamp: panel 1 x 1, {side} -1/8, of navy"));
        Assert.Equal(FindingCatalogue.AcrossTheFold, finding.Kind);
        Assert.StartsWith($"lamp reaches 1/8 in across the fold at the {side} of the ", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrap_around_the_edge_is_not_past_it() =>
        Assert.Empty(Fit.OnA2("  strip full x 1/2, wrap 1/2, of navy"));

    [Fact]
    public void Text_is_measured_by_its_ink() => Assert.Equal(
        "The text of line 5 reaches 6 mm past the right edge of the front.",
        Fit.InMillimetres("  text \"Calm seas ahead\", letters 5, right -6, of black").The(FindingCatalogue.PastTheEdge).Message);
}
