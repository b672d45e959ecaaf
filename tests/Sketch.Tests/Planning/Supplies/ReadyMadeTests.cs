using Sketch.Kinds;
using Sketch.Papers;
using Sketch.Planning.Advice;
using Sketch.Planning.Supplies;
using Sketch.Stashes;
using Sketch.Stationery;
using Xunit;

namespace Sketch.Tests.Planning.Supplies;

public sealed class ReadyMadeTests
{
    private const string Batch = "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 12 of \"gull.card\"\n";

    private static PlanRun Run(string pieces, string shelf = "") =>
        PlanRun.Of(Batch, ("gull.card", PlanRun.Card + pieces), ("shelf.stash", PlanRun.Shelf + shelf));

    private static SupplyNeed Need(SupplyKind kind, string piece, string shelf = "") =>
        Assert.Single(Run($"    {piece}\n", shelf).Plan!.Supplies, s => s.Kind == kind);

    [Theory]
    [InlineData(SupplyKind.Gem, "gem star 1/4, of red", "gem red: 1/4, 20 pieces")]
    [InlineData(SupplyKind.Dot, "dot 1/4, of red", "dot red: 1/4, 20 pieces")]
    [InlineData(SupplyKind.Brad, "brad 1/4, of red", "brad red: 1/4, 20 pieces")]
    [InlineData(SupplyKind.Button, "button 1/4, of red", "button red: 1/4, 20 pieces")]
    [InlineData(SupplyKind.Bow, "bow 1, of red", "bow red: 1, 20 pieces")]
    [InlineData(SupplyKind.Sticker, "sticker 1 x 1 1/4, of red", "sticker red: 1 x 1 1/4, 20 pieces")]
    [InlineData(SupplyKind.Sticker, "sticker 1 x 1 1/4, of red", "sticker red: 1 1/4 x 1, 20 pieces")]
    [InlineData(SupplyKind.Sticker, "sticker heart 1, of red", "sticker red: 1, 20 pieces")]
    public void Each_piece_takes_one_from_the_stash(SupplyKind kind, string piece, string shelf)
    {
        var need = Need(kind, piece, shelf + "\n");
        Assert.Equal((12L, 20L, 0L), (need.Needed, need.OnHand, need.Short));
    }

    // The role stands for foil of the tone of gold; the stash may list the brad under either word, the role first.
    [Theory]
    [InlineData("brad brass: 1/4, 20 pieces\n", "brass")]
    [InlineData("brad gold: 1/4, 20 pieces\n", "gold")]
    [InlineData("brad gold: 1/4, 20 pieces\nbrad brass: 1/4, 20 pieces\n", "brass")]
    public void A_role_of_metal_finds_the_role_and_then_the_metal_in_the_stash(string shelf, string name)
    {
        var card = PlanRun.Card.Replace("front\n", "role brass: foil #cfa646\nfront\n", StringComparison.Ordinal);
        var run = PlanRun.Of(Batch, ("gull.card", $"{card}    brad 1/4, of brass\n"), ("shelf.stash", PlanRun.Shelf + shelf));
        var need = Assert.Single(run.Plan!.Supplies, s => s.Kind == SupplyKind.Brad);
        Assert.Equal((name, 20L), (need.Name, need.OnHand));
    }

    // 5 m are 16 ft 4.85 in.
    [Theory]
    [InlineData("1 roll, 5 m long", "1 roll of 16 ft 4 13/16 in")]
    [InlineData("1 roll, 30 ft long", "1 roll of 30 ft")]
    [InlineData("12 strips, 300 mm long", "12 strips of 11 3/4 in")]
    [InlineData("12 strips, 9 long", "12 strips of 9 in")]
    public void Lengths_of_rolls_and_strips_are_written_in_feet_and_marks_of_the_ruler(string stock, string written)
    {
        var need = Need(SupplyKind.Ribbon, "ribbon 3/8, along bottom, of red", $"ribbon red: 3/8, {stock}\n");
        Assert.Equal(written, SupplyText.Amount(need, need.OnHand!.Value, new(false)));
    }

    [Fact]
    public void A_measure_that_is_on_no_mark_is_in_millimetres() =>
        Assert.StartsWith(
            "button red 12 mm: 12 needed", Run("    button 12 mm, of red\n").Single("SK720").Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("sticker 1 x 1 1/4, of red", "sticker red: 1 x 1 1/2, 20 pieces")]
    [InlineData("sticker heart 1, of red", "sticker red: 1 1/4, 20 pieces")]
    public void A_sticker_of_another_size_does_not_serve(string piece, string shelf) =>
        Assert.Equal(0, Need(SupplyKind.Sticker, piece, shelf + "\n").OnHand);

    // The panel is 4 in wide.
    [Theory]
    [InlineData("ribbon 3/8, along bottom, of red", 3.875)]
    [InlineData("ribbon 3/8, along bottom, of red, wrap 1/2", 4.875)]
    [InlineData("ribbon 3/8, along bottom, of red, wrap left 1/2", 4.375)]
    [InlineData("ribbon 3/8, along bottom, of red, wrap left 1/2, wrap right 1/4", 4.625)]
    [InlineData("ribbon 3/8, along bottom, of red, tails 1", 5.875)]
    public void Ribbon_takes_its_visible_length_its_wraps_and_both_tails(string piece, double inches) =>
        Assert.Equal(12 * inches, Need(SupplyKind.Ribbon, piece, "ribbon red: 3/8, 100 ft long\n").Needed / 25_400_000.0, 6);

    // 12 lengths of 4 7/8 in: one from each strip of 9 in, and none from one of 4 in.
    [Fact]
    public void Strips_are_counted_and_what_is_short_is_strips()
    {
        var need = Need(SupplyKind.Line, "line 1/16, along top, of silver, wrap 1/2",
            "line silver: 1/16, 9 strips, 9 in long\nline silver: 1/16, 2 strips, 4 in long\n");
        Assert.Equal((12L, 9L, 3L, true), (need.Needed, need.OnHand, need.Short, need.Cutting!.Plan.IsProved));
    }

    [Fact]
    public void A_plan_says_which_lengths_come_from_which_strip()
    {
        var run = Run("    line 1/16, along top, of silver\n    line 1/16, along left, of silver\n",
            "line silver: 1/16, 20 strips, 9 in long\n");
        var lines = run.Summary.Lines().ToList();
        Assert.Contains("line silver 1/16: 12 strips, proved the fewest.", lines);
        Assert.Contains("From each of 12 strips cut 1 x 5 1/8, 1 x 3 7/8; 0 is left.", lines);
    }

    [Fact]
    public void Json_gives_the_cuts_of_strips()
    {
        var run = Run("    line 1/16, along top, of silver, wrap 1/2\n", "line silver: 1/16, 20 strips, 10 in long\n");
        var supply = run.Json.GetProperty("supplies").EnumerateArray().Single(s => s.GetProperty("kind").GetString() == "line");
        Assert.Equal(("strips", 6), (supply.GetProperty("unit").GetString(), supply.GetProperty("needed").GetInt32()));
        var cutting = supply.GetProperty("cutting");
        Assert.True(cutting.GetProperty("proved").GetBoolean());
        var layout = cutting.GetProperty("layouts").EnumerateArray().Single();
        Assert.Equal(6, layout.GetProperty("times").GetInt32());
        var length = layout.GetProperty("lengths").EnumerateArray().Single();
        Assert.Equal((4.875, 2), (length.GetProperty("length").GetProperty("in").GetDouble(), length.GetProperty("count").GetInt32()));
        Assert.Equal(0.25, layout.GetProperty("left").GetProperty("in").GetDouble());
    }

    [Fact]
    public void A_length_that_no_strip_holds_is_an_error()
    {
        var run = Run("    line 1/16, along left, of silver\n", "line silver: 1/16, 20 strips, 5 in long\n");
        Assert.Equal("line silver 1/16: 12 pieces of 5 1/8 in are needed, but its strips are 5 in long.", run.Single("SK711").Message);
    }

    [Theory]
    [InlineData("tag 1, of navy, using small-tag", "die small-tag: 1 x 2\n", SupplyKind.Die, 1)]
    [InlineData("tag 1, of navy, using small-tag", "", SupplyKind.Die, 0)]
    [InlineData("text \"ahoy\", using ahoy", "stamp ahoy: 2 x 1\n", SupplyKind.Stamp, 1)]
    [InlineData("stamp 2 x 1, using lighthouse", "", SupplyKind.Stamp, 0)]
    [InlineData("sentiment 2 wide \"ahoy\", of navy, using ahoy", "die ahoy: 2 x 1\n", SupplyKind.Die, 1)]
    public void One_die_or_stamp_serves_all_cards(string piece, string shelf, SupplyKind kind, int onHand)
    {
        var need = Need(kind, piece, shelf);
        Assert.Equal((1L, onHand), (need.Needed, need.OnHand));
    }

    [Theory]
    [InlineData("gem 1/4, of red", true)]
    [InlineData("dot 1/4, of red", true)]
    [InlineData("brad 1/4, of red", true)]
    [InlineData("button 1/2, of red", true)]
    [InlineData("sticker circle 1/2, of red", false)]
    [InlineData("ribbon 3/8, along bottom, of red", false)]
    public void Hard_small_parts_carry_a_caution(string piece, bool isCautioned) =>
        Assert.Equal(isCautioned, Run($"    {piece}\n").Summary.Lines().Contains(Cautions.SmallParts));

    [Fact]
    public void Strips_cost_what_the_whole_ones_cost()
    {
        // 6 strips at 0.50 for 12 cards.
        var run = Run("    line 1/16, along top, of silver, wrap 1/2\n", "line silver: 1/16, 20 strips, 10 in long, price 0.5\n");
        Assert.Equal(0.25m, CardCost.Of(run.Plan!).Costs.Single().Amount, 6);
    }

    [Fact]
    public void With_too_few_strips_as_many_cards_are_made_as_their_lengths_allow()
    {
        // Two lengths of 4 7/8 in from each of 4 strips.
        var run = Run("    line 1/16, along top, of silver, wrap 1/2\n", "line silver: 1/16, 4 strips, 10 in long\n");
        Assert.Equal(8, run.Plan!.Advice.Makeable.Single().Count);
    }

    [Fact]
    public void A_role_takes_the_pattern_of_a_printed_tape()
    {
        var run = PlanRun.Of(
            Batch, ("gull.card", PlanRun.Card.Replace("front\n", "role band: sail\nfront\n", StringComparison.Ordinal)
                + "    tape full x 1/2, of band\n"),
            ("shelf.stash", PlanRun.Shelf + "tape sail: 1/2, 10 m long, front stripes cream red\n"));
        Assert.Empty(run.Findings);
        var tape = run.Plan!.Files.Designs.Single().Card.Pieces.Single(p => p.Kind == PieceKind.Tape);
        Assert.Equal(("sail", PaperPattern.Stripes), (tape.Paint.Paper, tape.Paint.Look.Pattern));
    }
}
