using System.Globalization;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Counts;

public sealed class BatchCountTests
{
    private const string Text = "batch \"Lamp day\"\nfor \"Cliff ward\", 20 cards\nmake 12 of \"fair-winds.card\"\n"
        + "make 6 of \"lamp.card\"\nmake 4 of \"fair-winds.card\"\n";

    private readonly FindingBag _findings = new();

    private BatchCount Count(params string[] entries)
    {
        var world = new TestWorld().WithText("fair-winds.card", "card \"Fair winds\"\n").WithText("lamp.card", "card \"The lamp\"\nfrnt\n");
        var source = new SourceText("day.batch", Text);
        var batch = Compiler.Compile(source, world).Batch!;
        var log = string.Concat(
            entries.Select((e, i) => $"2026-11-{10 + i} 09:00 {e} #{i.ToString("x16", CultureInfo.InvariantCulture)}\n"));
        return BatchCount.Of(batch, CountedCard.Of(batch, source.Path, world), CountLog.Read(new("day.count", log), _findings), _findings);
    }

    [Fact]
    public void Lines_that_make_cards_of_one_title_are_counted_together() =>
        Assert.Equal([("Fair winds", 16), ("The lamp", 6)], Count().Designs.Select(d => (d.Card, d.Make)));

    [Fact]
    public void Entries_add_up_and_take_back()
    {
        var design = Count("cut 12 \"Fair winds\"", "cut -2 \"Fair winds\"", "glued 5 \"Fair winds\"").Designs[0];

        Assert.Equal((10, 5, 0), (design.Of(CountStage.Cut), design.Of(CountStage.Glued), design.Of(CountStage.Given)));
    }

    [Fact]
    public void A_card_is_made_once_it_is_in_its_envelope_or_given()
    {
        var count = Count("glued 9 \"Fair winds\"", "enveloped 5 \"Fair winds\"", "given 6 \"The lamp\"");

        Assert.Equal([11, 0], count.Designs.Select(d => d.Left));
        Assert.Equal((11, 11), (count.Made, count.Left));
    }

    [Fact]
    public void A_card_at_a_later_stage_needs_no_more_cutting() => Assert.Equal(7, Count("glued 9 \"Fair winds\"").Designs[0].LeftToCut);

    [Fact]
    public void Spoilt_pieces_are_to_be_cut_again()
    {
        var design = Count("cut 16 \"Fair winds\"", "spoilt 3 \"Fair winds\"").Designs[0];

        Assert.Equal((13, 3, 3), (design.Of(CountStage.Cut), design.Spoilt, design.LeftToCut));
    }

    [Theory]
    [InlineData("cut -13 \"Fair winds\"")]
    [InlineData("glued -1 \"Fair winds\"")]
    [InlineData("spoilt 13 \"Fair winds\"")]
    public void An_entry_that_takes_more_than_there_is_is_an_error_and_not_counted(string entry)
    {
        var count = Count("cut 12 \"Fair winds\"", entry);

        Assert.Equal((12, 0), (count.Designs[0].Of(CountStage.Cut), count.Designs[0].Spoilt));
        var finding = Assert.Single(_findings.ToImmutable());
        Assert.Equal((FindingCatalogue.TakenTooMany, 2), (finding.Kind, finding.Location.Start.Line));
    }

    [Fact]
    public void A_card_that_the_batch_does_not_make_is_a_warning_and_keeps_its_count()
    {
        var count = Count("cut 12 \"Fair wind\"");

        Assert.Equal(("Fair wind", 0, 12), (count.Designs[2].Card, count.Designs[2].Make, count.Designs[2].Of(CountStage.Cut)));
        Assert.Equal("Did you mean \"Fair winds\"?", Assert.Single(_findings.ToImmutable()).Hint);
    }

    [Fact]
    public void Cards_are_given_to_recipients()
    {
        var recipient = Count("given 6 \"The lamp\" to \"Cliff ward\"", "given -1 \"The lamp\" to \"Cliff ward\"").Recipients.Single();

        Assert.Equal((20, 5, 15), (recipient.Cards, recipient.Given, recipient.Left));
    }

    // 5 in the 4 days from the 10th to the 13th; 17 left take 13.6 days, so they are made on the 27th.
    [Fact]
    public void The_pace_counts_days_from_the_first_entry_and_rounds_up() => Assert.Equal(
        new Pace(5, 4, new(2026, 11, 27)), Count("cut 5 \"Fair winds\"", "given 5 \"Fair winds\"").PaceOn(new(2026, 11, 13)));

    [Fact]
    public void There_is_no_pace_before_a_card_is_made() => Assert.Null(Count("cut 5 \"Fair winds\"").PaceOn(new(2026, 11, 13)));
}
