using System.Diagnostics;
using Xunit;

namespace Sketch.Tests.Cli.Commands;

/// <summary>The program as a process whose output or messages cannot be written.</summary>
public sealed class StandardStreamTests : IDisposable
{
    private readonly CommandLineRun _run = new();

    private string Card => _run.File("a.card", "card \"Lamp\"\nbase A2, of white\nfront\n  panel 2 x 3, of navy\n");

    private string CardWithWarning => _run.File("b.card", "card \"Lamp\"\nbase A2, of white\nfront\n  panel 2 x 3, of sliver\n");

    public void Dispose() => _run.Dispose();

    [Fact]
    public async Task Output_to_a_full_disk_is_a_sentence_and_fails()
    {
        var (status, error) = await Shell(Card, "sizes \"$1\" > /dev/full");
        Assert.Equal((2, "sketch: Standard output cannot be written: the disk is full.\n"), (status, error));
    }

    [Fact]
    public async Task Messages_to_a_full_disk_fail_without_a_crash()
    {
        var (status, _) = await Shell(CardWithWarning, "sizes \"$1\" > /dev/null 2> /dev/full");
        Assert.Equal(2, status);
    }

    [Fact]
    public async Task Output_and_messages_to_a_full_disk_fail_without_a_crash()
    {
        var (status, _) = await Shell(CardWithWarning, "sizes \"$1\" > /dev/full 2> /dev/full");
        Assert.Equal(2, status);
    }

    [Fact]
    public async Task A_reader_who_closes_the_output_ends_the_program_quietly()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows does not report a reader who has gone.");
        using var program = Start("dotnet", typeof(Sketch.Cli.Program).Assembly.Location, "sizes", Card);
        program.StandardOutput.Close();
        var error = await program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal((141, ""), (program.ExitCode, error));
    }

    private static async Task<(int Status, string Error)> Shell(string card, string line)
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "This system has no /dev/full.");
        using var shell = Start("sh", "-c", $"dotnet \"$0\" {line}", typeof(Sketch.Cli.Program).Assembly.Location, card);
        var error = await shell.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await shell.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (shell.ExitCode, error);
    }

    private static Process Start(string program, params string[] arguments) =>
        Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
}
