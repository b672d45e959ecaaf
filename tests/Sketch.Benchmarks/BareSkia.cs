using SkiaSharp;
using Svg.Skia;

namespace Sketch.Benchmarks;

/// <summary>The peer of the PNG: a picture that Svg.Skia has recorded, replayed by SkiaSharp and written with the same settings.</summary>
internal sealed class BareSkia : IDisposable
{
    private readonly SKSvg _svg = new();
    private readonly SKPicture _picture;
    private readonly SKImageInfo _pixels;

    /// <summary>Records a picture.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="width">Inches.</param>
    /// <param name="height">Inches.</param>
    /// <param name="dpi">Pixels per inch.</param>
    public BareSkia(string svg, double width, double height, int dpi)
    {
        _picture = _svg.FromSvg(svg)!;
        _pixels = new((int)Math.Round(width * dpi), (int)Math.Round(height * dpi), SKColorType.Rgba8888, SKAlphaType.Premul);
    }

    /// <summary>Replays it and returns the length of the PNG.</summary>
    public long Png()
    {
        using var bitmap = new SKBitmap(_pixels);
        using var canvas = new SKCanvas(bitmap);
        canvas.Scale(_pixels.Width / _picture.CullRect.Width, _pixels.Height / _picture.CullRect.Height);
        canvas.DrawPicture(_picture);
        using var pixels = bitmap.PeekPixels().WithAlphaType(SKAlphaType.Opaque);
        using var png = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Sub, 6));
        return png!.Size;
    }

    public void Dispose() => _svg.Dispose();
}
