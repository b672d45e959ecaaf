using System.Diagnostics;
using Sketch.Drawing;
using Sketch.Lettering;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Planning.Diagrams;
using Sketch.Tests.Output.Files;
using Sketch.Tests.Planning;
using Sketch.Tests.Project;
using Sketch.Tests.Templates;
using Sketch.Units;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>The structure of a PDF, by which a program reads it aloud in order.</summary>
public sealed class TaggedPdfTests
{
    private const string Title = "Lamp (day)";

    private static readonly Lazy<PlanPages> Plan = new(() => new(
        PlanRun.OfFile(Repository.PathTo("sketches/lamp-day.batch")).Plan!, new FolderFiles(fonts: new FontLibrary([]))));

    private static readonly Dictionary<string, Lazy<IReadOnlyList<DrawnPage>>> Pages = new()
    {
        ["templates"] = new(() => [.. Printed.HollowSampleTemplates().SelectMany(t => t.Pages)]),
        ["workbook"] = new(() => Plan.Value.Workbook()),
        ["messages"] = new(() => Plan.Value.Messages()),
        ["cards"] = new(() => [.. Printed.Samples().Select(c => new DrawnPage(CardDrawing.Draw(c, FaceKind.Front)))]),
        ["shapes in points"] = new(() => [InPoints()]),
        ["words beyond the page"] = new(() => [Page("Left out", 500), Page("Seen", 10)]),
    };

    public static TheoryData<string> Documents => [.. Pages.Keys];

    private static readonly Dictionary<string, Lazy<byte[]>> Files =
        Pages.ToDictionary(p => p.Key, p => new Lazy<byte[]>(() => Pdf(p.Value.Value)));

    private static PdfDocument Open(string document) => PdfDocument.Open(Files[document].Value);

    private static byte[] Pdf(IReadOnlyList<DrawnPage> pages)
    {
        using var file = new MemoryStream();
        Assert.Null(SvgRenderer.WritePdf(pages, Title, file));
        return file.ToArray();
    }

    // Two paragraphs, the first of two lines that a shape would part if it were drawn between them.
    private static DrawnPage Page(string words, double left, double size = 3)
    {
        var svg = SvgWriter.Sheet(new(Length.Inch(6), Length.Inch(3)), true, "Page");
        svg.Open("rect").Attribute("width", 9).Attribute("height", 9).Close();
        svg.Words(new("first", "#000", [Line(words, left, 10, size), Line("below", 10, 20, size)]));
        svg.Words(new("second", "#900", [Line("last", 10, 30, 3)]));
        return svg.Close().ToPage();
    }

    private static PlacedRun Line(string words, double left, double baseline, double size) =>
        new(new FontLibrary([]).Set(words), left, baseline, size);

    private static DrawnPage InPoints() => Page("Words", 10) with
    {
        Shapes = "<svg xmlns='http://www.w3.org/2000/svg' width='432pt' height='216pt' viewBox='0 0 432 216'>"
            + "<clipPath id='c'><circle cx='90' cy='90' r='40'/></clipPath><rect width='90' height='90' clip-path='url(#c)'/>"
            + "<g opacity='0.5'><rect width='90' height='90'/><rect x='50' width='90' height='90'/></g></svg>",
    };

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_document_is_marked_and_has_a_language_and_a_title(string document)
    {
        using var pdf = Open(document);
        var structure = new PdfStructure(pdf);
        Assert.Equal(BooleanToken.True, structure.Catalogue("MarkInfo", "Marked"));
        Assert.Equal("en", Assert.IsType<StringToken>(structure.Catalogue("Lang")).Data);
        Assert.Equal(Title, pdf.Information.Title);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_viewer_shows_the_title_and_prints_at_true_size(string document)
    {
        using var pdf = Open(document);
        var structure = new PdfStructure(pdf);
        Assert.Equal(BooleanToken.True, structure.Catalogue("ViewerPreferences", "DisplayDocTitle"));
        Assert.Equal(NameToken.Create("None"), structure.Catalogue("ViewerPreferences", "PrintScaling"));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Each_mark_on_a_page_belongs_to_one_element(string document)
    {
        using var pdf = Open(document);
        var structure = new PdfStructure(pdf);
        var elements = structure.Elements().ToList();
        Assert.All(pdf.GetPages().Zip(structure.PageNumbers()), page =>
        {
            var named = elements.Where(e => e.Page == page.Second).SelectMany(e => e.Marks.Select(m => (Mark: m, e.Number))).ToList();
            Assert.Equal(PdfStructure.Marks(page.First), named.Select(m => m.Mark).Order());
            Assert.Equal(structure.Parents(page.First), named.OrderBy(m => m.Mark).Select(m => m.Number));
        });
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void All_that_is_drawn_is_marked_and_marks_and_states_are_nested(string document)
    {
        using var pdf = Open(document);
        Assert.Empty(pdf.GetPages().SelectMany(PdfStructure.Misplaced));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Tabs_follow_the_structure(string document)
    {
        using var pdf = Open(document);
        Assert.All(pdf.GetPages(), p => Assert.Equal(NameToken.Create("S"), p.Dictionary.Data["Tabs"]));
    }

    [Theory]
    [InlineData("templates")]
    [InlineData("workbook")]
    [InlineData("messages")]
    public void Another_program_reads_the_words_of_each_page_in_order(string document)
    {
        const string poppler = "/usr/bin/pdfinfo";
        Assert.SkipUnless(File.Exists(poppler), "pdfinfo is not installed.");
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.At("pages.pdf"), Files[document].Value);
        using var process = Process.Start(
            new ProcessStartInfo(poppler, ["-struct-text", folder.At("pages.pdf")]) { RedirectStandardOutput = true })!;
        var read = process.StandardOutput.ReadToEnd().Split("\n  Sect\n")[1..];
        process.WaitForExit();
        Assert.Equal(
            Pages[document].Value.Select(p => string.Join('\n', p.Words.Select(w => string.Join(' ', Seen(w))))),
            read.Select(p => string.Join('\n', p.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith('"') && l.Length > 2)
                .Select(l => l[1..^1]))));

        static IEnumerable<string> Seen(WordsOnPage words) => words.Words.Lines.Where(l => l.Run.Width > 0).Select(l => l.Run.Words);
    }

    [Fact]
    public void A_page_without_words_is_one_figure_with_an_alternative()
    {
        using var pdf = Open("cards");
        var structure = new PdfStructure(pdf);
        var elements = structure.Elements().Where(e => e.Page is not null).ToList();
        Assert.Equal(structure.PageNumbers(), elements.Select(e => e.Page!.Value));
        Assert.All(elements, e => Assert.Equal("Figure", e.Role));
        Assert.All(Printed.Samples().Zip(elements), e => Assert.StartsWith($"{e.First.Title}: front: base, ", e.Second.Alternative));
    }

    [Theory]
    [InlineData("<title>Gull (grey) \\ sea</title>", "Gull (grey) \\ sea")]
    [InlineData("<title>Möwe</title>", "Möwe")]
    [InlineData("<title>Sea</title><g><title>gull</title></g><g><title>gull</title></g><g><title>sun</title></g>", "Sea: gull; sun")]
    [InlineData("<g><title>gull</title></g>", "gull")]
    [InlineData("", Title)]
    public void The_alternative_is_what_the_titles_of_a_picture_say(string content, string expected) =>
        Assert.Equal(expected, Alternative(content));

    [Fact]
    public void A_long_alternative_counts_the_rest() => Assert.EndsWith("; part 40; and 2 more",
        Alternative(string.Concat(Enumerable.Range(1, 42).Select(i => $"<g><title>part {i}</title></g>"))), StringComparison.Ordinal);

    private static string? Alternative(string content)
    {
        using var pdf = PdfDocument.Open(Pdf([new DrawnPage("<svg xmlns='http://www.w3.org/2000/svg' width='1in' height='1in' "
            + $"viewBox='0 0 9 9'>{content}<path d='M0 0h9v9z'/></svg>")]));
        return new PdfStructure(pdf).Elements().Single(e => e.Role == "Figure").Alternative;
    }

    [Fact]
    public void Larger_words_are_headings()
    {
        var svg = SvgWriter.Sheet(new(Length.Inch(6), Length.Inch(3)), true, "Page");
        foreach (var points in (double[])[22, 16, 12, 12.2, 16])
        {
            svg.Words(new("words", "#000", [Line("words", 10, points, points * 25.4 / 72 * TextRun.CapitalPerSize)]));
        }

        using var pdf = PdfDocument.Open(Pdf([svg.Close().ToPage()]));
        Assert.Equal(["H1", "H2", "P", "P", "H2"], new PdfStructure(pdf).Elements().Skip(2).Select(e => e.Role));
    }

    [Fact]
    public void Printed_messages_are_read_from_their_pictures()
    {
        using var pdf = Open("messages");
        Assert.Contains("Keep a good light",
            new PdfStructure(pdf).Elements().First(e => e.Role == "Figure").Alternative, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_of_a_paragraph_are_one_element_with_a_blank_between_them()
    {
        using var pdf = PdfDocument.Open(Pdf([Page("Above", 10)]));
        Assert.Equal(["P", "P"], new PdfStructure(pdf).Elements().Skip(2).Select(e => e.Role));
        Assert.Equal("Above belowlast", pdf.GetPage(1).Text);
    }

    [Fact]
    public void The_same_pages_give_the_same_bytes() => Assert.Equal(Pdf(Pages["messages"].Value), Pdf(Pages["messages"].Value));
}
