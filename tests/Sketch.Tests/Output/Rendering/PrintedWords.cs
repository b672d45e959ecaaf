using System.Xml.Linq;
using Sketch.Output.Rendering;
using Sketch.Shapes;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>Words on a printed page, measured in the PDF.</summary>
/// <param name="Words">The words.</param>
/// <param name="Points">Letter size.</param>
/// <param name="Box">The box of their ink in points, from the upper left corner of the page.</param>
internal sealed record PrintedWords(string Words, double Points, Bounds Box)
{
    // The cap height of the built-in font is 0.727 of the letter size, by its OS/2 table.
    private const double CapitalPerSize = 0.727;

    /// <summary>
    /// All words on pages whose letters are boxes of cap height, as <see cref="TestWorld"/> shapes them. Letters are
    /// outlines, so the SVG is needed to tell which filled shapes in the PDF are words.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<PrintedWords>> On(IReadOnlyList<string> pages)
    {
        using var file = new MemoryStream();
        Assert.Null(SvgRenderer.WritePdf(pages, "Test", file));
        using var pdf = PdfDocument.Open(file.ToArray());
        return [.. pages.Zip(pdf.GetPages(), (svg, page) => On(svg, page))];
    }

    private static List<PrintedWords> On(string svg, UglyToad.PdfPig.Content.Page page)
    {
        var filled = XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName is ("path" or "rect" or "circle") && IsArea(e))
            .ToList();
        var drawn = page.Paths.Where(p => p.IsFilled).ToList();
        Assert.Equal(filled.Count, drawn.Count);
        return [.. filled.Zip(drawn).Where(z => TitleOf(z.First) is not null).Select(z => new PrintedWords(
            TitleOf(z.First)!,
            z.Second.Max(s => s.GetBoundingRectangle()!.Value.Height) / CapitalPerSize,
            Flipped(z.Second.GetBoundingRectangle()!.Value, page.Height)))];
    }

    private static string? TitleOf(XElement element) => element.Elements().FirstOrDefault(e => e.Name.LocalName == "title")?.Value;

    // The dashes of a line are small filled areas too.
    private static bool IsArea(XElement element) =>
        Inherited(element, "fill") != "none" || Inherited(element, "stroke-dasharray") is not null;

    private static string? Inherited(XElement element, string name) =>
        element.AncestorsAndSelf().Select(e => (string?)e.Attribute(name)).FirstOrDefault(v => v is not null);

    private static Bounds Flipped(PdfRectangle box, double height) => new(box.Left, height - box.Top, box.Right, height - box.Bottom);
}
