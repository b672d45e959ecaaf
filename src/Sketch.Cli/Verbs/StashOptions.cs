using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>The options that assign papers from a stash to roles.</summary>
internal sealed class StashOptions
{
    /// <summary>The stash.</summary>
    public Option<string?> Stash { get; } = new("--stash")
    {
        Description = "The stash file whose papers fill the roles.",
        HelpName = "FILE",
    };

    /// <summary>Choices of papers.</summary>
    public Option<PaperChoice[]> Papers { get; } = new("--paper")
    {
        Description = "Puts a paper into a role, such as sky=gulls/back; repeat it or separate several with commas.",
        HelpName = "ROLE=PAPER[/front|/back]",
        Arity = ArgumentArity.OneOrMore,
        CustomParser = result =>
        {
            var choices = new List<PaperChoice>();
            foreach (var text in result.Tokens.SelectMany(t => t.Value.Split(',')))
            {
                if (PaperChoice.TryParse(text, out var choice))
                {
                    choices.Add(choice);
                }
                else
                {
                    result.AddError($"--paper {text} is not valid: write ROLE=PAPER, such as sky=gulls or sky=gulls/back.");
                }
            }

            return [.. choices];
        },
    };

    /// <summary>The options, which shells complete from the files on the line.</summary>
    public StashOptions() => Papers.CompletionSources.Add(NamesInFiles.Choices);

    /// <summary>Lets files refer to files elsewhere.</summary>
    public Option<bool> Outside { get; } = CreateOutside();

    /// <summary>The option that lets files refer to files outside their own folder.</summary>
    public static Option<bool> CreateOutside() =>
        new("--outside") { Description = "Allow files to name pictures and other files outside their folder." };

    /// <summary>The stash and choices of a command line; null with a status when they cannot be used, which is reported.</summary>
    public RoleFilling? Read(Session session, ParseResult parsed, out int status)
    {
        var choices = parsed.GetValue(Papers) ?? [];
        Stash? stash = null;
        status = ExitStatus.Done;
        if (parsed.GetValue(Stash) is { } file)
        {
            stash = ReadStash(session, file, parsed.GetValue(Outside), out status);
            if (stash is null)
            {
                return null;
            }
        }

        var filling = new RoleFilling(stash, [.. choices]);
        foreach (var unknown in choices.Where(c => !filling.Has(c)))
        {
            var near = Nearest.Find(unknown.Paper, stash?.Papers.Select(p => p.Name) ?? []);
            session.Report(stash is null
                ? $"There is no paper \"{unknown.Paper}\" without a stash: name one with --stash FILE."
                : $"There is no paper \"{unknown.Paper}\" in the stash. "
                    + $"{(near is null
                        ? $"Its papers are {string.Join(", ", stash.Papers.Select(p => p.Name))}." : $"Did you mean \"{near}\"?")}");
            status = ExitStatus.Usage;
        }

        return status == ExitStatus.Done ? filling : null;
    }

    /// <summary>
    /// Reads a stash; null with a status when the file cannot be opened, is not a stash or has errors, which is reported.
    /// </summary>
    public static Stash? ReadStash(Session session, string file, bool mayLeaveFolder, out int status)
    {
        var reading = InputFiles.Of(
            session, [file], [".stash"], s => Compiler.Compile(s, session.World(mayLeaveFolder)));
        status = reading.ExitStatus;
        foreach (var read in reading.Files)
        {
            session.Report(read.Findings);
            if (read.Stash is null && status == ExitStatus.Done)
            {
                session.Report($"{file}: this is not a stash; the first line of a stash is stash \"…\".");
                status = ExitStatus.Usage;
            }
        }

        return status == ExitStatus.Done ? reading.Files[0].Stash : null;
    }

    /// <summary>
    /// Reads cards in the papers that fill their roles; null with a status when a paper is chosen for a role of none of them, which is
    /// reported.
    /// </summary>
    /// <param name="session">The run.</param>
    /// <param name="names">The names of the files.</param>
    /// <param name="mayLeaveFolder">Whether files may name files outside their own folder.</param>
    /// <param name="filling">The stash and the papers chosen.</param>
    /// <param name="status">The exit status so far.</param>
    public static InputFiles? ReadCards(Session session, string[] names, bool mayLeaveFolder, RoleFilling filling, out int status)
    {
        var reading = InputFiles.Of(
            session, names, InputFiles.Cards, s => Compiler.Compile(s, session.World(mayLeaveFolder), filling));
        var unknown = ReportUnknownRoles(session, filling, [.. reading.Files.Select(f => f.Card).OfType<LaidOutCard>()]);
        status = unknown == ExitStatus.Done ? reading.ExitStatusForCards : unknown;
        return unknown == ExitStatus.Done ? reading : null;
    }

    /// <summary>Reports choices for roles that none of the cards declares; returns the exit status.</summary>
    public static int ReportUnknownRoles(Session session, RoleFilling filling, IReadOnlyCollection<LaidOutCard> cards)
    {
        var roles = cards.SelectMany(c => c.Roles).Select(r => r.Name).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var unknown = cards.Count == 0
            ? [] : filling.Choices.Where(c => !roles.Contains(c.Role, StringComparer.OrdinalIgnoreCase)).ToList();
        foreach (var choice in unknown)
        {
            var near = Nearest.Find(choice.Role, roles);
            session.Report($"There is no role \"{choice.Role}\" in the card. "
                + $"{(near is not null
                    ? $"Did you mean \"{near}\"?"
                    : roles.Count > 0 ? $"Its roles are {string.Join(", ", roles)}." : "It declares none.")}");
        }

        return unknown.Count > 0 ? ExitStatus.Usage : ExitStatus.Done;
    }
}
