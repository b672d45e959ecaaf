using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>The lettering of these tests is 0.8 of a capital's height for every character.</summary>
public sealed class WordsTooBigTests
{
    /// <summary>10 characters of 10 mm capitals are 80 mm wide; 60 mm hold capitals of 7.5.</summary>
    [Fact]
    public void Words_too_wide_for_their_strip_are_reported_with_letters_that_fit()
    {
        var finding = Assert.Single(Fit.InMillimetres("  rope: strip 60 x 20 \"Fair winds\", letters 10, of white"));
        Assert.Equal(FindingCatalogue.WordsTooBig, finding.Kind);
        Assert.Equal("“Fair winds” is 20 mm too wide for rope with letters 10 mm high.", finding.Message);
        Assert.Equal("Write letters 7.5, or make it 80 wide.", finding.Hint);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void The_letters_hinted_fit() => Assert.Empty(Fit.InMillimetres("  strip 60 x 20 \"Fair winds\", letters 7.5, of white"));

    [Fact]
    public void Words_too_tall_for_their_strip_are_reported() => Assert.Equal(
        "“Fair” is 2 mm too high for the strip of line 5 with letters 10 mm high.",
        Fit.InMillimetres("  strip 60 x 8 \"Fair\", letters 10, of white").The(FindingCatalogue.WordsTooBig).Message);

    /// <summary>
    /// "ahoy" is 3.2 times as wide as high; at a depth of 10 of 50 mm a pennant 40 mm wide is 32 mm wide (similar triangles).
    /// </summary>
    [Theory]
    [InlineData("letters 10", 0)]
    [InlineData("letters 10.5", 1)]
    [InlineData("capitals", 0)]
    public void Words_on_a_pennant_stay_between_its_slanted_sides(string letters, int found) =>
        Assert.Equal(found, Fit.InMillimetres($"  pennant 40 x 50 \"ahoy\", {letters}, of white").Of(FindingCatalogue.WordsTooBig).Count);

    [Fact]
    public void Letters_hinted_for_a_pennant_are_the_largest_that_fit() => Assert.Equal(
        "Write letters 10, or make the piece larger.",
        Fit.InMillimetres("  pennant 40 x 50 \"ahoy\", letters 14, of white").The(FindingCatalogue.WordsTooBig).Hint);

    [Theory]
    [InlineData("fit x 1 \"ahoy\"")]
    [InlineData("fit x 2 \"fair\" \"winds\"")]
    [InlineData("fit x fit \"fair winds\", letters 1/4")]
    [InlineData("1 \"A\"")]
    [InlineData("2 \"keepers\"")]
    public void Words_fit_a_pennant_that_follows_them_or_gives_their_letters(string pennant) =>
        Assert.Empty(Fit.OnA2($"  pennant {pennant}, of white").Of(FindingCatalogue.WordsTooBig));

    [Fact]
    public void Inches_are_reported_in_ruler_fractions()
    {
        var finding = Fit.OnA2("  rope: strip 2 x 1/2 \"Fair winds\", letters 3/8, of white").The(FindingCatalogue.WordsTooBig);
        Assert.Equal("“Fair winds” is 1 in too wide for rope with letters 3/8 in high.", finding.Message);
        Assert.Equal("Write letters 1/4, or make it 3 wide.", finding.Hint);
    }

    [Fact]
    public void A_width_beyond_the_face_is_not_proposed() => Assert.Equal(
        "Write letters 3/16.",
        Fit.OnA2("  strip 4 x 2 \"Fair winds and calm seas\", letters 3/8, of white").The(FindingCatalogue.WordsTooBig).Hint);

    [Fact]
    public void Words_on_an_upright_strip_get_a_turned_strip_as_the_hint() => Assert.EndsWith(
        ", or write it lying and turn it: 5 x 1/2, turn left 90.",
        Fit.OnA2("  strip 1/2 x 5 \"Fair winds\", letters 3/8, of white").The(FindingCatalogue.WordsTooBig).Hint, StringComparison.Ordinal);

    [Fact]
    public void Words_in_the_box_of_a_star_may_still_run_over_its_edge() => Assert.Equal(
        "“Fair” runs over the edge of lamp with letters 10 mm high.",
        Fit.InMillimetres("  lamp: star 40 \"Fair\", letters 10, of white").The(FindingCatalogue.WordsTooBig).Message);

    /// <summary>
    /// A banner of 60 x 10 mm has notches of 5 mm: 45 mm are left between one of them at the left end and one at the right at 55.
    /// </summary>
    [Theory]
    [InlineData("left", 32.5)]
    [InlineData("right", 27.5)]
    [InlineData("both", 30)]
    public void Words_stand_in_the_middle_of_what_the_notches_of_a_banner_leave(string swallowtail, double middle)
    {
        var card = Compiler.Compile(
            new("a.card", "card \"Lamp day\"\nunits mm\nbase 100 x 150, of white\nfront\n  banner 60 x 10 \"Fair\", left 0, "
                + $"swallowtail {swallowtail}, letters 5, of white\n"),
            new TestWorld()).Card!;
        Assert.Equal(middle, card.Pieces[0].Words!.Ink.Bounds.Centre.X, 6);
    }

    /// <summary>16 mm of words have room on 30 mm, but not on the 10 mm between two notches of 10 mm.</summary>
    [Fact]
    public void Words_over_a_notch_are_reported() => Assert.Equal(
        "“Fair” is 6 mm too wide for words with letters 5 mm high.",
        Fit.InMillimetres("  words: banner 30 x 10 \"Fair\", swallowtail both, notch 10, letters 5, of white")
            .The(FindingCatalogue.WordsTooBig).Message);

    /// <summary>16 mm of words, 3.175 mm at each end, two notches of 5 mm: 32.35 mm, up to 33.</summary>
    [Fact]
    public void A_banner_that_fits_its_words_is_longer_by_its_notches()
    {
        var card = Compiler.Compile(
            new("a.card", "card \"Lamp day\"\nunits mm\nbase 100 x 150, of white\nfront\n  banner fit x 10 \"Fair\", swallowtail both, "
                + "letters 5, of white\n"),
            new TestWorld());
        Assert.Equal(Fit.Mm(33), card.Card!.Pieces[0].Box.Width);
        Assert.DoesNotContain(card.Findings, f => f.Kind == FindingCatalogue.WordsTooBig);
    }

    [Theory]
    [InlineData("strip 60 x 20 \"Fair winds\"", "7.5")]
    [InlineData("star 40 \"Fair\"", null)]
    [InlineData("heart 40 \"Fair\"", null)]
    [InlineData("circle 20 \"Fair\"", null)]
    [InlineData("tag 20 \"a\" \"good\" \"light\"", null)]
    [InlineData("banner 40 x 12 \"Fair winds\", swallowtail both", null)]
    [InlineData("3 strip 20 x 8 \"I\" \"Ahoy there\" \"Ahoy\", in a column, gap 5", "2.5")]
    public void The_letters_proposed_are_the_largest_that_are_accepted(string piece, string? expected)
    {
        var hint = Fit.InMillimetres($"  {piece}, letters 15, of white").The(FindingCatalogue.WordsTooBig).Hint;
        var proposed = decimal.Parse(
            hint.Split("letters ")[1].Split([',', ' '])[0].TrimEnd('.'), System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(expected is null || hint.StartsWith($"Write letters {expected}", StringComparison.Ordinal), hint);
        Assert.Empty(With(proposed));
        Assert.NotEmpty(With(proposed + 0.5m));

        IReadOnlyList<Finding> With(decimal letters) =>
            Fit.InMillimetres(System.FormattableString.Invariant($"  {piece}, letters {letters}, of white"))
                .Of(FindingCatalogue.WordsTooBig);
    }

    [Fact]
    public void Copies_are_one_finding() =>
        Assert.Single(Fit.InMillimetres("  3 strip 15 x 5 \"Fair winds\", in a column, gap 5, of white").Of(FindingCatalogue.WordsTooBig));

    [Fact]
    public void A_strip_that_fits_its_words_fits() =>
        Assert.Empty(Fit.OnA2("  strip fit x 3/8 \"you see\", of kraft"));
}
