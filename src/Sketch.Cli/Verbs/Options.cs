using System.CommandLine;
using System.CommandLine.Parsing;
using Sketch.Cli.Commands;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>Arguments and options that several verbs share.</summary>
internal static class Options
{
    /// <summary>The files to read, one or more.</summary>
    /// <param name="kinds">What they are, such as "Card files".</param>
    public static Argument<string[]> Files(string kinds = "Card files") => new("FILE")
    {
        Description = $"{kinds}, or folders with such files. Write - for standard input.",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>Where a verb writes its files.</summary>
    /// <param name="description">What goes there.</param>
    /// <param name="helpName">Such as DIR.</param>
    /// <param name="isRequired">Whether the verb does nothing without it.</param>
    /// <param name="takesStandard">Whether - may stand for standard output; otherwise it is refused.</param>
    public static Option<string> Out(string description, string helpName = "DIR", bool isRequired = true, bool takesStandard = false)
    {
        var option = new Option<string>("--out", "-o") { Description = description, HelpName = helpName, Required = isRequired };
        if (!takesStandard)
        {
            option.Validators.Add(result =>
            {
                if (result.Tokens is [{ Value: Session.Standard }])
                {
                    result.AddError("--out -: there are several files to write, and standard output takes one. Name a folder.");
                }
            });
        }

        return option;
    }

    /// <summary>Requests one JSON document on standard output.</summary>
    public static Option<bool> Json() => new("--json") { Description = "Write one JSON document." };

    /// <summary>A list of words from a choice, separated by commas.</summary>
    public static Option<string[]> Choice(string name, string description, string helpName, IReadOnlyList<string> words)
    {
        var option = new Option<string[]>(name) { Description = description, HelpName = helpName, Arity = ArgumentArity.OneOrMore };
        option.CustomParser = result => [.. result.Tokens.SelectMany(t => t.Value.Split(',')).Select(w => Chosen(w, result))];
        option.CompletionSources.Add(context => NamesInFiles.InList(context, _ => words));
        return option;

        string Chosen(string written, ArgumentResult result)
        {
            var word = written.Trim().ToLowerInvariant().Replace(' ', '-');
            if (!words.Contains(word))
            {
                var near = Nearest.Find(word, words);
                result.AddError($"{name} does not know \"{written}\". "
                    + $"{(near is null ? $"It knows {string.Join(", ", words)}." : $"Did you mean \"{near}\"?")}");
            }

            return word;
        }
    }

    /// <summary>A whole number within limits, or from a choice.</summary>
    public static Option<int> Number(
        string name, string description, string helpName, int usual, Func<int, bool> allowed, string allowedWords) => new(name)
        {
            Description = description,
            HelpName = helpName,
            DefaultValueFactory = _ => usual,
            CustomParser = result =>
            {
                var written = result.Tokens[0].Value;
                if (int.TryParse(written, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture,
                    out var number) && allowed(number))
                {
                    return number;
                }

                result.AddError($"{name} {written} is not valid: write {allowedWords}.");
                return usual;
            },
        };
}
