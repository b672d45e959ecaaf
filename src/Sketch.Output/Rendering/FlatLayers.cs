using ShimSkiaSharp;

namespace Sketch.Output.Rendering;

/// <summary>
/// Draws a translucent element with a fill and a stroke of one colour, as in shadows, in one operation. Recorded as SVG defines it, each
/// such element gets a layer of its own as large as the picture, and most of the time is spent clearing and merging layers.
/// </summary>
internal static class FlatLayers
{
    /// <summary>Replaces the layers that can be replaced without a visible change; everything else stays as recorded.</summary>
    public static void Replace(SKPicture recorded)
    {
        var commands = recorded.Commands!;
        var flat = new List<CanvasCommand>(commands.Count);
        for (var i = 0; i < commands.Count; i++)
        {
            if (i + 3 < commands.Count
                && commands[i] is SaveLayerCanvasCommand { Paint: { } layer } && OpacityOf(layer) is { } opacity
                && commands[i + 1] is DrawPathCanvasCommand { Path: { } path, Paint: { Style: SKPaintStyle.Fill } fill } && IsPlain(fill)
                && commands[i + 2] is DrawPathCanvasCommand { Path: { } line, Paint: { Style: SKPaintStyle.Stroke } stroke }
                && IsPlain(stroke)
                && commands[i + 3] is RestoreCanvasCommand
                && ReferenceEquals(path, line) && fill.Color.Equals(stroke.Color) && path.FillType == SKPathFillType.Winding)
            {
                var both = stroke.Clone();
                both.Style = SKPaintStyle.StrokeAndFill;
                both.Color = stroke.Color is { } colour ? new(colour.Red, colour.Green, colour.Blue, opacity) : null;
                flat.Add(new DrawPathCanvasCommand(path, both));
                i += 3;
            }
            else
            {
                flat.Add(commands[i]);
            }
        }

        commands.Clear();
        foreach (var command in flat)
        {
            commands.Add(command);
        }
    }

    /// <summary>The opacity that a layer is merged with, if that is its only effect.</summary>
    private static byte? OpacityOf(SKPaint layer) =>
        layer is
        {
            Shader: null, ColorFilter: null, ImageFilter: null, BlendMode: SKBlendMode.SrcOver,
            Color: { Red: 255, Green: 255, Blue: 255, Alpha: var opacity }
        } ? opacity : null;

    private static bool IsPlain(SKPaint paint) =>
        paint is
        {
            Shader: null, ColorFilter: null, ImageFilter: null, PathEffect: null, IsStrokeNonScaling: false,
            BlendMode: SKBlendMode.SrcOver, Color.Alpha: 255
        };
}
