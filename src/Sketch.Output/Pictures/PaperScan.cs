using Sketch.Colours;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Papers;
using SkiaSharp;

namespace Sketch.Output.Pictures;

/// <summary>
/// A scan in a file. Its pixels are kept as coarse as past requests allow, so that a stash of many papers takes little memory.
/// </summary>
internal sealed class PaperScan : IPaperPicture
{
    /// <summary>The largest picture file read, in bytes.</summary>
    public const int FileLimit = 200_000_000;

    // Enough for the mean colour and for small previews.
    private const double CoarseDotsPerInch = 75;
    private const double MillimetresPerInch = 25.4;
    private const int Quality = 88;

    private readonly Lock _lock = new();
    private readonly Func<Stream> _open;
    private readonly (int Width, int Height) _stored;
    private SKImage _pixels;

    private PaperScan(Func<Stream> open, (int Width, int Height) stored, double width, SKBitmap pixels)
    {
        _open = open;
        _stored = stored;
        _pixels = SKImage.FromBitmap(pixels);
        Width = width;
        Height = width * stored.Height / stored.Width;
        Mean = MeanOf(pixels);
    }

    /// <inheritdoc/>
    public double Width { get; }

    /// <inheritdoc/>
    public double Height { get; }

    /// <inheritdoc/>
    public Rgb Mean { get; }

    private double Finest => _stored.Width / Width * MillimetresPerInch;

    /// <summary>Reads the whole picture file, so that a damaged one is found at once.</summary>
    /// <param name="path">The file.</param>
    /// <param name="width">True width of what it shows in millimetres.</param>
    /// <returns>The scan; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<IPaperPicture> Read(string path, double width)
    {
        try
        {
            if (OrdinaryFile.IsOtherwise(path))
            {
                return new Failure(OrdinaryFile.Problem);
            }

            return Read(() => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete), width);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new Failure($"{FileTrouble.Reason(exception, path)}.");
        }
    }

    /// <summary>Reads a whole picture, wherever it is.</summary>
    /// <param name="open">Opens it, each time anew.</param>
    /// <param name="width">True width of what it shows in millimetres.</param>
    /// <returns>The scan; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<IPaperPicture> Read(Func<Stream> open, double width)
    {
        using var file = open();
        if (file.Length > FileLimit)
        {
            return new Failure($"it is larger than {FileLimit / 1_000_000} MB, too large.");
        }

        return PictureDecoder.Measure(file).Then(stored =>
        {
            var (across, down) = PixelsAt(stored, width, CoarseDotsPerInch);
            using var again = open();
            return PictureDecoder.Decode(again, across, down).Map<IPaperPicture>(pixels =>
            {
                using (pixels)
                {
                    return new PaperScan(open, stored, width, pixels);
                }
            });
        });
    }

    /// <inheritdoc/>
    public string Part(double left, double top, double width, double height, double dotsPerInch)
    {
        var density = Math.Min(dotsPerInch, Finest) / MillimetresPerInch;
        var (across, down) = (Math.Max(1, (int)Math.Ceiling(width * density)), Math.Max(1, (int)Math.Ceiling(height * density)));
        var source = AtLeast(dotsPerInch);
        var scale = SKMatrix.CreateScale((float)(Width / source.Width * across / width), (float)(Height / source.Height * down / height));
        var place = SKMatrix.CreateTranslation((float)(-left * across / width), (float)(-top * down / height)).PreConcat(scale);
        using var shader = source.ToShader(
            SKShaderTileMode.Repeat, SKShaderTileMode.Repeat, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear), place);
        using var paint = new SKPaint { Shader = shader };
        using var part = new SKBitmap(new SKImageInfo(across, down, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb()));
        using (var canvas = new SKCanvas(part))
        {
            canvas.DrawPaint(paint);
        }

        using var encoded = part.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return "data:image/jpeg;base64," + Convert.ToBase64String(encoded.AsSpan());
    }

    private static (int Across, int Down) PixelsAt((int Width, int Height) stored, double width, double dotsPerInch)
    {
        var share = Math.Min(1, dotsPerInch / MillimetresPerInch * width / stored.Width);
        return (Math.Max(1, (int)Math.Round(stored.Width * share)), Math.Max(1, (int)Math.Round(stored.Height * share)));
    }

    private SKImage AtLeast(double dotsPerInch)
    {
        lock (_lock)
        {
            var (across, down) = PixelsAt(_stored, Width, dotsPerInch);
            if (across <= _pixels.Width)
            {
                return _pixels;
            }

            Refine(across, down);
            return _pixels;
        }
    }

    /// <summary>Reads the file again for more pixels; if it is missing or has changed since, the coarser ones stay.</summary>
    private void Refine(int across, int down)
    {
        try
        {
            using var file = _open();
            using var again = _open();
            if (PictureDecoder.Measure(file).ValueOrDefault == _stored)
            {
                using var finer = PictureDecoder.Decode(again, across, down).ValueOrDefault;
                _pixels = finer is null ? _pixels : SKImage.FromBitmap(finer);
            }
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
        }
    }

    /// <summary>The mean in linear light, as the eye mixes a fine print from a distance.</summary>
    private static Rgb MeanOf(SKBitmap pixels)
    {
        var linear = Enumerable.Range(0, 256).Select(v => Math.Pow(v / 255.0, 2.2)).ToArray();
        double red = 0, green = 0, blue = 0;
        var bytes = pixels.GetPixelSpan();
        for (var i = 0; i + 3 < bytes.Length; i += 4)
        {
            red += linear[bytes[i]];
            green += linear[bytes[i + 1]];
            blue += linear[bytes[i + 2]];
        }

        var count = bytes.Length / 4;
        return new(Byte(red / count), Byte(green / count), Byte(blue / count));

        static byte Byte(double light) => (byte)Math.Round(Math.Pow(light, 1 / 2.2) * 255);
    }
}
