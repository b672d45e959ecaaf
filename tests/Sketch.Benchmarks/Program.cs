using BenchmarkDotNet.Running;

namespace Sketch.Benchmarks;

/// <summary>
/// Speed and memory. <c>cold</c>, <c>random</c>, <c>variants</c>, <c>typing</c>, <c>moving</c>, <c>keys</c>, <c>editor</c>,
/// <c>planning</c>, <c>classes</c>, <c>settings</c>, <c>hostile</c> and <c>counting</c> measure what a benchmark inside one process
/// cannot; anything else goes to BenchmarkDotNet, such as <c>--filter '*TextToSvg*'</c>.
/// </summary>
internal static class Program
{
    private static int Main(string[] args) => args switch
    {
        ["cold", var tool, .. var rest] => ColdStart.Run(tool, Number(rest, 21)),
        ["random", .. var rest] => RandomCardTimes.Run(Number(rest, 200)),
        ["variants", var tool, var stash, .. var rest] => VariantSheets.Run(tool, stash, Number(rest, 3)),
        ["typing", .. var rest] => Typing.Run(Number(rest, 200), rest.ElementAtOrDefault(1)),
        ["moving", .. var rest] => Moving.Run(Number(rest, 200), rest.ElementAtOrDefault(1)),
        ["keys", var sketches, .. var rest] => Keys.Run(sketches, Number(rest, 200)),
        ["editor", var tool, .. var rest] => EditorKeys.Run(tool, Number(rest, 200)),
        ["planning", var batch, .. var rest] => PlanningTimes.Run(batch, Number(rest, 200)),
        ["classes", .. var rest] => ClassicalPlans.Run(Number(rest, 10)),
        ["hostile", var tool, .. var names] => HostileRuns.Run(tool, names),
        ["counting", .. var rest] => CountingKills.Run(Number(rest, 1000)),
        ["counting-append", var batch] => CountingKills.Append(batch),
        ["settings", var batch, .. var rest] => TrimmerWork.Run(batch, Number(rest, 200)),
        _ => Benchmarks(args),
    };

    private static int Benchmarks(string[] args) =>
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args).Any(s => s.HasCriticalValidationErrors) ? 1 : 0;

    private static int Number(string[] args, int usual) =>
        args is [var number, ..] ? int.Parse(number, System.Globalization.CultureInfo.InvariantCulture) : usual;
}
