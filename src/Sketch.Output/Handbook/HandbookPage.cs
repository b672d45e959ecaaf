using System.Collections.Immutable;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Sketch.Output.Handbook;

/// <summary>A Markdown page of the handbook.</summary>
/// <param name="Name">Its path in the folder of the handbook with slashes, such as <c>guide/recipes.md</c>.</param>
/// <param name="Title">Its first heading.</param>
/// <param name="Markdown">Its text.</param>
public sealed record HandbookPage(string Name, string Title, string Markdown)
{
    private const string Ending = ".md";

    /// <summary>The name of its HTML, beside that of the other pages.</summary>
    public string HtmlName => Name[..^Ending.Length] + ".html";

    /// <summary>The address of the folder of the handbook, relative to this page: empty or ending in a slash.</summary>
    public string ToTop => string.Concat(Enumerable.Repeat("../", Name.Count(c => c == '/')));

    /// <summary>
    /// The page to begin with and every page that it or another names in a link, in the order in which they are first named.
    /// </summary>
    /// <param name="start">The name of the page to begin with.</param>
    /// <param name="read">The text of a page by its name; null where there is none.</param>
    /// <returns>The pages; empty where there is not even the first.</returns>
    public static ImmutableArray<HandbookPage> ReadAll(string start, Func<string, string?> read)
    {
        var pages = ImmutableArray.CreateBuilder<HandbookPage>();
        var named = new List<string> { start };
        for (var i = 0; i < named.Count; i++)
        {
            if (read(named[i]) is { } text)
            {
                var document = Markdig.Markdown.Parse(text);
                pages.Add(new(named[i], TitleOf(document) ?? named[i], text));
                named.AddRange(document.Descendants<LinkInline>().Select(l => Resolve(named[i], l.Url)).OfType<string>()
                    .Except(named).Distinct().ToList());
            }
        }

        return pages.ToImmutable();
    }

    /// <summary>The name of the page that a link names; null for a link that leaves the folder or names anything else.</summary>
    /// <param name="from">The page that contains the link.</param>
    /// <param name="url">Its address.</param>
    internal static string? Resolve(string from, string? url)
    {
        var path = (url ?? "").Split('#')[0];
        if (!path.EndsWith(Ending, StringComparison.Ordinal) || path.Contains(':', StringComparison.Ordinal))
        {
            return null;
        }

        var steps = new Stack<string>(from.Split('/')[..^1]);
        foreach (var step in path.Split('/'))
        {
            if (step != "..")
            {
                steps.Push(step);
            }
            else if (!steps.TryPop(out _))
            {
                return null;
            }
        }

        return string.Join('/', steps.Reverse());
    }

    private static string? TitleOf(MarkdownDocument document) =>
        document.Descendants<HeadingBlock>().FirstOrDefault() is { Inline: { } words }
        ? string.Concat(words.Descendants().Select(w => w switch
        {
            LiteralInline literal => literal.Content.ToString(),
            CodeInline code => code.Content,
            _ => "",
        }))
        : null;
}
