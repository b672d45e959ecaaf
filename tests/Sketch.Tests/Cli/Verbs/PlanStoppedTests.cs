using System.Diagnostics;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

/// <summary>Ctrl-C while a batch is planned: the program ends with status 130 whatever it does at that moment.</summary>
public sealed class PlanStoppedTests : IDisposable
{
    private const int Kinds = 120;

    private readonly string _folder = Directory.CreateTempSubdirectory("sketch-stopped-").FullName;

    public PlanStoppedTests()
    {
        var random = new Random(1);
        string Side() => new LengthFormat(false).Text(Length.Inch(0, random.Next(8, 91), 16));
        File.WriteAllText(At("shelf.stash"), "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets\n");
        File.WriteAllText(At("day.batch"), "batch \"Day\"\nstash \"shelf.stash\"\n"
            + string.Concat(Enumerable.Range(0, Kinds).Select(_ => $"cut 100 of {Side()} x {Side()} from gulls\n")));
    }

    // The seconds of processor fall into the search, the advice and the writing; on a slower machine into the one before.
    [Theory]
    [InlineData(1.5)]
    [InlineData(3)]
    [InlineData(4.5)]
    public async Task The_best_plan_so_far_is_printed(double secondsOfProcessor)
    {
        var (status, output) = await StoppedWhen(program => program.TotalProcessorTime.TotalSeconds >= secondsOfProcessor);
        Assert.Equal(130, status);
        Assert.Contains("gulls 1:", output, StringComparison.Ordinal);
    }

    // While files are read there may be no plan yet.
    [Fact]
    public async Task The_program_stops_while_it_reads() =>
        Assert.Equal(130, (await StoppedWhen(program => program.TotalProcessorTime.TotalSeconds >= 0.6)).Status);

    [Fact]
    public async Task No_further_file_is_written()
    {
        var (status, output) = await StoppedWhen(_ => Directory.Exists(At("out")) && Directory.EnumerateFiles(At("out"), "*.html").Any());
        Assert.Equal(130, status);
        Assert.Contains("gulls 1:", output, StringComparison.Ordinal);
        Assert.False(File.Exists(At("out/left.stash")));
        Assert.Empty(Directory.EnumerateFiles(At("out"), "*.part", new EnumerationOptions { AttributesToSkip = 0 }));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private async Task<(int Status, string Output)> StoppedWhen(Func<Process, bool> isMoment)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Ctrl-C is sent as a signal.");
        using var program = Process.Start(new ProcessStartInfo(
            "dotnet", [typeof(Sketch.Cli.Program).Assembly.Location, "plan", At("day.batch"), "--out", At("out")])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var (output, errors) = (program.StandardOutput.ReadToEndAsync(Stop), program.StandardError.ReadToEndAsync(Stop));
        while (!program.HasExited && !isMoment(program))
        {
            // Asking without a pause would take one of two processors from the program.
            await Task.Delay(5, Stop);
            program.Refresh();
        }

        using var kill = Process.Start("kill", ["-INT", $"{program.Id}"]);
        await program.WaitForExitAsync(Stop);
        await errors;
        return (program.ExitCode, await output);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string At(string name) => Path.Combine(_folder, name);
}
