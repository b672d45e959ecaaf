using System.Globalization;
using CsCheck;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class SvgPathTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(12, "12")]
    [InlineData(120, "120")]
    [InlineData(12.5, "12.5")]
    [InlineData(0.25, ".25")]
    [InlineData(-0.25, "-.25")]
    [InlineData(-1.00001, "-1")]
    [InlineData(0.00004, "0")]
    [InlineData(-0.00004, "0")]
    [InlineData(0.99996, "1")]
    [InlineData(1.00625, "1.0063")]
    [InlineData(3.0004, "3.0004")]
    [InlineData(double.NaN, "0")]
    [InlineData(double.PositiveInfinity, "1000000000000")]
    public void Numbers_are_as_short_as_possible(double number, string text) => Assert.Equal(text, DecimalText.Of(number));

    [Fact]
    public void Numbers_read_back_to_within_half_of_the_last_place() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Int[0, 6]).Sample((number, decimals) =>
        {
            var read = double.Parse(DecimalText.Of(number, decimals), NumberStyles.Float, CultureInfo.InvariantCulture);
            // Around a million neighbouring numbers are 1e-10 apart.
            Assert.Equal(number, read, 0.5 * Math.Pow(10, -decimals) + 1e-9);
        }, seed: "0000KeepersX");

    [Fact]
    public void A_rectangle_is_written_as_four_corners() =>
        Assert.Equal("M1 2L11 2L11 7.5L1 7.5Z", Drawn.Rectangle(1, 2, 10, 5.5).ToSvgPath());

    [Fact]
    public void Curves_have_three_points_and_minus_signs_separate_numbers() =>
        Assert.Equal(
            "M-1-2C-.5-2 0-1 0 0Z",
            new Outline([new Contour(new(-1, -2), [Segment.Curve(new(-0.5, -2), new(0, -1), new(0, 0))])]).ToSvgPath());

    [Fact]
    public void An_empty_outline_is_an_empty_path() => Assert.Equal("", Outline.Empty.ToSvgPath());

    [Fact]
    public void Any_path_reads_back_to_its_points() =>
        Gen.Double[-3, 3].Select(d => Math.Round(d, 5)).Array[8].Sample(v =>
        {
            var outline = new Outline([new Contour(new(v[0], v[1]), [Segment.Curve(new(v[2], v[3]), new(v[4], v[5]), new(v[6], v[7]))])]);
            Assert.Equal(v.Select(n => Math.Round(n, 4, MidpointRounding.AwayFromZero)), Numbers(outline.ToSvgPath()), (a, b) =>
                Math.Abs(a - b) < 1.01e-4);
        }, seed: "0000KeepersX");

    /// <summary>The numbers in path data by SVG's grammar: a sign or a second point starts the next number.</summary>
    private static IEnumerable<double> Numbers(string path) =>
        System.Text.RegularExpressions.Regex.Matches(path, @"-?(\d+(\.\d+)?|\.\d+)")
            .Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture));
}
