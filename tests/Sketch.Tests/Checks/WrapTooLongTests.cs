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
