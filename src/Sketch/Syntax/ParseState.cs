using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>State shared by a whole file while its lines are read.</summary>
internal sealed class ParseState(SourceText source, FindingBag findings, IReadOnlyList<LogicalLine> lines)
{
    public SourceText Source { get; } = source;

    public FindingBag Findings { get; } = findings;

    /// <summary>The kind of file by its first word: <c>batch</c>, <c>stash</c>, or <c>card</c> for all others.</summary>
    public string Opening { get; } = OpeningOf(lines);

    /// <summary>The place of the first line.</summary>
    public TextSpan FirstLine => lines[0].Span;

    /// <summary>The unit of lengths that are written without one.</summary>
    public Unit Units { get; set; } = Unit.Inch;

    /// <summary>Whether a length has been read, so that a units line comes too late.</summary>
    public bool LengthsRead { get; set; }

    /// <summary>The kind of lettering of the whole card, as written so far; null where there is none.</summary>
    public string? Lettering { get; set; }

    private static string OpeningOf(IReadOnlyList<LogicalLine> lines) =>
        lines.Count == 0 || lines[0].Tokens[0] is not { Kind: TokenKind.Word, Text: var word } ? "card"
        : Vocabulary.CardLines.Contains(word) ? "card" : Nearest.Find(word, ["batch", "card", "stash"]) ?? "card";
}
