using Sketch.Output.Gallery;
using Xunit;

namespace Sketch.Tests.Output.Gallery;

public class SizeHtmlTests
{
    private static string Cells(string piece, string cut) => SizeHtml.Of($"| Piece | Cut |\n| --- | --- |\n| {piece} | {cut} |\n", 0);

    [Fact]
    public void A_path_can_break_after_each_slash() =>
        Assert.Contains("<td>front/<wbr>sky/<wbr>mat</td>", Cells("front/sky/mat", "4 x 5"), StringComparison.Ordinal);

    [Theory]
    [InlineData("2 1/16 - x 1/2 +", "2&#160;1/16&#160;-&#160;x 1/2&#160;+")]
    [InlineData("3 7/8 x 5 1/8", "3&#160;7/8&#160;x 5&#160;1/8")]
    [InlineData("45 mm x 40.5 mm", "45&#160;mm&#160;x 40.5&#160;mm")]
    [InlineData("105 x 148", "105&#160;x 148")]
    public void A_size_can_break_only_before_its_height(string size, string cell) =>
        Assert.Contains($"<td>{cell}</td>", Cells("base", size), StringComparison.Ordinal);

    [Fact]
    public void Words_are_unchanged() =>
        Assert.Contains("<td>sides 0, top and bottom 1/8</td>", Cells("base", "sides 0, top and bottom 1/8"), StringComparison.Ordinal);
}
