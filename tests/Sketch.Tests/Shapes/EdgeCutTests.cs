using CsCheck;
using Sketch.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class EdgeCutTests
{
    private static readonly Gen<EdgeCut?> Cuts = Gen.Select(Gen.Enum<EdgeForm>(), Gen.Int[0, 8], Gen.Bool).Select(
        (form, depth, isCut) => isCut ? new EdgeCut(form, depth == 0 ? null : Length.Millimetre(depth)) : (EdgeCut?)null);

    private static readonly Gen<(Shape Shape, EdgeCuts Edges, double Width, double Height)> Pieces =
        Gen.Select(Gen.Enum<Shape>(), Gen.Select(Cuts, Cuts, Cuts, Cuts).Select((l, r, t, b) => new EdgeCuts(l, r, t, b)),
            Gen.Double[8, 150], Gen.Double[8, 150]);

    private static ShapeStyle Bottom(EdgeForm form, int depth) =>
        new() { Edges = EdgeCuts.None with { Bottom = new(form, Length.Millimetre(depth)) } };

    [Theory]
    // Half circles fill pi / 4 of the band that they stand in, waves and points a half (standard formulas).
    [InlineData(EdgeForm.Scalloped, Math.PI / 4, 2e-3)]
    [InlineData(EdgeForm.Wavy, 0.5, 1e-9)]
    [InlineData(EdgeForm.Pointed, 0.5, 1e-9)]
    public void A_form_fills_its_share_of_the_band_as_deep_as_it_is(EdgeForm form, double share, double tolerance) =>
        Assert.Equal(80 * (40 - 5) + 80 * 5 * share, Drawn.Shape(Shape.Rectangle, 80, 40, Bottom(form, 5)).Area, 80 * 5 * tolerance + 1e-6);

    [Fact]
    public void A_tear_lies_within_its_depth_and_reaches_both_ends_of_it()
    {
        var tear = TornDepths(Drawn.Shape(Shape.Rectangle, 90, 40, Bottom(EdgeForm.Torn, 6)));
        Assert.Equal((0, 6), (Math.Round(tear.Min(), 9), Math.Round(tear.Max(), 9)));
    }

    [Fact]
    public void Pieces_of_one_size_are_torn_alike_wherever_they_lie()
    {
        var style = new ShapeStyle { Edges = new(new(EdgeForm.Torn, null), null, new(EdgeForm.Torn, null), null) };
        var here = Drawn.Shape(Shape.Rectangle, 50, 30, style).Transform(Affine.Shift(11, -7));
        var there = ShapeOutline.Build(Shape.Rectangle, style, Drawn.Box(11, -7, 50, 30));
        Assert.Equal(here.Contours[0].Segments.Length, there.Contours[0].Segments.Length);
        Assert.All(here.Contours[0].Segments.Zip(there.Contours[0].Segments), pair =>
        {
            Assert.Equal(pair.First.End.X, pair.Second.End.X, 1e-9);
            Assert.Equal(pair.First.End.Y, pair.Second.End.Y, 1e-9);
        });
    }

    [Fact]
    public void Pieces_of_different_sizes_are_torn_differently() =>
        Assert.NotEqual(
            TornDepths(Drawn.Shape(Shape.Rectangle, 90, 40, Bottom(EdgeForm.Torn, 6)))[..20],
            TornDepths(Drawn.Shape(Shape.Rectangle, 91, 40, Bottom(EdgeForm.Torn, 6)))[..20]);

    [Fact]
    public void Any_form_leaves_the_box_as_it_is() => Pieces.Sample(
        piece =>
        {
            var box = Drawn.Box(3, 4, piece.Width, piece.Height);
            var formed = ShapeOutline.Build(piece.Shape, new ShapeStyle { Edges = piece.Edges }, box);
            Assert.Equal(ShapeOutline.Build(piece.Shape, Drawn.Plain, box).Bounds.ToRect(), formed.Bounds.ToRect());
        },
        iter: 500);

    [Fact]
    public void Any_form_only_takes_paper_away_and_leaves_one_piece() => Pieces.Sample(
        piece =>
        {
            var style = new ShapeStyle { Edges = piece.Edges };
            var (plain, formed) = (Drawn.Shape(piece.Shape, piece.Width, piece.Height),
                Drawn.Shape(piece.Shape, piece.Width, piece.Height, style));
            Assert.True(plain.Covers(formed));
            Assert.Equal(1, formed.Parts);
            Assert.Equal(formed.Contours.Sum(Drawn.SampledArea), formed.WithoutHoles().Area
                - plain.WithoutHoles().Area + plain.Area, formed.Area * 1e-3);
        },
        iter: 300);

    [Theory]
    [InlineData(Shape.Pocket, 146, 9)]
    [InlineData(Shape.Tag, 20, 12)]
    public void A_deep_form_keeps_clear_of_a_notch_and_a_hole(Shape shape, double width, double height)
    {
        var (plain, formed) = (Drawn.Shape(shape, width, height), Drawn.Shape(shape, width, height, Bottom(EdgeForm.Wavy, 8)));
        Assert.True(plain.Covers(formed));
        Assert.Equal(1, formed.Parts);
        Assert.Equal(plain.Contours.Length, formed.Contours.Length);
    }

    [Theory]
    [InlineData(Shape.Rectangle, "Left Right Top Bottom")]
    [InlineData(Shape.Tag, "Bottom")]
    [InlineData(Shape.Arch, "Left Right Bottom")]
    [InlineData(Shape.Pennant, "")]
    [InlineData(Shape.Tile, "")]
    [InlineData(Shape.Circle, "")]
    [InlineData(Shape.Heart, "")]
    public void These_sides_of_a_shape_may_have_a_form(Shape shape, string sides) =>
        Assert.Equal(sides, string.Join(' ', ShapeOutline.StraightSides(shape, Drawn.Plain)));

    private static double[] TornDepths(Outline outline) =>
        [.. outline.Contours[0].Segments.Select(s => s.End.Y).Where(y => y > 0.5 * outline.Bounds.Bottom)
            .Select(y => outline.Bounds.Bottom - y)];
}
