using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Templates;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Sides that are torn, wavy, scalloped or pointed, stitches, and lines to fold along.</summary>
public sealed class EdgeCutLayoutTests
{
    [Fact]
    public void A_torn_piece_is_as_large_as_written_and_so_is_its_mat()
    {
        var card = Laid.OnA2("  panel 3 x 2, torn, of white\n    mat border 1/16, of gold");
        card.IsCut("front/panel", "3 x 2");
        card.IsCut("front/panel/mat", "3 1/8 x 2 1/8");
        var (piece, mat) = (card.Piece("front/panel"), card.Piece("front/panel/mat"));
        Assert.True(mat.Outline.Covers(piece.Outline.Grow(25.4 / 16 - 0.01)));
    }

    [Fact]
    public void A_mat_may_be_torn_under_a_straight_piece()
    {
        var card = Laid.OnA2("  panel 3 x 2, of white\n    mat border 1/8, of gold, torn bottom 1/16");
        Assert.Equal(6 * 25.4 * 25.4, card.Piece("front/panel").Outline.Area, 1e-6);
        Assert.InRange(card.Piece("front/panel/mat").Outline.Area, 6.5 * 25.4 * 25.4, 3.25 * 2.25 * 25.4 * 25.4 - 20);
        card.IsCut("front/panel/mat", "3 1/4 x 2 1/4");
    }

    [Fact]
    public void Copies_are_torn_alike()
    {
        var card = Laid.OnA2("  3 panel 1 x 1, in a row, gap 1/8, torn, of white");
        var outlines = card.Pieces.Select(p =>
            p.Outline.Transform(Affine.Shift(-p.Box.Left.Millimetres, -p.Box.Top.Millimetres)).ToSvgPath());
        Assert.Single(outlines.Distinct());
    }

    [Fact]
    public void One_side_may_differ_from_the_rest()
    {
        // Waves a quarter of an inch deep take half of that band; the other sides are straight.
        var outline = Laid.OnA2("  panel 3 x 2, pointed 1/8, wavy left 1/4, pointed right 1/4, of white").Piece("front/panel").Outline;
        var plain = Laid.OnA2("  panel 3 x 2, wavy left 1/4, of white").Piece("front/panel").Outline;
        Assert.Equal(5.75 * 25.4 * 25.4, plain.Area, 1e-3);
        Assert.True(outline.Area < plain.Area - 25.4 * 25.4 / 2);
    }

    [Theory]
    [InlineData("circle 1, torn, of red", "A circle has no straight side")]
    [InlineData("arch 1, wavy top, of red", "only at the left and right and bottom")]
    [InlineData("text \"ahoy\", stitched 1/8", "Only paper is stitched or scored")]
    [InlineData("gem 1/8, scored top 1/16, of red", "Only paper is stitched or scored")]
    public void A_clause_without_effect_is_reported(string piece, string hint)
    {
        var found = Assert.Single(Found.On(piece));
        Assert.Equal("SK116", found.Code);
        Assert.Contains(hint, found.Hint);
    }

    [Theory]
    [InlineData("panel 3 x 1, torn bottom 7/8, of red", "torn 7/8 in is more than what leaves it in one piece, which is 3/4 in.")]
    [InlineData("panel 3 x 1, torn 5/8, of red", "torn 5/8 in is more than what leaves it in one piece, which is 1/2 in.")]
    [InlineData("panel 3 x 1, stitched 5/8, of red", "stitched 5/8 in is more than half of its shorter side, which is 1/2 in.")]
    [InlineData("panel 3 x 1, scored left 3 1/8, of red", "scored left 3 1/8 in is more than the size of the piece, which is 3 in.")]
    public void A_measure_that_reaches_too_far_is_an_error(string piece, string message) =>
        Assert.Equal(("SK118", message), (Assert.Single(Found.On(piece)) is var found ? (found.Code, found.Message) : default));

    [Fact]
    public void Two_forms_of_one_side_are_given_twice() =>
        Assert.Contains(Found.On("panel 1 x 1, torn top, wavy top, of red"), f => f.Code == "SK117");

    [Fact]
    public void Stitches_and_score_lines_are_in_the_picture_and_in_the_template()
    {
        const string text = "card \"Tab\"\nbase A2, of white\nfront\n  strip 1 x 2, scored top 1/2, stitched 1/8, of red\n";
        var (card, pages) = (Laid.Out(text), Printed.Of(text));
        var svg = CardDrawing.Draw(card, FaceKind.Front);
        Assert.Contains("class=\"score\"", svg);
        Assert.Contains("class=\"stitches\"", svg);
        var lines = pages.Sheets.SelectMany(s => s.Blocks).SelectMany(b => b.Block.Lines).ToList();
        var score = Assert.Single(lines, l => l.Kind == LineKind.Fold && l.Name.Contains("strip", StringComparison.Ordinal));
        Assert.Equal(25.4, Math.Max(score.Bounds.Width, score.Bounds.Height), 1e-6);
        Assert.Contains(lines, l => l.Kind == LineKind.Mark && l.Name.Contains("stitches", StringComparison.Ordinal));
    }

    [Fact]
    public void An_arched_frame_is_listed_at_the_size_of_its_part_of_the_ring()
    {
        var card = Laid.OnA2("  moon: circle 2, of white\n  frame 1/4, around moon, arched 180, of gold");
        var frame = card.Piece("front/frame");
        Assert.Equal((2.5, 1.25), (frame.Finished.Width.Inches, Math.Round(frame.Finished.Height.Inches, 3)));
        // Half of pi (R^2 - r^2) (standard formula).
        Assert.Equal(Math.PI * (1.25 * 1.25 - 1) / 2 * 25.4 * 25.4, frame.Outline.Area, 0.5);
    }
}
