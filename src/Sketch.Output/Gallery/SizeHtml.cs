using System.Text.RegularExpressions;

namespace Sketch.Output.Gallery;

/// <summary>
/// Size tables as HTML that fit narrow windows and sheets of paper, since browsers shrink a page that is wider than its sheet.
/// </summary>
public static partial class SizeHtml
{
    /// <summary>
    /// Renders a table of sizes. The path of a piece may break after each slash; a size only between its width and its
    /// height, so that no fraction and no + or - is separated from its number.
    /// </summary>
    /// <param name="markdown">The table as <c>SizeMarkdown</c> writes it.</param>
    /// <param name="headings">How many levels its headings are below those of the surrounding page.</param>
    public static string Of(string markdown, int headings)
    {
        var html = SlashInPath().Replace(MarkdownHtml.Of(markdown, headings), "/<wbr>");
        return Size().Replace(html, size => size.Value.Replace(" ", "&#160;", StringComparison.Ordinal)
            .Replace("x&#160;", "x ", StringComparison.Ordinal));
    }

    [GeneratedRegex(@"(?<=\w)/(?=[a-z])")]
    private static partial Regex SlashInPath();

    [GeneratedRegex("(?<=<td>)[0-9][-0-9 ./+xm]*(?=</td>)")]
    private static partial Regex Size();
}
