using Sketch.Cutting.Model;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting.Model;

public sealed class StockSheetTests
{
    [Fact]
    public void The_usable_part_and_the_trim_on_its_four_sides_make_the_whole_sheet()
    {
        var trim = new Insets(Length.Millimetre(1), Length.Millimetre(2), Length.Millimetre(4), Length.Millimetre(8));
        var sheet = new StockSheet(Given.Inches(12, 8), trim);
        Assert.Equal(new Rect(Length.Zero, Length.Zero, Length.Inch(12), Length.Inch(8)), sheet.Usable.Grow(trim));
    }
}
