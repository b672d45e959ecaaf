using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Tests.Layout;

/// <summary>What reading and layout find in pieces on the front of an A2 card, without the checks of fit.</summary>
internal static class Found
{
    /// <summary>The findings for pieces that are written from line 4, each indented by two spaces.</summary>
    public static Finding[] On(string pieces) =>
        In($"card \"Test\"\nbase A2, fold left, of white\nfront\n{string.Concat(pieces.Split('\n').Select(l => $"  {l}\n"))}");

    public static Finding[] In(string card, TestSurroundings? world = null) =>
        [.. Compiler.Compile(new SourceText("card.card", card), world ?? new TestSurroundings())
            .Findings.Where(f => string.CompareOrdinal(f.Code, "SK4") < 0)];
}
