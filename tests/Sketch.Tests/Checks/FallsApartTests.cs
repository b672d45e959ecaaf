using CsCheck;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Reports;
using Sketch.Reports;
using Sketch.Tests.Layout;
using Sketch.Tests.Planning;
using Sketch.Tests.Reports;
using Sketch.Tests.Templates;
using Xunit;
using static System.StringComparison;

namespace Sketch.Tests.Checks;

/// <summary>In the lettering of the tests the letters of a word touch, and a blank of 0.8 of a capital's height parts two words.</summary>
public sealed class FallsApartTests
{
    // 11 characters across, so that the blank is 2/11 in wide and half of it 1/11 in, which is more than 1/16 and less than 1/8.
    private const string Apart = "  word 2 wide \"ahoy keeper\", of navy";

    [Fact]
    public void A_word_in_parts_is_a_note_with_their_number_and_the_narrowest_border_that_joins_them()
    {
        var finding = Fit.OnA2(Apart).The(FindingCatalogue.FallsApart);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("The word of line 4 falls into 2 parts when it is cut.", finding.Message);
        Assert.Contains("mat border 1/8,", finding.Hint, Ordinal);
    }

    [Fact]
    public void In_a_file_in_millimetres_the_border_is_on_whole_millimetres() =>
        Assert.Contains(
            "mat border 3,", Fit.InMillimetres("  word 55 wide \"ahoy keeper\", of navy").The(FindingCatalogue.FallsApart).Hint, Ordinal);

    [Fact]
    public void A_mat_that_joins_the_letters_removes_the_note() =>
        Assert.Empty(Fit.OnA2(Apart + "\n    mat border 1/8, of white").Of(FindingCatalogue.FallsApart));

    [Fact]
    public void A_mat_that_is_too_narrow_does_not_remove_the_note() =>
        Assert.Single(Fit.OnA2(Apart + "\n    mat border 1/16, of white").Of(FindingCatalogue.FallsApart));

    [Fact]
    public void An_outer_mat_can_join_letters_that_an_inner_mat_does_not() =>
        Assert.Empty(Fit.OnA2(Apart + "\n    mat border 1/16, of white\n    mat border 1/16, of gold").Of(FindingCatalogue.FallsApart));

    [Fact]
    public void The_border_of_the_hint_joins_and_a_step_less_does_not() =>
        Gen.Select(Gen.Int[8, 56], Gen.OneOf("ahoy keeper", "a b c", "fair  winds")).Sample(
            (width, words) =>
            {
                var text = $"  word {width}/16 wide \"{words}\", of navy";
                var hint = Fit.OnA2(text).The(FindingCatalogue.FallsApart).Hint;
                var border = Measure.Length(hint.Split("mat border ")[1].Split(',')[0]);
                var step = Sketch.Units.Length.Inch(0, 1, 16);
                Assert.Equal(1, Parts(text, border));
                Assert.True(border == step || Parts(text, border - step) > 1, text);
            },
            iter: 30);

    [Fact]
    public void Letters_of_the_built_in_font_are_counted_with_their_dots()
    {
        var card = Printed.Lay("card \"Test\"\nbase A2, of white\nfront\n  word 3 wide \"light\", of navy\n");
        // l, i and its dot, g, h, t.
        Assert.Equal(6, card.Piece("front/word").CutParts);
    }

    [Fact]
    public void A_word_whose_letters_touch_is_in_one_part() =>
        Assert.Empty(Fit.OnA2("  word 2 wide \"ahoy\", of navy").Of(FindingCatalogue.FallsApart));

    [Fact]
    public void A_window_that_cuts_a_panel_in_two_is_reported() =>
        Assert.Contains("window", Fit.OnA2("  panel 3 x 2, of navy\n    window 1/2 x full").The(FindingCatalogue.FallsApart).Hint, Ordinal);

    [Fact]
    public void Printed_words_are_not_cut() => Assert.Empty(Fit.OnA2("  text \"ahoy keeper\"").Of(FindingCatalogue.FallsApart));

    [Fact]
    public void The_table_of_sizes_gives_the_number_of_parts()
    {
        var table = SampleCard.Written(o => SizeText.Write(o, SizeList.Of(Laid.OnA2(Apart)), UnitSystem.Inches.Format()));
        Assert.Contains("word \"ahoy keeper\", 2 parts", table.Replace("\n", " ", Ordinal), Ordinal);
    }

    [Fact]
    public void A_plan_cuts_one_rectangle_and_gives_the_number_of_parts()
    {
        var run = PlanRun.Of(
            "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 3 of \"gull.card\"\n", ("gull.card", PlanRun.Card + Apart + "\n"));
        var piece = Assert.Single(run.Plan!.Pieces.Values, p => p.Name == "word");
        Assert.Equal((3, 2), (piece.Count, piece.Parts));
        Assert.Contains("word, 2 parts each", SampleCard.Written(o => PlanText.Write(o, run.Plan)), Ordinal);
    }

    [Fact]
    public void The_label_of_a_template_gives_the_number_of_parts() =>
        Assert.Contains(
            Printed.Of([Laid.OnA2(Apart)]).Sheets.SelectMany(s => s.Blocks).SelectMany(b => b.Block.Texts),
            t => t.Words.Contains("cut 1, 2 parts", Ordinal));

    private static int Parts(string word, Sketch.Units.Length border) =>
        Laid.OnA2($"{word}\n    mat border {border.Nanometres / 1_000_000m} mm, of white").Piece("front/word/mat").CutParts;
}
