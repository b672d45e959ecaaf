using System.ComponentModel;
using System.Diagnostics;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Preview.Page;

/// <summary>The scripts of the page, tested by Node's test runner in <c>tests/Sketch.Page.Tests</c>.</summary>
public sealed class PageScriptTests
{
    [Fact]
    public async Task The_tests_of_the_scripts_of_the_page_pass()
    {
        var stop = TestContext.Current.CancellationToken;
        var start = new ProcessStartInfo("node", ["--test", "--test-reporter=spec"])
        {
            WorkingDirectory = Path.Combine(Repository.Root, "tests", "Sketch.Page.Tests"),
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var node = Started(start);
        Assert.SkipWhen(node is null, "Node.js is not installed.");
        var error = node.StandardError.ReadToEndAsync(stop);
        var output = await node.StandardOutput.ReadToEndAsync(stop);
        await node.WaitForExitAsync(stop);

        Assert.True(node.ExitCode == 0, output + await error);
        // A folder without tests is a failure.
        Assert.DoesNotContain("tests 0", output, StringComparison.Ordinal);
    }

    private static Process? Started(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start);
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
