using CsCheck;
using Sketch.Shapes;
using Sketch.Units;
using SkiaSharp;
using Xunit;

namespace Sketch.Tests.Shapes;

/// <summary>
/// Areas and offsets against a second geometry library, Skia, which shares nothing with the one that the engine uses: its stroker widens
/// the line of a path, and its rasteriser says how much of each pixel is covered.
/// </summary>
public sealed class SecondGeometryTests
{
    /// <summary>Pixels per millimetre.</summary>
    private const double Fineness = 10;

    /// <summary>How far an edge may lie from where Skia paints it, in millimetres: less than a printed line.</summary>
    private const double Hairline = 0.1;

    private static readonly Gen<EdgeCut?> Cuts = Gen.Select(Gen.Enum<EdgeForm>(), Gen.Int[0, 5], Gen.Int[0, 2]).Select(
        (form, depth, one) => one == 0 ? new EdgeCut(form, depth == 0 ? null : Length.Millimetre(depth)) : (EdgeCut?)null);

    private static readonly Gen<ShapeStyle> Styles = Gen.Select(
        Gen.Select(Cuts, Cuts, Cuts, Cuts).Select((l, r, t, b) => new EdgeCuts(l, r, t, b)), Gen.Int[3, 16], Gen.Int[0, 9], Gen.Int[0, 12],
        Gen.Enum<Swallowtail>()).Select((edges, points, corner, notch, tail) => new ShapeStyle
        {
            Edges = edges,
            Points = points,
            Corner = corner == 0 ? null : Length.Millimetre(corner),
            Notch = notch == 0 ? null : Length.Millimetre(notch),
            Swallowtail = tail,
        });

    private static readonly Gen<Outline> Outlines = Gen.Select(
        Gen.Enum<Shape>(), Styles, Gen.Double[15, 140], Gen.Double[15, 140]).Select(
        (shape, style, width, height) => ShapeOutline.Build(shape, style, Drawn.Box(0, 0, width, height)));

    [Fact]
    public void The_area_of_any_shape_is_that_which_the_other_library_fills() => Outlines.Sample(
        outline => Assert.Equal(Painted(outline, 0, SKBlendMode.SrcOver), outline.Area, 0.02 * Perimeter(outline)), iter: 150);

    [Fact]
    public void A_grown_shape_is_its_own_area_and_that_of_its_widened_line() => Gen.Select(Outlines, Gen.Double[0.2, 8]).Sample(
        (outline, distance) =>
        {
            if (!IsUprightRectangle(outline))
            {
                Assert.Equal(
                    Painted(outline, distance, SKBlendMode.SrcOver), outline.Grow(distance).Area, Hairline * Perimeter(outline) + 0.02);
            }
        },
        iter: 150);

    [Fact]
    public void A_shrunk_shape_is_its_own_area_less_its_widened_line() => Gen.Select(Outlines, Gen.Double[0.2, 8]).Sample(
        (outline, distance) => Assert.Equal(
            Painted(outline, distance, SKBlendMode.Clear), outline.Grow(-distance).Area, Hairline * Perimeter(outline) + 0.02),
        iter: 150);

    /// <summary>By definition, without either library: no point within a hole is farther from its edge than the radius.</summary>
    [Fact]
    public void A_hole_narrower_than_twice_the_distance_is_gone()
    {
        var tag = Drawn.Shape(Shape.Tag, 88.314286, 105.962963);
        var solid = new Outline([tag.Contours[0]]);
        Assert.Equal((2, 1), (tag.Contours.Length, tag.Grow(8).Contours.Length));
        Assert.Equal(solid.Area + 8 * Drawn.SampledLength(solid.Contours[0]) + Math.PI * 64, tag.Grow(8).Area, 0.1);
    }

    /// <summary>An upright rectangle keeps its sharp corners by design.</summary>
    private static bool IsUprightRectangle(Outline outline) => outline.Contours is [var only] && only.Segments.Length <= 4
        && only.Segments.All(s => s.IsLine) && Math.Abs(outline.Area - outline.Bounds.Width * outline.Bounds.Height) < 1e-6;

    /// <summary>
    /// The painted area in square millimetres of the outline filled, with its line painted or cleared at that distance to both sides: the
    /// sum of what covers each pixel. The line is painted in several widths, because Skia leaves the middle of a circle open under a line
    /// that is wider than the circle.
    /// </summary>
    private static double Painted(Outline outline, double distance, SKBlendMode line)
    {
        const double room = 9;
        var box = outline.Bounds.Grow(room);
        using var path = SKPath.ParseSvgPathData(
            outline.Transform(Affine.Shift(-box.Left, -box.Top).Then(Affine.Scale(Fineness, Fineness))).ToSvgPath(6));
        path.FillType = SKPathFillType.Winding;
        using var bitmap = new SKBitmap(new SKImageInfo(
            (int)(box.Width * Fineness) + 1, (int)(box.Height * Fineness) + 1, SKColorType.Alpha8, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear();
            using var paint = new SKPaint { IsAntialias = true, Color = SKColors.Black };
            canvas.DrawPath(path, paint);
            paint.Style = SKPaintStyle.Stroke;
            paint.StrokeJoin = SKStrokeJoin.Round;
            paint.BlendMode = line;
            for (var reach = distance; reach > 0; reach--)
            {
                paint.StrokeWidth = (float)(2 * reach * Fineness);
                canvas.DrawPath(path, paint);
            }
        }

        var sum = 0L;
        foreach (var coverage in bitmap.GetPixelSpan())
        {
            sum += coverage;
        }

        return sum / 255.0 / (Fineness * Fineness);
    }

    private static double Perimeter(Outline outline) => outline.Contours.Sum(Drawn.SampledLength);
}
