using Sketch.Diagnostics;
using Sketch.Planning.Post;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.Post;

/// <summary>Envelopes held against the letter limits of postal services.</summary>
public class PostalVerdictTests
{
    private static PostalVerdict Of(string service, Size envelope, double thickness = 2, double weight = 10, bool hasBumps = false) =>
        PostalVerdict.Of(
            new(null, envelope, Spread.Exactly(thickness), Spread.Exactly(weight), hasBumps), LetterClass.Known)
            .Single(v => v.Service == service);

    private static Size Inches(double width, double height) =>
        new(Length.Millimetre((decimal)(width * 25.4)), Length.Millimetre((decimal)(height * 25.4)));

    private static Size Millimetres(decimal width, decimal height) => new(Length.Millimetre(width), Length.Millimetre(height));

    // The usual envelopes, worked out from the published limits: Domestic Mail Manual 101.1.1 and 1.2 (length 5 to 11 1/2 in, height 3 1/2
    // to 6 1/8 in, ratio 1.3 to 2.5); Royal Mail Letter 240 x 165 mm; Standardbrief 140 to 235 x 90 to 125 mm, ratio 1.41.
    [Theory]
    [InlineData(5.125, 3.625, "letter", "letter", "Kompaktbrief")]
    [InlineData(5.75, 4.375, "letter", "letter", "Kompaktbrief")]
    [InlineData(6.5, 4.75, "letter", "letter", "Kompaktbrief")]
    [InlineData(7.25, 5.25, "letter", "letter", "Grossbrief")]
    [InlineData(8.75, 5.75, "letter", "letter", "Grossbrief")]
    [InlineData(9.5, 4.125, "letter", "large letter", "Grossbrief")]
    [InlineData(5.25, 5.25, "letter, surcharge", "letter", "Grossbrief")]
    [InlineData(6.25, 6.25, "large envelope", "letter", "Grossbrief")]
    [InlineData(8, 8, "large envelope", "large letter", "Grossbrief")]
    [InlineData(162 / 25.4, 114 / 25.4, "letter", "letter", "Standardbrief")]
    [InlineData(220 / 25.4, 110 / 25.4, "letter", "letter", "Standardbrief")]
    [InlineData(229 / 25.4, 162 / 25.4, "large envelope", "letter", "Grossbrief")]
    public void The_usual_envelopes_go_as_published(double width, double height, string us, string uk, string germany)
    {
        var size = Inches(width, height);
        Assert.Equal([us, uk, germany], ((string[])["US Postal Service", "Royal Mail", "Deutsche Post"]).Select(s => Of(s, size).Class));
    }

    // 5 mm in the United Kingdom, Germany, Canada, Australia and Belgium; 1/4 in in the United States.
    [Theory]
    [InlineData(3.37, "letter", "letter")]
    [InlineData(4.37, "letter", "letter")]
    [InlineData(5.37, "letter", "large letter")]
    [InlineData(6.4, "large envelope", "large letter")]
    public void A_thick_card_is_no_letter(double thickness, string us, string uk)
    {
        var size = Inches(5.75, 4.375);
        Assert.Equal((us, uk), (Of("US Postal Service", size, thickness).Class, Of("Royal Mail", size, thickness).Class));
    }

    [Fact]
    public void A_reason_says_what_would_keep_it_a_letter() => Assert.Equal(
        ["It is 5.4 mm thick, and a letter is at most 5 mm: make it 0.4 mm flatter."],
        Of("Royal Mail", Inches(5.75, 4.375), 5.37).Reasons);

    [Fact]
    public void A_square_envelope_costs_a_surcharge_and_an_oblong_one_would_not() => Assert.Equal(
        "It is as long as it is high, and a letter is at least 1.3 times as long: use a longer envelope.",
        Assert.Single(Of("US Postal Service", Inches(5.25, 5.25)).Reasons));

    [Fact]
    public void A_small_envelope_is_no_letter() => Assert.Contains(
        "at least 127: use a larger envelope", Of("US Postal Service", Millimetres(114, 81)).Reasons[0], StringComparison.Ordinal);

    [Fact]
    public void Foam_and_gems_may_cost_a_surcharge() => Assert.Contains(
        "Foam and gems", Assert.Single(Of("US Postal Service", Inches(5.75, 4.375), hasBumps: true).Reasons), StringComparison.Ordinal);

    [Theory]
    [InlineData(20, "Standardbrief")]
    [InlineData(20.1, "Kompaktbrief")]
    [InlineData(501, "parcel")]
    public void A_heavy_card_goes_in_a_higher_class(double weight, string goesAs) =>
        Assert.Equal(goesAs, Of("Deutsche Post", Millimetres(162, 114), weight: weight).Class);

    [Fact]
    public void Each_limit_has_a_source_and_a_date() =>
        Assert.All(LetterClass.Known, c => Assert.True(c.Source.Length > 5 && DateOnly.TryParse(c.Checked, out _), c.Class));

    [Theory]
    [InlineData("Harbour post,letter,140,240", "This line has 4 cells instead of 16.")]
    [InlineData("Harbour post,letter,140,240,90,165,,5 mm,100,,,,,office,S,2026-11-25", "\"5 mm\" is not a number greater than zero.")]
    public void A_line_of_limits_that_cannot_be_read_is_an_error_at_its_place(string line, string message)
    {
        var findings = new FindingBag();
        Assert.Empty(LetterClass.Read(new SourceText("post.csv", "# ours\n" + line + "\n"), findings));
        var finding = Assert.Single(findings.ToImmutable());
        Assert.Equal((FindingCatalogue.BadPostLimits, 2, message), (finding.Kind, finding.Location.Start.Line, finding.Message));
    }
}
