using Sketch.CutFiles;
using Xunit;

namespace Sketch.Tests.CutFiles;

public sealed class CutPageTests
{
    [Theory]
    [InlineData("12x24", 304.8, 609.6)]
    [InlineData("12 x 12", 304.8, 304.8)]
    [InlineData("A3", 297, 420)]
    [InlineData("letter", 215.9, 279.4)]
    [InlineData("300x600 mm", 300, 600)]
    [InlineData("30 cm x 60 cm", 300, 600)]
    [InlineData("8 1/2 x 14 in", 215.9, 355.6)]
    public void A_page_is_a_name_or_a_size(string written, double width, double height)
    {
        var size = CutPage.Read(written).Value.Size;
        Assert.Equal((width, height), (size.Width.Millimetres, size.Height.Millimetres));
    }

    [Theory]
    [InlineData("a33", "Did you mean \"a3\"?")]
    [InlineData("poster", "such as 12x24")]
    [InlineData("12xwide", "write width and height")]
    [InlineData("0x12", "write a size up to")]
    [InlineData("12x201", "write a size up to")]
    public void What_is_no_page_is_said_with_what_to_write(string written, string said) =>
        Assert.Contains(said, CutPage.Read(written).Problem, StringComparison.Ordinal);
}
