using System.CommandLine;
using System.CommandLine.Help;
using Sketch.Cli.Commands;
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
            NewVerb.Create(session),
            CheckVerb.Create(session),
            SizesVerb.Create(session),
            DrawVerb.Create(session),
            VariantsVerb.Create(session),
            GalleryVerb.Create(session),
            TemplatesVerb.Create(session),
            PlanVerb.Create(session),
            CountVerb.Create(session),
            ExplainVerb.Create(session),
            FormatVerb.Create(session),
            OpenVerb.Create(session),
            LanguageServerVerb.Create(session),
            CompletionsVerb.Create(session),
        };
        root.Subcommands.Add(HelpVerb.Create(session, root));
        root.Options.OfType<HelpOption>().Single().Action = new HelpWithExamples();
        root.Options.OfType<VersionOption>().Single().Action = new ReportVersion();
        root.Options.Add(new Option<bool>(Session.QuietOption, "-q")
        {
            Description = "Write only problems and what was asked for: no notes, progress or list of written files.",
            Recursive = true,
        });
        root.Options.Add(new Option<bool>("--licences", "--licenses")
        {
            Description = "Show the licences of all parts that Sketch is made from.",
            Action = new ReportLicences(),
        });
        return root;
    }
}
