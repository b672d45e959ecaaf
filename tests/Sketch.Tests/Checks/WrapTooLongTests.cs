using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class WrapTooLongTests
{
    [Fact]
    public void Ends_longer_than_half_of_the_panel_overlap()
    {
        var finding = Assert.Single(Fit.OnA2("  sea: panel 2 x 3, of navy\n    rope: strip full x 1/2, wrap 1 1/8, of kraft"));
        Assert.Equal(FindingCatalogue.WrapTooLong, finding.Kind);
        Assert.Equal("sea/rope wraps 1 1/8 in around each side of sea, which is only 2 in there, so the ends overlap behind it.",
            finding.Message);
        Assert.Equal("Write wrap 1/2.", finding.Hint);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void One_end_may_reach_to_the_other_edge() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    strip full x 1/2, wrap left 2, of kraft"));

    [Fact]
    public void One_end_longer_than_the_panel_reaches_past_its_other_edge()
    {
        var finding = Fit.OnA2("  sea: panel 2 x 3, of navy\n    rope: strip full x 1/2, wrap left 2 1/8, of kraft")
            .The(FindingCatalogue.WrapTooLong);
        Assert.Equal("sea/rope wraps 2 1/8 in around one side of sea, which is only 2 in there, so it reaches past the other edge.",
            finding.Message);
        Assert.Equal("Write wrap left 1/2.", finding.Hint);
    }

    [Fact]
    public void Ribbon_may_overlap_behind() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    ribbon full x 3/8, wrap 1 1/2, of red"));

    [Fact]
    public void Ends_of_half_of_it_meet() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    strip full x 1/2, wrap 1, of kraft"));

    [Fact]
    public void An_upright_strip_wraps_over_its_height() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    strip 1/2 x full, wrap 1 1/2, of kraft"));

    [Fact]
    public void On_a_face_it_wraps_around_the_card() =>
        Assert.Contains("each side of the card", Fit.OnA2("  strip full x 1/2, wrap 2 1/4, of kraft").The(FindingCatalogue.WrapTooLong)
            .Message, StringComparison.Ordinal);
}
