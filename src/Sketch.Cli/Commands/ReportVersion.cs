using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;

namespace Sketch.Cli.Commands;

/// <summary>Prints the version of the tool.</summary>
internal sealed class ReportVersion : SynchronousCommandLineAction
{
    /// <summary>Such as 0.2.0.</summary>
    public static string Version { get; } =
        typeof(ReportVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.Write($"sketch {Version}\n");
        return ExitStatus.Done;
    }
}
