using Sketch.Planning;
using Sketch.Shelf;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning;

public class ShelfAfterTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";

    private static Stash Left(string batch, string shelf, params (string, string)[] files)
    {
        var text = ShelfAfter.Write(PlanRun.Of(Top + batch, [("shelf.stash", shelf), .. files]).Plan!);
        var read = Compiler.Compile(new SourceText("left.stash", text), new TestSurroundings());
        Assert.Empty(read.Findings);
        return read.Stash!;
    }

    [Fact]
    public void Used_sheets_are_gone() => Assert.Equal(2, Left("cut 6 of 4 x 5 1/4 from gulls\n", PlanRun.Shelf).Find("gulls")!.Sheets);

    [Fact]
    public void A_strip_that_is_left_is_an_offcut()
    {
        // Hand-worked: 12 x 12 less two rows of 5 1/4 leaves 12 x 1 1/2.
        var offcut = Assert.Single(Left("cut 6 of 4 x 5 1/4 from gulls\n", PlanRun.Shelf).Offcuts);
        Assert.Equal(("gulls", Length.Inch(12), Length.Inch(1, 1, 2), 1), (offcut.Paper, offcut.Size.Width, offcut.Size.Height, offcut.Count));
    }

    [Fact]
    public void Used_offcuts_are_gone_and_others_stay() =>
        Assert.Equal([1], Left("cut 2 of 6 x 6 from gulls\n", PlanRun.Shelf + "offcut gulls: 6 x 6, 3   # squares\n").Offcuts.Select(o => o.Count));

    [Fact]
    public void Nothing_else_is_changed()
    {
        var shelf = "# Ours\n" + PlanRun.Shelf.Replace("any sheets", "any sheets, price 0.10  # cheap", StringComparison.Ordinal);
        var text = ShelfAfter.Write(PlanRun.Of($"{Top}cut 12 of 4 x 6 from gulls\n", ("shelf.stash", shelf)).Plan!);
        Assert.Equal(shelf.Replace("3 sheets", "1 sheet", StringComparison.Ordinal), text[(text.IndexOf('\n') + 1)..]);
    }

    [Fact]
    public void Lines_and_gems_get_fewer()
    {
        const string card = PlanRun.Card + "    line 1/16, along top, of silver, wrap 1/2\n    gem 1/8, of red\n";
        var left = Left("make 4 of \"gull.card\"\n", PlanRun.Shelf + "line silver: 1/16, 10 ft long\ngem red: 1/8, 30 pieces\n", ("gull.card", card));
        Assert.Equal((Length.Inch(120) - Length.Inch(4, 7, 8) * 4, 26), (left.Supplies[0].Long, left.Supplies[1].Pieces));
    }

    [Fact]
    public void Without_a_stash_the_leftovers_make_a_new_one()
    {
        var text = ShelfAfter.Write(PlanRun.Of("batch \"Day\"\ncut 1 of 4 x 5 1/4 from gulls\n").Plan!);
        Assert.Equal(0, Compiler.Compile(new SourceText("left.stash", text), new TestSurroundings()).Stash!.Find("gulls")!.Sheets);
    }
}
