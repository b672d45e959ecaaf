using Sketch.Fuzz;
using Sketch.Fuzz.Targets;
using Xunit;

namespace Sketch.Tests.Language;

/// <summary>What random inputs have found stays fixed. The inputs are in tests/Sketch.Fuzz/Failures.</summary>
public sealed class KeptFailuresTests
{
    public static TheoryData<string> Kept => [.. FuzzTargets.Kept().Select(k => $"{k.Target.Name}/{Path.GetFileName(k.Folder)}")];

    [Theory]
    [MemberData(nameof(Kept))]
    public void An_input_that_failed_once_does_not_fail_again(string kept)
    {
        var folder = Path.Combine(FuzzTargets.Failures, kept);

        Assert.Null(Failure.Of(FuzzTargets.Named(kept.Split('/')[0]), FuzzInput.Load(folder))?.Text);
    }
}
