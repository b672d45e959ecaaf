using System.Runtime.CompilerServices;
using Markdig;
using Markdig.Syntax;
using Sketch.Text;

namespace Sketch.Tests.Language;

/// <summary>The examples of the language reference, with the findings and sizes below each.</summary>
internal static class LanguageReference
{
    /// <summary>The lines above an example that shows only pieces.</summary>
    public const string Above = "card \"Example\"\nbase A2, fold left, of white\nfront\n";

    private static readonly Lazy<Example[]> Read = new(ReadAll);

    /// <summary>An example: a card, stash or batch file.</summary>
    /// <param name="Line">Its first line in the reference, from 1.</param>
    /// <param name="Kind"><c>card</c>, <c>stash</c> or <c>batch</c>.</param>
    /// <param name="Argument"><c>pieces</c> for an example of pieces only, a file name, or empty.</param>
    /// <param name="Content">The text as printed.</param>
    /// <param name="Findings">The lines of the findings written below it.</param>
    /// <param name="Sizes">The lines of the sizes written below it.</param>
    public sealed record Example(int Line, string Kind, string Argument, string Content, string[] Findings, string[] Sizes)
    {
        public bool IsPieces => Argument == "pieces";

        /// <summary>The whole file.</summary>
        public SourceText Source => new(
            Argument.EndsWith(".card", StringComparison.Ordinal) ? Argument : "example.card",
            IsPieces ? Above + string.Concat(Content.Split('\n').Select(l => $"  {l}\n")) : Content + "\n");

        /// <summary>Converts a position in the whole file to the line and column in the printed example.</summary>
        public LinePosition AsPrinted(LinePosition position) => IsPieces ? new(position.Line - 3, position.Column - 2) : position;

        public override string ToString() => $"line {Line}";
    }

    public static IReadOnlyList<Example> Examples => Read.Value;

    public static Example At(int line) => Examples.Single(e => e.Line == line);

    /// <summary>The files that examples name.</summary>
    public static TestWorld World()
    {
        var world = new TestWorld().WithTriangle("boat.svg", 40, 30).WithTriangle("gull.svg", 40, 20);
        foreach (var example in Examples.Where(e => e.Argument.EndsWith(".card", StringComparison.Ordinal)))
        {
            world.WithText(example.Argument, example.Source.Content);
        }

        return world;
    }

    public static string FilePath([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "sketches", "LANGUAGE.md");

    private static Example[] ReadAll()
    {
        var examples = new List<Example>();
        foreach (var fence in Markdown.Parse(File.ReadAllText(FilePath())).Descendants<FencedCodeBlock>())
        {
            var lines = fence.Lines.ToString().Split('\n');
            switch (fence.Info)
            {
                case "card" or "stash" or "batch":
                    examples.Add(new(fence.Line + 2, fence.Info, fence.Arguments ?? "", string.Join('\n', lines), [], []));
                    break;
                case "findings":
                    examples[^1] = examples[^1] with { Findings = lines };
                    break;
                case "sizes":
                    examples[^1] = examples[^1] with { Sizes = lines };
                    break;
                default:
                    break;
            }
        }

        return [.. examples];
    }
}
