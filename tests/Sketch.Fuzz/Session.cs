using System.Diagnostics;
using System.Text.RegularExpressions;
using Sketch.Fuzz.Targets;

namespace Sketch.Fuzz;

/// <summary>One run over random inputs.</summary>
/// <param name="targets">What is run.</param>
/// <param name="first">The number of the first input.</param>
/// <param name="time">How long to go on.</param>
internal sealed partial class Session(IReadOnlyList<IFuzzTarget> targets, int first, TimeSpan time)
{
    private const ulong SeedStep = 0x9E3779B97F4A7C15;

    /// <summary>The watchdog: far above what any input takes, as the machine may be busy with other work.</summary>
    private static readonly TimeSpan MostProcessor = TimeSpan.FromMinutes(2);

    /// <summary>Megabytes that may be in use between two inputs: what the program keeps does not grow with what it has seen.</summary>
    private const int MostMegabytes = 200;

    /// <summary>The web framework keeps up to a megabyte of each server, also of one that is gone.</summary>
    private const int MegabytesOfServer = 2;

    private static readonly TimeSpan ProgressEvery = TimeSpan.FromMinutes(5);

    private readonly Dictionary<string, (int Inputs, TimeSpan Time, TimeSpan Longest, int Number)> _done = [];
    private readonly HashSet<string> _failures = [];
    private readonly HashSet<IFuzzTarget> _failing = [];
    private (IFuzzTarget Target, int Number, TimeSpan Since)? _now;

    /// <summary>The seed of an input.</summary>
    public static ulong Seed(int number) => (ulong)number * SeedStep;

    /// <summary>Runs until the time is over and prints the counts as test runners do; returns 1 after a failure.</summary>
    public int Run()
    {
        using var watchdog = new Timer(_ => Watch(), null, TimeSpan.FromSeconds(5), TimeSpan.FromSeconds(5));
        IFuzzTarget[] turns = [.. targets.SelectMany(t => Enumerable.Repeat(t, t.Weight))];
        var whole = Stopwatch.StartNew();
        var (number, told) = (first, TimeSpan.Zero);
        for (; whole.Elapsed < time; number++)
        {
            Step(turns[number % turns.Length], number);
            if (whole.Elapsed > told + ProgressEvery)
            {
                told = whole.Elapsed;
                Report(number + 1, told);
            }
        }

        Report(number, whole.Elapsed);
        Print($"succeeded: {targets.Count - _failing.Count}");
        Print($"failed: {_failing.Count}");
        return _failing.Count == 0 ? 0 : 1;
    }

    private void Report(int next, TimeSpan elapsed)
    {
        foreach (var (name, (inputs, spent, longest, at)) in _done)
        {
            Print($"{name}: {inputs} inputs, {inputs / spent.TotalSeconds:0.0} per second of processor time; "
                + $"the longest is number {at} with {longest.TotalSeconds:0.0} s");
        }

        var megabytes = GC.GetTotalMemory(forceFullCollection: true) / 1_000_000;
        Print($"{next - first} inputs from number {first} in {elapsed.TotalSeconds:0} s; {megabytes} MB in use");
        var most = MostMegabytes + MegabytesOfServer * _done.GetValueOrDefault("page").Inputs;
        if (megabytes > most)
        {
            Print($"More than {most} MB are in use: something is kept that is not needed.");
            _failing.UnionWith(targets);
        }
    }

    private void Step(IFuzzTarget target, int number)
    {
        var before = Environment.CpuUsage.TotalTime;
        _now = (target, number, before);
        var input = target.Make(new(Seed(number)));
        var failure = Failure.Of(target, input);
        var took = Environment.CpuUsage.TotalTime - before;
        var (inputs, spent, longest, at) = _done.GetValueOrDefault(target.Name);
        _done[target.Name] = (inputs + 1, spent + took, took > longest ? took : longest, took > longest ? number : at);
        if (failure is not null && _failing.Add(target) | _failures.Add($"{target.Name}: {failure.Key}"))
        {
            _now = null;
            var folder = Path.Combine(FuzzTargets.Failures, target.Name, NameOf(failure.Key));
            new Shrinking(target).Of(input, failure.Key).Save(folder);
            Print($"{target.Name} {number}: {failure.Text}\nkept in {folder}");
        }
    }

    // A search that never ends can only be stopped with the process.
    private void Watch()
    {
        if (_now is var (target, number, since) && Environment.CpuUsage.TotalTime - since > MostProcessor)
        {
            var folder = Path.Combine(FuzzTargets.Failures, target.Name, $"endless-{number}");
            target.Make(new(Seed(number))).Save(folder);
            Print($"{target.Name} {number} takes more than {MostProcessor.TotalSeconds} s.\nkept in {folder}\nfailed: 1");
            Environment.Exit(1);
        }
    }

    private static string NameOf(string key) => NoLetter().Replace(key.ToLowerInvariant(), "-").Trim('-');

    private static void Print(string line) => Console.WriteLine(line);

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NoLetter();
}
