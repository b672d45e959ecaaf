using System.Globalization;
using Sketch.Edits;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Rows;

/// <summary>The clauses and lines that hold the values of rows.</summary>
internal static class RowClauses
{
    private const string AnySheets = "any sheets";

    /// <summary>The title of a file.</summary>
    public static RowField Title(string example) =>
        new("title", "Title", example, new HeadPart(l => ((TitleLine)l).Words.Span, IsQuoted: true)) { IsNeeded = true, IsMain = true };

    /// <summary>How many there are, with the noun: <c>3 sheets</c>, <c>any sheets</c>, <c>50</c>. A bare number gets its noun.</summary>
    /// <param name="noun">The usual noun; empty for none.</param>
    public static ClausePart Stock(string noun) => new(
        c => c is QuantityClause or FlagClause { Word: AnySheets },
        (row, clause) => row.At(clause.Span),
        (value, clause) => noun == "sheets" && value.Equals("any", StringComparison.OrdinalIgnoreCase) ? AnySheets
            : Counted(value, clause is QuantityClause written ? written.Noun ?? "" : noun));

    /// <summary>A number before a noun that no other clause of the line has: <c>24 cards</c>.</summary>
    public static ClausePart Count(string noun, bool isUsual = false) => new(
        c => c is QuantityClause quantity && (quantity.Noun == noun || (isUsual && quantity.Noun is null)),
        (row, clause) => row.NumberIn(clause.Span),
        (value, clause) => Counted(value, clause is QuantityClause { Noun: null } ? "" : noun));

    /// <summary>A number after a word: <c>price 0.99</c>, <c>spare 1</c>.</summary>
    public static ClausePart Number(string word, Func<Clause, bool> isOne) =>
        new(isOne, (row, clause) => row.NumberIn(clause.Span), (value, _) => $"{word} {value}");

    /// <summary>A length before <c>long</c>.</summary>
    public static ClausePart Long { get; } =
        new(c => c is LongClause, (row, clause) => row.NumberIn(clause.Span), (value, _) => $"{value} long");

    /// <summary>What is cut off an edge.</summary>
    public static ClausePart Trim(Edge edge) => new(
        c => c is TrimClause trim && trim.Edge == edge, (row, clause) => row.NumberIn(clause.Span),
        (value, _) => $"trim {value} {edge.Name()}");

    /// <summary>Everything after a word: <c>front waves #cfe3ea</c>, <c>weight 80 lb cover</c>.</summary>
    public static ClausePart After(string word, Func<Clause, bool> isOne) =>
        new(isOne, (row, clause) => row.At(clause.Span)[word.Length..].Trim(), (value, _) => $"{word} {value}");

    /// <summary>Words in quotes: <c>collection "Sea air"</c>.</summary>
    public static ClausePart Collection { get; } = new(c => c is CollectionClause, (_, clause) => ((CollectionClause)clause).Name.Text,
        (value, _) => $"collection {StartingText.Quoted(value)}");

    /// <summary>One of several clauses without values, each its own word: <c>by hand</c>.</summary>
    public static ClausePart Flag(params string[] words) => new(
        c => c is FlagClause flag && words.Contains(flag.Word), (_, clause) => ((FlagClause)clause).Word, (value, _) => value);

    /// <summary>The side that shows.</summary>
    public static ClausePart Side { get; } = new(
        c => c is SideClause, (_, clause) => ((SideClause)clause).IsBack ? "back" : "front", (value, _) => value);

    /// <summary>Names of makers, apart by commas: <c>made by "Ann" and "Beth"</c>.</summary>
    public static ClausePart MadeBy { get; } = new(
        c => c is MadeByClause, (_, clause) => string.Join(", ", ((MadeByClause)clause).Makers.Select(m => m.Text)),
        (value, _) => "made by " + string.Join(" and ", Names(value)));

    /// <summary>A line with words in quotes: <c>date "2026-11-25"</c>.</summary>
    public static LinePart Words(string word) => new(
        word,
        line => line is WordsLine words && words.Word == word ? ([.. words.Words.Select(w => w.Text)], Cover(words)) : null,
        value => $"{word} {StartingText.Quoted(value)}");

    /// <summary>The stash of a batch.</summary>
    public static LinePart NamedStash { get; } = new(
        "stash",
        line => line is TitleLine { Word: "stash", Words: var words } ? ([words.Text], words.Span) : null,
        value => $"stash {StartingText.Quoted(value)}");

    /// <summary>The number of spare cards.</summary>
    public static LinePart Spare { get; } = new(
        "spare",
        line => line is CountLine { Word: "spare", Count: var count } ? ([Digits(count)], count.Span) : null,
        value => $"spare {value}");

    /// <summary>The makers: their number, or their names apart by commas.</summary>
    public static LinePart Makers { get; } = new(
        "makers",
        line => line switch
        {
            CountLine { Word: "makers", Count: var count } => ([Digits(count)], count.Span),
            WordsLine { Word: "makers" } words => ([.. words.Words.Select(w => w.Text)], Cover(words)),
            _ => null,
        },
        value => "makers " + (value.All(c => char.IsAsciiDigit(c) || c == '-') ? value : string.Join(' ', Names(value))))
    {
        IsList = true,
    };

    /// <summary>A bare number with its noun, in the singular for one; anything else as it is.</summary>
    private static string Counted(string value, string noun) => noun.Length == 0 || !value.All(char.IsAsciiDigit) ? value
        : $"{value} {(value == "1" ? noun[..^1] : noun)}";

    private static IEnumerable<string> Names(string value) =>
        value.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(StartingText.Quoted);

    private static TextSpan Cover(WordsLine line) => TextSpan.Cover(line.Words[0].Span, line.Words[^1].Span);

    private static string Digits(CountSyntax count) => count.Value.ToString(CultureInfo.InvariantCulture);
}
