using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Output.Gallery;

/// <summary>A face in a gallery.</summary>
/// <param name="Face">Which.</param>
/// <param name="Picture">Address of the large picture, relative to the page.</param>
/// <param name="Shown">Address of the picture on the page: the large one of the first face, small ones of the others.</param>
/// <param name="Width">Its width on the page in pixels.</param>
/// <param name="Height">Its height on the page in pixels.</param>
public sealed record GalleryPicture(FaceKind Face, string Picture, string Shown, int Width, int Height);

/// <summary>How a card is made, as the gallery shows it.</summary>
/// <param name="Supplies">What it takes besides paper.</param>
/// <param name="Introduction">What holds for all steps.</param>
/// <param name="Steps">The steps, the first one first.</param>
/// <param name="Picture">Address of the picture of its layers, relative to the page.</param>
public sealed record GalleryTutorial(
    ImmutableArray<string> Supplies, string Introduction, ImmutableArray<string> Steps, string Picture);

/// <summary>All cards of a folder on one HTML page that needs no network and no scripts and can be printed.</summary>
public static class GalleryPage
{
    private const string Style = """

        article { border-top: 1px solid var(--rule); margin-top: 2.5rem; padding-top: 1.5rem; }
        .card { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1.25rem 2rem; align-items: start; }
        .faces { display: flex; flex-wrap: wrap; gap: 1.25rem; align-items: flex-end; }
        .faces figure:first-child { flex: 1 0 100%; }
        .papers { list-style: none; padding: 0; margin: 0; display: flex; flex-wrap: wrap; gap: .3rem 1.25rem; }
        .chip { display: inline-block; width: 1em; height: 1em; margin-right: .4em; border: 1px solid #0004;
            vertical-align: -.12em; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        details { margin-top: 1rem; }
        summary { font-weight: 600; cursor: pointer; }
        .sizes { overflow-x: auto; }
        .made img { display: block; width: 100%; max-width: 45rem; height: auto; background: #fff; }
        .made ol { padding-left: 1.8rem; }
        .made li { margin: .2rem 0; }
        @media (min-width: 60rem) {
          .card { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
          .card pre { position: sticky; top: 1rem; max-height: calc(100vh - 2rem); overflow-y: auto; }
        }
        @media print {
          article { break-before: page; border: 0; margin: 0; }
          article:first-of-type { break-before: auto; }
          .card { display: block; }
          .card pre { break-inside: auto; max-height: none; margin-top: 4mm; }
          figure { max-width: 60mm; }
          figcaption, table { font-size: 12pt; }
          details::details-content { content-visibility: visible; display: block; }
          .sizes { overflow: visible; }
          .made { font-size: 12pt; }
          .made li, .made img { break-inside: avoid; }
        }
        """;

    /// <summary>The whole page.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="mark">A comment that names its maker.</param>
    /// <param name="guide">Addresses and titles of the pages of the guide that come with it; none if there is no guide.</param>
    /// <param name="contents">The cards' titles and ids.</param>
    /// <param name="articles">The cards.</param>
    public static string Of(string title, string mark, IReadOnlyCollection<(string Address, string Title)> guide,
        IReadOnlyCollection<(string Id, string Title)> contents, IEnumerable<string> articles)
    {
        var html = new StringBuilder();
        html.Append(HtmlPage.Begin(title, HtmlPage.Style(PageStyle.Shared + Style), mark));
        html.Append($"<header>\n<h1>{Plain(title)}</h1>\n");
        if (guide.Count > 0)
        {
            html.Append("<nav aria-label=\"Guide\">\n<ul>\n<li><strong>Learn it</strong></li>\n")
                .AppendJoin("", guide.Select(g => $"<li><a href=\"{Plain(g.Address)}\">{Plain(g.Title)}</a></li>\n"))
                .Append("</ul>\n</nav>\n");
        }

        html.Append("<nav aria-label=\"Cards\">\n<ul>\n<li><strong>Cards</strong></li>\n");
        foreach (var (id, name) in contents)
        {
            html.Append($"<li><a href=\"#{Plain(id)}\">{Plain(name)}</a></li>\n");
        }

        html.Append("</ul>\n</nav>\n</header>\n<main>\n").AppendJoin("", articles).Append("</main>\n").Append(HtmlPage.End);
        return html.ToString();
    }

    /// <summary>
    /// One card: pictures beside its text, papers, notes, how it is made, and sizes. Its message is left out, since it may be personal.
    /// </summary>
    /// <param name="id">Its id on the page.</param>
    /// <param name="card">The card.</param>
    /// <param name="text">Its file.</param>
    /// <param name="pictures">Its faces.</param>
    /// <param name="tutorial">How it is made.</param>
    public static string Article(string id, LaidOutCard card, SourceText text, ImmutableArray<GalleryPicture> pictures,
        GalleryTutorial tutorial)
    {
        var html = new StringBuilder();
        html.Append($"<article id=\"{Plain(id)}\">\n<h2>{Plain(card.Title)}</h2>\n<div class=\"card\">\n<div class=\"faces\">\n");
        foreach (var picture in pictures)
        {
            var face = Face.NameOf(picture.Face).Replace('-', ' ');
            html.Append($"<figure>\n<a href=\"{Plain(picture.Picture)}\"><img src=\"{Plain(picture.Shown)}\" "
                + $"alt=\"{Plain(AltText(card, picture.Face))}\" ");
            html.Append(CultureInfo.InvariantCulture,
                $"width=\"{picture.Width}\" height=\"{picture.Height}\" loading=\"lazy\"></a>\n");
            html.Append($"<figcaption>{Plain(char.ToUpperInvariant(face[0]) + face[1..])}, "
                + $"{Plain(SizeText(card, picture.Face))}</figcaption>\n</figure>\n");
        }

        html.Append($"</div>\n{TextHtml.Of(LinesWithoutMessage(text))}</div>\n");
        Papers(html, card);
        if (card.Notes.Trim().Length > 0)
        {
            html.Append($"<h3>Notes</h3>\n<div class=\"notes\">\n{MarkdownHtml.Of(card.Notes, 3)}</div>\n");
        }

        Made(html, card, tutorial);
        html.Append("<details>\n<summary>Sizes</summary>\n<div class=\"sizes\" tabindex=\"0\" role=\"region\" aria-label=\"Sizes of "
            + $"{Plain(card.Title)}\">\n{SizeHtml.Of(Sizes(card), 2)}</div>\n</details>\n</article>\n");
        return html.ToString();
    }

    private static IEnumerable<string> LinesWithoutMessage(SourceText text)
    {
        var messages = Parser.Parse(text, new FindingBag()).Lines.OfType<WordsLine>().Where(l => l.Word == "message")
            .SelectMany(l => Enumerable.Range(text.PositionOf(l.Span.Start).Line, LinesOf(text, l.Span))).ToHashSet();
        return text.Content.TrimEnd().Split('\n').Where((_, i) => !messages.Contains(i + 1)).Select(l => l.TrimEnd('\r'));
    }

    private static int LinesOf(SourceText text, TextSpan span) => text.PositionOf(span.End).Line - text.PositionOf(span.Start).Line + 1;

    private static void Made(StringBuilder html, LaidOutCard card, GalleryTutorial tutorial)
    {
        html.Append("<h3>How it is made</h3>\n<div class=\"made\">\n");
        html.Append($"<p>{Plain(tutorial.Introduction)}</p>\n<img src=\"{Plain(tutorial.Picture)}\" alt=\"{Plain(card.Title)}: the "
            + "finished card and its layers, numbered by step\" loading=\"lazy\">\n<ol>\n");
        html.AppendJoin("", tutorial.Steps.Select(s => $"<li>{Plain(s)}</li>\n")).Append("</ol>\n");
        if (!tutorial.Supplies.IsEmpty)
        {
            html.Append("<p>Besides paper:</p>\n<ul>\n").AppendJoin("", tutorial.Supplies.Select(s => $"<li>{Plain(s)}</li>\n"))
                .Append("</ul>\n");
        }

        html.Append("</div>\n");
    }

    private static void Papers(StringBuilder html, LaidOutCard card)
    {
        var papers = card.Roles.Select(r => r.Paint).Prepend(card.Base.Paint).DistinctBy(p => (p.Role, p.Paper, p.Look)).ToList();
        html.Append("<h3>Papers</h3>\n<ul class=\"papers\">\n");
        foreach (var paint in papers)
        {
            var role = ReferenceEquals(paint, card.Base.Paint) && card.Roles.All(r => r.Paint != paint) ? "base" : paint.Role;
            var name = paint.AnyOffcut
                ? paint.OffcutName
                : $"{paint.Paper ?? paint.Role ?? paint.Look.Ground.Hex}{(paint.Side == PaperSide.Back ? ", back" : "")}";
            html.Append("<li><span class=\"chip\" "
                + $"style=\"background:{paint.Look.Ground.Hex}\"></span>"
                + $"{Plain(role is null || role == name ? name : $"{role}: {name}")}</li>\n");
        }

        html.Append("</ul>\n");
    }

    private static string Sizes(LaidOutCard card)
    {
        using var markdown = new StringWriter(CultureInfo.InvariantCulture);
        SizeMarkdown.Write(markdown, SizeList.Of(card), card.Units.Format());
        var text = markdown.ToString();
        // The card's title is above already.
        return text[(text.IndexOf("\n\n", StringComparison.Ordinal) + 2)..];
    }

    private static string SizeText(LaidOutCard card, FaceKind face) =>
        PieceTitle.Size(card.Find(face)?.Size ?? card.Base.Closed, card.Units);

    /// <summary>What a face shows, for those who cannot see it: its pieces, as many as fit a sentence, with their words.</summary>
    private static string AltText(LaidOutCard card, FaceKind face)
    {
        const int Most = 8;
        var pieces = card.On(face).Where(p => !p.Kind.Traits.IsLayer && p.Matter is not (PieceMatter.Hole or PieceMatter.Unseen)).ToList();
        var phrases = pieces.GroupBy(p => (p.Kind, p.Words?.Text)).Select(g =>
            (g.Count() > 1 ? string.Create(CultureInfo.InvariantCulture, $"{g.Count()} ") : "") + g.Key.Kind.Name
                + (g.Key.Text is { } words ? $" “{words}”" : "")).ToList();
        var list = phrases.Count == 0 ? "nothing on it" : string.Join(", ", phrases.Take(Most)) + (phrases.Count > Most ? " and more" : "");
        return $"{card.Title}, {Face.NameOf(face).Replace('-', ' ')}: {list}";
    }

    private static string Plain(string text) => HtmlText.Of(text);
}
