using System.Diagnostics;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Planning.Diagrams;
using Sketch.Shapes;
using Sketch.Tests.Output.Files;
using Sketch.Tests.Templates;
using Sketch.Units;
using UglyToad.PdfPig;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>Words that a PDF holds as text, beside the outlines that an SVG of the same page holds.</summary>
public sealed class PrintedTextTests
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private static readonly Lazy<IReadOnlyList<DrawnPage>> Templates =
        new(() => [.. Printed.HollowSampleTemplates().SelectMany(t => t.Pages)]);

    private static readonly Lazy<IReadOnlyList<DrawnPage>> Workbook = new(() =>
    {
        var findings = new FindingBag();
        var batch = FolderFiles.ReadFile(Project.Repository.PathTo("sketches/lamp-day.batch")).Source!;
        var plan = BatchPlanner.Plan(BatchFiles.Read(batch, new FolderFiles(), findings)!, TimeSpan.FromSeconds(60), findings)!;
        var pages = new PlanPages(plan, new FolderFiles(fonts: new FontLibrary([])));
        return pages.Workbook();
    });

    public static TheoryData<string> Documents => ["templates", "workbook"];

    private static IReadOnlyList<DrawnPage> Pages(string document) => document == "workbook" ? Workbook.Value : Templates.Value;

    private static IEnumerable<string> WordsOf(DrawnPage page) =>
        page.Words.SelectMany(w => w.Words.Lines).SelectMany(l => l.Run.Words.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_reader_finds_every_word_of_a_page(string document)
    {
        var pages = Pages(document);
        using var pdf = PdfDocument.Open(PrintedWords.Pdf(pages));
        Assert.Empty(pages.Zip(pdf.GetPages(), (page, read) => WordsOf(page).Except(read.GetWords().Select(w => w.Text)))
            .SelectMany(w => w));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void So_does_another_program(string document)
    {
        const string poppler = "/usr/bin/pdftotext";
        Assert.SkipUnless(File.Exists(poppler), "pdftotext is not installed.");
        var pages = Pages(document);
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.At("pages.pdf"), PrintedWords.Pdf(pages));
        using var process = Process.Start(
            new ProcessStartInfo(poppler, ["-layout", folder.At("pages.pdf"), "-"]) { RedirectStandardOutput = true })!;
        var found = process.StandardOutput.ReadToEnd().Split('\f');
        process.WaitForExit();
        Assert.Empty(pages.Zip(found, (page, read) =>
            WordsOf(page).Except(read.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries))).SelectMany(w => w));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Text_stands_where_its_outlines_would(string document)
    {
        Assert.All(PrintedWords.On(Pages(document)).SelectMany(p => p), w =>
        {
            var outlines = new Outline([.. w.Drawn.Words.Lines.SelectMany(l => l.Outline.Contours)]).Transform(w.Drawn.OnPage).Bounds;
            Assert.Equal(outlines.Left * PointsPerMillimetre, w.Box.Left, 0.05);
            Assert.Equal(outlines.Top * PointsPerMillimetre, w.Box.Top, 0.05);
            Assert.Equal(outlines.Right * PointsPerMillimetre, w.Box.Right, 0.05);
            Assert.Equal(outlines.Bottom * PointsPerMillimetre, w.Box.Bottom, 0.05);
        });
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_page_looks_the_same_with_text_as_with_outlines(string document)
    {
        const string poppler = "/usr/bin/pdftoppm";
        Assert.SkipUnless(File.Exists(poppler), "pdftoppm is not installed.");
        DrawnPage[] pages = [.. Pages(document).Take(4)];
        var (text, outlines) = (Pictures(poppler, pages), Pictures(poppler, [.. pages.Select(p => new DrawnPage(p.Svg))]));
        Assert.All(text.Zip(outlines), p =>
        {
            Assert.Equal(0, InkFarFromInk(p.First, p.Second));
            Assert.Equal(0, InkFarFromInk(p.Second, p.First));
        });
    }

    [Fact]
    public void Templates_of_each_sample_take_less_than_200_KB() =>
        Assert.All(Printed.SampleTemplates(), t => Assert.InRange(PrintedWords.Pdf(t.Pages).Length, 1, 200_000));

    [Fact]
    public void Letters_that_share_a_glyph_or_have_a_special_one_are_found_as_typed()
    {
        const string poppler = "/usr/bin/pdftotext";
        Assert.SkipUnless(File.Exists(poppler), "pdftotext is not installed.");
        const string typed = "3x4 -> (AB) e\u0301";
        var svg = SvgWriter.Sheet(new(Length.Inch(6), Length.Inch(1)), true, "Words");
        svg.Words(new(typed, "#000", [new(new FontLibrary([]).Set(typed), 10, 10, 3)]));
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.At("page.pdf"), PrintedWords.Pdf([svg.Close().ToPage()]));
        using var process = Process.Start(
            new ProcessStartInfo(poppler, [folder.At("page.pdf"), "-"]) { RedirectStandardOutput = true })!;
        Assert.Equal(typed.Normalize(), process.StandardOutput.ReadToEnd().Trim('\n', '\f', ' ').Normalize());
        process.WaitForExit();
    }

    private static List<GreyPicture> Pictures(string poppler, DrawnPage[] pages)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.At("pages.pdf"), PrintedWords.Pdf(pages));
        return [.. Enumerable.Range(1, pages.Length).Select(p => GreyPicture.Of(poppler, folder.At("pages.pdf"), p, 150))];
    }

    /// <summary>Dark pixels that have nothing darker than paper within a pixel of them in the other picture.</summary>
    private static int InkFarFromInk(GreyPicture picture, GreyPicture other)
    {
        const int dark = 96;
        const int paper = 220;
        var far = 0;
        for (var y = 1; y < picture.Height - 1; y++)
        {
            for (var x = 1; x < picture.Width - 1; x++)
            {
                far += picture[x, y] < dark && Darkest(x, y) >= paper ? 1 : 0;
            }
        }

        return far;

        int Darkest(int x, int y) =>
            Enumerable.Range(-1, 3).Min(down => Enumerable.Range(-1, 3).Min(right => other[x + right, y + down]));
    }
}
