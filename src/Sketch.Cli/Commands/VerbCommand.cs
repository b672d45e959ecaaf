using System.CommandLine;

namespace Sketch.Cli.Commands;

/// <summary>A verb with examples that its help shows.</summary>
/// <param name="name">The word on the command line.</param>
/// <param name="description">What it does, in one sentence.</param>
/// <param name="examples">Command lines as typed.</param>
internal sealed class VerbCommand(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>Command lines as typed.</summary>
    public IReadOnlyList<string> Examples => examples;
}
