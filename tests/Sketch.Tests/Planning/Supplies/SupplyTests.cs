using Sketch.Planning.Supplies;
using Sketch.Stashes;
using Sketch.Tests.Panels;
using Xunit;

namespace Sketch.Tests.Planning.Supplies;

public class SupplyTests
{
    private const string Batch = "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 12 of \"gull.card\"\n";
    private const string Dressed = PlanRun.Card
        + "    line 1/16, along top, of silver, wrap 1/2\n    3 gem 1/8, in a row, gap 1/16, right 1/4, top 1/4, of red\n    star 1, "
        + "of navy, raised 2 mm\n";

    private static SupplyNeed Need(SupplyKind kind, string shelf = "") =>
        Assert.Single(PlanRun.Of(Batch, ("gull.card", Dressed), ("shelf.stash", PlanRun.Shelf + shelf))
            .Plan!.Supplies, s => s.Kind == kind);

    [Fact]
    public void A_line_needs_its_visible_length_and_its_wraps()
    {
        // 3 7/8 in and 1/2 in at each end, on 12 cards.
        Assert.Equal(12 * 4.875, Need(SupplyKind.Line).Needed / 25_400_000.0);
    }

    [Fact]
    public void Gems_are_counted() =>
        Assert.Equal((36, 30, 6),
            (Need(SupplyKind.Gem, "gem red: 1/8, 30 pieces\n").Needed, Need(SupplyKind.Gem, "gem red: 1/8, 30 pieces\n")
                .OnHand, Need(SupplyKind.Gem, "gem red: 1/8, 30 pieces\n").Short));

    [Fact]
    public void Gems_of_another_size_are_not_counted() => Assert.Equal(0, Need(SupplyKind.Gem, "gem red: 3/16, 300 pieces\n").OnHand);

    [Fact]
    public void Every_card_needs_an_envelope_of_its_size() =>
        Assert.Equal((12, 50L), (Need(SupplyKind.Envelope, "envelope plain: US A2, 50\n")
            .Needed, Need(SupplyKind.Envelope, "envelope plain: US A2, 50\n").OnHand));

    [Fact]
    public void Foam_is_matched_by_its_height() =>
        Assert.Equal("thick", Need(SupplyKind.Foam, "foam thin: 1 mm, 50 pieces\nfoam thick: 2 mm, 50 pieces\n").Name);

    // A star of 1 in is less than 1 1/2 in across: one strip of its width, a quarter inch wide (common practice, no source).
    [Fact]
    public void Foam_is_reported_by_length_and_area_too()
    {
        var foam = Need(SupplyKind.Foam, "foam thick: 2 mm, 50 pieces\n");
        Assert.Equal((12, 12.0, 3.0), (foam.Needed, Math.Round(foam.Strips.Inches, 6), Math.Round(foam.StripArea / 645.16, 6)));
    }

    [Fact]
    public void Too_few_gems_are_an_error_if_the_stash_counts_gems()
    {
        var run = PlanRun.Of(Batch, ("gull.card", Dressed), ("shelf.stash", PlanRun.Shelf + "gem red: 1/8, 30 pieces\n"));
        Assert.Contains("36 needed, 30 on hand, so 6 missing", run.Single("SK713").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_supply_that_the_stash_does_not_mention_is_a_warning() =>
        Assert.Equal(2, PlanRun.Of(Batch, ("gull.card", Dressed)).Findings.Count(f => f.Code == "SK720"));

    [Theory]
    [InlineData("envelope tall: US A7, 20\n", "envelope US A2: 12 needed, and the stash has none.")]
    [InlineData("foam thin: 1 mm, 50 pieces\n", "foam 2 mm: 1 ft by estimate needed, and the stash has none.")]
    public void A_supply_of_a_counted_kind_that_the_stash_lacks_is_missing(string shelf, string message)
    {
        var run = PlanRun.Of(Batch, ("gull.card", Dressed), ("shelf.stash", PlanRun.Shelf + shelf));
        Assert.Contains(run.Findings, f => f.Code == "SK720" && f.Message == message);
    }

    [Fact]
    public void Usual_envelopes_are_not_reported_if_the_stash_counts_none() => Assert.Null(Need(SupplyKind.Envelope).OnHand);

    [Fact]
    public void A_line_whose_paper_is_in_the_stash_is_cut_from_it()
    {
        var run = PlanRun.Of(Batch, ("gull.card", Dressed.Replace("of silver", "of navy", StringComparison.Ordinal)));
        Assert.Contains(run.Paper("navy").Order.Pieces, p => p.Path == "front/sky/line".Path());
    }
}
