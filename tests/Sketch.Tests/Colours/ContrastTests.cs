using CsCheck;
using Sketch.Colours;
using Xunit;

namespace Sketch.Tests.Colours;

public class ContrastTests
{
    private static readonly Gen<Rgb> AnyColour = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte).Select((r, g, b) => new Rgb(r, g, b));

    /// <summary>Worked out from the definitions of WCAG 2.2; black on white 21 is stated there.</summary>
    [Theory]
    [InlineData("000", "fff", 21)]
    [InlineData("767676", "fff", 4.542)]
    [InlineData("777777", "fff", 4.478)]
    [InlineData("949494", "fff", 3.033)]
    [InlineData("959595", "fff", 2.995)]
    [InlineData("595959", "fff", 7.005)]
    [InlineData("f00", "fff", 3.998)]
    [InlineData("0f0", "fff", 1.372)]
    [InlineData("00f", "fff", 8.592)]
    [InlineData("ff0", "fff", 1.074)]
    [InlineData("800020", "f5f5dc", 9.788)]
    [InlineData("4b2e1e", "c8a165", 5.116)]
    [InlineData("f00", "0f0", 2.914)]
    [InlineData("fff", "000080", 16.010)]
    public void The_ratio_is_that_of_the_definition(string a, string b, double expected) =>
        Assert.Equal(expected, Contrast.Ratio(Rgb.FromHex(a), Rgb.FromHex(b)), 0.0005);

    /// <summary>The colour-safe set of Okabe and Ito (2008) on white, worked out from WCAG 2.2 to two decimals.</summary>
    [Theory]
    [InlineData("000000", 21)]
    [InlineData("e69f00", 2.25)]
    [InlineData("56b4e9", 2.31)]
    [InlineData("009e73", 3.42)]
    [InlineData("f0e442", 1.32)]
    [InlineData("0072b2", 5.19)]
    [InlineData("d55e00", 3.87)]
    [InlineData("cc79a7", 3.06)]
    public void The_colour_safe_set_has_its_known_ratios_on_white(string hex, double expected) =>
        Assert.Equal(expected, Contrast.Ratio(Rgb.FromHex(hex), new(255, 255, 255)), 0.005);

    /// <summary>WCAG 2.2, 1.4.3: the darkest grey that fails and the lightest that passes on white, for usual and for large text.</summary>
    [Theory]
    [InlineData("767676", "777777", Contrast.LeastForText)]
    [InlineData("949494", "959595", Contrast.LeastForLargeText)]
    public void Two_neighbouring_greys_lie_on_both_sides_of_the_limit(string passes, string fails, double limit) =>
        Assert.InRange(limit, Contrast.Ratio(Rgb.FromHex(fails), new(255, 255, 255)),
            Contrast.Ratio(Rgb.FromHex(passes), new(255, 255, 255)));

    [Fact]
    public void The_order_of_two_colours_does_not_matter() =>
        Gen.Select(AnyColour, AnyColour).Sample((a, b) => Assert.Equal(Contrast.Ratio(a, b), Contrast.Ratio(b, a)));

    [Fact]
    public void Every_ratio_lies_between_1_and_21() =>
        Gen.Select(AnyColour, AnyColour).Sample((a, b) => Assert.InRange(Contrast.Ratio(a, b), 1, 21.0000001));
}
