using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Reports;

namespace Sketch.Output.Gallery;

/// <summary>A face in a gallery.</summary>
/// <param name="Face">Which.</param>
/// <param name="Picture">Address of the large picture, relative to the page.</param>
/// <param name="Small">Address of the small picture.</param>
/// <param name="Width">Its width in pixels.</param>
/// <param name="Height">Its height in pixels.</param>
public sealed record GalleryPicture(FaceKind Face, string Picture, string Small, int Width, int Height);

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
        :root { color-scheme: light; }
        body { font: 1rem/1.5 system-ui, sans-serif; margin: 0 auto; max-width: 64rem; padding: 1.5rem 1rem 3rem;
            color: #2b2926; background: #fbfaf7; }
        h1 { font-size: 1.8rem; margin: 0; }
        h2 { font-size: 1.35rem; margin: 0 0 .5rem; }
        h3 { font-size: 1rem; margin: 1.25rem 0 .25rem; }
        nav ul { display: flex; flex-wrap: wrap; gap: .25rem 1rem; padding: 0; list-style: none; }
        a { color: #17507d; }
        article { border-top: 1px solid #d9d4ca; margin-top: 2rem; padding-top: 1.5rem; }
        .faces { display: flex; flex-wrap: wrap; gap: 1.25rem; align-items: flex-end; }
        figure { margin: 0; max-width: 17.5rem; }
        figure img { display: block; max-width: 100%; height: auto; background: #fff; box-shadow: 0 1px 4px #0003; }
        figcaption { font-size: .9rem; color: #5b564f; margin-top: .35rem; }
        .papers { list-style: none; padding: 0; margin: 0; display: flex; flex-wrap: wrap; gap: .3rem 1.25rem; }
        .chip { display: inline-block; width: 1em; height: 1em; margin-right: .4em; border: 1px solid #0004;
            vertical-align: -.12em; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        .sizes { overflow-x: auto; }
        .made img { display: block; width: 100%; max-width: 45rem; height: auto; background: #fff; }
        .made ol { padding-left: 1.8rem; }
        .made li { margin: .2rem 0; }
        table { border-collapse: collapse; font-size: .85rem; }
        th, td { text-align: left; padding: .2rem .8rem .2rem 0; border-bottom: 1px solid #e4dfd5; vertical-align: top; }
        th.number, td.number { text-align: right; }
        @media print {
          body { background: none; max-width: none; padding: 0; }
          nav { display: none; }
          article { break-before: page; border: 0; margin: 0; }
          article:first-of-type { break-before: auto; }
          figure { break-inside: avoid; max-width: 60mm; }
          figure img { box-shadow: none; border: .2mm solid #ccc; }
          figcaption, table { font-size: 12pt; }
          .sizes { overflow: visible; }
          .made { font-size: 12pt; }
          .made li, .made img { break-inside: avoid; }
          tr { break-inside: avoid; }
        }
        """;

    /// <summary>The whole page.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="mark">A comment that names its maker.</param>
    /// <param name="contents">The cards' titles and ids.</param>
    /// <param name="articles">The cards.</param>
    public static string Of(string title, string mark, IReadOnlyCollection<(string Id, string Title)> contents,
        IEnumerable<string> articles)
    {
        var html = new StringBuilder();
        html.Append(HtmlPage.Begin(title, HtmlPage.Style(Style), mark));
        html.Append($"<header>\n<h1>{Plain(title)}</h1>\n<nav aria-label=\"Cards\">\n<ul>\n");
        foreach (var (id, name) in contents)
        {
            html.Append($"<li><a href=\"#{Plain(id)}\">{Plain(name)}</a></li>\n");
        }

        html.Append("</ul>\n</nav>\n</header>\n<main>\n").AppendJoin("", articles).Append("</main>\n").Append(HtmlPage.End);
        return html.ToString();
    }

    /// <summary>One card: pictures, papers, notes, how it is made, and sizes. Its message is left out, since it may be personal.</summary>
    /// <param name="id">Its id on the page.</param>
    /// <param name="card">The card.</param>
    /// <param name="pictures">Its faces.</param>
    /// <param name="tutorial">How it is made.</param>
    public static string Article(string id, LaidOutCard card, ImmutableArray<GalleryPicture> pictures, GalleryTutorial tutorial)
    {
        var html = new StringBuilder();
        html.Append($"<article id=\"{Plain(id)}\">\n<h2>{Plain(card.Title)}</h2>\n<div class=\"faces\">\n");
        foreach (var picture in pictures)
        {
            var face = Face.NameOf(picture.Face).Replace('-', ' ');
            html.Append($"<figure>\n<a href=\"{Plain(picture.Picture)}\"><img src=\"{Plain(picture.Small)}\" "
                + $"alt=\"{Plain(AltText(card, picture.Face))}\" ");
            html.Append(CultureInfo.InvariantCulture,
                $"width=\"{picture.Width / 2}\" height=\"{picture.Height / 2}\" loading=\"lazy\"></a>\n");
            html.Append($"<figcaption>{Plain(char.ToUpperInvariant(face[0]) + face[1..])}, "
                + $"{Plain(SizeText(card, picture.Face))}</figcaption>\n</figure>\n");
        }

        html.Append("</div>\n");
        Papers(html, card);
        if (card.Notes.Trim().Length > 0)
        {
            html.Append($"<h3>Notes</h3>\n<div class=\"notes\">\n{MarkdownHtml.Of(card.Notes, 3)}</div>\n");
        }

        Made(html, card, tutorial);
        html.Append("<h3>Sizes</h3>\n<div class=\"sizes\" tabindex=\"0\" role=\"region\" aria-label=\"Sizes of "
            + $"{Plain(card.Title)}\">\n{SizeHtml.Of(Sizes(card), 2)}</div>\n</article>\n");
        return html.ToString();
    }

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
