using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>Compiles small cards and keeps what the rules of fit find in them.</summary>
internal static class Fit
{
    /// <summary>All findings of fit in a whole file, which must be free of errors.</summary>
    public static IReadOnlyList<Finding> In(string text, IWorld? world = null)
    {
        var compilation = Compiler.Compile(new SourceText("card.card", text), world ?? new TestWorld());
        Assert.DoesNotContain(compilation.Findings, f => f.Severity == Severity.Error);
        return [.. compilation.Findings.Where(f => f.Code.StartsWith("SK4", StringComparison.Ordinal))];
    }

    /// <summary>What is found on the front of a white A2 card, 4 1/4 x 5 1/2, folded on the left. Its pieces begin in line 4.</summary>
    public static IReadOnlyList<Finding> OnA2(string pieces) => In($"card \"Lamp day\"\nbase A2, fold left, of white\nfront\n{pieces}");

    /// <summary>What is found on the front of a white card of 100 x 150 mm, folded on the left. Its pieces begin in line 5.</summary>
    public static IReadOnlyList<Finding> InMillimetres(string pieces) =>
        In($"card \"Lamp day\"\nunits mm\nbase 100 x 150, fold left, of white\nfront\n{pieces}");

    public static IReadOnlyList<Finding> Of(this IReadOnlyList<Finding> findings, FindingKind kind) =>
        [.. findings.Where(f => f.Kind == kind)];

    /// <summary>The one finding of a kind.</summary>
    public static Finding The(this IReadOnlyList<Finding> findings, FindingKind kind) => Assert.Single(findings.Of(kind));

    public static int Line(this Finding finding) => finding.Location.Start.Line;

    public static Length Mm(double millimetres) => Length.NearestMillimetres(millimetres);
}
