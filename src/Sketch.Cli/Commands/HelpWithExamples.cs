using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Sketch.Cli.Commands;

/// <summary>The help of the parser, followed by the examples of the verb.</summary>
internal sealed class HelpWithExamples : SynchronousCommandLineAction
{
    private readonly HelpAction _plain = new();

    /// <summary>A request for help is never an error.</summary>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        _plain.Invoke(parseResult);
        if (parseResult.CommandResult.Command is VerbCommand verb)
        {
            var output = parseResult.InvocationConfiguration.Output;
            output.Write(verb.Examples.Count == 1 ? "Example:\n" : "Examples:\n");
            foreach (var example in verb.Examples)
            {
                output.Write($"  {example}\n");
            }
        }

        return ExitStatus.Done;
    }
}
