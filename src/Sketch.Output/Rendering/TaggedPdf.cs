using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Sketch.Drawing;
using Sketch.Templates;

namespace Sketch.Output.Rendering;

/// <summary>
/// Adds the structure to a PDF that programs read aloud: a section for each page, in it its headings and paragraphs in reading order, and
/// its picture with what it shows (ISO 32000-1, 14.7 and 14.8; the language 14.9.2; viewer preferences 12.2). A page prints at its
/// true size unless the reader asks for another.
/// </summary>
internal static partial class TaggedPdf
{
    // Words this much larger than the text of all pages are headings; the largest of the document are those of the first level.
    private const double HeadingFrom = TemplateLettering.Points * 1.2;

    /// <summary>Adds the structure.</summary>
    /// <param name="file">What Skia wrote.</param>
    /// <param name="pages">The pages as they were drawn.</param>
    /// <param name="title">The title of the document; it describes a picture that has no title.</param>
    /// <param name="cancellation">Stops between two pages.</param>
    public static void AddTo(PdfFile file, IReadOnlyList<DrawnPage> pages, string title, CancellationToken cancellation)
    {
        var root = file.Add("");
        var document = file.Add("");
        var numbers = Enumerable.Range(1, file.Objects.Count)
            .Where(n => file[n].Head.StartsWith("<</Type /Page\n", StringComparison.Ordinal))
            .ToList();
        var largest = pages.SelectMany(p => p.Words).Select(Points).DefaultIfEmpty().Max();
        var (sections, parents) = (new StringBuilder(), new StringBuilder());
        for (var i = 0; i < pages.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            var (section, marks) = new PageStructure(file, numbers[i], document).Add(pages[i], title, largest, i);
            sections.Append(CultureInfo.InvariantCulture, $"{section} 0 R ");
            parents.Append(CultureInfo.InvariantCulture, $"{i} [{References(marks)}]\n");
        }

        file[root] = new(string.Create(CultureInfo.InvariantCulture,
            $"<</Type /StructTreeRoot\n/K {document} 0 R\n/ParentTree <</Nums [{parents}]>>\n/ParentTreeNextKey {pages.Count}>>"));
        file[document] = new(string.Create(CultureInfo.InvariantCulture,
            $"<</S /Document\n/P {root} 0 R\n/T {PdfText.Of(title)}\n/K [{sections.ToString().TrimEnd()}]>>"));
        var catalogue = Preferences().Replace(file[file.Catalogue].Head, "");
        file[file.Catalogue] = new(catalogue[..^2] + string.Create(CultureInfo.InvariantCulture,
            $"\n/Lang (en)\n/MarkInfo <</Marked true>>\n/StructTreeRoot {root} 0 R\n")
            + "/ViewerPreferences <</DisplayDocTitle true\n/PrintScaling /None>>>>");
    }

    private static string References(IEnumerable<int> numbers) =>
        string.Join(' ', numbers.Select(n => $"{n.ToString(CultureInfo.InvariantCulture)} 0 R"));

    // The size of their letters on the page.
    private static double Points(WordsOnPage words)
    {
        var map = words.OnPage;
        var scale = Math.Sqrt(Math.Abs(map.A * map.D - map.B * map.C));
        return words.Words.Lines.Select(l => l.CapHeight).DefaultIfEmpty().Max() * scale / TemplateLettering.CapitalHeight
            * TemplateLettering.Points;
    }

    /// <summary>The structure of one page.</summary>
    private sealed class PageStructure(PdfFile file, int page, int document)
    {
        /// <summary>Marks the content of the page and adds its elements.</summary>
        /// <returns>The number of its section, and for each mark the number of the element that it belongs to.</returns>
        public (int Section, List<int> Marks) Add(DrawnPage drawn, string title, double largest, int index)
        {
            var content = int.Parse(ContentsOf().Match(file[page].Head).Groups[1].Value, CultureInfo.InvariantCulture);
            var lines = Encoding.Latin1.GetString(file[content].Unpacked()).Split('\n');
            var texts = Texts(drawn, lines.Count(l => l == "BT"));
            var isPicture = texts.Count == 0 || PictureTitle.IsPicture(drawn.Shapes);
            string Role(int part) => part >= drawn.Words.Length ? "P" : Points(drawn.Words[part]) switch
            {
                < HeadingFrom => "P",
                var points => points > largest - 0.01 ? "H1" : "H2",
            };
            var (marked, parts) = new MarkedContent(lines, i => (Role(texts[i]), texts[i]), isPicture).Write();
            file[content] = file[content].WithPlain(Encoding.Latin1.GetBytes(marked));
            file[page] = new(file[page].Head[..^2] + string.Create(CultureInfo.InvariantCulture, $"\n/StructParents {index}>>"));

            var section = file.Add("");
            var elements = new Dictionary<int, int>();
            foreach (var (part, marks) in parts.Index().GroupBy(p => p.Item, p => p.Index).Select(g => (g.Key, g)))
            {
                var what = part == MarkedContent.Picture
                    ? $"Figure\n/Alt {PdfText.Of(PictureTitle.Of(drawn.Shapes) ?? title)}\n{WholePage()}" : Role(part);
                var numbers = string.Join(' ', marks.Select(m => m.ToString(CultureInfo.InvariantCulture)));
                elements[part] = file.Add(string.Create(CultureInfo.InvariantCulture,
                    $"<</S /{what}\n/P {section} 0 R\n/Pg {page} 0 R\n/K {(marks.Count() == 1 ? numbers : $"[{numbers}]")}>>"));
            }

            file[section] = new(string.Create(CultureInfo.InvariantCulture,
                $"<</S /Sect\n/P {document} 0 R\n/K [{References(elements.Values)}]>>"));
            return (section, [.. parts.Select(p => elements[p])]);
        }

        // A picture stands between paragraphs and fills the page (14.8.5.4).
        private string WholePage() => $"/A <</O /Layout\n/Placement /Block\n/BBox {MediaBox().Match(file[page].Head).Groups[1].Value}>>";

        // To which words each text object belongs. Skia leaves out lines beyond the page; each of the others then is a paragraph.
        private static List<int> Texts(DrawnPage drawn, int count)
        {
            var lines = drawn.Words.SelectMany((w, i) => w.Words.Lines.Where(l => l.Run.Width > 0).Select(_ => i)).ToList();
            return lines.Count == count ? lines : [.. Enumerable.Range(drawn.Words.Length, count)];
        }
    }

    [GeneratedRegex(@"/Contents (\d+) 0 R")]
    private static partial Regex ContentsOf();

    [GeneratedRegex(@"/MediaBox (\[[^\]]*\])")]
    private static partial Regex MediaBox();

    [GeneratedRegex(@"\n?/ViewerPreferences <<[^>]*>>")]
    private static partial Regex Preferences();
}
