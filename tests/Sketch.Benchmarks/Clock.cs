using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Sketch.Benchmarks;

/// <summary>Milliseconds of wall clock, and milliseconds of processor, which other work on the machine hardly changes.</summary>
internal readonly record struct Spent(double Wall, double Processor);

/// <summary>Measures times.</summary>
internal static class Clock
{
    private const int FinishedChildren = -1;

    // Of struct rusage: seconds and microseconds of user and of system time come first.
    private const int UsageLength = 18;

    /// <summary>The time that an action takes in this process.</summary>
    public static Spent Time(Action work)
    {
        var (watch, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
        work();
        return new(watch.Elapsed.TotalMilliseconds, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
    }

    /// <summary>The time of a program from start to end, on Linux; its output is discarded.</summary>
    /// <exception cref="InvalidOperationException">The program failed.</exception>
    public static Spent TimeProgram(string program, params string[] arguments)
    {
        var (watch, before) = (Stopwatch.StartNew(), ProcessorOfChildren());
        using var process = Start(program, arguments);
        process.WaitForExit();
        return process.ExitCode == 0
            ? new(watch.Elapsed.TotalMilliseconds, ProcessorOfChildren() - before)
            : throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}");
    }

    /// <summary>Starts a program and discards its output.</summary>
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

    /// <summary>Milliseconds of processor, user and system, of all programs started here that have ended.</summary>
    public static double ProcessorOfChildren()
    {
        var usage = new long[UsageLength];
        return getrusage(FinishedChildren, usage) == 0
            ? (usage[0] + usage[2]) * 1000.0 + (usage[1] + usage[3]) / 1000.0
            : throw new InvalidOperationException("getrusage failed");
    }

    [DllImport("libc")]
    private static extern int getrusage(int who, [Out] long[] usage);

    /// <summary>Prints a line with numbers in the invariant format.</summary>
    // The project runs with invariant globalization, so interpolated numbers have a decimal point.
    public static void Print(string line) => Console.WriteLine(line);
}
