using System.Globalization;
using System.Text;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Output.Rendering;
using Sketch.Planning.Diagrams;
using Sketch.Tests.Output.Files;
using Sketch.Tests.Planning;
using Sketch.Tests.Project;
using UglyToad.PdfPig;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>A PDF written anew in less room.</summary>
public sealed class CompactPdfTests
{
    private const int AllOf = 255;

    private static readonly Lazy<IReadOnlyList<DrawnPage>> Workbook = new(() => new PlanPages(
        PlanRun.OfFile(Repository.PathTo("sketches/lamp-day.batch")).Plan!, new FolderFiles(fonts: new FontLibrary([]))).Workbook());

    private static byte[] Skia()
    {
        var shapes = string.Concat(Enumerable.Range(0, 200).Select(i =>
            string.Create(CultureInfo.InvariantCulture, $"<path opacity=\"0.5\" d=\"M {i / 7.0} 1 L 20.123456 {i / 3.0} L 5 9 Z\"/>")));
        return PrintedWords.Pdf([new DrawnPage("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"4in\" height=\"3in\" "
            + $"viewBox=\"0 0 101.6 76.2\">{shapes}</svg>")]);
    }

    [Fact]
    public void The_workbook_of_the_sample_takes_less_than_1_MB() =>
        Assert.InRange(CompactPdf.Of(PrintedWords.Pdf(Workbook.Value)).Length, 1, 1_000_000);

    [Fact]
    public void A_page_looks_the_same()
    {
        const string poppler = "/usr/bin/pdftoppm";
        Assert.SkipUnless(File.Exists(poppler), "pdftoppm is not installed.");
        var pdf = PrintedWords.Pdf([Workbook.Value[^2]]);
        var (before, after) = (Picture(poppler, pdf), Picture(poppler, CompactPdf.Of(pdf)));
        var sum = 0L;
        for (var y = 0; y < before.Height; y++)
        {
            for (var x = 0; x < before.Width; x++)
            {
                sum += Math.Abs(before[x, y] - after[x, y]);
            }
        }

        Assert.True(sum < before.Width * (long)before.Height * AllOf / 10_000, $"The difference is {sum}.");
    }

    [Fact]
    public void Another_program_reads_the_same_words_from_it()
    {
        var pdf = PrintedWords.Pdf(Workbook.Value);
        Assert.Equal(Words(pdf), Words(CompactPdf.Of(pdf)));
    }

    private static List<string> Words(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(p => p.Text)];
    }

    [Fact]
    public void The_same_file_gives_the_same_bytes()
    {
        var pdf = Skia();
        Assert.Equal(CompactPdf.Of(pdf), CompactPdf.Of(pdf));
    }

    [Fact]
    public void The_first_bytes_say_that_Sketch_made_it() =>
        Assert.Contains("/Creator (Sketch)", Encoding.Latin1.GetString(CompactPdf.Of(Skia()), 0, 1024), StringComparison.Ordinal);

    [Fact]
    public void The_table_of_places_is_where_the_end_says()
    {
        var text = Encoding.Latin1.GetString(CompactPdf.Of(Skia()));
        var at = text[(text.LastIndexOf("startxref\n", StringComparison.Ordinal) + 10)..].Split('\n')[0];
        Assert.Matches("^\\d+ 0 obj\n<</Type /XRef", text[int.Parse(at, CultureInfo.InvariantCulture)..]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("%PDF-1.4\nnothing")]
    public void What_Skia_did_not_write_stays_as_it_is(string text) =>
        Assert.Equal(Encoding.Latin1.GetBytes(text), CompactPdf.Of(Encoding.Latin1.GetBytes(text)));

    private static GreyPicture Picture(string poppler, byte[] pdf)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.At("page.pdf"), pdf);
        return GreyPicture.Of(poppler, folder.At("page.pdf"), 1, 100);
    }
}
