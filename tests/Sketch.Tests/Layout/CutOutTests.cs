using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Notches and corners that are cut out of a shape.</summary>
public sealed class CutOutTests
{
    [Theory]
    [InlineData("pocket 3 x 1, notch 1", 0)]
    [InlineData("pocket 3 x 1, notch 1 1/8", 1)]
    [InlineData("ticket 3 x 1, corners 1/2", 0)]
    [InlineData("ticket 3 x 1, corners 5/8", 1)]
    [InlineData("pocket 3 x 1, corners 1/8", 1)]
    [InlineData("ticket 3 x 1, notch 1/8", 1)]
    public void A_shape_takes_only_the_cuts_that_fit_it(string line, int findings) =>
        Assert.Equal(findings, Compiler.Compile(
            new("a.card", $"card \"x\"\nbase A2, of navy\nfront\n  {line}, of white\n"), new TestWorld()).Findings
            .Count(f => f.Severity == Severity.Error));
}
