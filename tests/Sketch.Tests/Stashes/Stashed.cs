using Sketch.Diagnostics;
using Sketch.Stashes;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Stashes;

/// <summary>Reads stashes and cards from a few lines of text.</summary>
internal static class Stashed
{
    public static Compilation Compile(string lines) =>
        Compiler.Compile(new SourceText("shelf.stash", "stash \"Shelf\"\n" + lines), new TestWorld());

    /// <summary>A stash without findings.</summary>
    public static Stash Stash(string lines)
    {
        var compilation = Compile(lines);
        Assert.Empty(compilation.Findings);
        return compilation.Stash!;
    }

    public static StockPaper Paper(string line) => Stash(line).Papers.Single();

    public static Finding OnlyFinding(string lines) => Assert.Single(Compile(lines).Findings);

    public static Compilation Card(string lines, Stash? stash, params string[] choices) => Compiler.Compile(
        new SourceText("card.card", "card \"Card\"\nbase A2, fold left, of white\n" + lines),
        new TestWorld(),
        new(stash, [.. choices.Select(c => PaperChoice.TryParse(c, out var choice) ? choice : throw new ArgumentException(c))]));
}
