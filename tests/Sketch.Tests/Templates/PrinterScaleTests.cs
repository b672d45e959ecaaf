using Sketch.Templates;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class PrinterScaleTests
{
    [Theory]
    [InlineData("3 15/16 in", 0.984375)]
    [InlineData("3 15/16", 0.984375)]
    [InlineData("100 mm", 100 / 101.6)]
    [InlineData("4.05", 1.0125)]
    public void The_measured_length_of_the_four_inch_bar_gives_the_scale(string measured, double scale) =>
        Assert.Equal(scale, PrinterScale.Measured(measured).Value.Value, 9);

    [Theory]
    [InlineData("3 15")]
    [InlineData("four")]
    [InlineData("")]
    [InlineData("2 in")]
    [InlineData("-4")]
    [InlineData("3 1/3")]
    public void An_impossible_measure_is_reported(string measured) => Assert.NotNull(PrinterScale.Measured(measured).Problem);

    [Theory]
    [InlineData("98.5")]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("NaN")]
    [InlineData("0,985")]
    [InlineData("1e0")]
    public void An_impossible_scale_is_reported(string scale) => Assert.NotNull(PrinterScale.Read(scale).Problem);
}
