using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

public sealed class OffTheRulerTests
{
    [Fact]
    public void A_panel_between_two_sixteenths_is_reported_with_the_nearest_size()
    {
        var finding = Assert.Single(Fit.OnA2("  lamp: panel 2 5/32 x 3, of navy"));
        Assert.Equal(FindingCatalogue.OffTheRuler, finding.Kind);
        Assert.Equal("lamp is cut 2 5/32 x 3 in, which is between two sixteenths on a ruler.", finding.Message);
        Assert.StartsWith("The nearest is 2 1/8 x 3:", finding.Hint, StringComparison.Ordinal);
        Assert.Equal(Severity.Note, finding.Severity);
    }

    [Theory]
    [InlineData("star 1 21/64", "The nearest is 1 5/16 wide: write that, and its height follows.")]
    [InlineData("star 1 21/64 high", "The nearest is 1 5/16 high: write that, and its width follows.")]
    [InlineData("star 1 21/64 x 1 21/64", "The nearest is 1 5/16 x 1 5/16: write that.")]
    public void For_a_shape_only_the_written_measure_is_offered(string star, string hint) =>
        Assert.Equal(hint, Fit.OnA2($"  {star}, of gold").The(FindingCatalogue.OffTheRuler).Hint);

    [Fact]
    public void A_size_between_marks_is_reported_as_approximate() =>
        Assert.Contains("about 1 27/64 in", Fit.OnA2("  panel full x share 1/3, of navy".Replace("1/3", "7/27", StringComparison.Ordinal))
            .The(FindingCatalogue.OffTheRuler).Message, StringComparison.Ordinal);

    [Fact]
    public void A_panel_on_the_sixteenths_is_not_reported() => Assert.Empty(Fit.OnA2("  panel 2 1/16 x 3 15/16, of navy"));

    [Fact]
    public void Files_in_millimetres_are_not_checked_against_inches() => Assert.Empty(Fit.InMillimetres("  panel 33 x 47, of navy"));

    [Fact]
    public void The_wrap_counts_because_it_is_cut() =>
        Assert.Single(Fit.OnA2("  strip 2 x 1/2, wrap 3/64, of navy").Of(FindingCatalogue.OffTheRuler));

    [Fact]
    public void One_measure_of_a_star_follows_from_the_other() => Assert.Empty(Fit.OnA2("  star 1 3/4, of gold\n    mat +1/8, of white"));

    [Fact]
    public void A_circle_off_the_ruler_is_reported() => Assert.Single(Fit.OnA2("  circle 1.3, of gold"));

    [Fact]
    public void Gems_are_not_cut() => Assert.Empty(Fit.OnA2("  gem 0.11, of red"));

    [Fact]
    public void Copies_are_one_note() => Assert.Single(Fit.OnA2("  4 panel, showing 1/8, in a grid 2 across, gap 1/16, of navy"));
}
