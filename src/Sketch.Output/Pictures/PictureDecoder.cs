using System.Globalization;
using Sketch.Diagnostics;
using SkiaSharp;

namespace Sketch.Output.Pictures;

/// <summary>Decodes JPEG, PNG and WebP files of people's own scans and photographs, turned upright, on white.</summary>
internal static class PictureDecoder
{
    /// <summary>The most pixels that a picture may have: a sheet of 12 x 12 in at 500 dpi. Decoding takes 4 bytes for each.</summary>
    public const long PixelLimit = 40_000_000;

    /// <summary>The most pixels along one side, which the formats themselves limit to 16,383 (WebP) and 65,535 (JPEG).</summary>
    private const int SideLimit = 30_000;

    /// <summary>Width and height in pixels of the upright picture, from the file's header alone.</summary>
    /// <param name="file">The file from its beginning.</param>
    /// <returns>Width and height; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<(int Width, int Height)> Measure(Stream file)
    {
        using var codec = SKCodec.Create(file);
        return codec switch
        {
            null => new Failure("it is not a valid JPEG, PNG or WebP picture."),
            { EncodedFormat: not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png or SKEncodedImageFormat.Webp) } =>
                new Failure($"it is a {codec.EncodedFormat.ToString().ToUpperInvariant()} picture; save it as JPEG, PNG or WebP."),
            { Info: { Width: var w, Height: var h } } when (long)w * h > PixelLimit || Math.Max(w, h) > SideLimit =>
                new Failure(string.Create(
                    CultureInfo.InvariantCulture,
                    $"it has {w} x {h} pixels; save it with at most {PixelLimit / 1_000_000} megapixels. 300 dpi, so 3600 x 3600 "
                        + $"pixels for 12 x 12 in, are plenty.")),
            { Info: { Width: var w, Height: var h } } => Result.Of(IsOnItsSide(codec.EncodedOrigin) ? (h, w) : (w, h)),
        };
    }

    /// <summary>
    /// The whole upright picture, read part by part, at a given number of pixels; a problem if the file is truncated or damaged.
    /// </summary>
    public static Result<SKBitmap> Decode(Stream file, int width, int height)
    {
        using var codec = SKCodec.Create(file);
        if (codec is null)
        {
            return new Failure("it is no longer a picture.");
        }

        var origin = codec.EncodedOrigin;
        var (across, down) = IsOnItsSide(origin) ? (height, width) : (width, height);
        var coarse = codec.GetScaledDimensions(Math.Min(1, Math.Max((float)across / codec.Info.Width, (float)down / codec.Info.Height)));
        using var stored = new SKBitmap(
            new SKImageInfo(coarse.Width, coarse.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        var result = codec.GetPixels(stored.Info, stored.GetPixels());
        if (result != SKCodecResult.Success)
        {
            return new Failure(result == SKCodecResult.IncompleteInput
                ? "it is incomplete; copy or scan it again." : "it is damaged; copy or scan it again.");
        }

        stored.SetImmutable();
        using var image = SKImage.FromBitmap(stored);
        var upright = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb()));
        using var canvas = new SKCanvas(upright);
        canvas.Clear(SKColors.White);
        canvas.Concat(Turning(origin, width, height));
        canvas.DrawImage(image, new SKRect(0, 0, across, down), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        canvas.Flush();
        return Result.Of(upright);
    }

    private static bool IsOnItsSide(SKEncodedOrigin origin) =>
        origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;

    /// <summary>From the stored picture to the upright one (EXIF 2.32, tag 0x0112, values 1 to 8).</summary>
    private static SKMatrix Turning(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new(0, -1, width, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new(0, -1, width, -1, 0, height, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, height, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}
