using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>
/// Ratios are those worked out in Web Content Accessibility Guidelines terms: #767676 on white 4.54, #777777 4.478, #949494 3.03, #959595
/// 2.995.
/// </summary>
public sealed class WordsTooFaintTests
{
    [Theory]
    [InlineData("#767676", false)]
    [InlineData("#777777", true)]
    public void Small_letters_need_four_and_a_half(string ink, bool isReported) =>
        Assert.Equal(isReported, Fit.OnA2($"  text \"Calm seas\", letters 1/8, of {ink}")
            .Any(f => f.Kind == FindingCatalogue.WordsTooFaint));

    [Theory]
    [InlineData("#949494", false)]
    [InlineData("#959595", true)]
    public void Large_letters_need_three(string ink, bool isReported) =>
        Assert.Equal(isReported, Fit.OnA2($"  text \"Calm seas\", letters 1/4, of {ink}")
            .Any(f => f.Kind == FindingCatalogue.WordsTooFaint));

    /// <summary>18 pt x 25.4/72 mm x 0.727 = 4.6165 mm; 18 pt is where WCAG 2.2 calls text large.</summary>
    [Theory]
    [InlineData("4.61 mm", true)]
    [InlineData("4.62 mm", false)]
    public void Letters_are_large_from_the_capitals_of_eighteen_points(string letters, bool isReported) =>
        Assert.Equal(isReported, Fit.OnA2($"  text \"Calm seas\", letters {letters}, of #777777")
            .Any(f => f.Kind == FindingCatalogue.WordsTooFaint));

    [Fact]
    public void Both_colours_and_the_ratio_are_named()
    {
        var finding = Assert.Single(Fit.OnA2("  text \"Calm seas\", letters 1/8, of #777777"));
        Assert.Equal("“Calm seas” in #777777 on white (#ffffff) has a contrast of 4.47 to 1; letters 1/8 in high need 4.5.",
            finding.Message);
        Assert.Equal("Write of black.", finding.Hint);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void Words_on_a_piece_are_seen_against_that_piece() => Assert.Equal(
        "Write ink white and letter it by hand, for example with a white gel pen; or print the words on a light label that lies on it: "
        + "strip fit x fit \"Fair\", letters 1/4, of white.",
        Fit.OnA2("  strip 3 x 1/2 \"Fair\", ink black, of #000080").The(FindingCatalogue.WordsTooFaint).Hint);

    [Theory]
    [InlineData("  strip 3 x 1/2 \"Fair\", ink white, of #000080")]
    [InlineData("  strip 3 x 1/2, of #000080\n    strip fit x fit \"Fair\", letters 1/4, of white")]
    [InlineData("  panel 3 x 2, of #000080\n    text \"Fair\", ink white")]
    [InlineData("  panel 3 x 2, of #000080\n    strip fit x fit \"Fair\", letters 3/16, of white")]
    public void The_proposal_for_dark_paper_is_legible(string pieces) =>
        Assert.Empty(Fit.OnA2(pieces).Of(FindingCatalogue.WordsTooFaint));

    [Fact]
    public void Copies_of_a_line_get_one_ink_that_suits_them_all() => Assert.StartsWith(
        "Neither black nor white stands out",
        Fit.OnA2("  2 strip 2 x 1/2 \"Fair\", in a column, gap 1/4, of #000080 and #ffffff, in turn").The(FindingCatalogue.WordsTooFaint)
            .Hint, StringComparison.Ordinal);

    /// <summary>The colour word black is a dark grey, with a contrast of 2.9 on this ground; true black has 3.65.</summary>
    [Fact]
    public void True_black_is_proposed_where_nothing_else_is_enough()
    {
        const string line = "  strip 3 x 1/2 \"Fair\", of #666666, ink ";
        Assert.Equal("Write ink #000000.", Fit.OnA2(line + "#444444").The(FindingCatalogue.WordsTooFaint).Hint);
        Assert.Empty(Fit.OnA2(line + "#000000").Of(FindingCatalogue.WordsTooFaint));
    }

    [Theory]
    [InlineData("  strip 3 x 1/2 \"Fair\", of gold, ink white")]
    [InlineData("  panel 3 x 2, of pearl\n    text \"Fair\", of white")]
    [InlineData("  panel 3 x 2, of silver\n    word 2 wide \"Fair\", of white")]
    public void Light_words_chosen_for_a_paper_that_shimmers_are_a_note(string pieces)
    {
        var finding = Fit.OnA2(pieces).The(FindingCatalogue.WordsShimmer);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.DoesNotContain("black", finding.Hint, StringComparison.Ordinal);
        Assert.Empty(Fit.OnA2(pieces).Of(FindingCatalogue.WordsTooFaint));
    }

    [Fact]
    public void Text_is_seen_against_what_it_lies_on() =>
        Assert.Single(Fit.OnA2("  panel 3 x 2, of #000080\n    text \"Fair\", of black").Of(FindingCatalogue.WordsTooFaint));

    [Fact]
    public void Text_over_a_neighbour_is_seen_against_the_neighbour()
    {
        const string hill = "  panel full x full, of #000080\n    strip full x 2, bottom 0, of white\n    text \"Fair\", bottom 1/2, of ";
        Assert.Empty(Fit.OnA2(hill + "#000080").Of(FindingCatalogue.WordsTooFaint));
        Assert.StartsWith("“Fair” in white (#ffffff) on white (#ffffff) ",
            Fit.OnA2(hill + "white").The(FindingCatalogue.WordsTooFaint).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_reaches_beyond_its_piece_is_seen_against_both_papers() => Assert.StartsWith(
        "“Fair winds” in black (#1f1e1d) on #000080 ", Fit.OnA2("  panel 3/4 x 2, of #000080\n    text \"Fair winds\", of black")
            .The(FindingCatalogue.WordsTooFaint).Message, StringComparison.Ordinal);

    [Fact]
    public void Light_text_that_reaches_beyond_its_dark_piece_is_too_faint_there() => Assert.StartsWith(
        "“Fair winds” in white (#ffffff) on white (#ffffff) ",
        Fit.OnA2("  panel 3/4 x 2, of #000080\n    text \"Fair winds\", of white").The(FindingCatalogue.WordsTooFaint)
            .Message, StringComparison.Ordinal);

    [Fact]
    public void What_lies_on_top_of_text_is_not_behind_it() => Assert.Empty(Fit.OnA2(
        "  text \"Fair\", letters 1/4, of black\n  strip 1 x 1/16, of #000080").Of(FindingCatalogue.WordsTooFaint));

    [Fact]
    public void Text_on_an_envelope_is_seen_against_the_envelope() => Assert.Single(
        Fit.In("card \"Lamp day\"\nbase A2, fold left, of white\nenvelope US A2, of #000080\n  text \"Fair\", of black")
            .Of(FindingCatalogue.WordsTooFaint));

    [Fact]
    public void A_cut_out_word_needs_three_against_what_it_lies_on() => Assert.Equal(
        "“Fair” in #959595 on white (#ffffff) has a contrast of 2.99 to 1; cut-out words need 3.",
        Fit.OnA2("  word 2 wide \"Fair\", of #959595").The(FindingCatalogue.WordsTooFaint).Message);

    [Fact]
    public void A_mat_behind_a_cut_out_word_is_what_it_lies_on() =>
        Assert.Empty(Fit.OnA2("  word 2 wide \"Fair\", of #ffffff\n    mat border 1/16, of #000000"));

    [Fact]
    public void On_a_patterned_paper_the_nearest_colour_counts() => Assert.Equal(
        "“Fair” in black on sky (#222222) has a contrast of 1.31 to 1; letters 1/4 in high need 3.",
        Fit.In("card \"Lamp day\"\nbase A2, fold left, of white\nrole sky: dots #ffffff #222222\nfront\n  panel 3 x 2, of sky\n    "
            + "text \"Fair\", letters 1/4, of #000000")
            .The(FindingCatalogue.WordsTooFaint).Message);

    [Theory]
    [InlineData("  strip 3 x 1/2 \"Fair\", of #000080")]
    [InlineData("  strip 3 x 1/2 \"Fair\", turn left 5, of #000080")]
    [InlineData("  panel 3 x 2, of #000080\n    text \"Fair\"")]
    [InlineData("  panel 3 x 2, of #000080\n    window circle 1, top 1/8\n    text \"Fair\", bottom 1/4")]
    public void Words_without_an_ink_are_printed_in_black_and_reported_where_that_is_too_faint(string pieces) => Assert.StartsWith(
        "“Fair” in black, as no ink is named, on #000080 has a contrast of 1.31 to 1;",
        Fit.OnA2(pieces).The(FindingCatalogue.WordsTooFaint).Message, StringComparison.Ordinal);

    [Fact]
    public void Unnamed_black_ink_differs_from_named_black_ink()
    {
        Assert.Null(Ink(""));
        Assert.Equal(Ink(", ink #000000")!.Look.Ground, Sketch.Panels.Paint.BlackInk.Look.Ground);

        static Sketch.Panels.Paint? Ink(string clause) => Compiler.Compile(
            new($"a.card", $"card \"Lamp day\"\nbase A2, of white\nfront\n  strip 3 x 1/2 \"Fair\", of white{clause}\n"),
                new TestWorld()).Card!.Pieces[0].Words!.NamedInk;
    }
}
