using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Sketch.Output.Gallery;
using Sketch.Reports;
using Sketch.World;

namespace Sketch.Output.Handbook;

/// <summary>A picture beside an example.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Svg">The picture, with ids of its own on the page.</param>
public sealed record ExampleFigure(string Caption, string Svg);

/// <summary>
/// Pages of a handbook as HTML without scripts, each in one file: every example of a card stands beside its drawing.
/// </summary>
/// <param name="pages">All pages.</param>
/// <param name="folder">The folder whose files examples may name.</param>
/// <param name="world">Those files, and the fonts.</param>
/// <param name="plan">
/// Draws what the plan of a batch consists of: gets the batch, the files round it, and the beginning of the ids of this picture.
/// </param>
public sealed class HandbookHtml(ImmutableArray<HandbookPage> pages, string folder, IWorld world,
    Func<HandbookExample, IWorld, string, IEnumerable<ExampleFigure>> plan)
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub).Build();

    /// <summary>A page.</summary>
    /// <param name="page">Which.</param>
    /// <param name="mark">A comment by which the tool recognizes its own files; empty for a page that is not written to a file.</param>
    /// <param name="before">Addresses and words of links before those to the pages.</param>
    /// <param name="nonce">The nonce that a content security policy requires for styles; null where there is no policy.</param>
    public string Of(HandbookPage page, string mark = "", IEnumerable<(string Address, string Words)>? before = null, string? nonce = null)
    {
        var document = Markdown.Parse(page.Markdown, Pipeline);
        foreach (var link in document.Descendants<LinkInline>().ToList())
        {
            Lead(link, page);
        }

        foreach (var link in document.Descendants<AutolinkInline>().Where(l => !IsOfWeb(l.Url)).ToList())
        {
            link.ReplaceBy(new LiteralInline(link.Url));
        }

        foreach (var table in document.Descendants<Table>())
        {
            table.ColumnDefinitions.ForEach(c => c.Alignment = null);
        }

        // A comment says nothing to readers.
        foreach (var comment in document.OfType<ParagraphBlock>().Where(IsComment).ToList())
        {
            document.Remove(comment);
        }

        ExampleBlock.GroupIn(document);
        var html = new StringBuilder(HtmlPage.Begin(page.Title, HtmlPage.Style(PageStyle.Shared + HandbookStyle.Rules, nonce), mark));
        html.Append("<nav aria-label=\"Pages\">\n<ul>\n");
        foreach (var (address, words) in before ?? [])
        {
            html.Append($"<li><a href=\"{HtmlText.Of(address)}\">{HtmlText.Of(words)}</a></li>\n");
        }

        foreach (var other in pages)
        {
            html.Append(other == page ? $"<li aria-current=\"page\">{HtmlText.Of(other.Title)}</li>\n"
                : $"<li><a href=\"{Address(page, other)}\">{HtmlText.Of(other.Title)}</a></li>\n");
        }

        // A style may suit one page alone, such as one that is printed on one sheet.
        html.Append($"</ul>\n</nav>\n<main class=\"{HtmlText.Of(Path.GetFileNameWithoutExtension(page.Name).ToLowerInvariant())}\">\n");
        using var body = new StringWriter(html, CultureInfo.InvariantCulture);
        var renderer = new HtmlRenderer(body);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.ReplaceOrAdd<CodeBlockRenderer>(new TextRenderer());
        renderer.ObjectRenderers.Insert(0, new ExampleRenderer(page, folder, world, plan));
        renderer.Render(document);
        return html.Append("</main>\n").Append(HtmlPage.End).ToString();
    }

    /// <summary>Makes a link lead to the HTML of another page; one to any other file, or to nowhere, becomes plain words.</summary>
    private void Lead(LinkInline link, HandbookPage page)
    {
        var url = link.Url ?? "";
        if (link.IsImage || (!url.StartsWith('#') && !IsOfWeb(url)))
        {
            link.IsImage = false;
            if (pages.FirstOrDefault(p => p.Name == HandbookPage.Resolve(page.Name, url)) is { } other)
            {
                link.Url = Address(page, other) + (url.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? url[at..] : "");
            }
            else
            {
                Unlink(link);
            }
        }
    }

    private static bool IsComment(ParagraphBlock block) =>
        block.Inline?.FirstChild is LiteralInline words && words.Content.ToString().StartsWith("<!--", StringComparison.Ordinal);

    private static bool IsOfWeb(string url) => url.StartsWith("https://", StringComparison.Ordinal);

    private static void Unlink(LinkInline link)
    {
        while (link.FirstChild is { } word)
        {
            word.Remove();
            link.InsertBefore(word);
        }

        link.Remove();
    }

    private static string Address(HandbookPage from, HandbookPage to) => from.ToTop + to.HtmlName;

    /// <summary>Writes examples with their drawings.</summary>
    private sealed class ExampleRenderer(HandbookPage page, string folder, IWorld world,
        Func<HandbookExample, IWorld, string, IEnumerable<ExampleFigure>> plan) : HtmlObjectRenderer<ExampleBlock>
    {
        private readonly ExampleFiles _files = new(HandbookExample.In(page.Markdown), folder, world);
        private HashSet<string> _before = [];
        private int _drawn;

        protected override void Write(HtmlRenderer renderer, ExampleBlock obj)
        {
            var example = obj.Example;
            var lines = example.Text.Split('\n');
            var before = _before;
            _before = [.. lines];
            renderer.Write($"<div class=\"example{(example.Has("plan") ? " wide" : "")}\">\n"
                + TextHtml.Of(lines, example.Has("next") ? l => !before.Contains(l) : null, example.Has("rough")));
            var figures = Figures(example).ToList();
            if (figures.Count > 0)
            {
                renderer.Write("<div class=\"drawn\">\n");
                foreach (var figure in figures)
                {
                    renderer.Write($"<figure>\n{figure.Svg}<figcaption>{HtmlText.Of(figure.Caption)}</figcaption>\n</figure>\n");
                }

                renderer.Write("</div>\n");
            }

            renderer.Write("<div class=\"said\">\n");
            renderer.WriteChildren(obj);
            renderer.Write("</div>\n</div>\n");
        }

        private IEnumerable<ExampleFigure> Figures(HandbookExample example)
        {
            _drawn++;
            var prefix = string.Create(CultureInfo.InvariantCulture, $"e{_drawn}-");
            return example switch
            {
                { Kind: "card" } => CardFigures.Of(example, folder, _files, prefix),
                { Kind: "batch" } when example.Has("plan") => plan(example, _files, prefix),
                _ => [],
            };
        }
    }

    /// <summary>Writes any other block of code as it is.</summary>
    private sealed class TextRenderer : HtmlObjectRenderer<CodeBlock>
    {
        protected override void Write(HtmlRenderer renderer, CodeBlock obj) =>
            renderer.Write(TextHtml.Of(obj.Lines.ToString().Split('\n')));
    }
}
