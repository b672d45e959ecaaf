using System.Globalization;
using System.Runtime.InteropServices;
using Sketch.Diagnostics;
using Sketch.Drawing;
using SkiaSharp;
using Svg;
using Svg.Skia;

namespace Sketch.Output.Rendering;

/// <summary>
/// Makes PNG and PDF from the pictures that the engine draws as SVG. Their root element gives a physical width and height;
/// words in them are outlines already, and the view box has the proportions of the page. The words of pages to print become text in a PDF.
/// No file is read or written, and on processors of one kind the same picture gives the same bytes.
/// </summary>
public static class SvgRenderer
{
    /// <summary>The largest picture drawn in pixels: 100 megapixels, which take 400 MB while drawing.</summary>
    public const long PixelLimit = 100_000_000;

    /// <summary>The largest page of a PDF: 200 inches, 14,400 points (PDF 1.7, annex C.2, architectural limits).</summary>
    public const double PageLimitInches = 200;

    private const double PointsPerInch = 72;

    // Without it Skia uses only the instructions that every processor has, and is a fifth slower.
    static SvgRenderer() => SKGraphics.Init();

    /// <summary>Draws a picture in pixels.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="dpi">Pixels per inch; each side is rounded to whole pixels.</param>
    /// <param name="output">Receives the PNG; nothing is written if there is a problem.</param>
    /// <returns>Why it is not drawn, in a plain sentence; null when it is.</returns>
    /// <exception cref="ArgumentException">The text is not an SVG with a physical size.</exception>
    public static Failure? WritePng(string svg, double dpi, Stream output)
    {
        var size = SvgSize.Read(svg);
        var (width, height) = (Math.Round(size.Width * dpi), Math.Round(size.Height * dpi));
        if (!(width >= 1 && height >= 1))
        {
            return new(Invariant($"At {dpi:0.##} dpi the picture would be smaller than a pixel; choose a higher resolution."));
        }

        if (width * height > PixelLimit)
        {
            return new(Invariant($"At {dpi:0.##} dpi the picture would be {width:0} x {height:0} pixels, ")
                + Invariant($"more than {PixelLimit / 1_000_000} megapixels; choose a lower resolution."));
        }

        using var picture = new Picture(svg, size, flat: true);
        // In the order of bytes of the platform, Skia blends by its quickest code; a quarter of the time of the whole command.
        using var bitmap = new SKBitmap(new SKImageInfo((int)width, (int)height, SKImageInfo.PlatformColorType, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            picture.Draw(canvas, width, height);
        }

        using var pixels = bitmap.PeekPixels() ?? throw new InvalidOperationException("The picture has no pixels.");
        using var written = IsOpaque(pixels) ? pixels.WithAlphaType(SKAlphaType.Opaque) : pixels.WithAlphaType(SKAlphaType.Premul);
        // Trying all filters on each line takes twice as long and saves nothing on papers that are drawn.
        using var png = written.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Sub, 6))
            ?? throw new InvalidOperationException("The picture could not be written as PNG.");
        PngDensity.Write(png.AsSpan(), dpi, output);
        return null;
    }

    /// <summary>Draws a picture at a given size in pixels, each side filled exactly: red, green, blue and opacity, one byte each.</summary>
    /// <exception cref="ArgumentException">The text is not an SVG with a physical size.</exception>
    internal static byte[] Pixels(string svg, int width, int height)
    {
        using var picture = new Picture(svg, SvgSize.Read(svg), flat: true);
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            picture.Draw(canvas, width, height);
        }

        return bitmap.GetPixelSpan().ToArray();
    }

    /// <summary>Puts pictures on the pages of a PDF, one each, each page of exactly its picture's size.</summary>
    /// <param name="pages">The pictures, at least one.</param>
    /// <param name="title">The document's title, as a viewer shows it.</param>
    /// <param name="output">Receives the PDF; nothing is written if there is a problem.</param>
    /// <returns>Why there is no PDF, in a plain sentence; null when there is.</returns>
    /// <exception cref="ArgumentException">There are no pages, or one is not an SVG with a physical size.</exception>
    public static Failure? WritePdf(IReadOnlyList<string> pages, string title, Stream output) =>
        WritePdf([.. pages.Select(p => new DrawnPage(p))], title, output);

    /// <summary>Makes a PDF of pages to print, each of exactly its size; their words are text that can be found and copied.</summary>
    /// <param name="pages">The pages, at least one.</param>
    /// <param name="title">The document's title, as a viewer shows it.</param>
    /// <param name="output">Receives the PDF; nothing is written if there is a problem.</param>
    /// <param name="cancellation">Stops between two pages.</param>
    /// <returns>Why there is no PDF, in a plain sentence; null when there is.</returns>
    /// <exception cref="ArgumentException">There are no pages, or one is not an SVG with a physical size.</exception>
    /// <exception cref="OperationCanceledException">The work is cancelled; the file is not complete.</exception>
    public static Failure? WritePdf(
        IReadOnlyList<DrawnPage> pages, string title, Stream output, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfZero(pages.Count);
        var sizes = pages.Select(p => SvgSize.Read(p.Shapes)).ToList();
        if (sizes.FindIndex(s => Math.Max(s.Width, s.Height) > PageLimitInches) is >= 0 and var large)
        {
            return new(Invariant($"Page {large + 1} would be {sizes[large].Width:0.##} x {sizes[large].Height:0.##} in; ")
                + Invariant($"a PDF page ends at {PageLimitInches} in."));
        }

        // A quality above 100 keeps pictures as they are, without JPEG.
        var metadata = SKDocumentPdfMetadata.Default with
        {
            Title = title,
            Creator = "Sketch",
            RasterDpi = PageGrid(sizes),
            EncodingQuality = 101
        };
        using var text = new PrintedText(pages);
        using var written = new MemoryStream();
        using var document = SKDocument.CreatePdf(written, metadata);
        foreach (var (page, size) in pages.Zip(sizes))
        {
            cancellation.ThrowIfCancellationRequested();
            // PDF viewers disagree on how a translucent fill and stroke in one operation looks.
            using var picture = new Picture(page.Shapes, size, flat: false);
            var (width, height) = (size.Width * PointsPerInch, size.Height * PointsPerInch);
            var canvas = document.BeginPage((float)width, (float)height);
            canvas.Save();
            picture.Draw(canvas, width, height);
            canvas.Restore();
            text.Draw(canvas, page);
            document.EndPage();
        }

        document.Close();
        var file = PdfFile.Read(written.GetBuffer().AsMemory(0, (int)written.Length));
        TaggedPdf.AddTo(file, pages, title, cancellation);
        CompactPdf.Write(file, output, cancellation);
        return null;
    }

    /// <summary>
    /// Skia rounds the sides of a page to whole steps of the resolution at which it draws soft shadows. 320 per inch keeps every 1/64 in
    /// exact, 254 every tenth of a millimetre; the sides of other pages are off by at most 0.12 point; their content is not.
    /// </summary>
    private static float PageGrid(List<SvgSize> sizes)
    {
        return sizes.TrueForAll(s => IsWhole(s.Width * 320) && IsWhole(s.Height * 320)) ? 320
            : sizes.TrueForAll(s => IsWhole(s.Width * 254) && IsWhole(s.Height * 254)) ? 254
            : 320;

        static bool IsWhole(double steps) => Math.Abs(steps - Math.Round(steps)) < 1e-6;
    }

    /// <summary>Whether it is opaque, as every face of a card is; its PNG then needs no alpha channel.</summary>
    private static bool IsOpaque(SKPixmap pixels) =>
        MemoryMarshal.Cast<byte, uint>(pixels.GetPixelSpan()).IndexOfAnyInRange(0u, 0xFEFF_FFFFu) < 0;

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>
    /// A picture that fills any rectangle exactly. Loaded unchanged, its sides would be rounded up to whole units of 1/96 in and its
    /// content would shift; so it is loaded with whole sides, which its view box fills.
    /// </summary>
    private sealed class Picture : IDisposable
    {
        private const double UnitsPerInch = 96;

        private readonly SKSvg _svg = new();
        private readonly SKPicture _picture;
        private readonly double _width;
        private readonly double _height;

        public Picture(string svg, SvgSize size, bool flat)
        {
            (_width, _height) = (Math.Ceiling(size.Width * UnitsPerInch), Math.Ceiling(size.Height * UnitsPerInch));
            var document = SvgDocument.FromSvg<SvgDocument>(svg);
            if (document.ViewBox == SvgViewBox.Empty)
            {
                document.ViewBox = new(0, 0, (float)(size.Width * UnitsPerInch), (float)(size.Height * UnitsPerInch));
            }

            document.Width = new((float)_width);
            document.Height = new((float)_height);
            document.AspectRatio = new(SvgPreserveAspectRatio.none);
            var recorded = _svg.FromSvgDocument(document);
            if (flat && _svg.Model is { } model)
            {
                FlatLayers.Replace(model);
                recorded = _svg.RebuildFromModel();
            }

            _picture = recorded ?? throw new ArgumentException("The picture cannot be drawn.", nameof(svg));
        }

        public void Draw(SKCanvas canvas, double width, double height)
        {
            canvas.Scale((float)(width / _width), (float)(height / _height));
            canvas.DrawPicture(_picture);
        }

        public void Dispose() => _svg.Dispose();
    }
}
