using Sketch.Diagnostics;
using Sketch.Templates;
using Sketch.Tests.Output.Files;
using Sketch.Tests.Output.Rendering;
using UglyToad.PdfPig;
using Xunit;

namespace Sketch.Tests.Templates;

/// <summary>The PDF, read back by a library and rendered by another program.</summary>
public sealed class TrueScaleTests
{
    private const double PointsPerMillimetre = 72 / 25.4;

    // The width of a line; half of it is ink on each side of the middle.
    private const double CutLine = 0.25;
    private const double ThinLine = 0.15;

    public static TheoryData<string, double> Prints() => new() { { "letter", 1 }, { "letter", 0.985 }, { "a4", 1 }, { "a4", 0.985 } };

    private static TemplateOptions Options(string page, double scale) => new(PageFormat.All.Single(f => f.Name == page), new(scale));

    [Theory]
    [MemberData(nameof(Prints))]
    public void Pages_have_exactly_the_size_of_the_paper(string page, double scale)
    {
        // 8 1/2 x 11 in; ISO 216: 210 x 297 mm; in points of 1/72 in.
        var (width, height) = page == "letter" ? (612, 792) : (210 * PointsPerMillimetre, 297 * PointsPerMillimetre);
        using var pdf = PdfDocument.Open(Printed.Pdf(Printed.Of(Printed.Shapes, Options(page, scale))));
        Assert.All(pdf.GetPages(), p =>
        {
            Assert.Equal(width, p.MediaBox.Bounds.Width, 0.001);
            Assert.Equal(height, p.MediaBox.Bounds.Height, 0.001);
        });
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public void Shapes_in_the_PDF_have_their_size_divided_by_the_scale_of_the_printer(string page, double scale)
    {
        // Sizes as written in the file: 2 x 3 in, 1 1/2 in across, 2 1/2 + 2 x 1/4 by 1/4 in, and the base 6 x 4 in flat.
        (double Width, double Height)[] expected = [(50.8, 76.2), (38.1, 38.1), (76.2, 6.35), (152.4, 101.6)];
        using var pdf = PdfDocument.Open(Printed.Pdf(Printed.Of(Printed.Shapes, Options(page, scale))));
        var drawn = pdf.GetPages().SelectMany(p => p.Paths).Where(p => p.IsStroked).Select(p => p.GetBoundingRectangle()!.Value)
            .Select(b => (Width: b.Width / PointsPerMillimetre * scale, Height: b.Height / PointsPerMillimetre * scale)).ToList();
        Assert.All(expected, e => Assert.Contains(drawn, d =>
            Near(d, e) || Near(d, (e.Height, e.Width))));

        static bool Near((double Width, double Height) a, (double Width, double Height) b) =>
            Math.Abs(a.Width - b.Width) < 0.01 && Math.Abs(a.Height - b.Height) < 0.01;
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public void Every_page_has_bars_of_four_inches_and_a_hundred_millimetres(string page, double scale)
    {
        using var pdf = PdfDocument.Open(Printed.Pdf(Printed.Of(Printed.Shapes, Options(page, scale))));
        Assert.All(pdf.GetPages(), p =>
        {
            var widths = p.Paths.Where(l => l.IsStroked).SelectMany(l => l).Select(s => s.GetBoundingRectangle())
                .OfType<UglyToad.PdfPig.Core.PdfRectangle>().Where(b => b.Height < 0.01).Select(b => b.Width / PointsPerMillimetre * scale)
                .ToList();
            Assert.Contains(widths, w => Math.Abs(w - 101.6) < 0.01);
            Assert.Contains(widths, w => Math.Abs(w - 100) < 0.01);
        });
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public void Everything_has_its_size_when_another_program_renders_it_at_600_dpi(string page, double scale)
    {
        const string poppler = "/usr/bin/pdftoppm";
        Assert.SkipUnless(File.Exists(poppler), "pdftoppm is not installed.");
        var options = Options(page, scale);
        var templates = Printed.Of(Printed.Shapes, options);
        var picture = Rendered(poppler, Printed.Pdf(templates));
        foreach (var name in new[] { "field: panel", "disc: circle", "band: strip", "base" })
        {
            var (at, block, line) = templates.Line(name);
            Assert.Equal(0, at);
            var expected = Printed.OnPaper(block, line, options.Scale);
            var ink = picture.Ink(expected.Grow(1));
            Assert.Equal(expected.Width, ink.Width - CutLine, 0.1);
            Assert.Equal(expected.Height, ink.Height - CutLine, 0.1);
        }

        // The bars are at the lower left margin; marks of 3 mm extend up from one and down from the other.
        var left = PageFormat.Margin.Millimetres;
        var bottom = options.Page.Size.Height.Millimetres - PageFormat.Margin.Millimetres;
        foreach (var (length, from, to) in new[] { (101.6, 10.5, 5.9), (100, 4.7, 0) })
        {
            var ink = picture.Ink(new(left - 1, bottom - from / scale, left + (length + 1) / scale, bottom - to / scale));
            Assert.Equal(length / scale, ink.Width - ThinLine, 0.1);
        }
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public void All_letters_on_the_templates_of_every_sample_are_printed_at_twelve_points_or_more(string page, double scale)
    {
        var templates = CardTemplates.Make(
            [.. Printed.Samples()], Options(page, scale) with { Mirror = true }, new TestWorld(), new FindingBag())!;
        Assert.All(PrintedWords.On(templates.Pages).SelectMany(p => p), w => Assert.Equal(12, w.Points * scale, 0.01));
    }

    private static GreyPicture Rendered(string poppler, byte[] pdf)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.At("templates.pdf"), pdf);
        return GreyPicture.Of(poppler, folder.At("templates.pdf"), 1, 600);
    }
}
