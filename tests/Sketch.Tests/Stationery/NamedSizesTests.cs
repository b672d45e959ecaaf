using CsCheck;
using Sketch.Stationery;
using Sketch.Units;
using Xunit;
using Size = Sketch.Units.Size;

namespace Sketch.Tests.Stationery;

public class NamedSizesTests
{
    private static readonly string?[] Systems = [null, "US", "ISO", "us", "?"];

    /// <summary>
    /// Card faces in sixteenths of an inch, as published in US size tables (a stationer's table of common sizes; a hobby card-size table).
    /// </summary>
    [Theory]
    [InlineData("US A1", 56, 78)] // 3 1/2 x 4 7/8
    [InlineData("4bar", 56, 78)]
    [InlineData("A2", 68, 88)] // 4 1/4 x 5 1/2
    [InlineData("US A2", 68, 88)]
    [InlineData("US A6", 72, 100)] // 4 1/2 x 6 1/4
    [InlineData("US A7", 80, 112)] // 5 x 7
    [InlineData("US A8", 84, 126)] // 5 1/4 x 7 7/8
    [InlineData("A9", 88, 136)] // 5 1/2 x 8 1/2
    [InlineData("no10", 62, 148)] // 3 7/8 x 9 1/4
    [InlineData("slimline", 56, 136)] // 3 1/2 x 8 1/2: common practice, no source
    public void A_US_card_has_the_published_size(string name, int width, int height) =>
        Assert.Equal(Sixteenths(width, height), Card(name).Found?.Size);

    /// <summary>ISO 216, and for DL a third of A4 (common practice), in millimetres.</summary>
    [Theory]
    [InlineData("ISO A2", 420, 594)]
    [InlineData("A3", 297, 420)]
    [InlineData("A4", 210, 297)]
    [InlineData("A5", 148, 210)]
    [InlineData("ISO A6", 105, 148)]
    [InlineData("ISO A7", 74, 105)]
    [InlineData("DL", 99, 210)]
    public void A_metric_card_has_the_size_of_its_sheet(string name, int width, int height) =>
        Assert.Equal(Millimetres(width, height), Card(name).Found?.Size);

    /// <summary>ISO 216: each size is half of the previous one along its long side, rounded down to the millimetre.</summary>
    [Theory]
    [InlineData("ISO A1", "ISO A2")]
    [InlineData("ISO A2", "A3")]
    [InlineData("A3", "A4")]
    [InlineData("A4", "A5")]
    [InlineData("A5", "ISO A6")]
    [InlineData("ISO A6", "ISO A7")]
    [InlineData("ISO A7", "ISO A8")]
    [InlineData("ISO A8", "ISO A9")]
    public void Each_ISO_size_is_half_of_the_previous_one(string larger, string smaller)
    {
        var whole = Card(larger).Found!.Size;
        var half = whole.Height.Nanometres / 2 / Length.NanometresPerMillimetre;
        Assert.Equal(new Size(Length.Millimetre(half), whole.Width), Card(smaller).Found!.Size);
    }

    [Theory]
    [InlineData("A6", "US A6", "ISO A6")]
    [InlineData("A7", "US A7", "ISO A7")]
    [InlineData("a8", "US A8", "ISO A8")]
    public void A_card_name_of_both_systems_is_ambiguous(string name, string us, string iso)
    {
        var answer = NamedSizes.FindCard(null, name);
        Assert.Equal(LookupOutcome.Ambiguous, answer.Outcome);
        Assert.Equal([us, iso], answer.Offers);
    }

    [Fact]
    public void Plain_A2_is_the_US_card_and_ISO_A2_is_not() =>
        Assert.NotEqual(Card("A2").Found, Card("ISO A2").Found);

    [Fact]
    public void An_offered_name_is_valid()
    {
        foreach (var size in NamedSizes.Cards)
        {
            Assert.Same(size, Card(size.Name).Found);
        }
    }

    [Theory]
    [InlineData("SlimLine", "slimline")]
    [InlineData("No 10", "no10")]
    [InlineData("number 10", "no10")]
    [InlineData("#10", "no10")]
    [InlineData("A-2", "A2")]
    [InlineData("4 bar", "A1")]
    public void Case_and_spaces_and_hyphens_do_not_matter(string written, string name) =>
        Assert.Equal(name, NamedSizes.FindCard(null, written).Found?.Name);

    [Theory]
    [InlineData("slimlin", "slimline")]
    [InlineData("A22", "A2")]
    [InlineData("no1O", "no10")]
    public void The_nearest_name_is_offered_first(string written, string nearest)
    {
        var answer = NamedSizes.FindCard(null, written);
        Assert.Equal(LookupOutcome.Unknown, answer.Outcome);
        Assert.Equal(nearest, answer.Offers[0]);
    }

    [Fact]
    public void A_name_unlike_any_other_gets_no_offer() => Assert.Empty(NamedSizes.FindCard(null, "lighthouse").Offers);

    [Fact]
    public void A_size_of_one_system_is_unknown_in_the_other() =>
        Assert.Equal(LookupOutcome.Unknown, NamedSizes.FindCard("US", "DL").Outcome);

    [Fact]
    public void Any_name_gets_an_answer() =>
        Gen.Select(Gen.Int[0, 4].Select(i => Systems[i]), Gen.String[0, 12]).Sample((system, name) =>
        {
            foreach (var answer in new[] { NamedSizes.FindCard(system, name), NamedSizes.FindEnvelope(system, name),
                NamedSizes.FindSheet(system, name) })
            {
                Assert.Equal(answer.Outcome == LookupOutcome.Found, answer.Found is not null);
            }
        });

    [Fact]
    public void Cards_and_sheets_are_upright() =>
        Assert.All(NamedSizes.Cards.Concat(NamedSizes.Sheets), s => Assert.True(s.Size.Width <= s.Size.Height, s.Name));

    /// <summary>Sixteenths of an inch: a paper maker's list of sheet sizes; 12 x 12: common practice, no source.</summary>
    [Theory]
    [InlineData("letter", 136, 176)] // 8 1/2 x 11
    [InlineData("legal", 136, 224)] // 8 1/2 x 14
    [InlineData("tabloid", 176, 272)] // 11 x 17
    [InlineData("12x12", 192, 192)]
    public void A_US_sheet_has_its_usual_size(string name, int width, int height) =>
        Assert.Equal(Sixteenths(width, height), NamedSizes.FindSheet(null, name).Found?.Size);

    [Fact]
    public void An_A6_sheet_has_the_ISO_size() =>
        Assert.Equal(Millimetres(105, 148), NamedSizes.FindSheet(null, "A6").Found?.Size);

    /// <summary>Table of printed sizes: letter is 215.9 x 279.4 mm, tabloid 279.4 x 431.8 mm.</summary>
    [Fact]
    public void Letter_has_the_published_size_in_millimetres() =>
        Assert.Equal(new(Length.Millimetre(215.9m), Length.Millimetre(279.4m)), NamedSizes.FindSheet(null, "letter").Found?.Size);

    private static SizeLookup Card(string written) =>
        written.Split(' ') is [var system and ("US" or "ISO"), var name]
            ? NamedSizes.FindCard(system, name) : NamedSizes.FindCard(null, written);

    private static Size Sixteenths(int width, int height) => new(Length.Inch(0, width, 16), Length.Inch(0, height, 16));

    private static Size Millimetres(int width, int height) => new(Length.Millimetre(width), Length.Millimetre(height));
}
