using System.CommandLine;
using System.CommandLine.Parsing;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Cli.Commands;

/// <summary>What is wrong with a command line, in sentences.</summary>
internal static class UsageProblems
{
    /// <summary>All problems; none when the line can be run.</summary>
    public static IReadOnlyList<string> Of(ParseResult parsed)
    {
        // A request for help, the version or the licences is never an error, nor is a line that a shell completes.
        if (parsed.Action is HelpWithExamples or ReportVersion or ReportLicences
            || parsed.Tokens is [{ Type: TokenType.Directive }, ..])
        {
            return [];
        }

        var verb = parsed.CommandResult.Command;
        if (verb is RootCommand)
        {
            return [parsed.Tokens is [var first, ..] ? UnknownVerb(first.Value, (RootCommand)verb) : "Choose a verb: sketch VERB FILE…"];
        }

        var strangers = UnknownOptions(parsed).ToList();
        return strangers.Count > 0
            ? [.. strangers.Select(s => UnknownOption(s, verb))]
            : [.. parsed.Errors.Select(e => e.Message).Distinct()];
    }

    /// <summary>Reports them, with how to get help, and returns the exit status.</summary>
    public static int Report(IReadOnlyList<string> problems, ParseResult parsed, TextWriter error)
    {
        foreach (var problem in problems)
        {
            error.Write($"sketch: {Printable.Line(problem)}\n");
        }

        error.Write(parsed.CommandResult.Command is VerbCommand verb
            ? $"sketch {verb.Name} --help lists its options.\n"
            : "sketch --help lists its options.\n");
        return ExitStatus.Usage;
    }

    /// <summary>The parser takes a misspelt option for a file; a file whose name begins with a dash comes after --.</summary>
    private static IEnumerable<string> UnknownOptions(ParseResult parsed)
    {
        var files = parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(a => a.Tokens).Concat(parsed.CommandResult.Tokens)
            .ToHashSet(ReferenceEqualityComparer.Instance);
        return parsed.Tokens
            .TakeWhile(t => t.Type != TokenType.DoubleDash)
            .Where(t => t.Type == TokenType.Argument && files.Contains(t) && t.Value.StartsWith('-') && t.Value != Session.Standard
                && !IsNumber(t.Value))
            .Select(t => t.Value);
    }

    private static bool IsNumber(string word) => word.Length > 1 && word.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0;

    /// <summary>Names the nearest verb or option, or all verbs.</summary>
    internal static string UnknownVerb(string word, RootCommand root)
    {
        var what = word.StartsWith('-') ? "option" : "verb";
        var near = Nearest.Find(word, root.Subcommands.Select(c => c.Name).Concat(root.Options.Select(o => o.Name)));
        return near is null
            ? $"There is no {what} \"{word}\". The verbs are {string.Join(", ", root.Subcommands.Select(c => c.Name))}."
            : $"There is no {what} \"{word}\". Did you mean \"{near}\"?";
    }

    private static string UnknownOption(string word, Command verb)
    {
        var near = Nearest.Find(word.Split('=', ':')[0], [.. verb.Options.Select(o => o.Name), Session.QuietOption, "--help"]);
        var way = near is null ? $"Its options are {string.Join(", ", verb.Options.Select(o => o.Name))}." : $"Did you mean \"{near}\"?";
        return $"The verb \"{verb.Name}\" has no option \"{word}\". {way}";
    }
}
