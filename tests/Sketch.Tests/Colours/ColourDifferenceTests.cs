using CsCheck;
using Sketch.Colours;
using Xunit;

namespace Sketch.Tests.Colours;

public class ColourDifferenceTests
{
    private static readonly Gen<Lab> AnyLab =
        Gen.Select(Gen.Double[0, 100], Gen.Double[-128, 128], Gen.Double[-128, 128]).Select((l, a, b) => new Lab(l, a, b));

    /// <summary>
    /// Sharma, Wu and Dalal, "The CIEDE2000 color-difference formula", Color Research and Application 30 (2005) 21-30, table 1: all 34
    /// pairs.
    /// </summary>
    [Theory]
    [InlineData(50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425)]
    [InlineData(50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615)]
    [InlineData(50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412)]
    [InlineData(50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0)]
    [InlineData(50, -1.1848, -84.8006, 50, 0, -82.7485, 1.0)]
    [InlineData(50, -0.9009, -85.5211, 50, 0, -82.7485, 1.0)]
    [InlineData(50, 0, 0, 50, -1, 2, 2.3669)]
    [InlineData(50, -1, 2, 50, 0, 0, 2.3669)]
    [InlineData(50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792)]
    [InlineData(50, 2.49, -0.001, 50, -2.49, 0.001, 7.1792)]
    [InlineData(50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195)]
    [InlineData(50, 2.49, -0.001, 50, -2.49, 0.0012, 7.2195)]
    [InlineData(50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045)]
    [InlineData(50, -0.001, 2.49, 50, 0.001, -2.49, 4.8045)]
    [InlineData(50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461)]
    [InlineData(50, 2.5, 0, 50, 0, -2.5, 4.3065)]
    [InlineData(50, 2.5, 0, 73, 25, -18, 27.1492)]
    [InlineData(50, 2.5, 0, 61, -5, 29, 22.8977)]
    [InlineData(50, 2.5, 0, 56, -27, -3, 31.9030)]
    [InlineData(50, 2.5, 0, 58, 24, 15, 19.4535)]
    [InlineData(50, 2.5, 0, 50, 3.1736, 0.5854, 1.0)]
    [InlineData(50, 2.5, 0, 50, 3.2972, 0, 1.0)]
    [InlineData(50, 2.5, 0, 50, 1.8634, 0.5757, 1.0)]
    [InlineData(50, 2.5, 0, 50, 3.2592, 0.3350, 1.0)]
    [InlineData(60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644)]
    [InlineData(63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630)]
    [InlineData(61.2901, 3.7196, -5.3901, 61.4292, 2.2480, -4.9620, 1.8731)]
    [InlineData(35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645)]
    [InlineData(22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373)]
    [InlineData(36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146)]
    [InlineData(90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441)]
    [InlineData(90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381)]
    [InlineData(6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377)]
    [InlineData(2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082)]
    public void The_difference_is_the_published_one(double l1, double a1, double b1, double l2, double a2, double b2, double expected) =>
        Assert.Equal(expected, ColourDifference.Between(new Lab(l1, a1, b1), new Lab(l2, a2, b2)), 0.00005);

    [Fact]
    public void The_order_of_two_colours_does_not_matter() =>
        Gen.Select(AnyLab, AnyLab).Sample((a, b) =>
            Assert.Equal(ColourDifference.Between(a, b), ColourDifference.Between(b, a), 1e-9));

    [Fact]
    public void A_colour_does_not_differ_from_itself() =>
        AnyLab.Sample(a => Assert.Equal(0, ColourDifference.Between(a, a)));

    /// <summary>Greys differ by lightness alone, and at a mean lightness of 50 its divisor is 1.</summary>
    [Fact]
    public void Black_and_white_differ_by_a_hundred() =>
        Assert.Equal(100, ColourDifference.Between(new Rgb(0, 0, 0), new Rgb(255, 255, 255)), 1e-9);

    /// <summary>
    /// Values of the sRGB primaries in CIELAB under D65 as commonly printed; from memory. The
    /// hundredths depend on how many decimals of the matrix are taken.
    /// </summary>
    [Theory]
    [InlineData("ff0000", 53.24, 80.09, 67.20)]
    [InlineData("00ff00", 87.73, -86.18, 83.18)]
    [InlineData("0000ff", 32.30, 79.19, -107.86)]
    [InlineData("ffffff", 100, 0, 0)]
    [InlineData("000000", 0, 0, 0)]
    public void An_sRGB_colour_has_its_known_place_in_Lab(string hex, double l, double a, double b)
    {
        var lab = Lab.FromRgb(Rgb.FromHex(hex));
        Assert.Equal((l, a, b), (lab.L, lab.A, lab.B), (x, y) =>
            Math.Abs(x.Item1 - y.Item1) < 0.03 && Math.Abs(x.Item2 - y.Item2) < 0.03 && Math.Abs(x.Item3 - y.Item3) < 0.03);
    }
}
