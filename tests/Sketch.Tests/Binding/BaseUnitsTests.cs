using Sketch.Diagnostics;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Binding;

/// <summary>A base that is written in other units than its file is taken to be in.</summary>
public sealed class BaseUnitsTests
{
    private const string Metric =
        "card \"Test\"\nbase 148 x 105 mm, fold top, of white\nfront\n  panel 138 x 95 mm, of navy\n  star 21 mm, top 0, of gold\n";

    [Fact]
    public void A_metric_base_without_units_is_one_note_in_place_of_those_on_sizes_off_the_ruler()
    {
        var finding = Assert.Single(Of(Metric));
        Assert.Equal(
            (FindingCatalogue.UnsaidUnits, "The base is in millimetres, but sizes are given in inches, because no line sets the units.",
                "Write units mm below the title.", "units mm\nbase"),
            (finding.Kind, finding.Message, finding.Hint, finding.Replacement));
    }

    [Fact]
    public void Its_replacement_leaves_nothing_to_report() =>
        Assert.Empty(Of(Metric.Replace("base", "units mm\nbase", StringComparison.Ordinal)));

    [Fact]
    public void Where_numbers_mean_inches_the_hint_says_so_and_nothing_is_replaced()
    {
        var finding = Assert.Single(Of(Metric + "  star 1, of gold\n"));
        Assert.Equal(("Write units mm below the title, and in behind each number that means inches.", null),
            (finding.Hint, finding.Replacement));
    }

    [Theory]
    [InlineData("card \"Test\"\npart lamp 20 mm x 20 mm\n  star 5 mm, of gold\nbase 148 x 105 mm, of white\nfront\n  use lamp\n")]
    public void Below_other_lengths_nothing_is_replaced(string card) =>
        Assert.Null(Assert.Single(Of(card), f => f.Kind == FindingCatalogue.UnsaidUnits).Replacement);

    [Fact]
    public void Lines_end_as_those_of_the_file_do() =>
        Assert.Equal("units mm\r\nbase", Assert.Single(Of(Metric.ReplaceLineEndings("\r\n"))).Replacement);

    [Theory]
    [InlineData("card \"Test\"\nunits in\nbase 148 x 105 mm, of white\nfront\n  panel 138 x 95 mm, of navy\n")]
    [InlineData("card \"Test\"\nbase A2, of white\nfront\n  panel 95 x 138 mm, of navy\n")]
    [InlineData("card \"Test\"\nbase 5 x 7, of white\nfront\n  panel 95 x 138 mm, of navy\n")]
    [InlineData("card \"Test\"\nlike \"metric.card\"\n")]
    [InlineData("card \"Test\"\nlike \"metric.card\"\nbase fold left\n")]
    public void Where_units_are_said_or_the_base_is_not_written_in_metric_ones_sizes_are_held_against_the_ruler(string card) =>
        Assert.All(Of(card), f => Assert.Equal(FindingCatalogue.OffTheRuler, f.Kind));

    [Theory]
    [InlineData("148 x 105", "148 x 105 mm")]
    [InlineData("120 x 30", null)]
    [InlineData("42 x 55", null)]
    [InlineData("1050 x 148 mm", null)]
    public void A_base_larger_than_any_sheet_is_reported_with_millimetres_where_those_make_a_card(string size, string? replacement)
    {
        var finding = Assert.Single(Of($"card \"Test\"\nbase {size}, of white\n"), f => f.Kind == FindingCatalogue.HugeBase);
        Assert.Equal((Severity.Warning, replacement), (finding.Severity, finding.Replacement));
    }

    // Common practice, no source: the longest sheets sold for cards have 24 in.
    [Theory]
    [InlineData("12 x 24")]
    [InlineData("148 x 105 mm")]
    public void A_base_that_a_sheet_holds_is_not(string size) =>
        Assert.DoesNotContain(Of($"card \"Test\"\nbase {size}, of white\n"), f => f.Kind == FindingCatalogue.HugeBase);

    private static IReadOnlyList<Finding> Of(string card) =>
        [.. Compiler.Compile(new SourceText("a.card", card), new TestSurroundings().WithText("metric.card", Metric)).Findings];
}
