using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Sketch.Reports;

namespace Sketch.Output.Gallery;

/// <summary>
/// Markdown as HTML that is safe in any page: raw HTML is shown as typed, pictures become links, so that nothing is loaded from
/// elsewhere, no element has a style of its own, and an address that is neither a web or mail address nor within the folder is left out.
/// </summary>
public static class MarkdownHtml
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables().Build();

    /// <summary>Renders Markdown.</summary>
    /// <param name="markdown">The text.</param>
    /// <param name="headings">How many levels its headings are below those of the surrounding page.</param>
    public static string Of(string markdown, int headings)
    {
        var document = Markdown.Parse(Printable.Lines(markdown), Pipeline);
        foreach (var heading in document.Descendants<HeadingBlock>())
        {
            heading.Level = Math.Min(6, heading.Level + headings);
        }

        foreach (var link in document.Descendants<LinkInline>())
        {
            link.IsImage = false;
            link.Url = Harmless(link.Url);
            link.GetDynamicUrl = null;
            if (link.FirstChild is null)
            {
                link.AppendChild(new LiteralInline(link.Url is { Length: > 0 } url ? url : "link"));
            }
        }

        foreach (var link in document.Descendants<AutolinkInline>())
        {
            link.Url = link.IsEmail ? link.Url : Harmless(link.Url) ?? "";
        }

        foreach (var table in document.Descendants<Table>())
        {
            Mark(table);
        }

        return document.ToHtml(Pipeline);
    }

    /// <summary>
    /// Marks column headings, and columns of numbers by the class <c>number</c>: a page may forbid inline styles.
    /// </summary>
    private static void Mark(Table table)
    {
        foreach (var row in table.Descendants<TableRow>())
        {
            for (var column = 0; column < row.Count; column++)
            {
                if (row.IsHeader)
                {
                    row[column].GetAttributes().AddProperty("scope", "col");
                }

                if (column < table.ColumnDefinitions.Count && table.ColumnDefinitions[column].Alignment == TableColumnAlign.Right)
                {
                    row[column].GetAttributes().AddClass("number");
                }
            }
        }

        table.ColumnDefinitions.ForEach(c => c.Alignment = null);
    }

    // Browsers skip blanks and control characters in front of an address, and treat a backslash as a slash.
    private static string? Harmless(string? address)
    {
        var bare = (address ?? "").TrimStart([.. Enumerable.Range(0, ' ' + 1).Select(c => (char)c)]);
        var end = bare.IndexOfAny([':', '/', '\\', '?', '#']);
        return end < 0 || (bare[end] is not (':' or '/' or '\\')) || IsWithinFolder(bare, end) || IsOfWebOrMail(bare, end) ? address : "";
    }

    private static bool IsWithinFolder(string address, int end) => end > 0 && address[end] is '/' or '\\';

    private static bool IsOfWebOrMail(string address, int end) =>
        address[end] == ':' && address[..end].ToLowerInvariant() is "http" or "https" or "mailto";
}
