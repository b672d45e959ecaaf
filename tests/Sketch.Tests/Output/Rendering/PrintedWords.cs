using Sketch.Drawing;
using Sketch.Output.Rendering;
using Sketch.Shapes;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>Words on a printed page, read back from the PDF.</summary>
/// <param name="Words">The words.</param>
/// <param name="Points">Size of their letters.</param>
/// <param name="Box">Their ink in points, from the page's upper left corner.</param>
/// <param name="Drawn">The same words as the page describes them.</param>
internal sealed record PrintedWords(string Words, double Points, Bounds Box, WordsOnPage Drawn)
{
    /// <summary>All words of pages: the letters of the PDF, in the parts in which the pages write them.</summary>
    public static IReadOnlyList<IReadOnlyList<PrintedWords>> On(IReadOnlyList<DrawnPage> pages)
    {
        using var pdf = PdfDocument.Open(Pdf(pages));
        return [.. pages.Zip(pdf.GetPages(), On)];
    }

    public static byte[] Pdf(IReadOnlyList<DrawnPage> pages)
    {
        using var file = new MemoryStream();
        Assert.Null(SvgRenderer.WritePdf(pages, "Test", file));
        return file.ToArray();
    }

    private static List<PrintedWords> On(DrawnPage drawn, Page page)
    {
        var words = new List<PrintedWords>();
        var read = 0;
        foreach (var part in drawn.Words)
        {
            // A blank parts each line from the next of the same words.
            var count = part.Words.Lines.Sum(l => l.Run.Glyphs.Length) + part.Words.Lines.Length - 1;
            var letters = page.Letters.Skip(read).Take(count).ToList();
            Assert.Equal(count, letters.Count);
            read += count;
            var box = letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => Flipped(l.BoundingBox, page.Height))
                .Aggregate((all, one) => all.With(one));
            words.Add(new(string.Concat(letters.Select(l => l.Value)), letters.Min(l => l.PointSize), box, part));
        }

        Assert.Equal(page.Letters.Count, read);
        return words;
    }

    private static Bounds Flipped(PdfRectangle box, double height) => new(box.Left, height - box.Top, box.Right, height - box.Bottom);
}
