using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Reports;

namespace Sketch.Cli.Commands;

/// <summary>Where one run of the command line writes, and whether it should stop.</summary>
/// <param name="Output">The requested output of the verb.</param>
/// <param name="Error">All other messages.</param>
/// <param name="Cancellation">Set by Ctrl-C.</param>
internal sealed record Session(TextWriter Output, TextWriter Error, CancellationToken Cancellation)
{
    /// <summary>Gives the time of entries in a log.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Prints one line of output, sanitized for a terminal.</summary>
    public void Print(string line) => Output.Write($"{Printable.Line(line)}\n");

    /// <summary>Reports one sentence on the error output.</summary>
    public void Report(string sentence) => Error.Write($"sketch: {Printable.Line(sentence)}\n");

    /// <summary>Reports findings on the error output.</summary>
    public void Report(ImmutableArray<Finding> findings) => FindingsText.Write(Error, findings);
}
