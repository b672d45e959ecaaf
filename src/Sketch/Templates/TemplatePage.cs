using System.Globalization;
using Sketch.Drawing;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// Draws sheets as pages of exactly the paper's size. Lines are grouped by kind, with final coordinates: no transforms,
/// clips or filters, which cutting machines interpret differently.
/// </summary>
internal sealed class TemplatePage(TemplateOptions options, TemplateLettering lettering)
{
    private const string Black = "#000";

    private static readonly (LineKind Kind, string Id, string Colour, double Width, string? Dashes)[] Strokes =
    [
        (LineKind.Cut, "cut", Black, 0.25, null),
        (LineKind.Fold, "fold", "#0a4f8f", 0.25, "2.4 1.2"),
        (LineKind.Place, "place", "#555", 0.35, ".4 1.2"),
        (LineKind.Edge, "edge", "#777", 0.15, null),
        (LineKind.Mark, "marks", "#555", 0.15, null),
    ];

    private readonly PageFooter _footer = new(
        lettering, (options.Page.Size.Width - PageFormat.Margin * 2).Millimetres * options.Scale.Value);

    /// <summary>Width of the drawing area, in millimetres of the finished card.</summary>
    public double Width => (options.Page.Size.Width - PageFormat.Margin * 2).Millimetres * options.Scale.Value;

    /// <summary>Height of the drawing area, without the page footer.</summary>
    public double Height => (options.Page.Size.Height - PageFormat.Margin * 2).Millimetres * options.Scale.Value - _footer.Height;

    /// <summary>The page.</summary>
    public DrawnPage Draw(TemplateSheet sheet, int page, int pages)
    {
        var ids = new SvgIds();
        foreach (var (_, id, _, _, _) in Strokes)
        {
            ids.Claim(id);
        }

        var title = string.Create(CultureInfo.InvariantCulture, $"{sheet.Title}, page {page} of {pages}");
        var svg = SvgWriter.Sheet(options.Page.Size, options.Page.InInches, title);
        var blocks = sheet.Blocks.Select(b => b.Block.Shift(b.Left, b.Top)).ToList();
        foreach (var stroke in Strokes)
        {
            var lines = blocks.SelectMany(b => b.Lines).Where(l => l.Kind == stroke.Kind).ToList();
            if (lines.Count > 0)
            {
                Lines(svg, ids, stroke.Id, stroke.Kind, lines);
            }
        }

        Texts(svg, ids.Claim("words"), blocks.SelectMany(b => b.Texts));
        svg.Open("g").Attribute("id", ids.Claim("foot"));
        Lines(svg, ids, ids.Claim("bars"), LineKind.Mark, PageFooter.Bars(Height));
        var legend = _footer.Legend(Height, [.. blocks.SelectMany(b => b.Lines)]);
        foreach (var (sample, _) in legend)
        {
            Lines(svg, ids, ids.Claim($"legend {sample.Name}"), sample.Kind, [sample]);
        }

        Texts(svg, ids.Claim("foot words"), [.. _footer.Texts(Height, page, pages), .. legend.Select(l => l.Word)]);
        return svg.Close().Close().ToPage();
    }

    private void Lines(SvgWriter svg, SvgIds ids, string id, LineKind kind, IReadOnlyList<TemplateLine> lines)
    {
        var (_, _, colour, width, dashes) = Strokes.Single(s => s.Kind == kind);
        svg.Open("g").Attribute("id", id).Attribute("fill", "none").Attribute("stroke", colour).Attribute("stroke-width", width);
        if (dashes is not null)
        {
            svg.Attribute("stroke-dasharray", dashes);
        }

        foreach (var line in lines)
        {
            svg.Open("path").Attribute("id", ids.Claim(line.Name)).Attribute("d", Path(line.Transform(OnPage))).Close();
        }

        svg.Close();
    }

    private void Texts(SvgWriter svg, string id, IEnumerable<TemplateText> texts)
    {
        svg.Open("g").Attribute("id", id);
        foreach (var text in texts.Where(t => t.Box.Width > 0))
        {
            svg.Words(new(text.Words, Black, [.. text.Runs.Select(OnPaper)]));
        }

        svg.Close();
    }

    private PlacedRun OnPaper(PlacedRun run) =>
        run.Scale(1 / options.Scale.Value).Shift(PageFormat.Margin.Millimetres, PageFormat.Margin.Millimetres);

    /// <summary>The map from the drawing area to the page.</summary>
    private Affine OnPage => Affine.Scale(1 / options.Scale.Value, 1 / options.Scale.Value)
        .Then(Affine.Shift(PageFormat.Margin.Millimetres, PageFormat.Margin.Millimetres));

    private static string Path(TemplateLine line) => line.IsClosed
        ? new Outline(line.Contours).ToSvgPath()
        : new Outline(line.Contours).ToOpenSvgPath();
}
