using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;
using Sketch.Output.Rendering;

namespace Sketch.Output.Gallery;

/// <summary>A small PNG of a picture that the engine drew.</summary>
/// <param name="Png">The file.</param>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
public sealed record Thumbnail(byte[] Png, int Width, int Height)
{
    /// <summary>The longer side in pixels: twice what a page shows, for high-density screens.</summary>
    public const int Side = 480;

    // Drawn larger and then scaled down, fine prints stay even.
    private const int Finer = 2;

    /// <summary>Makes one.</summary>
    /// <param name="svg">The picture, with a physical size.</param>
    public static Thumbnail Of(string svg)
    {
        var size = SvgSize.Read(svg);
        var scale = Side / Math.Max(size.Width, size.Height);
        var (width, height) = (Math.Max(1, (int)Math.Round(size.Width * scale)), Math.Max(1, (int)Math.Round(size.Height * scale)));
        using var image = Image.LoadPixelData<Rgba32>(
            SvgRenderer.Pixels(svg, width * Finer, height * Finer), width * Finer, height * Finer);
        image.Mutate(i => i.Resize(width, height, KnownResamplers.Lanczos3));
        image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Software", "Sketch", "", ""));
        using var png = new MemoryStream();
        image.Save(png, new PngEncoder
        {
            ColorType = PngColorType.Rgb,
            CompressionLevel = PngCompressionLevel.BestCompression,
            FilterMethod = PngFilterMethod.Adaptive
        });
        return new(png.ToArray(), width, height);
    }
}
