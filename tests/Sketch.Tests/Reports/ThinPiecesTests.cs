using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Planning.Reports;
using Sketch.Reports;
using Sketch.Tests.Checks;
using Sketch.Tests.Layout;
using Sketch.Tests.Planning;
using Sketch.Tests.Templates;
using Xunit;
using static System.StringComparison;

namespace Sketch.Tests.Reports;

/// <summary>Lengths below half a mark of the ruler are written as more than nothing in every output.</summary>
public sealed class ThinPiecesTests
{
    private const string Pieces =
        "  sea: panel 3 x 2, of blue\n    foil: line 1/32, along top, of silver\n    pearl: gem 3/64, of white\n"
        + "    band: tape 2 x 1/64, top 1, of red\n    rod: strip 2 x 0.02, bottom 1/4, of red\n";

    private static readonly LaidOutCard Card = Laid.OnA2(Pieces);

    [Theory]
    [InlineData("sea/foil", "3 x 1/32")]
    [InlineData("sea/pearl", "3/64 x 3/64")]
    [InlineData("sea/band", "2 x 1/64")]
    [InlineData("sea/rod", "2 x 1/16 -")]
    public void The_table_of_sizes_shows_them(string path, string size)
    {
        Assert.Contains(Table(Card).Split('\n'), l => l.TrimStart().StartsWith(path, Ordinal) && l.Contains($" {size} ", Ordinal));
        Assert.Contains(Markdown().Split('\n'), l => l.StartsWith($"| front/{path} ", Ordinal) && l.Contains($"| {size} |", Ordinal));
    }

    [Theory]
    [InlineData("front/sea/foil", "foil: line, 3 x 1/32 in, silver")]
    [InlineData("front/sea/pearl", "pearl: gem, 3/64 in wide, white")]
    [InlineData("front/sea/rod", "rod: strip, 2 x less than 1/16 in, red")]
    public void The_picture_shows_them(string path, string title) =>
        Assert.Equal(title, PieceTitle.Of(Card.Piece(path), UnitSystem.Inches));

    [Fact]
    public void Only_the_thickness_of_a_foil_line_is_shown_as_written() => Assert.Contains(
        "3 1/16 + x 3/64", Table(Laid.OnA2("  panel 3 5/64 x 2, of blue\n    line 3/64, along top, of silver")), Ordinal);

    [Fact]
    public void The_labels_of_templates_show_them() =>
        Assert.Contains(
            Printed.Of([Card]).Sheets.SelectMany(s => s.Blocks).SelectMany(b => b.Block.Texts).SelectMany(t => t.Words.Split('\n')),
            w => w.Contains("3 x 1/32 in", Ordinal));

    [Fact]
    public void A_plan_identifies_foil_lines_by_their_thickness()
    {
        var card = PlanRun.Card + "    line 1/32, along top, of silver\n";
        var run = PlanRun.Of("batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 2 of \"gull.card\"\n", ("gull.card", card));
        Assert.Contains("line silver 1/32", SampleCard.Written(o => PlanText.Write(o, run.Plan!)), Ordinal);
    }

    [Fact]
    public void The_thickness_of_a_foil_line_can_be_off_the_ruler() => Assert.Empty(Fit.OnA2("  line 1/32, along top, of silver"));

    [Fact]
    public void No_hint_proposes_a_cut_size_of_zero() => Assert.StartsWith(
        "The nearest is 2 x 1/16:", Fit.OnA2("  strip 2 x 0.02, of navy").The(FindingCatalogue.OffTheRuler).Hint, Ordinal);

    private static string Table(LaidOutCard card) => SampleCard.Written(o => SizeText.Write(o, SizeList.Of(card), card.Units.Format()));

    private static string Markdown() => SampleCard.Written(o => SizeMarkdown.Write(o, SizeList.Of(Card), Card.Units.Format()));
}
