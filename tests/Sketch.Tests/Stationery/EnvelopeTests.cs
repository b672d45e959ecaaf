using CsCheck;
using Sketch.Stationery;
using Sketch.Units;
using Xunit;
using Size = Sketch.Units.Size;

namespace Sketch.Tests.Stationery;

public class EnvelopeTests
{
    /// <summary>Sixteenths of an inch, as published in US envelope tables.</summary>
    [Theory]
    [InlineData("A1", 82, 58)] // 3 5/8 x 5 1/8
    [InlineData("A2", 92, 70)] // 4 3/8 x 5 3/4
    [InlineData("5bar", 88, 66)] // 4 1/8 x 5 1/2
    [InlineData("A6", 104, 76)] // 4 3/4 x 6 1/2
    [InlineData("A7", 116, 84)] // 5 1/4 x 7 1/4
    [InlineData("A8", 130, 88)] // 5 1/2 x 8 1/8
    [InlineData("A9", 140, 92)] // 5 3/4 x 8 3/4
    [InlineData("no10", 152, 66)] // 4 1/8 x 9 1/2
    public void A_US_envelope_has_the_published_size(string name, int width, int height) =>
        Assert.Equal(new(Length.Inch(0, width, 16), Length.Inch(0, height, 16)), NamedSizes.FindEnvelope("US", name).Found?.Size);

    /// <summary>ISO 269 and DIN 678, in millimetres; C8 from memory.</summary>
    [Theory]
    [InlineData("C4", 324, 229)]
    [InlineData("C5", 229, 162)]
    [InlineData("C6", 162, 114)]
    [InlineData("C7", 114, 81)]
    [InlineData("C8", 81, 57)]
    [InlineData("B6", 176, 125)]
    [InlineData("DL", 220, 110)]
    [InlineData("C6/C5", 229, 114)]
    [InlineData("C7/C6", 162, 81)]
    public void A_metric_envelope_has_the_size_of_its_standard(string name, int width, int height) =>
        Assert.Equal(new(Length.Millimetre(width), Length.Millimetre(height)), NamedSizes.FindEnvelope(null, name).Found?.Size);

    [Fact]
    public void Envelopes_are_landscape() => Assert.All(NamedSizes.Envelopes, e => Assert.True(e.Size.Width >= e.Size.Height, e.Name));

    [Theory]
    [InlineData(null, "A5", "C5")]
    [InlineData("ISO", "A6", "C6")]
    [InlineData(null, "slimline", "no10")]
    [InlineData(null, "A2", "US A2")]
    public void An_envelope_is_also_found_by_its_card(string? system, string card, string envelope) =>
        Assert.Equal(envelope, NamedSizes.FindEnvelope(system, card).Found?.Name);

    [Fact]
    public void An_envelope_name_of_both_systems_is_ambiguous() =>
        Assert.Equal(["US A6", "ISO A6"], NamedSizes.FindEnvelope(null, "A6").Offers);

    [Fact]
    public void Every_named_card_fits_its_usual_envelope() =>
        Assert.All(NamedSizes.Cards.Where(c => c.Envelope is not null), card =>
            Assert.True(EnvelopeFit.Of(card.Size, NamedSizes.UsualEnvelope(card.Size)!.Size).Verdict >= EnvelopeVerdict.Close, card.Name));

    /// <summary>Total clearance along the long and the short side in eighths of an inch, calculated from the US tables.</summary>
    [Theory]
    [InlineData("A1", 2, 1)] // 5 1/8 - 4 7/8, 3 5/8 - 3 1/2
    [InlineData("A2", 2, 1)] // 5 3/4 - 5 1/2, 4 3/8 - 4 1/4
    [InlineData("A6", 2, 2)] // 6 1/2 - 6 1/4, 4 3/4 - 4 1/2
    [InlineData("A7", 2, 2)] // 7 1/4 - 7, 5 1/4 - 5
    [InlineData("A8", 2, 2)] // 8 1/8 - 7 7/8, 5 1/2 - 5 1/4
    [InlineData("A9", 2, 2)] // 8 3/4 - 8 1/2, 5 3/4 - 5 1/2
    [InlineData("no10", 2, 2)] // 9 1/2 - 9 1/4, 4 1/8 - 3 7/8
    public void A_US_card_has_the_usual_clearance(string name, int alongLong, int alongShort)
    {
        var fit = EnvelopeFit.Of(NamedSizes.FindCard("US", name).Found!.Size, NamedSizes.FindEnvelope("US", name).Found!.Size);
        Assert.Equal((Length.Inch(0, alongLong, 8), Length.Inch(0, alongShort, 8)), (fit.Long, fit.Short));
    }

    /// <summary>Clearances in millimetres, calculated from ISO 216 and ISO 269.</summary>
    [Theory]
    [InlineData("ISO", "A6", 14, 9)] // 162 - 148, 114 - 105
    [InlineData("ISO", "A5", 19, 14)] // 229 - 210, 162 - 148
    [InlineData("ISO", "DL", 10, 11)] // 220 - 210, 110 - 99
    public void A_metric_card_has_the_usual_clearance(string system, string name, int alongLong, int alongShort)
    {
        var card = NamedSizes.FindCard(system, name).Found!.Size;
        var fit = EnvelopeFit.Of(card, NamedSizes.UsualEnvelope(card)!.Size);
        Assert.Equal((Length.Millimetre(alongLong), Length.Millimetre(alongShort)), (fit.Long, fit.Short));
    }

    [Theory]
    [InlineData(70, 80, EnvelopeVerdict.TooLarge)]
    [InlineData(68, 92, EnvelopeVerdict.TooLarge)] // of the very length of the envelope
    [InlineData(69, 88, EnvelopeVerdict.Tight)] // 1/16 left
    [InlineData(68, 88, EnvelopeVerdict.Close)] // the A2 card: 1/8 and 1/4 left
    [InlineData(66, 88, EnvelopeVerdict.Good)] // 1/4 and 1/4 left
    [InlineData(88, 66, EnvelopeVerdict.Good)]
    public void The_smaller_clearance_decides(int widthSixteenths, int heightSixteenths, EnvelopeVerdict verdict) =>
        Assert.Equal(verdict, EnvelopeFit.Of(Sixteenths(widthSixteenths, heightSixteenths), NamedSizes.FindEnvelope("US", "A2").Found!.Size)
            .Verdict);

    [Fact]
    public void An_upright_card_is_turned_to_fit_a_landscape_envelope() =>
        Assert.True(EnvelopeFit.Of(Sixteenths(68, 88), Sixteenths(92, 70)).Turned);

    [Fact]
    public void Turning_the_card_or_the_envelope_does_not_change_the_clearance() =>
        Gen.Int[1, 4000].Array[4].Sample(s =>
        {
            var (card, envelope) = (Sixteenths(s[0], s[1]), Sixteenths(s[2], s[3]));
            var fit = EnvelopeFit.Of(card, envelope);
            Assert.Equal((fit.Long, fit.Short),
                (EnvelopeFit.Of(card.Turned(), envelope).Long, EnvelopeFit.Of(card, envelope.Turned()).Short));
        });

    [Theory]
    [InlineData(80, 112, "US A7")] // 5 x 7 written as a size
    [InlineData(112, 80, "US A7")]
    [InlineData(80, 80, "5 1/4 in x 5 1/4 in")]
    [InlineData(96, 96, "6 1/4 in x 6 1/4 in")]
    [InlineData(56, 84, "5bar")] // 3 1/2 x 5 1/4: too long for the US A1; 1/4 and 5/8 are left in 4 1/8 x 5 1/2
    public void A_size_without_a_name_gets_the_smallest_envelope_that_it_fits(int width, int height, string envelope) =>
        Assert.Equal(envelope, NamedSizes.UsualEnvelope(Sixteenths(width, height))?.Name);

    [Fact]
    public void A_card_larger_than_every_envelope_has_none() =>
        Assert.Null(NamedSizes.UsualEnvelope(new(Length.Inch(12), Length.Inch(18))));

    private static Size Sixteenths(int width, int height) => new(Length.Inch(0, width, 16), Length.Inch(0, height, 16));
}
