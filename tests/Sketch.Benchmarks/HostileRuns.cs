using System.Diagnostics;
using System.Text;
using Sketch.Tests.Language;

namespace Sketch.Benchmarks;

/// <summary>
/// Texts that ask for too much, each read and drawn by the published program: seconds, and the most memory it held (limit: 500 MB).
/// Memory is looked at every few milliseconds, so a peak just before the end may be missed.
/// </summary>
internal static class HostileRuns
{
    private const int LookEvery = 5;
    private const double Megabyte = 1e6;

    private static readonly string[] Neighbours = ["echo.card", "doubling.card", "speck.card", "large.card"];

    /// <summary>Prints a table.</summary>
    public static int Run(string tool)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-hostile-").FullName;
        try
        {
            foreach (var neighbour in Neighbours)
            {
                File.WriteAllText(Path.Combine(folder, neighbour), HostileInputs.World().ReadText(neighbour, "", out _)!.Content);
            }

            Clock.Print($"| text | exit of check, draw | s | peak MB |");
            Clock.Print($"| --- | ---: | ---: | ---: |");
            foreach (var name in HostileInputs.Names)
            {
                var card = Path.Combine(folder, "storm.card");
                File.WriteAllText(card, HostileInputs.Text(name), Encoding.UTF8);
                var (status, seconds, peak) = Measure(tool, "check", card);
                var (drawStatus, drawSeconds, drawPeak) = Measure(tool, "draw", card, "--out", folder);
                Clock.Print($"| {name} | {status}, {drawStatus} | {seconds:0.0}, {drawSeconds:0.0} | {peak:0}, {drawPeak:0} |");
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    /// <summary>One run: exit status, seconds and the most memory it held in MB.</summary>
    internal static (int Status, double Seconds, double Peak) Measure(string tool, params string[] arguments)
    {
        var watch = Stopwatch.StartNew();
        using var process = Clock.Start(tool, arguments);
        var peak = 0.0;
        while (!process.WaitForExit(LookEvery))
        {
            process.Refresh();
            peak = Math.Max(peak, process.HasExited ? 0 : process.PeakWorkingSet64 / Megabyte);
        }

        return (process.ExitCode, watch.Elapsed.TotalSeconds, peak);
    }
}
