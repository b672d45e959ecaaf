using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>
/// Prints the script by which a shell completes command lines. The scripts ask the program itself, by the directive <c>suggest</c> of the
/// parser, so they know the verbs, options, roles and papers of the moment.
/// </summary>
internal static class CompletionsVerb
{
    private static readonly string[] Shells = ["bash", "zsh", "fish", "pwsh"];

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var shell = new Argument<string>("SHELL")
        {
            Description = $"The shell: {string.Join(", ", Shells)} (PowerShell).",
            HelpName = "SHELL",
        };
        shell.CompletionSources.Add(Shells);
        shell.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var name }] && !Shells.Contains(name))
            {
                result.AddError($"There is no script for \"{name}\". "
                    + (Nearest.Find(name, Shells) is { } near
                        ? $"Did you mean \"{near}\"?" : $"Write one of {string.Join(", ", Shells)}."));
            }
        });
        var verb = new VerbCommand(
            "completions",
            "Prints a script that lets a shell complete verbs, options, and the names of roles and papers. Its first lines say "
                + "where it goes.",
            "sketch completions bash",
            "source <(sketch completions bash)",
            "sketch completions fish > ~/.config/fish/completions/sketch.fish")
        {
            shell,
        };
        verb.SetAction(parsed =>
        {
            using var script = typeof(CompletionsVerb).Assembly.GetManifestResourceStream($"{parsed.GetRequiredValue(shell)}.txt")!;
            using var reader = new StreamReader(script);
            session.Output.Write(reader.ReadToEnd().ReplaceLineEndings("\n"));
            return ExitStatus.Done;
        });
        return verb;
    }
}
