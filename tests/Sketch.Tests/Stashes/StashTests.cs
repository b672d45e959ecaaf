using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Stashes;

public class StashTests
{
    [Fact]
    public void A_paper_has_its_sheet_size_and_its_sheets_on_hand()
    {
        var paper = Stashed.Paper("paper gulls: 12 x 12, 3 sheets");

        Assert.Equal((new Size(Length.Inch(12), Length.Inch(12)), 3), (paper.Size, paper.Sheets));
    }

    [Fact]
    public void Any_sheets_are_not_counted() => Assert.Null(Stashed.Paper("paper gulls: 12 x 12, any sheets").Sheets);

    [Fact]
    public void A_paper_that_has_run_out_keeps_its_line() => Assert.Equal(0, Stashed.Paper("paper gulls: 12 x 12, 0 sheets").Sheets);

    [Fact]
    public void Trims_on_two_edges_are_both_subtracted()
    {
        var paper = Stashed.Paper("paper gulls: 12 x 12, 3 sheets, trim 1/4 bottom, trim 1/2 left");

        Assert.Equal(new Size(Length.Inch(11, 1, 2), Length.Inch(11, 3, 4)), paper.Usable);
    }

    [Fact]
    public void Two_trims_on_one_edge_are_a_mistake() =>
        Assert.Equal("SK117", Stashed.OnlyFinding("paper gulls: 12 x 12, 3 sheets, trim 1/4 bottom, trim 1/2 bottom").Code);

    [Fact]
    public void A_trim_that_leaves_nothing_is_a_mistake() =>
        Assert.Equal("SK118", Stashed.OnlyFinding("paper gulls: 12 x 12, 3 sheets, trim 12 bottom").Code);

    [Fact]
    public void A_side_is_a_pattern_with_its_colours() =>
        Assert.Equal(
            new PaperLook(PaperPattern.Dots, new(0x11, 0x22, 0x33), [new(0xff, 0xff, 0xff)]),
            Stashed.Paper("paper gulls: 12 x 12, 3 sheets, front dots #123 #fff").Front.Look);

    [Fact]
    public void A_side_keeps_its_name_and_its_colour()
    {
        var back = Stashed.Paper("paper gulls: 12 x 12, 3 sheets, front dots, back \"rope stripe\" #e8dcc0").Back;

        Assert.Equal(("rope stripe", PaperLook.Plain(new(0xe8, 0xdc, 0xc0))), (back.Label, back.Look));
    }

    [Fact]
    public void A_patterned_paper_with_one_print_is_white_on_the_other_side() =>
        Assert.Equal(PaperLook.Plain(new(255, 255, 255)), Stashed.Paper("paper gulls: 12 x 12, 3 sheets, front dots").Back.Look);

    [Fact]
    public void Cardstock_is_the_same_on_both_sides()
    {
        var stock = Stashed.Paper("cardstock deep: letter, 3 sheets, front #16324f");

        Assert.Equal(stock.Front, stock.Back);
    }

    [Fact]
    public void Cardstock_named_by_a_colour_word_has_that_colour() =>
        Assert.Equal(BuiltIn.Find("navy", [])!, Stashed.Paper("cardstock navy: letter, 3 sheets").Front.Look);

    [Fact]
    public void Pounds_without_their_grade_are_a_mistake() =>
        Assert.Contains("cover", Stashed.OnlyFinding("cardstock navy: letter, 3 sheets, weight 80 lb").Hint, StringComparison.Ordinal);

    [Fact]
    public void A_measured_thickness_overrides_the_one_calculated_from_the_weight() =>
        Assert.Equal(Length.Millimetre(0.3m), Stashed.Paper("cardstock navy: letter, 3 sheets, weight 80 lb cover, thick 0.3 mm")
            .Thickness);

    [Fact]
    public void A_paper_without_a_number_of_sheets_is_a_mistake() =>
        Assert.Equal("Add 3 sheets, or any sheets.", Stashed.OnlyFinding("paper gulls: 12 x 12").Hint);

    [Fact]
    public void Two_papers_of_one_name_are_a_mistake() =>
        Assert.Equal("SK117", Stashed.OnlyFinding("paper gulls: 12 x 12, 3 sheets\ncardstock Gulls: letter, 2 sheets").Code);

    [Fact]
    public void A_misspelt_sheet_size_gets_the_nearest_one_as_a_hint() =>
        Assert.Contains("letter", Stashed.OnlyFinding("cardstock navy: leter, 3 sheets").Hint, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Offcuts_of_a_misspelt_paper_get_the_nearest_name_as_a_hint() =>
        Assert.Equal("Did you mean gulls?", Stashed.OnlyFinding("paper gulls: 12 x 12, 3 sheets\noffcut guls: 6 x 4, 2").Hint);

    [Fact]
    public void Supplies_are_counted_by_length_or_by_pieces()
    {
        var supplies = Stashed.Stash(
            "line silver: 1/16, 40 ft long\ngem red: 1/8, 60 pieces\nfoam white: 2 mm, 200 pieces\nenvelope plain: US A2, 50").Supplies;

        Assert.Equal(
            [
                (SupplyKind.Line, Length.Inch(0, 1, 16), null, Length.Inch(480)),
                (SupplyKind.Gem, Length.Inch(0, 1, 8), 60, null),
                (SupplyKind.Foam, Length.Millimetre(2), 200, null),
                (SupplyKind.Envelope, (Length?)null, 50, (Length?)null),
            ],
            supplies.Select(s => (s.Kind, s.Measure, s.Pieces, s.Long)));
    }

    [Fact]
    public void An_envelope_is_landscape()
    {
        var size = Stashed.Stash("envelope plain: US A2, 50").Supplies.Single().Size!.Value;

        Assert.True(size.Width > size.Height);
    }

    [Fact]
    public void An_unreadable_picture_is_reported_at_its_name()
    {
        var finding = Stashed.OnlyFinding("paper gulls: 12 x 12, 3 sheets, front \"gulls.jpg\" 12 wide");

        Assert.Equal(("SK604", 39), (finding.Code, finding.Location.Start.Column));
    }

    [Theory]
    [InlineData("front")]
    [InlineData("role sky: gulls")]
    [InlineData("make 3 of \"x.card\"")]
    public void Lines_of_cards_and_batches_do_not_belong_in_a_stash(string line) => Assert.Equal("SK115", Stashed.OnlyFinding(line).Code);

    [Fact]
    public void A_sheet_without_a_size_is_reported_by_name() =>
        Assert.Contains("gulls", Stashed.OnlyFinding("paper gulls:").Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("paper gulls: 12 x 12, 0 sheets", false)]
    [InlineData("paper gulls: 12 x 12, 0 sheets\noffcut gulls: 6 x 4, 1", true)]
    [InlineData("paper gulls: 12 x 12, any sheets", true)]
    public void A_paper_is_on_hand_while_a_sheet_or_an_offcut_is_left(string lines, bool isOnHand)
    {
        var stash = Stashed.Stash(lines);

        Assert.Equal(isOnHand, stash.Papers[0].IsOnHand(stash));
    }

    [Fact]
    public void An_unreadable_measure_is_not_also_reported_as_missing() =>
        Assert.Equal("SK102", Stashed.OnlyFinding("gem red: 1/9, 60 pieces").Code);
}
