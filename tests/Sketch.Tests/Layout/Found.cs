using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Tests.Layout;

/// <summary>The findings of reading and layout for pieces on the front of an A2 card, without those of the fit checks.</summary>
internal static class Found
{
    /// <summary>The findings for pieces written from line 4 on, each indented by two spaces.</summary>
    public static Finding[] On(string pieces) =>
        In($"card \"Test\"\nbase A2, fold left, of white\nfront\n{string.Concat(pieces.Split('\n').Select(l => $"  {l}\n"))}");

    public static Finding[] In(string card, TestWorld? world = null) =>
        [.. Compiler.Compile(new SourceText("card.card", card), world ?? new TestWorld())
            .Findings.Where(f => string.CompareOrdinal(f.Code, "SK4") < 0)];
}
