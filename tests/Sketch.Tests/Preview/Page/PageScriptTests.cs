using System.Diagnostics;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Preview.Page;

/// <summary>What the scripts of the page decide, tested by Node's own test runner in <c>tests/Sketch.Page.Tests</c>.</summary>
public sealed class PageScriptTests
{
    [Fact]
    public async Task The_scripts_of_the_page_decide_as_their_tests_say()
    {
        var stop = TestContext.Current.CancellationToken;
        var start = new ProcessStartInfo("node", ["--test", "--test-reporter=spec"])
        {
            WorkingDirectory = Path.Combine(Repository.Root, "tests", "Sketch.Page.Tests"),
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var node = Process.Start(start)!;
        var error = node.StandardError.ReadToEndAsync(stop);
        var output = await node.StandardOutput.ReadToEndAsync(stop);
        await node.WaitForExitAsync(stop);

        Assert.True(node.ExitCode == 0, output + await error);
        // A folder in which nothing was found is no success.
        Assert.DoesNotContain("tests 0", output, StringComparison.Ordinal);
    }
}
