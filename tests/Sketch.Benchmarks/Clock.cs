using System.Diagnostics;
using System.Globalization;

namespace Sketch.Benchmarks;

/// <summary>Times in milliseconds.</summary>
internal static class Clock
{
    /// <summary>How long something takes.</summary>
    public static double Time(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }

    /// <summary>How long a program takes from its start to its end; its output is thrown away.</summary>
    /// <exception cref="InvalidOperationException">It failed.</exception>
    public static double TimeProgram(string program, params string[] arguments) => Time(() =>
    {
        using var process = Start(program, arguments);
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}");
        }
    });

    /// <summary>Starts a program whose output is thrown away.</summary>
    public static Process Start(string program, params string[] arguments)
    {
        var process = new Process { StartInfo = new(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true } };
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    /// <summary>The value below which a share of the values lie.</summary>
    public static double Quantile(IEnumerable<double> values, double share)
    {
        var sorted = values.Order().ToArray();
        return sorted[(int)Math.Round(share * (sorted.Length - 1))];
    }

    /// <summary>Prints a line, numbers written the same everywhere.</summary>
    public static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
