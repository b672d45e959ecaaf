using Markdig.Syntax;

namespace Sketch.Output.Handbook;

/// <summary>An example with what is said of it: the paragraphs and results after it, which stand beside its drawings.</summary>
/// <param name="example">The example.</param>
internal sealed class ExampleBlock(HandbookExample example) : ContainerBlock(null)
{
    /// <summary>The example.</summary>
    public HandbookExample Example { get; } = example;

    /// <summary>Replaces each fenced block that is an example, and what is said of it.</summary>
    /// <param name="document">The page.</param>
    public static void GroupIn(MarkdownDocument document)
    {
        for (var i = 0; i < document.Count; i++)
        {
            if (document[i] is FencedCodeBlock fence && HandbookExample.Of(fence) is { } example)
            {
                var block = new ExampleBlock(example);
                document[i] = block;
                while (i + 1 < document.Count && IsSaid(document[i + 1]))
                {
                    var said = document[i + 1];
                    document.RemoveAt(i + 1);
                    block.Add(said);
                }
            }
        }
    }

    private static bool IsSaid(Block block) =>
        block is ParagraphBlock or FencedCodeBlock { Info: "sizes" or "findings" };
}
