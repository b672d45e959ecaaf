using System.Buffers.Binary;
using Sketch.Drawing;
using Sketch.Output.Rendering;
using SkiaSharp;
using UglyToad.PdfPig;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

public sealed class SvgRendererTests
{
    private const double Tolerance = 0.001;
    private const double HundredthOfPoint = 0.01;

    [Theory]
    [InlineData("4.25in", "5.5in", 150, 638, 825)]
    [InlineData("4.25in", "5.5in", 96, 408, 528)]
    [InlineData("105mm", "148mm", 300, 1240, 1748)]
    [InlineData("1in", "0.5in", 72.5, 72, 36)]
    public void A_PNG_has_the_size_in_inches_times_the_resolution(string width, string height, double dpi, int across, int down)
    {
        using var image = SKBitmap.Decode(Png(Card(width, height), dpi));
        Assert.Equal((across, down), (image.Width, image.Height));
    }

    [Fact]
    public void A_picture_reaches_every_edge_of_its_PNG()
    {
        using var image = SKBitmap.Decode(Png(Card("105mm", "148mm"), 150));
        SKColor[] corners = [image.GetPixel(0, 0), image.GetPixel(image.Width - 1, 0), image.GetPixel(0, image.Height - 1),
            image.GetPixel(image.Width - 1, image.Height - 1)];
        Assert.All(corners, c => Assert.Equal(new SKColor(0x9f, 0xc9, 0xe8), c));
    }

    [Fact]
    public void A_PNG_states_its_resolution_in_pixels_per_metre()
    {
        var png = Png(Card("1in", "1in"), 300);
        var chunk = png.AsSpan().IndexOf("pHYs"u8);
        Assert.Equal((11811, 11811, 1),
            (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(chunk + 4)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(chunk + 8)),
                png[chunk + 12]));
    }

    [Fact]
    public void The_same_picture_gives_the_same_bytes()
    {
        var card = Card("4.25in", "5.5in");
        Assert.Equal((Png(card, 96), Pdf(card)), (Png(card, 96), Pdf(card)), SameBytes);
    }

    [Theory]
    [InlineData("4.25in", "5.5in", 3000,
        "At 3000 dpi the picture would be 12750 x 16500 pixels, more than 100 megapixels; choose a lower resolution.")]
    [InlineData("4.25in", "5.5in", double.PositiveInfinity, "more than 100 megapixels")]
    [InlineData("1mm", "1mm", 5, "At 5 dpi the picture would be smaller than a pixel; choose a higher resolution.")]
    [InlineData("1mm", "1mm", -300, "smaller than a pixel")]
    [InlineData("1mm", "1mm", double.NaN, "smaller than a pixel")]
    public void A_resolution_out_of_range_is_explained(string width, string height, double dpi, string problem)
    {
        using var output = new MemoryStream();
        var failure = SvgRenderer.WritePng(Card(width, height), dpi, output);
        Assert.Contains(problem, failure?.Problem, StringComparison.Ordinal);
        Assert.Equal(0, output.Length);
    }

    // PDF 32000-1, 8.3.2.3: one unit of default user space is 1/72 in.
    [Theory]
    [InlineData("4.25in", "5.5in", 306, 396)]
    [InlineData("3.859375in", "8.5in", 277.875, 612)]
    [InlineData("105mm", "148mm", 105 * 72 / 25.4, 148 * 72 / 25.4)]
    [InlineData("210mm", "297mm", 210 * 72 / 25.4, 297 * 72 / 25.4)]
    [InlineData("99.9mm", "7.5mm", 99.9 * 72 / 25.4, 7.5 * 72 / 25.4)]
    public void A_PDF_page_has_exactly_the_size_of_its_picture(string width, string height, double across, double down)
    {
        using var pdf = PdfDocument.Open(Pdf(Card(width, height)));
        Assert.Equal(across, pdf.GetPage(1).Width, Tolerance);
        Assert.Equal(down, pdf.GetPage(1).Height, Tolerance);
    }

    [Fact]
    public void Each_picture_is_a_page_of_its_own_size()
    {
        using var pdf = PdfDocument.Open(Pdf(Card("4.25in", "5.5in"), Card("5.5in", "4.25in"), Card("3in", "3in")));
        Assert.Equal([(306, 396), (396, 306), (216, 216)], pdf.GetPages().Select(p => (p.Width, p.Height)));
    }

    [Fact]
    public void A_rectangle_in_a_PDF_is_true_to_scale()
    {
        const string svg = "<svg xmlns='http://www.w3.org/2000/svg' width='105mm' height='148mm' viewBox='0 0 105 148'><rect x='10' "
            + "y='20' width='50' height='80' fill='#16324f'/></svg>";
        using var pdf = PdfDocument.Open(Pdf(svg));
        var box = pdf.GetPage(1).Paths.Select(p => p.GetBoundingRectangle()).First(b => b is { Height: < 400 })!.Value;
        Assert.Equal(10 * 72 / 25.4, box.Left, HundredthOfPoint);
        Assert.Equal((148 - 20) * 72 / 25.4, box.Top, HundredthOfPoint);
        Assert.Equal(50 * 72 / 25.4, box.Width, HundredthOfPoint);
        Assert.Equal(80 * 72 / 25.4, box.Height, HundredthOfPoint);
    }

    [Fact]
    public void A_PDF_has_a_title()
    {
        using var pdf = PdfDocument.Open(Pdf(Card("4in", "4in")));
        Assert.Equal("Fair winds (1)", pdf.Information.Title);
    }

    [Fact]
    public void A_page_beyond_the_limit_of_PDF_is_explained()
    {
        using var output = new MemoryStream();
        var problem = SvgRenderer.WritePdf([Card("4in", "4in"), Card("201in", "4in")], "Long", output)?.Problem;
        Assert.Equal("Page 2 would be 201 x 4 in; a PDF page ends at 200 in.", problem);
    }

    [Fact]
    public void A_PDF_that_is_cancelled_leaves_nothing()
    {
        using var output = new MemoryStream();
        DrawnPage[] pages = [new(Card("4in", "4in"))];
        Assert.Throws<OperationCanceledException>(() => SvgRenderer.WritePdf(pages, "Cancelled", output, new CancellationToken(true)));
        Assert.Equal(0, output.Length);
    }

    [Theory]
    [InlineData("<svg width='4.25in'/>")]
    [InlineData("<svg width='100%' height='100%'/>")]
    [InlineData("<svg width='-1in' height='1in'/>")]
    [InlineData("no picture")]
    public void A_picture_without_a_physical_size_throws(string svg) =>
        Assert.Throws<ArgumentException>(() => SvgRenderer.WritePng(svg, 96, Stream.Null));

    private static string Card(string width, string height) =>
        $"<svg xmlns='http://www.w3.org/2000/svg' width='{width}' height='{height}' viewBox='0 0 10 10' "
            + "preserveAspectRatio='none'><rect width='10' height='10' fill='#9fc9e8'/><circle cx='5' cy='5' r='3' fill='#16324f'/></svg>";

    private static byte[] Png(string svg, double dpi)
    {
        using var output = new MemoryStream();
        Assert.Null(SvgRenderer.WritePng(svg, dpi, output));
        return output.ToArray();
    }

    private static byte[] Pdf(params string[] pages)
    {
        using var output = new MemoryStream();
        Assert.Null(SvgRenderer.WritePdf(pages, "Fair winds (1)", output));
        return output.ToArray();
    }

    private static bool SameBytes((byte[] Png, byte[] Pdf) a, (byte[] Png, byte[] Pdf) b) =>
        a.Png.AsSpan().SequenceEqual(b.Png) && a.Pdf.AsSpan().SequenceEqual(b.Pdf);
}
