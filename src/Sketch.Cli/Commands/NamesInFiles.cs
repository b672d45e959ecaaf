using System.CommandLine.Completions;
using Sketch.Output.Folders;

namespace Sketch.Cli.Commands;

/// <summary>
/// What a shell may complete from the files that are on the command line already, or else from those of the current folder: roles of cards,
/// papers of stashes. Files that cannot be read have none.
/// </summary>
internal static class NamesInFiles
{
    // A shell waits for the answer.
    private const int MostFiles = 20;

    /// <summary>Roles of the cards.</summary>
    public static IEnumerable<string> Roles(CompletionContext context) =>
        Compiled(context, ".card").SelectMany(c => c.Card?.Roles.Select(r => r.Name) ?? []).Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>Papers of the stashes, those with two sides also as PAPER/back.</summary>
    public static IEnumerable<string> Papers(CompletionContext context) =>
        Compiled(context, ".stash").SelectMany(c => c.Stash?.Papers.Select(p => p.Name) ?? []).Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>Choices of papers for roles: first the role with an equals sign, then the paper.</summary>
    public static IEnumerable<string> Choices(CompletionContext context) => InList(context, word =>
    {
        var equals = word.IndexOf('=', StringComparison.Ordinal);
        return equals < 0 ? Roles(context).Select(r => r + "=") : Papers(context).Select(p => word[..(equals + 1)] + p);
    });

    /// <summary>Words for the last place of a list with commas, each after what is typed before it.</summary>
    public static IEnumerable<string> InList(CompletionContext context, Func<string, IEnumerable<string>> words)
    {
        var typed = context.WordToComplete;
        var start = typed.LastIndexOf(',') + 1;
        return words(typed[start..]).Select(w => typed[..start] + w);
    }

    private static IEnumerable<Compilation> Compiled(CompletionContext context, string kind)
    {
        var named = context.ParseResult.Tokens.Select(t => t.Value)
            .Where(v => v.EndsWith(kind, StringComparison.OrdinalIgnoreCase) && File.Exists(v)).ToList();
        return (named.Count > 0 ? named : [.. InputFiles.InFolder(".", [kind])]).Take(MostFiles)
            .Select(name => FolderFiles.ReadFile(name).Source).OfType<Text.SourceText>()
            .Select(source => Compiler.Compile(source, new FolderFiles()));
    }
}
