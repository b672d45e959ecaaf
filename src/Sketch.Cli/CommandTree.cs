using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Reflection;
using Sketch.Cli.Verbs;

namespace Sketch.Cli;

/// <summary>All verbs.</summary>
internal static class CommandTree
{
    /// <summary>The command line's grammar; its verbs write to the session.</summary>
    public static RootCommand Build(Session session)
    {
        var root = new RootCommand("Lays out handmade cards: checks that they fit, draws them, lists every size to cut.")
        {
            CheckVerb.Create(session),
            SizesVerb.Create(session),
            DrawVerb.Create(session),
            VariantsVerb.Create(session),
            GalleryVerb.Create(session),
            TemplatesVerb.Create(session),
            PlanVerb.Create(session),
            ExplainVerb.Create(session),
            FormatVerb.Create(session),
            OpenVerb.Create(session),
        };
        root.Subcommands.Add(HelpVerb.Create(session, root));
        root.Options.OfType<HelpOption>().Single().Action = new HelpWithExamples();
        root.Options.OfType<VersionOption>().Single().Action = new TellVersion();
        return root;
    }

    /// <summary>Tells the tool's version.</summary>
    internal sealed class TellVersion : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            var version = typeof(Program).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
            parseResult.InvocationConfiguration.Output.Write($"sketch {version}\n");
            return ExitStatus.Done;
        }
    }
}
