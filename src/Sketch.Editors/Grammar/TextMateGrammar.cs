using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;
using Sketch.Papers;
using Sketch.Syntax;

namespace Sketch.Editors.Grammar;

/// <summary>
/// The colours of text in editors that read TextMate grammars, made from the words of the language. A word counts where it stands: at the
/// start of a line, after a comma, after <c>of</c>; the same letters elsewhere are a name.
/// </summary>
internal static class TextMateGrammar
{
    private const string Name = @"[\p{L}][\p{L}\p{N}_-]*";
    private const string WordEnd = @"(?![\p{L}\p{N}_-])";
    private const string Number =
        @"[+\-−]?(?:\d+(?:\.\d+)?(?:[-−]\d+)?(?:[/⁄]\d+)?(?:\s\d+[/⁄]\d+)?[¼-¾⅐-⅞]?|[¼-¾⅐-⅞])";
    private const string Unit = @"mm|cm|in|ft|yd|m";

    private static readonly GrammarJson Json = new(new()
    {
        WriteIndented = true,
        // The file is no web page: signs stay readable.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    });

    /// <summary>The grammar as its file.</summary>
    public static string Write() => JsonSerializer.Serialize(Of(), Json.GrammarFile).ReplaceLineEndings("\n") + "\n";

    private static GrammarFile Of()
    {
        var lines = Vocabulary.CardLines.Concat(Vocabulary.StashLines).Concat(Vocabulary.BatchLines)
            .Except(Vocabulary.Kinds).Except(Vocabulary.Faces);
        // What follows these two is a name, whatever its letters.
        string[] beforePaper = ["of", "ink"];
        var clauses = AnyOf(Vocabulary.ClauseWords.Except(beforePaper, StringComparer.OrdinalIgnoreCase));
        return new("Sketch", "source.sketch", ["card", "stash", "batch"],
        [
            new(@"^\s*(#.*)$", Captures("comment.line.number-sign.sketch")),
            new(@"\s(#(?:\s.*)?)$", Captures("comment.line.number-sign.sketch")),
            new("[\"“”„](?:[^\"“”]|\"\")*[\"“”]?") { Name = "string.quoted.double.sketch" },
            new(@"#(?:[0-9a-fA-F]{6}|[0-9a-fA-F]{3})(?![\p{L}\p{N}])") { Name = "constant.other.color.rgb-value.sketch" },
            new($@"(?i)^\s*(role|part|{AnyOf(Vocabulary.Stock)})\s+({Name})(?=\s*:|\s+[\d¼-¾])",
                Captures("keyword.control.sketch", "entity.name.function.sketch")),
            new($@"(?i)^\s*({AnyOf(Vocabulary.Faces)}){WordEnd}", Captures("entity.name.section.sketch")),
            new($@"(?i)^\s*(?:({Name})\s*(:)\s*)?(?:(\d+)\s+)?({AnyOf(Vocabulary.Kinds)}){WordEnd}", Captures(
                "entity.name.function.sketch", "punctuation.separator.sketch", "constant.numeric.sketch", "entity.name.type.sketch")),
            new($@"(?i)^\s*(?:({Name})\s*(:)\s*)?({AnyOf(lines)}){WordEnd}", Captures(
                "entity.name.function.sketch", "punctuation.separator.sketch", "keyword.control.sketch")),
            new($@"(?i)(?<![\p{{L}}\p{{N}}_-])({AnyOf(beforePaper)})(?:\s+(any\s+offcut|{Name}))?{WordEnd}",
                Captures("keyword.other.sketch", "variable.other.sketch")),
            new($@"(?i)(,)\s*({clauses}){WordEnd}", Captures("punctuation.separator.sketch", "keyword.other.sketch")),
            new($@"(?i)^\s+({clauses}){WordEnd}", Captures("keyword.other.sketch")),
            new($@"(?i)({Number})(?:\s?({Unit}){WordEnd})?(?![\p{{L}}\p{{N}}])",
                Captures("constant.numeric.sketch", "keyword.other.unit.sketch")),
            new($@"(?i)(?<![\p{{L}}\p{{N}}_-])(?:{AnyOf(ColourWords.All.Concat(BuiltIn.PatternWords))}){WordEnd}")
            {
                Name = "support.constant.color.sketch",
            },
            new("[,:]") { Name = "punctuation.separator.sketch" },
            // What is left of a word must not be taken for a number or a colour.
            new(Name),
        ]);
    }

    /// <summary>Any of some words, the longest first.</summary>
    private static string AnyOf(IEnumerable<string> words) => string.Join('|', words.Distinct(StringComparer.OrdinalIgnoreCase)
        .OrderByDescending(w => w.Length).ThenBy(w => w, StringComparer.Ordinal).Select(Regex.Escape));

    private static Dictionary<string, GrammarScope> Captures(params string[] names) => names.Index()
        .ToDictionary(n => $"{n.Index + 1}", n => new GrammarScope(n.Item));
}

/// <summary>A grammar.</summary>
internal sealed record GrammarFile(string Name, string ScopeName, string[] FileTypes, GrammarRule[] Patterns)
{
    /// <summary>Says to whoever opens the file where it comes from.</summary>
    public string Comment { get; } = "Generated from the words of the language: see DEVELOPERS.md.";
}

/// <summary>What a part of a line is, by a regular expression of Oniguruma.</summary>
internal sealed record GrammarRule(string Match, Dictionary<string, GrammarScope>? Captures = null)
{
    /// <summary>The scope of all of it.</summary>
    public string? Name { get; init; }
}

/// <summary>A scope.</summary>
internal sealed record GrammarScope(string Name);

/// <summary>Grammars as JSON, written by code that the build generates.</summary>
[JsonSerializable(typeof(GrammarFile))]
internal sealed partial class GrammarJson : JsonSerializerContext;
