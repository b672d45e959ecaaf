using System.Globalization;
using System.Text;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Planning.Diagrams;
using Sketch.Tests.Planning;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>A PDF written anew in less room.</summary>
public sealed class CompactPdfTests
{
    private static readonly Lazy<IReadOnlyList<DrawnPage>> Workbook = new(() => new PlanPages(
        PlanRun.OfFile(Repository.PathTo("sketches/lamp-day.batch")).Plan!, new FolderFiles(fonts: new FontLibrary([]))).Workbook());

    private static byte[] Drawn()
    {
        var shapes = string.Concat(Enumerable.Range(0, 200).Select(i =>
            string.Create(CultureInfo.InvariantCulture, $"<path opacity=\"0.5\" d=\"M {i / 7.0} 1 L 20.123456 {i / 3.0} L 5 9 Z\"/>")));
        return PrintedWords.Pdf([new DrawnPage("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"4in\" height=\"3in\" "
            + $"viewBox=\"0 0 101.6 76.2\">{shapes}</svg>")]);
    }

    [Fact]
    public void The_workbook_of_the_sample_takes_less_than_1_MB() =>
        Assert.InRange(PrintedWords.Pdf(Workbook.Value).Length, 1, 1_000_000);

    [Fact]
    public void The_same_pages_give_the_same_bytes() => Assert.Equal(Drawn(), Drawn());

    [Fact]
    public void The_first_bytes_say_that_Sketch_made_it() =>
        Assert.Contains("/Creator (Sketch)", Encoding.Latin1.GetString(Drawn(), 0, 1024), StringComparison.Ordinal);

    [Fact]
    public void The_table_of_places_is_where_the_end_says()
    {
        var text = Encoding.Latin1.GetString(Drawn());
        var at = text[(text.LastIndexOf("startxref\n", StringComparison.Ordinal) + 10)..].Split('\n')[0];
        Assert.Matches("^\\d+ 0 obj\n<</Type /XRef", text[int.Parse(at, CultureInfo.InvariantCulture)..]);
    }
}
