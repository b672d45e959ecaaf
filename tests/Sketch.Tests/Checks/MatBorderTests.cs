using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class MatBorderTests
{
    [Fact]
    public void A_mat_of_a_written_size_with_unequal_borders_is_reported()
    {
        var finding = Assert.Single(Fit.OnA2("  sea: panel 2 x 3, of navy\n    mat 2 1/4 x 3 1/8, of white"));
        Assert.Equal(FindingCatalogue.UnevenMat, finding.Kind);
        Assert.Equal("The mat behind sea shows 1/8 in at the left and right, but 1/16 in at the top and bottom.", finding.Message);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(5, finding.Line());
    }

    [Theory]
    [InlineData("mat +1/8")]
    [InlineData("mat border 1/16")]
    [InlineData("mat +1/8 x 1/4")]
    [InlineData("mat border bottom 1/2")]
    [InlineData("mat 2 1/8 x 3 1/8")]
    public void Equal_borders_and_borders_written_as_unequal_are_not_reported(string mat) =>
        Assert.Empty(Fit.OnA2($"  panel 2 x 3, of navy\n    {mat}, of white"));

    [Fact]
    public void The_mat_of_a_full_strip_is_not_reported() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    strip full x 1/2, of white\n      mat +1/8, of red"));

    /// <summary>The least border, 1/32 in or 0.8 mm, is common practice, no source.</summary>
    [Fact]
    public void A_border_below_a_thirty_second_is_too_narrow()
    {
        var finding = Assert.Single(Fit.OnA2("  sea: panel 2 x 3, of navy\n    mat border 1/64, of white").Of(FindingCatalogue.NarrowMat));
        Assert.Equal("The mat behind sea shows only 1/64 in on each side, which is hard to cut and glue evenly.", finding.Message);
        Assert.Equal("Write mat border 1/16, or leave the mat out.", finding.Hint);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void A_border_of_a_thirty_second_is_not_reported() =>
        Assert.Empty(Fit.OnA2("  panel 2 x 3, of navy\n    mat border 1/32, of white").Of(FindingCatalogue.NarrowMat));
}
