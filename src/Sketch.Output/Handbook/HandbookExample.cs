using System.Collections.Immutable;
using Markdig;
using Markdig.Syntax;
using Sketch.Text;

namespace Sketch.Output.Handbook;

/// <summary>
/// An example of the language in a Markdown page: a fenced block whose first word is <c>card</c>, <c>stash</c> or <c>batch</c>.
/// </summary>
/// <param name="Kind">That word.</param>
/// <param name="Words">
/// The words after it. A file name: other examples may name this one so. <c>pieces</c>: only what lies on the front of a card.
/// <c>rough</c>: a pencil sketch of the layout stands beside it too, numbered by the lines of the text. <c>next</c>: lines that the example
/// before does not have are marked. <c>inside</c>, <c>back</c> or <c>envelope</c>: that face is shown too. <c>plan</c>: the sheets of the
/// batch are shown as they are cut.
/// </param>
/// <param name="Text">The lines as printed.</param>
/// <param name="Line">The line of the page, from 1, on which the text begins.</param>
public sealed record HandbookExample(string Kind, ImmutableArray<string> Words, string Text, int Line)
{
    /// <summary>The lines above an example that shows only pieces.</summary>
    public const string AbovePieces = "card \"Example\"\nbase A2, fold left, of white\nfront\n";

    /// <summary>The name by which other examples know it; null for none.</summary>
    public string? File => Words.FirstOrDefault(w => w.Contains('.', StringComparison.Ordinal));

    /// <summary>How many lines of the whole file stand above the printed ones.</summary>
    public int LinesAbove => Has("pieces") ? AbovePieces.Count(c => c == '\n') : 0;

    /// <summary>Whether a word follows the kind.</summary>
    public bool Has(string word) => Words.Contains(word);

    /// <summary>The whole file.</summary>
    /// <param name="folder">The folder in which it stands; the files that it names are beside it.</param>
    public SourceText Source(string folder) => new(
        Path.Combine(folder, File ?? $"example.{Kind}"),
        Has("pieces") ? AbovePieces + string.Concat(Text.Split('\n').Select(l => $"  {l}\n")) : Text + "\n");

    /// <summary>The examples of a page, in order.</summary>
    /// <param name="markdown">The page.</param>
    public static ImmutableArray<HandbookExample> In(string markdown) =>
        [.. Markdown.Parse(markdown).Descendants<FencedCodeBlock>().Select(Of).OfType<HandbookExample>()];

    /// <summary>The example in a fenced block; null for any other block.</summary>
    internal static HandbookExample? Of(FencedCodeBlock fence) => fence.Info is "card" or "stash" or "batch"
        ? new(fence.Info, [.. (fence.Arguments ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries)], fence.Lines.ToString(),
            fence.Line + 2)
        : null;
}
