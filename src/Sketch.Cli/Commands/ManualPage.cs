using System.CommandLine;
using System.Text;

namespace Sketch.Cli.Commands;

/// <summary>The manual page of the program in the form of man(7), from the same descriptions as its help.</summary>
internal static class ManualPage
{
    /// <summary>Writes the page.</summary>
    public static void Write(TextWriter output, RootCommand root, string version)
    {
        output.Write($".TH SKETCH 1 \"\" \"Sketch {Escaped(version)}\" \"User Commands\"\n");
        output.Write(".SH NAME\nsketch \\- plans handmade cards\n");
        output.Write(".SH SYNOPSIS\n");
        foreach (var verb in Verbs(root))
        {
            output.Write($".B sketch {Escaped(verb.Name)}\n{Usage(verb)}\n.br\n");
        }

        output.Write($".SH DESCRIPTION\n{Escaped(root.Description ?? "")}\n");
        output.Write(".SH OPTIONS\n");
        WriteOptions(output, root.Options);
        foreach (var verb in Verbs(root))
        {
            output.Write($".SH {Escaped(verb.Name.ToUpperInvariant())}\n.B sketch {Escaped(verb.Name)}\n{Usage(verb)}\n.PP\n");
            output.Write($"{Escaped(verb.Description ?? "")}\n");
            foreach (var argument in verb.Arguments)
            {
                output.Write($".TP\n.I {Escaped(argument.Name)}\n{Escaped(argument.Description ?? "")}\n");
            }

            WriteOptions(output, verb.Options);
            output.Write(".PP\nExamples:\n");
            foreach (var example in (verb as VerbCommand)?.Examples ?? [])
            {
                output.Write($".PP\n.RS\n{Escaped(example)}\n.RE\n");
            }
        }

        output.Write(".SH ENVIRONMENT\n.TP\n.B NO_COLOR\nIf it is set, nothing is written in colours.\n");
        output.Write(".SH EXIT STATUS\n");
        WriteStatus(output, ExitStatus.Done, "Done, and nothing is worse than a warning.");
        WriteStatus(output, ExitStatus.Errors, "The files were read and hold errors.");
        WriteStatus(output, ExitStatus.Usage, "Wrong usage, or a file cannot be opened or written.");
        WriteStatus(output, ExitStatus.Stopped, "Stopped by Ctrl-C.");
        WriteStatus(output, ExitStatus.OutputClosed, "The reader of standard output has closed it.");
    }

    private static IEnumerable<Command> Verbs(RootCommand root) => root.Subcommands.Where(c => !c.Hidden);

    private static void WriteStatus(TextWriter output, int status, string meaning) =>
        output.Write($".TP\n.B {status}\n{Escaped(meaning)}\n");

    private static void WriteOptions(TextWriter output, IEnumerable<Option> options)
    {
        foreach (var option in options.Where(o => !o.Hidden))
        {
            var names = string.Join(", ", option.Aliases.Append(option.Name).Distinct().Where(n => n.StartsWith('-')).OrderBy(n => n.Length)
                .Select(n => $"\\fB{Inline(n)}\\fR"));
            var value = option.HelpName is { } name ? $" \\fI{Inline(name)}\\fR" : "";
            var needed = option.Required ? " (required)" : "";
            output.Write($".TP\n{names}{value}\n{Escaped((option.Description ?? "") + needed)}\n");
        }
    }

    private static string Usage(Command verb)
    {
        var words = verb.Arguments.Select(a => $"\\fI{Inline(a.Name)}\\fR{(a.Arity.MaximumNumberOfValues > 1 ? "\\&..." : "")}")
            .Zip(verb.Arguments, (word, a) => a.Arity.MinimumNumberOfValues == 0 ? $"[{word}]" : word)
            .Concat(verb.Options.Where(o => o.Required).Select(o => $"\\fB{Inline(o.Name)}\\fR \\fI{Inline(o.HelpName ?? "")}\\fR"))
            .Concat(verb.Options.Any(o => !o.Required) ? ["[\\fIoptions\\fR]"] : []);
        return string.Join(' ', words);
    }

    /// <summary>A line of text; one that begins with a dot or an apostrophe would be a request.</summary>
    private static string Escaped(string text)
    {
        var inline = Inline(text);
        return inline.StartsWith('.') || inline.StartsWith('\'') ? "\\&" + inline : inline;
    }

    private static string Inline(string text) => new StringBuilder(text)
        .Replace("\\", "\\e").Replace("-", "\\-").Replace("\n", " ").Replace("…", "...").ToString();
}
