using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Sketch.Kinds;
using Sketch.Syntax;

namespace Sketch.Guide;

/// <summary>What a word of the language means, and a line in which it is used.</summary>
/// <param name="Word">The word.</param>
/// <param name="Means">Its meaning in a sentence or two; what is typed stands between backticks.</param>
/// <param name="Example">A line of a card; null where the reference has none.</param>
public sealed record WordEntry(string Word, string Means, string? Example);

/// <summary>
/// The words of cards, explained by the sentences of the written reference, sketches/LANGUAGE.md: by the row of the table of kinds, else by
/// the point of a list or the sentence that shows the word as it is typed.
/// </summary>
public static partial class WordGuide
{
    private const string Heading = "## ";

    /// <summary>The parts of the reference about cards end before this one.</summary>
    private const string AfterCards = "## Stash and batch files";

    /// <summary>A line of fewer letters says too little to be an example, if there is another.</summary>
    private const int ShortLine = 12;

    private static readonly Lazy<FrozenDictionary<string, WordEntry>> Entries = new(Read);

    /// <summary>All words with their meanings: kinds of piece first, then what begins a line, then clauses; each in order.</summary>
    public static ImmutableArray<WordEntry> All => [.. Words.Select(Find).OfType<WordEntry>()];

    /// <summary>The entry of a word; null for what is no word of a card.</summary>
    public static WordEntry? Find(string word) => Entries.Value.GetValueOrDefault(word);

    private static IEnumerable<string> Words => PieceKinds.All.Where(k => k.Traits.HasLine).Select(k => k.Name)
        .Concat(Vocabulary.CardLines.Except(Vocabulary.Kinds, StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal))
        .Concat(Vocabulary.ClauseWords.Order(StringComparer.Ordinal)).Distinct(StringComparer.OrdinalIgnoreCase);

    private static FrozenDictionary<string, WordEntry> Read()
    {
        using var reader = new StreamReader(typeof(WordGuide).Assembly.GetManifestResourceStream("LANGUAGE.md")!, Encoding.UTF8);
        var text = reader.ReadToEnd().ReplaceLineEndings("\n").Split('\n' + AfterCards)[0];
        var examples = new List<string>();
        var prose = Block().Replace(text[text.IndexOf("\n" + Heading, StringComparison.Ordinal)..], block =>
        {
            // An example with findings shows mistakes.
            var isCard = block.Groups["info"].Value.StartsWith("card", StringComparison.Ordinal) && !block.Groups["findings"].Success;
            examples.AddRange(isCard ? block.Groups["lines"].Value.Split('\n') : []);
            return "";
        });
        var units = prose.Split("\n\n").SelectMany(p => UnitStart().Split(p.Trim())).Select(u => Blanks().Replace(u, " ").Trim())
            .Where(u => !u.StartsWith('#')).ToImmutableArray();
        return Words.Select(w => MeaningOf(w, units) is { } means ? new WordEntry(w, means, ExampleOf(w, examples)) : null)
            .OfType<WordEntry>().ToFrozenDictionary(e => e.Word, StringComparer.OrdinalIgnoreCase);
    }

    private static string? MeaningOf(string word, ImmutableArray<string> units)
    {
        var rows = units.Where(u => u.StartsWith('|')).Select(u => u.Trim('|').Split(" | ")).Where(c => c.Length == 3).ToList();
        if (rows.FirstOrDefault(c => c[0].Contains($"`{word}`", StringComparison.Ordinal)) is { } row)
        {
            var number = row[2].Trim();
            return Plain(number.StartsWith("see ", StringComparison.Ordinal) ? row[1].Trim() : $"{row[1].Trim()}. One number is {number}");
        }

        var points = units.Where(u => u.StartsWith("- ", StringComparison.Ordinal)).Select(u => u[2..]).ToList();
        var sentences = units.Where(u => !u.StartsWith('|')).SelectMany(u => SentenceEnd().Split(u.TrimStart('-', ' '))).ToList();
        var withMore = new Regex($"^`{Regex.Escape(word)} ");
        var alone = new Regex($"^`{Regex.Escape(word)}`");
        var found = points.FirstOrDefault(withMore.IsMatch) ?? points.FirstOrDefault(alone.IsMatch)
            ?? points.FirstOrDefault(p => Shows(p.Split(": ")[0], word)) ?? sentences.FirstOrDefault(withMore.IsMatch)
            ?? sentences.FirstOrDefault(alone.IsMatch) ?? sentences.FirstOrDefault(s => Shows(s, word))
            ?? rows.Select(c => c[1]).FirstOrDefault(c => Shows(c, word))
            ?? sentences.FirstOrDefault(s => Code().Matches(s).Any(c => c.Value.Contains($" {word}", StringComparison.OrdinalIgnoreCase)));
        return found is null ? null : Plain(found);
    }

    /// <summary>Whether something typed in a sentence begins with a word.</summary>
    private static bool Shows(string sentence, string word) =>
        Code().Matches(sentence).Any(c => $"{c.Groups["typed"].Value} ".StartsWith($"{word} ", StringComparison.OrdinalIgnoreCase));

    /// <summary>The shortest line with the word, without its name, comment and indentation.</summary>
    private static string? ExampleOf(string word, IEnumerable<string> lines)
    {
        var start = PieceKinds.Find(word) is not null || Vocabulary.CardLines.Contains(word) ? @"^(?:\d+ )?" : "(?:^|[ ,])";
        var begins = new Regex($@"{start}{Regex.Escape(word)}\b");
        return lines.Select(l => Named().Replace(Comment().Replace(l, "").Trim(), ""))
            .Where(l => begins.IsMatch(Quoted().Replace(l, "")) && !l.EndsWith(','))
            .OrderBy(l => l.Length < ShortLine).ThenBy(l => l.Length).FirstOrDefault();
    }

    /// <summary>Without emphasis and the addresses of links.</summary>
    private static string Plain(string markdown)
    {
        var plain = Link().Replace(markdown, "$1").Replace("**", "", StringComparison.Ordinal).TrimEnd(':', '.');
        return $"{char.ToUpperInvariant(plain[0])}{plain[1..]}.";
    }

    [GeneratedRegex("`(?<typed>[^`]*)`")]
    private static partial Regex Code();

    [GeneratedRegex(@"```(?<info>[^\n]*)\n(?<lines>.*?)```(?<findings>(?=\s+```findings))?", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"\n(?=- |\| )")]
    private static partial Regex UnitStart();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"(?<=[.:]) (?=[A-Z`])")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"\s#(\s.*)?$|^#.*$")]
    private static partial Regex Comment();

    [GeneratedRegex(@"^(?!role)[\p{L}-]+: ")]
    private static partial Regex Named();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quoted();
}
