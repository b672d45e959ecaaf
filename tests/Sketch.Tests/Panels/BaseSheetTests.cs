using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Sketch.Tests.Templates;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Panels;

/// <summary>The unfolded base: its size, its score lines and where its faces lie.</summary>
public sealed class BaseSheetTests
{
    private static readonly Size A2 = new(Length.Inch(4, 1, 4), Length.Inch(5, 1, 2));

    public static TheoryData<Fold> Folds => [.. Enum.GetValues<Fold>()];

    [Theory]
    [InlineData(Fold.Left, "8 1/2 x 5 1/2", "4 1/4")]
    [InlineData(Fold.Top, "4 1/4 x 11", "5 1/2")]
    [InlineData(Fold.Gate, "8 1/2 x 5 1/2", "2 1/8 6 3/8")]
    [InlineData(Fold.Z, "12 3/4 x 5 1/2", "4 1/4 8 1/2")]
    public void The_sheet_is_as_large_and_scored_as_its_panels_require(Fold fold, string size, string scores)
    {
        var sheet = BaseSheet.Of(A2, fold);
        Assert.Equal(Measure.Size(size), sheet.Size);
        Assert.Equal(scores, string.Join(' ', sheet.Scores.Select(s => LengthFormat.Ruler(s, 16))));
    }

    [Theory]
    [MemberData(nameof(Folds))]
    public void Panels_of_a_side_do_not_overlap_and_lie_on_the_sheet(Fold fold)
    {
        var sheet = BaseSheet.Of(A2, fold);
        var whole = new Bounds(0, 0, sheet.Size.Width.Millimetres, sheet.Size.Height.Millimetres).Grow(1e-6);
        foreach (var side in new[] { sheet.Outside, sheet.Inside })
        {
            var panels = side.Select(p => Outline.Rectangle(p.Part).Transform(p.Place).Bounds).ToList();
            Assert.All(panels, p => Assert.True(whole.Covers(p)));
            Assert.DoesNotContain(true, panels.SelectMany((p, i) => panels.Skip(i + 1).Select(q => p.Grow(-1e-6).Overlaps(q))));
        }
    }

    [Theory]
    [MemberData(nameof(Folds))]
    public void Every_panel_ends_at_score_lines_or_the_edge(Fold fold)
    {
        var sheet = BaseSheet.Of(A2, fold);
        var ends = sheet.Scores.Select(s => s.Millimetres)
            .Concat([0, (sheet.HasUprightScores ? sheet.Size.Width : sheet.Size.Height).Millimetres]).ToList();
        Assert.All(sheet.Outside.Concat(sheet.Inside).Select(p => Outline.Rectangle(p.Part).Transform(p.Place).Bounds), panel =>
        {
            var (low, high) = sheet.HasUprightScores ? (panel.Left, panel.Right) : (panel.Top, panel.Bottom);
            Assert.Contains(ends, e => Math.Abs(e - low) < 1e-6);
            Assert.Contains(ends, e => Math.Abs(e - high) < 1e-6);
        });
    }

    [Theory]
    // A mark near the fold of the left door lies near that fold on the sheet, and so does one at the right.
    [InlineData("left 1/4", 6 + 3 / 8.0 + 0.25)]
    [InlineData("right 1/4", 2 + 1 / 8.0 - 0.25 - 0.5)]
    public void A_piece_on_a_door_of_a_gate_lies_beside_its_fold_on_the_sheet(string place, double inches)
    {
        var card = Laid.Out($"card \"Gate\"\nbase A2, fold gate, of white\nfront\n  mark: panel 1/2 x 1/2, {place}, of red\n");
        var shift = card.Base.Sheet.Outside.Single(p => p.Face == FaceKind.Front
            && Bounds.Of(p.Part).Covers(Bounds.Of(card.Piece("front/mark").Box))).Place;
        Assert.Equal(inches * 25.4, card.Piece("front/mark").Box.Left.Millimetres + shift.E, 1e-6);
        Assert.Contains("front-mark", CardDrawing.Flat(card, outside: true).Svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fold gate", 2)]
    [InlineData("fold z", 2)]
    [InlineData("fold left", 1)]
    public void The_template_of_the_base_shows_every_score_line(string fold, int lines) =>
        Assert.Equal(lines, Printed.Of($"card \"Fold\"\nbase 3 x 4, {fold}, of white\nfront\n  panel 1 x 1, of red\n").Sheets
            .SelectMany(s => s.Blocks).SelectMany(b => b.Block.Lines).Count(l => l.Kind == LineKind.Fold));

    [Fact]
    public void A_window_across_both_doors_is_cut_out_of_both_ends_of_the_sheet()
    {
        var card = Laid.Out("card \"Gate\"\nbase 4 x 4, fold gate, of white\nfront\n  window 1 x 1\n");
        Assert.Equal((8 * 4 - 1) * 25.4 * 25.4, card.Base.CutSheet.Area, 1e-3);
        Assert.Equal(1, card.Base.CutSheet.Parts);
        var middle = Outline.Rectangle(new(Length.Inch(1), Length.Zero, Length.Inch(6), Length.Inch(4)));
        Assert.Equal(24 * 25.4 * 25.4, card.Base.CutSheet.OverlapArea(middle), 1e-3);
    }

    [Theory]
    [InlineData("gate", "inside left", "This card opens like a gate, so only its middle panel is laid out inside.", "inside")]
    [InlineData("z", "inside top", "This card folds like a z, so the back of its front is called inside left.", "inside left")]
    public void A_face_that_the_fold_does_not_have_is_reported(string fold, string face, string message, string instead)
    {
        var found = Assert.Single(Found.In($"card \"Fold\"\nbase A2, fold {fold}, of white\n{face}\n  text \"ahoy\"\n"));
        Assert.Equal((message, instead), (found.Message, found.Replacement));
    }
}
