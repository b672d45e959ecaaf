using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Tests.Language;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Syntax;

/// <summary>Every limit of the language: a text at the limit is laid out, and one more is reported at its position.</summary>
public class LimitTests
{
    private const string Head = "card \"Test\"\nbase A2, fold left, of white\nfront\n";

    /// <summary>The limits in the table of the reference.</summary>
    public static TheoryData<string, string> Documented => new()
    {
        { "characters in a file", Written(Limits.Characters) },
        { "levels of indentation", $"{Limits.Depth}; {Limits.DepthWithParts} after parts are expanded" },
        { "lines without indentation", Written(Limits.Lines) },
        { "copies of a line", Written(Limits.Copies) },
        { "pieces with mats in a card, counted on every copy", Written(Limits.Pieces) },
        { "mats beneath a piece", Written(Limits.Mats) },
        { "letters in a card, counted on every copy", Written(Limits.Letters) },
        { "letters cut out as words or cut round as sentiments, counted on every copy", Written(Limits.CutOutLetters) },
        { "corners and curves of all outlines but letters of text, with mats and windows", Written(Limits.Corners) },
        { "windows", Written(Limits.Windows) },
        { "holes, counted in every layer that a window goes through", Written(Limits.Holes) },
        { "siblings under which others are tucked", Written(Limits.Tucked) },
        { "pieces through which a size or place is reached", Written(Limits.Chain) },
        { "cards each like the next", Written(Limits.LikeCards) },
    };

    [Theory]
    [MemberData(nameof(Documented))]
    public void The_reference_lists_every_limit(string what, string most) =>
        Assert.Contains($"| {what} | {most} |", File.ReadLines(LanguageReference.FilePath()));

    [Theory]
    [InlineData("500 gem 1/8, in a grid 50 across, of red")]
    [InlineData("gem 1/8, in a grid 10 x 50, of red")]
    [InlineData("250 panel 1/8 x 1/8, in a grid 50 across, of red\n    mat +1/16, of navy")]
    [InlineData("10 panel 1 x 1, of red\n    7 panel 1/8 x 1/8, of red\n      6 gem 1/64, of red")]
    public void Five_hundred_pieces_with_their_mats_are_laid_out(string lines) => Assert.Empty(Beyond(lines));

    [Theory]
    [InlineData("501 gem 1/8, of red", 4, 3)]
    [InlineData("999999999 gem 1/8, in a row, of red", 4, 3)]
    [InlineData("0 gem 1/8, of red", 4, 3)]
    [InlineData("gem 1/8, in a grid 501 x 2, of red", 4, 22)]
    [InlineData("gem 1/8, in a grid 2 x 501, of red", 4, 26)]
    public void A_count_out_of_range_is_reported_at_its_position_and_no_copy_is_laid_out(string line, int row, int column)
    {
        var compilation = Compile(line + "\n  star 1, of blue\n");

        var finding = Assert.Single(compilation.Findings, f => f.Kind == FindingCatalogue.BadCount);
        Assert.Equal(new LinePosition(row, column), finding.Location.Start);
        Assert.InRange(compilation.Card!.Pieces.Count(p => p.Kind == PieceKind.Gem), 0, 1);
    }

    [Theory]
    [InlineData("501 gem 1/8, of red")]
    [InlineData("gem 1/8, in a grid 501 x 2, of red")]
    [InlineData("gem 1/8, of red, spare 501")]
    public void The_hint_for_a_count_that_is_too_large_gives_the_limit(string line) => Assert.Equal(
        "Write 500 or less.", Assert.Single(Compile(line).Findings, f => f.Kind == FindingCatalogue.BadCount).Hint);

    [Fact]
    public void A_line_with_a_count_out_of_range_has_no_other_finding() => Assert.Equal(
        FindingCatalogue.BadCount,
            Assert.Single(Compile("lamps: 501 star 1, of red\n    item 3: of blue\n  gem 1/8, above lamps, of red").Findings).Kind);

    [Theory]
    [InlineData("251 panel 1/8 x 1/8, in a grid 50 across, of red\n    mat +1/16, of navy", "Make at most 250 copies.")]
    [InlineData("gem 1/8, in a grid 50 x 50, of red", "Make fewer copies, or divide the pieces between several cards.")]
    [InlineData("10 panel 1 x 1, of red\n    10 panel 1 x 1, of red\n      10 star 1, of red\n        10 gem 1/8, of red",
        "Make fewer copies, or divide the pieces between several cards.")]
    public void Too_many_pieces_are_reported_with_the_number_of_copies_still_allowed(string lines, string hint)
    {
        var finding = Assert.Single(Beyond(lines));

        Assert.Equal("Here the card has more than 500 pieces with mats; this line and the rest are left out.", finding.Message);
        Assert.Equal((hint, 4, 3), (finding.Hint, finding.Location.Start.Line, finding.Location.Start.Column));
    }

    [Fact]
    public void A_line_that_makes_too_many_pieces_is_not_laid_out() => Assert.Equal(
        ["front/star"], Compile("star 1, of blue\n  499 panel 1 x 1, of red\n    gem 1/8, of red")
            .Card!.Pieces.Select(p => p.Path.ToString()));

    [Fact]
    public void A_piece_can_have_twenty_mats_and_the_next_is_reported()
    {
        Assert.Empty(Beyond("heart 1, of red" + string.Concat(Enumerable.Repeat("\n    mat +1/16, of navy", 20))));
        Assert.Equal(25, Assert.Single(Beyond("heart 1, of red" + string.Concat(Enumerable.Repeat("\n    mat +1/16, of navy", 21))))
            .Location.Start.Line);
    }

    [Theory]
    [InlineData("text \"{4500}\"", "text \"{4501}\"", "letters")]
    [InlineData("45 text \"{100}\"", "46 text \"{100}\"", "letters")]
    [InlineData("word \"{150}\", of red", "word \"{151}\", of red", "letters cut out as words")]
    [InlineData("15 word \"{10}\", of red", "16 word \"{10}\", of red", "letters cut out as words")]
    public void Letters_are_counted_on_every_copy(string most, string more, string what)
    {
        Assert.Empty(Beyond(Spelt(most)));
        Assert.Contains($" {what};", Assert.Single(Beyond(Spelt(more))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Corners_are_counted_on_every_copy()
    {
        // A star of 60 points has 119 corners besides its start point.
        Assert.Empty(Beyond("105 star 1, 60 points, of red"));
        var finding = Assert.Single(Beyond("106 star 1, 60 points, of red"));
        Assert.Contains("12,500 corners", finding.Message, StringComparison.Ordinal);
        Assert.Equal((4, 3), (finding.Location.Start.Line, finding.Location.Start.Column));
    }

    [Fact]
    public void A_grown_mat_counts_with_its_own_corners()
    {
        Assert.Empty(Beyond("10 star 1, 60 points, of red\n    mat +1/8, of navy"));
        var finding = Assert.Single(Beyond("200 star 1, 60 points, of red\n    mat +1/8, of navy"));
        Assert.Contains("12,500 corners", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, 200, true)]
    [InlineData(3, 134, false)]
    [InlineData(1, 201, false)]
    public void Windows_are_counted_in_every_layer_that_they_cut(int layers, int windows, bool isWithin)
    {
        var tower = string.Concat(Enumerable.Range(1, layers).Select(i => $"{new string(' ', i + 1)}panel 4 x 4, of red\n"));
        var found = Beyond($"{tower.TrimStart()}{new string(' ', layers + 2)}{windows} window 1/16 x 1/16, in a grid 20 across, through");

        Assert.Equal(isWithin ? 0 : 1, found.Length);
        Assert.All(found, f => Assert.Equal(3 + layers + 1, f.Location.Start.Line));
    }

    [Fact]
    public void A_corner_of_a_hole_counts_five_times()
    {
        // A star of 60 points has 119 corners, which count once for the window and five times for its hole.
        const string Windows = "window star 1/8, 60 points, in a grid 10 across, gap 1/16";
        Assert.Empty(Beyond($"panel 4 x 5, of red\n    17 {Windows}"));
        Assert.Contains("12,500 corners", Assert.Single(Beyond($"panel 4 x 5, of red\n    18 {Windows}")).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a page with a punched border",
        "panel 12 x 12, of cream\n    188 window circle 1/8, in a grid 47 across, gap 1/8, through")]
    [InlineData("a sentence of forty cut-out letters",
        "word \"thelighthousekeepersclubwishesyoufairwind\", letters 1/2, of navy\n    mat +1/8, of white")]
    [InlineData("a grid of gems", "100 gem 1/8, in a grid 10 across, gap 1/8, of red")]
    [InlineData("a scalloped mat behind a scalloped mat", "scallop 11 x 11, of navy\n    mat +1/8, of white\n    mat +1/8, of navy")]
    public void Realistic_cards_are_far_below_the_limits(string work, string lines)
    {
        var page = new SourceText("page.card", $"card \"{work}\"\nbase 12 x 12, of white\nfront\n  {lines}\n");
        Assert.DoesNotContain(Compiler.Compile(page, new TestWorld()).Findings, f => f.Severity == Severity.Error);
    }

    [Fact]
    public void A_file_of_a_million_characters_is_read_and_a_longer_one_is_rejected()
    {
        var text = Head + "  star 1, of red\n";
        Assert.Empty(In(text.PadRight(Limits.Characters)));
        Assert.Equal(FindingCatalogue.Unreadable, Assert.Single(In(text.PadRight(Limits.Characters + 1))).Kind);
    }

    private static string Written(int number) => number.ToString("N0", CultureInfo.InvariantCulture);

    /// <summary>A line in which a number in braces is replaced by that many letters.</summary>
    private static string Spelt(string line) =>
        line[..line.IndexOf('{', StringComparison.Ordinal)]
        + new string('a', int.Parse(
            line[(line.IndexOf('{', StringComparison.Ordinal) + 1)..line.IndexOf('}', StringComparison.Ordinal)],
                CultureInfo.InvariantCulture))
        + line[(line.IndexOf('}', StringComparison.Ordinal) + 1)..];

    /// <summary>The findings about limits for lines on the front.</summary>
    private static Finding[] Beyond(string lines) =>
        [.. In($"{Head}  {lines}\n").Where(f => f.Kind == FindingCatalogue.TooManyPieces || f.Kind == FindingCatalogue.BadCount)];

    private static Compilation Compile(string lines) => Compiler.Compile(new("test.card", $"{Head}  {lines}\n"), new TestWorld());

    private static IEnumerable<Finding> In(string text) =>
        Compiler.Compile(new("test.card", text), new TestWorld()).Findings.Where(f => f.Severity == Severity.Error);
}
