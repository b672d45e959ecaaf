using System.Collections.Immutable;
using Sketch.Fuzz.Inputs;

namespace Sketch.Fuzz.Targets;

/// <summary>All targets.</summary>
internal static class FuzzTargets
{
    /// <summary>All, the quickest first.</summary>
    public static ImmutableArray<IFuzzTarget> All { get; } = [new TextTarget(), new CardTarget(), new FileTarget(), new StashTarget(),
        new PageTarget(), new EditorTarget(), new CommandTarget(), new BatchTarget()];

    /// <summary>The folder of the kept failures: one folder for each target, and in it one for each input.</summary>
    public static string Failures => Path.Combine(Corpus.Root, "tests", "Sketch.Fuzz", "Failures");

    /// <summary>The target of a name.</summary>
    public static IFuzzTarget Named(string name) => All.First(t => t.Name == name);

    /// <summary>The kept failures.</summary>
    public static IEnumerable<(IFuzzTarget Target, string Folder)> Kept() => All
        .Where(t => Directory.Exists(Path.Combine(Failures, t.Name)))
        .SelectMany(t => Directory.GetDirectories(Path.Combine(Failures, t.Name)).Order(StringComparer.Ordinal), (t, folder) => (t,
            folder));
}
