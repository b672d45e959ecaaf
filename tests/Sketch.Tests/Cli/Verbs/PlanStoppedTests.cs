using System.ComponentModel;
using System.Diagnostics;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

/// <summary>Ctrl-C while a batch is planned: the program ends with status 130 whatever it does at that moment.</summary>
public sealed class PlanStoppedTests(PlanStoppedTests.WholeRun whole) : IClassFixture<PlanStoppedTests.WholeRun>, IDisposable
{
    private readonly PlannedFolder _folder = new();

    // The moments fall into the search, the advice and the writing.
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(0.85)]
    public async Task The_best_plan_so_far_is_printed(double share)
    {
        var (status, output) = await StoppedAt(share);
        Assert.Equal(130, status);
        Assert.Contains("gulls 1:", output, StringComparison.Ordinal);
    }

    // While files are read there may be no plan yet.
    [Fact]
    public async Task The_program_stops_while_it_reads() =>
        Assert.Equal(130, (await StoppedAt(0.1)).Status);

    [Fact]
    public async Task No_further_file_is_written()
    {
        var (status, output) = await StoppedWhen(
            _ => Directory.Exists(_folder.At("out")) && Directory.EnumerateFiles(_folder.At("out"), "*.html").Any());
        Assert.Equal(130, status);
        Assert.Contains("gulls 1:", output, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder.At("out/left.stash")));
        Assert.Empty(Directory.EnumerateFiles(_folder.At("out"), "*.part", new EnumerationOptions { AttributesToSkip = 0 }));
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>
    /// Stops at a share of the time that the whole run takes. On a machine that is less busy now the program may have ended by then, so it
    /// is stopped earlier in another try; one that never stops fails in all of them.
    /// </summary>
    private async Task<(int Status, string Output)> StoppedAt(double share)
    {
        const int Tries = 5;
        for (var tried = 1; ; tried++, share *= 0.8)
        {
            var run = await StoppedWhen(program => program.TotalProcessorTime >= whole.ProcessorTime * share);
            if (run.Status == 130 || tried == Tries)
            {
                return run;
            }

            if (Directory.Exists(_folder.At("out")))
            {
                Directory.Delete(_folder.At("out"), recursive: true);
            }
        }
    }

    private async Task<(int Status, string Output)> StoppedWhen(Func<Process, bool> isMoment)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Ctrl-C is sent as a signal.");
        using var program = _folder.Plan();
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

    /// <summary>A batch of many sizes and its stash in a folder of their own, which takes seconds to plan.</summary>
    private sealed class PlannedFolder : IDisposable
    {
        private const int Kinds = 120;

        private readonly string _path = Directory.CreateTempSubdirectory("sketch-stopped-").FullName;

        public PlannedFolder()
        {
            var random = new Random(1);
            string Side() => new LengthFormat(false).Text(Length.Inch(0, random.Next(8, 91), 16));
            File.WriteAllText(At("shelf.stash"), "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets\n");
            File.WriteAllText(At("day.batch"), "batch \"Day\"\nstash \"shelf.stash\"\n"
                + string.Concat(Enumerable.Range(0, Kinds).Select(_ => $"cut 100 of {Side()} x {Side()} from gulls\n")));
        }

        public string At(string name) => Path.Combine(_path, name);

        public Process Plan() => Process.Start(new ProcessStartInfo(
            "dotnet", [typeof(Sketch.Cli.Program).Assembly.Location, "plan", At("day.batch"), "--out", At("out")])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;

        public void Dispose() => Directory.Delete(_path, recursive: true);
    }

    /// <summary>The same plan without Ctrl-C, which shows how quick the machine is.</summary>
    public sealed class WholeRun : IAsyncLifetime
    {
        /// <summary>The processor time of the whole run.</summary>
        public TimeSpan ProcessorTime { get; private set; }

        /// <summary>Plans the batch once.</summary>
        public async ValueTask InitializeAsync()
        {
            using var folder = new PlannedFolder();
            using var program = folder.Plan();
            var output = Task.WhenAll(program.StandardOutput.ReadToEndAsync(Stop), program.StandardError.ReadToEndAsync(Stop));
            try
            {
                while (!program.HasExited)
                {
                    ProcessorTime = program.TotalProcessorTime;
                    await Task.Delay(5, Stop);
                    program.Refresh();
                }
            }
            catch (Exception ended) when (ended is InvalidOperationException or Win32Exception)
            {
                // It ended between the two questions.
            }

            await output;
        }

        /// <inheritdoc/>
        public ValueTask DisposeAsync() => default;
    }
}
