using System.Globalization;
using System.Text;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Variants;

namespace Sketch.Output.Contact;

/// <summary>
/// Contact sheets as one HTML page that needs no network and no scripts: a figure for each variant, with what to type for it.
/// </summary>
/// <param name="sheet">The sheet, for its words and papers.</param>
/// <param name="progress">Receives the number of finished variants from time to time.</param>
/// <param name="cancellation">Stops the writing.</param>
public sealed class ContactPage(ContactSheet sheet, Action<int> progress, CancellationToken cancellation)
{
    private const double DotsPerInch = 110;

    private const string Style = """
        :root { color-scheme: light; }
        body { font: 1rem/1.45 system-ui, sans-serif; margin: 1.5rem auto; max-width: 72rem;
            padding: 0 1rem; color: #2b2926; background: #fbfaf7; }
        h1 { font-size: 1.5rem; margin: 0 0 .25rem; }
        main { display: grid; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr)); gap: 1.75rem 1.25rem; margin-top: 1.25rem; }
        figure { margin: 0; break-inside: avoid; }
        img { width: 100%; height: auto; background: #fff; box-shadow: 0 1px 4px #0003; }
        figcaption { font-size: .9rem; margin-top: .4rem; }
        code { overflow-wrap: anywhere; font-size: .8rem; color: #55504a; }
        ul { margin: 0; padding: 0; list-style: none; }
        @media print { body { background: none; margin: 0; max-width: none; }
            main { grid-template-columns: repeat(3, 1fr); gap: 5mm; }
            figcaption, code { font-size: 12pt; } img { box-shadow: none; border: .2mm solid #ccc; } }
        """;

    /// <summary>Writes the page.</summary>
    /// <param name="output">Receives it.</param>
    /// <param name="mark">A comment that names its maker.</param>
    public void Write(Stream output, string mark)
    {
        using var html = new StreamWriter(output, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        html.Write(HtmlPage.Begin(sheet.Title, HtmlPage.Style(Style), mark));
        html.Write($"<header>\n<h1>{Plain(sheet.Title)}</h1>\n<p>{Plain(sheet.Count)}\n");
        html.Write("To see one large, put the line under it after <code>--paper</code>.</p>\n</header>\n<main>\n");
        var done = 0;
        InOrder.Run(sheet.Variants.Best.Length, i => Figure(sheet.Variants.Best[i], i + 1), figure =>
        {
            html.Write(figure);
            progress(++done);
        }, cancellation);
        html.Write("</main>\n" + HtmlPage.End);
    }

    private string Figure(PaperVariant variant, int number)
    {
        var svg = CardDrawing.Draw(sheet.Painted(variant), sheet.Face, DotsPerInch);
        var picture = Convert.ToBase64String(Encoding.UTF8.GetBytes(svg));
        var papers = variant.Choices.Select(c => $"{c.Role}: {c.Paper}{(c.Side == PaperSide.Back ? ", back" : "")}").ToList();
        return string.Create(CultureInfo.InvariantCulture,
            $"<figure id=\"v{number}\">\n<img alt=\"Variant {number} in {Plain(string.Join("; ", papers))}\" "
                + $"src=\"data:image/svg+xml;base64,{picture}\">\n"
            + $"<figcaption><strong>{number}</strong>\n<ul>\n{string.Concat(papers.Select(p => $"<li>{Plain(p)}</li>\n"))}</ul>\n"
            + $"<code>{Plain(variant.Id)}</code></figcaption>\n</figure>\n");
    }

    private static string Plain(string text) => HtmlText.Of(text);
}
