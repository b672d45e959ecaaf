using Sketch.Planning.Remainder;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.Remainder;

public class ShelfAfterTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";

    private static Stash Left(string batch, string shelf, params (string, string)[] files)
    {
        var text = StashAfter.Write(PlanRun.Of(Top + batch, [("shelf.stash", shelf), .. files]).Plan!);
        var read = Compiler.Compile(new SourceText("left.stash", text), new TestWorld());
        Assert.Empty(read.Findings);
        return read.Stash!;
    }

    [Fact]
    public void Used_sheets_are_removed() => Assert.Equal(2, Left("cut 6 of 4 x 5 1/4 from gulls\n", PlanRun.Shelf).Find("gulls")!.Sheets);

    [Fact]
    public void A_leftover_strip_becomes_an_offcut()
    {
        // By hand: 12 x 12 less two rows of 5 1/4 leaves 12 x 1 1/2.
        var offcut = Assert.Single(Left("cut 6 of 4 x 5 1/4 from gulls\n", PlanRun.Shelf).Offcuts);
        Assert.Equal(("gulls", Length.Inch(12), Length.Inch(1, 1, 2), 1),
            (offcut.Paper, offcut.Size.Width, offcut.Size.Height, offcut.Count));
    }

    [Fact]
    public void Used_offcuts_are_removed_and_others_stay() =>
        Assert.Equal([1], Left("cut 2 of 6 x 6 from gulls\n", PlanRun.Shelf + "offcut gulls: 6 x 6, 3   # squares\n")
            .Offcuts.Select(o => o.Count));

    [Fact]
    public void Other_lines_are_unchanged()
    {
        var shelf = "# Ours\n" + PlanRun.Shelf.Replace("any sheets", "any sheets, price 0.10  # cheap", StringComparison.Ordinal);
        var text = StashAfter.Write(PlanRun.Of($"{Top}cut 12 of 4 x 6 from gulls\n", ("shelf.stash", shelf)).Plan!);
        Assert.Equal(shelf.Replace("3 sheets", "1 sheet", StringComparison.Ordinal), text[(text.IndexOf('\n') + 1)..]);
    }

    [Fact]
    public void Used_lines_and_gems_are_subtracted()
    {
        const string card = PlanRun.Card + "    line 1/16, along top, of silver, wrap 1/2\n    gem 1/8, of red\n";
        var left = Left("make 4 of \"gull.card\"\n", PlanRun.Shelf + "line silver: 1/16, 10 ft long\ngem red: 1/8, 30 pieces\n",
            ("gull.card", card));
        Assert.Equal((Length.Inch(120) - Length.Inch(4, 7, 8) * 4, 26), (left.Supplies[0].Long, left.Supplies[1].Pieces));
    }

    // Four lengths of 4 7/8 in, two from each strip of 12 in, leave two ends of 2 1/4 in.
    [Fact]
    public void Used_strips_are_subtracted_and_their_ends_are_listed()
    {
        const string card = PlanRun.Card + "    line 1/16, along top, of silver, wrap 1/2\n";
        var left = Left("make 4 of \"gull.card\"\n", PlanRun.Shelf + "line silver: 1/16, 9 strips, 12 in long\n", ("gull.card", card));
        Assert.Equal([(7, Length.Inch(12)), (2, Length.Inch(2, 1, 4))], left.Supplies.Select(s => (s.Strips!.Value, s.StripLength!.Value)));
    }

    [Fact]
    public void Dies_are_not_used_up()
    {
        const string card = PlanRun.Card + "    tag 1, of navy, using small-tag\n";
        var left = Left("make 4 of \"gull.card\"\n", PlanRun.Shelf + "die small-tag: 1 x 2\n", ("gull.card", card));
        Assert.Equal(1, left.Supplies.Single().Pieces);
    }

    [Fact]
    public void Without_a_stash_an_empty_one_is_written()
    {
        var text = StashAfter.Write(PlanRun.Of("batch \"Day\"\ncut 1 of 4 x 5 1/4 from gulls\n").Plan!);
        Assert.Empty(Compiler.Compile(new SourceText("left.stash", text), new TestWorld()).Findings);
    }

    // Three rows of 3 51/64 in leave 12 in - 11 25/64 in = 39/64 in, between nine and ten sixteenths.
    [Fact]
    public void Leftovers_are_written_in_ruler_fractions_rounded_down()
    {
        var text = StashAfter.Write(PlanRun.Of($"{Top}cut 9 of 4 x 3 51/64 from gulls\n").Plan!);
        Assert.Equal("offcut gulls: 9/16 in x 12 in, 1", text.TrimEnd().Split('\n')[^1]);
    }

    [Fact]
    public void A_leftover_of_a_metric_sheet_is_in_inches_in_a_batch_in_inches()
    {
        // A4 is 210 x 297 mm: 11 in off its height leave 17.6 mm, between 11 and 12 sixteenths.
        var shelf = PlanRun.Shelf + "cardstock cream: A4, 1 sheet\n";
        var text = StashAfter.Write(PlanRun.Of($"{Top}cut 1 of 8 x 11 from cream\n", ("shelf.stash", shelf)).Plan!);
        Assert.Equal("offcut cream: 8 1/4 in x 11/16 in, 1", text.TrimEnd().Split('\n')[^1]);
    }

    [Fact]
    public void Leftovers_of_a_batch_in_millimetres_are_whole_millimetres()
    {
        var text = StashAfter.Write(
            PlanRun.Of("batch \"Day\"\nunits mm\nstash \"shelf.stash\"\ncut 1 of 304.8 x 250.5 from gulls\n").Plan!);
        Assert.Equal("offcut gulls: 54 mm x 304 mm, 1", text.TrimEnd().Split('\n')[^1]);
    }

    [Fact]
    public void A_leftover_line_is_rounded_down_too()
    {
        const string card = PlanRun.Card + "    line 1/16, along top, of silver, wrap 1/64\n";
        var run = PlanRun.Of($"{Top}make 1 of \"gull.card\"\n", ("gull.card", card),
            ("shelf.stash", PlanRun.Shelf + "line silver: 1/16, 1 ft long\n"));
        Assert.Contains("line silver: 1/16, 8 1/16 in long", StashAfter.Write(run.Plan!), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_still_to_buy_leave_nothing()
    {
        // Six of 4 x 5 1/4 from a sheet leave a strip; three of the five sheets are on hand.
        var left = Left("cut 30 of 4 x 5 1/4 from gulls\n", PlanRun.Shelf);
        Assert.Equal((0, 3), (left.Find("gulls")!.Sheets, left.Offcuts.Sum(o => o.Count)));
    }

    [Theory]
    [InlineData("stash \"shelf.stash\"\n", "rope")]
    [InlineData("", "gulls")]
    public void A_paper_that_is_not_in_the_stash_leaves_nothing(string stash, string paper)
    {
        var text = StashAfter.Write(PlanRun.Of($"batch \"Day\"\n{stash}cut 1 of 4 x 5 1/4 from {paper}\n").Plan!);
        Assert.DoesNotContain("offcut", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_used_up_stash_reads_back_without_a_finding()
    {
        const string card = PlanRun.Card + "    line 1/16, along top, of silver, wrap 1/2\n    gem 1/8, of red\n";
        var supplies = "line silver: 1/16, 1 in long\ngem red: 1/8, 2 pieces\nenvelope plain: US A2, 1\n";
        var left = Left("make 4 of \"gull.card\"\n", PlanRun.Shelf + supplies, ("gull.card", card));
        Assert.Equal((Length.Zero, 0, 0), (left.Supplies[0].Long!.Value, left.Supplies[1].Pieces!.Value, left.Supplies[2].Pieces!.Value));
    }
}
