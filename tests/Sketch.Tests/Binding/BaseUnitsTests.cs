using Sketch.Diagnostics;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Binding;

/// <summary>A base written in units other than those assumed for its file.</summary>
public sealed class BaseUnitsTests
{
    private const string Metric =
        "card \"Test\"\nbase 148 x 105 mm, fold top, of white\nfront\n  panel 138 x 95 mm, of navy\n  star 21 mm, top 0, of gold\n";

    [Fact]
    public void A_metric_base_without_units_is_one_note_instead_of_many_about_the_ruler()
    {
        var finding = Assert.Single(Of(Metric));
        Assert.Equal(
            (FindingCatalogue.MissingUnits, "The base is in millimetres, but sizes are given in inches, because no line sets the units.",
                "Write units mm below the title.", "units mm\nbase"),
            (finding.Kind, finding.Message, finding.Hint, finding.Replacement));
    }

    [Fact]
    public void Its_fix_leaves_nothing_to_report() =>
        Assert.Empty(Of(Metric.Replace("base", "units mm\nbase", StringComparison.Ordinal)));

    [Fact]
    public void Where_bare_numbers_are_inches_the_hint_says_so_without_a_fix()
    {
        var finding = Assert.Single(Of(Metric + "  star 1, of gold\n"));
        Assert.Equal(("Write units mm below the title, and in behind each number that means inches.", null),
            (finding.Hint, finding.Replacement));
    }

    [Theory]
    [InlineData("card \"Test\"\npart lamp 20 mm x 20 mm\n  star 5 mm, of gold\nbase 148 x 105 mm, of white\nfront\n  use lamp\n")]
    public void After_other_lengths_there_is_no_fix(string card) =>
        Assert.Null(Assert.Single(Of(card), f => f.Kind == FindingCatalogue.MissingUnits).Replacement);

    [Fact]
    public void The_fix_keeps_the_line_endings_of_the_file() =>
        Assert.Equal("units mm\r\nbase", Assert.Single(Of(Metric.ReplaceLineEndings("\r\n"))).Replacement);

    [Theory]
    [InlineData("card \"Test\"\nunits in\nbase 148 x 105 mm, of white\nfront\n  panel 138 x 95 mm, of navy\n")]
    [InlineData("card \"Test\"\nbase A2, of white\nfront\n  panel 95 x 138 mm, of navy\n")]
    [InlineData("card \"Test\"\nbase 5 x 7, of white\nfront\n  panel 95 x 138 mm, of navy\n")]
    [InlineData("card \"Test\"\nlike \"metric.card\"\n")]
    [InlineData("card \"Test\"\nlike \"metric.card\"\nbase fold left\n")]
    public void With_units_or_a_base_in_inches_sizes_are_checked_against_the_ruler(string card) =>
        Assert.All(Of(card), f => Assert.Equal(FindingCatalogue.OffTheRuler, f.Kind));

    [Theory]
    [InlineData("148 x 105", "148 x 105 mm")]
    [InlineData("120 x 30", null)]
    [InlineData("42 x 55", null)]
    [InlineData("1050 x 148 mm", null)]
    public void A_base_larger_than_any_sheet_is_reported_and_millimetres_are_offered_if_they_make_a_card(string size, string? replacement)
    {
        var finding = Assert.Single(Of($"card \"Test\"\nbase {size}, of white\n"), f => f.Kind == FindingCatalogue.HugeBase);
        Assert.Equal((Severity.Warning, replacement), (finding.Severity, finding.Replacement));
    }

    // Common practice, no source: the longest sheets sold for cards have 24 in.
    [Theory]
    [InlineData("12 x 24")]
    [InlineData("148 x 105 mm")]
    public void A_base_that_fits_a_sheet_is_not_reported(string size) =>
        Assert.DoesNotContain(Of($"card \"Test\"\nbase {size}, of white\n"), f => f.Kind == FindingCatalogue.HugeBase);

    private static IReadOnlyList<Finding> Of(string card) =>
        [.. Compiler.Compile(new SourceText("a.card", card), new TestWorld().WithText("metric.card", Metric)).Findings];
}
