using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Tests.Layout;

/// <summary>What reading and layout find in pieces on the front of an A2 card; whether they fit is another matter.</summary>
internal static class Found
{
    /// <summary>Finds; lines are counted from the first piece, columns from its indentation.</summary>
    public static Finding[] On(string pieces) =>
        In($"card \"Test\"\nbase A2, fold left, of white\nfront\n{string.Concat(pieces.Split('\n').Select(l => $"  {l}\n"))}");

    public static Finding[] In(string card, TestSurroundings? world = null) =>
        [.. Compiler.Compile(new SourceText("card.card", card), world ?? new TestSurroundings())
            .Findings.Where(f => string.CompareOrdinal(f.Code, "SK4") < 0)];
}
