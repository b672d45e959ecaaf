using System.Diagnostics;
using Xunit;

namespace Sketch.Tests.Cli.Commands;

/// <summary>Files that cannot be written, or are written by two programs at once.</summary>
public sealed class RefusedOutputTests : IDisposable
{
    private readonly CommandLineRun _run = new();

    private string Card => _run.File("a.card", "card \"Lamp\"\nbase A2, of white\nfront\n  panel 2 x 3, of navy\n    star 1, of gold\n");

    private string Batch => _run.File("a.batch", "batch \"Day\"\nmake 2 of \"a.card\"\n");

    public void Dispose() => _run.Dispose();

    // Nobody may create files in /proc, not even the superuser.
    [Theory]
    [InlineData("draw")]
    [InlineData("templates")]
    [InlineData("gallery")]
    [InlineData("plan")]
    public void A_folder_that_takes_no_files_is_a_sentence_and_fails(string verb)
    {
        Assert.SkipUnless(Directory.Exists("/proc/self"), "This system has no /proc.");
        var card = Card;
        Assert.Equal(2, _run.Run(verb, verb == "plan" ? Batch : card, "--out", "/proc/sketch"));
        Assert.Matches("^sketch: .*/proc/sketch.*\\.\n$", _run.Error[_run.Error.IndexOf("sketch: ", StringComparison.Ordinal)..]);
    }

    [Fact]
    public async Task Two_programs_that_write_the_same_files_at_once_leave_them_complete()
    {
        var card = Card;
        _run.Run("draw", card, "--as", "svg,png,pdf", "--out", _run.InFolder("alone"));
        using var first = Draw(card);
        using var second = Draw(card);
        await first.WaitForExitAsync(TestContext.Current.CancellationToken);
        await second.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal((0, 0), (first.ExitCode, second.ExitCode));
        Assert.Equal(Files("alone"), Files("both"));
    }

    private Process Draw(string card) => Process.Start(new ProcessStartInfo("dotnet",
        [typeof(Sketch.Cli.Program).Assembly.Location, "draw", card, "--as", "svg,png,pdf", "--out", _run.InFolder("both"), "--quiet"]))!;

    private (string? Name, string Content)[] Files(string folder) => [.. Directory
        .GetFiles(_run.InFolder(folder), "*", new EnumerationOptions { AttributesToSkip = 0 }).Order(StringComparer.Ordinal)
        .Select(f => (Path.GetFileName(f), Convert.ToHexString(File.ReadAllBytes(f))))];
}
