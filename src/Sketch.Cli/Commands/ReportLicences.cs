using System.CommandLine;
using System.CommandLine.Invocation;

namespace Sketch.Cli.Commands;

/// <summary>Prints the licences of all parts that Sketch is distributed with.</summary>
internal sealed class ReportLicences : SynchronousCommandLineAction
{
    // The runtime is part of a download only; what is started with an installed runtime has its notices there.
    private static readonly string[] Texts = ["THIRD-PARTY-NOTICES.txt", "dotnet-LICENSE.txt", "dotnet-ThirdPartyNotices.txt"];

    /// <summary>A request for the licences is never an error.</summary>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        foreach (var name in Texts)
        {
            if (typeof(ReportLicences).Assembly.GetManifestResourceStream(name) is { } text)
            {
                using var reader = new StreamReader(text);
                parseResult.InvocationConfiguration.Output.Write(reader.ReadToEnd());
            }
        }

        return ExitStatus.Done;
    }
}
