using System.CommandLine;
using Sketch.Cli.Commands;

namespace Sketch.Cli.Verbs;

/// <summary>Prints the help of a verb, or of the whole tool.</summary>
internal static class HelpVerb
{
    /// <summary>The verb.</summary>
    /// <param name="session">The run, which receives the messages.</param>
    /// <param name="root">The command with all verbs, which are read when this verb runs.</param>
    public static Command Create(Session session, RootCommand root)
    {
        var about = new Argument<string?>(
            "VERB")
        { Description = "The verb; leave it out for a list of all verbs.", HelpName = "VERB", Arity = ArgumentArity.ZeroOrOne };
        var manual = new Option<bool>("--man") { Description = "Print the manual page of all verbs, for the program man." };
        var verb = new VerbCommand("help", "Prints the help of a verb.", "sketch help draw", "sketch help --man | man -l -")
        {
            about, manual,
        };
        about.CompletionSources.Add(_ => root.Subcommands.Select(c => c.Name));
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(manual))
            {
                ManualPage.Write(session.Output, root, ReportVersion.Version);
                return ExitStatus.Done;
            }

            var word = parsed.GetValue(about);
            if (word is not null && root.Subcommands.All(c => c.Name != word))
            {
                session.Report(UsageProblems.UnknownVerb(word, root));
                return ExitStatus.Usage;
            }

            string[] line = word is null ? ["--help"] : [word, "--help"];
            return root.Parse(line).Invoke(parsed.InvocationConfiguration);
        });
        return verb;
    }
}
