using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Units;
using Xunit;
using static Sketch.Tests.Reports.SampleCard;

namespace Sketch.Tests.Reports;

public class SizeListTests
{
    [Fact]
    public void The_base_comes_first_as_a_flat_sheet()
    {
        // An A2 card is cut 8 1/2 x 5 1/2 and scored at 4 1/4 (common practice, no source).
        var entry = SizeList.Of(FairWinds()).Entries[0];
        Assert.Equal((PiecePath.Base, new Size(Length.Inch(8, 1, 2), Length.Inch(5, 1, 2))), (entry.Path, entry.Cut!.Value));
    }

    [Fact]
    public void Every_copy_is_a_separate_entry() =>
        Assert.Equal(
            ["base", "front/sky/mat", "front/sky", "front/sky/line", "front/sky/gem[1]", "front/sky/gem[2]", "front/sky/gem[3]"],
            SizeList.Of(FairWinds()).Entries.Select(e => e.Path.ToString()));

    [Fact]
    public void A_wrap_belongs_to_the_cut_size_only()
    {
        var line = SizeList.Of(FairWinds()).Entries.Single(e => e.Kind == PieceKind.Line);
        Assert.Equal((Length.Inch(4, 7, 8), Length.Inch(3, 7, 8)), (line.Cut!.Value.Width, line.Finished.Width));
    }

    [Fact]
    public void A_gem_is_not_cut() => Assert.Null(SizeList.Of(FairWinds()).Entries.Last().Cut);
}
