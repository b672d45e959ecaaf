using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;

namespace Sketch.Cli.Commands;

/// <summary>Prints the version of the tool.</summary>
internal sealed class ReportVersion : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        var version = typeof(ReportVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
        parseResult.InvocationConfiguration.Output.Write($"sketch {version}\n");
        return ExitStatus.Done;
    }
}
