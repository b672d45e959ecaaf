using System.Diagnostics;
using System.Text;
using Sketch.Tests.Language;

namespace Sketch.Benchmarks;

/// <summary>
/// Hostile texts, each read, listed, drawn in all forms and made into templates by the built program: exit status, seconds of
/// processor and peak memory. Memory is sampled every few milliseconds, so a peak just before the end may be missed.
/// </summary>
internal static class HostileRuns
{
    /// <summary>The limits for every text: seconds of processor and megabytes.</summary>
    private const double MostSeconds = 5, MostMegabytes = 500;

    private const int LookEvery = 5;
    private const double Megabyte = 1e6;

    /// <summary>The processor time after which the program is stopped and the run counts as missed, even on a busy machine.</summary>
    private static readonly TimeSpan GiveUp = TimeSpan.FromMinutes(1);

    private static readonly string[] Neighbours = ["echo.card", "doubling.card", "speck.card", "large.card"];

    /// <summary>Prints a table.</summary>
    /// <param name="tool">The program, or the .dll of its build for <c>dotnet</c>.</param>
    /// <param name="names">Parts of the names of the texts to measure; none for all.</param>
    public static int Run(string tool, string[] names)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-hostile-").FullName;
        var missed = 0;
        try
        {
            foreach (var neighbour in Neighbours)
            {
                File.WriteAllText(Path.Combine(folder, neighbour), HostileInputs.World().ReadText(neighbour, "").Value.Content);
            }

            Clock.Print($"| text | exit | s of processor: check, sizes, draw, templates, hollow templates | peak MB |");
            Clock.Print($"| --- | --- | ---: | ---: |");
            foreach (var name in HostileInputs.Names.Where(n => names.Length == 0 || names.Any(n.Contains)))
            {
                var card = Path.Combine(folder, "storm.card");
                File.WriteAllText(card, HostileInputs.Text(name), Encoding.UTF8);
                string[][] verbs =
                [
                    ["check", card], ["sizes", card], ["draw", card, "--out", folder, "--as", "svg,png,pdf"],
                    ["templates", card, "--out", Path.Combine(folder, "storm.pdf")],
                    ["templates", card, "--hollow", "--out", Path.Combine(folder, "hollow.pdf")],
                ];
                var runs = verbs.Select(v => Measure(tool, v)).ToList();
                var isMissed = runs.Exists(r => r.Processor > MostSeconds || r.Peak > MostMegabytes);
                missed += isMissed ? 1 : 0;
                var (exits, seconds, peaks) =
                    (List(runs, r => $"{r.Status}"), List(runs, r => $"{r.Processor:0.0}"), List(runs, r => $"{r.Peak:0}"));
                Clock.Print($"| {name}{(isMissed ? " (missed)" : "")} | {exits} | {seconds} | {peaks} |");
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        Clock.Print($"Missed: {missed}");
        return missed == 0 ? 0 : 1;
    }

    /// <summary>
    /// One run: exit status (-1 if stopped), seconds of wall clock, seconds of processor and peak memory in MB.
    /// </summary>
    internal static (int Status, double Seconds, double Processor, double Peak) Measure(string tool, params string[] arguments)
    {
        var (watch, before) = (Stopwatch.StartNew(), Clock.ProcessorOfChildren());
        var isAssembly = tool.EndsWith(".dll", StringComparison.Ordinal);
        using var process = isAssembly ? Clock.Start("dotnet", [tool, .. arguments]) : Clock.Start(tool, arguments);
        var peak = 0.0;
        while (!process.WaitForExit(LookEvery))
        {
            try
            {
                process.Refresh();
                peak = Math.Max(peak, process.PeakWorkingSet64 / Megabyte);
                if (process.TotalProcessorTime > GiveUp)
                {
                    process.Kill();
                    process.WaitForExit();
                    return (-1, watch.Elapsed.TotalSeconds, (Clock.ProcessorOfChildren() - before) / 1000, peak);
                }
            }
            catch (Exception gone) when (gone is InvalidOperationException or System.ComponentModel.Win32Exception)
            {
                // The program ended between two samples.
            }
        }

        return (process.ExitCode, watch.Elapsed.TotalSeconds, (Clock.ProcessorOfChildren() - before) / 1000, peak);
    }

    private static string List<T>(IEnumerable<T> values, Func<T, FormattableString> text) =>
        string.Join(", ", values.Select(v => FormattableString.Invariant(text(v))));
}
