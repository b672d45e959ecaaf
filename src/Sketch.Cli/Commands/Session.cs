using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Reports;

namespace Sketch.Cli.Commands;

/// <summary>Where one run of the command line writes to, and whether it is to stop.</summary>
/// <param name="Output">What the verb is asked for.</param>
/// <param name="Error">All other messages.</param>
/// <param name="Cancellation">Set by Ctrl-C.</param>
internal sealed record Session(TextWriter Output, TextWriter Error, CancellationToken Cancellation)
{
    /// <summary>Prints one line of output, made safe for a terminal.</summary>
    public void Print(string line) => Output.Write($"{Printable.Line(line)}\n");

    /// <summary>Tells one sentence beside the output.</summary>
    public void Report(string sentence) => Error.Write($"sketch: {Printable.Line(sentence)}\n");

    /// <summary>Tells findings beside the output.</summary>
    public void Report(ImmutableArray<Finding> findings) => FindingsText.Write(Error, findings);
}
