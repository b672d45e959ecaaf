using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>Collects changes to the clauses of one line; everything else in it stays, comments too.</summary>
/// <param name="source">The text.</param>
/// <param name="line">The line.</param>
/// <param name="units">The units of the file.</param>
internal sealed class LineEditing(SourceText source, LineSyntax line, UnitSystem units)
{
    private readonly List<TextEdit> _edits = [];
    private readonly List<(TextSpan After, string Clause)> _added = [];
    private readonly WrittenNumber _numbers = new(units);

    /// <summary>A length for a new clause.</summary>
    public string Written(Length length) => _numbers.New(length);

    /// <summary>All changes, in the order of the text; what is added at one place is one change.</summary>
    public ImmutableArray<TextEdit> ToEdits() =>
        [.. _edits.Concat(_added.GroupBy(a => a.After.End).Select(Insertion))
            .GroupBy(e => e.Span.Length == 0 ? (e.Span.Start, 0) : (e.Span.Start, e.Span.End))
            .Select(g => g.Aggregate((first, second) => first with { Text = first.Text + second.Text }))
            .OrderBy(e => e.Span.Start).ThenBy(e => e.Span.End)];

    /// <summary>Writes other text in place of a part of the line.</summary>
    public void Replace(TextSpan span, string text)
    {
        if (source.Content[span.Start..span.End] != text)
        {
            _edits.Add(new(span, text));
        }
    }

    /// <summary>Writes a length in place of the last number within a part of the line; adds it after a word where there is none.</summary>
    public void SetNumber(TextSpan within, Length length, string word, Unit? shared = null)
    {
        if (line.Tokens.Tokens.LastOrDefault(t => t.Kind == TokenKind.Number && IsWithin(t, within)) is { } number)
        {
            Replace(number.Span, _numbers.InPlaceOf(number, length, shared));
        }
        else
        {
            _edits.Add(new(new(within.End, within.End), $" {word}{Written(length)}"));
        }
    }

    /// <summary>The unit that the last number within a part of the line has, or null.</summary>
    public Unit? UnitIn(TextSpan within) =>
        line.Tokens.Tokens.LastOrDefault(t => t.Kind == TokenKind.Number && IsWithin(t, within))?.Number!.Unit;

    /// <summary>Adds text directly after a part of the line, such as a size after the kind.</summary>
    public void Add(TextSpan after, string text) => _edits.Add(new(new(after.End, after.End), text));

    /// <summary>Adds a clause after a part of the line.</summary>
    public void AddClause(TextSpan after, string clause) => _added.Add((after, clause));

    /// <summary>Takes a clause away, with one comma.</summary>
    public void Remove(Clause clause)
    {
        var tokens = line.Tokens.Tokens;
        var first = IndexAt(clause.Span.Start);
        var next = first;
        while (next < tokens.Count && tokens[next].Span.Start < clause.Span.End)
        {
            next++;
        }

        // From the end of what stands before the comma; a comment in between stays.
        var before = first > 0 && tokens[first - 1].Kind == TokenKind.Comma ? first - 2 : first - 1;
        TextSpan span = before >= 0 ? new(tokens[before].Span.End, clause.Span.End) : clause.Span;
        if (HoldsComment(span) && next < tokens.Count)
        {
            var after = tokens[next].Kind == TokenKind.Comma && next + 1 < tokens.Count && tokens[next + 1].Kind != TokenKind.End
                ? new TextSpan(clause.Span.Start, tokens[next + 1].Span.Start) : clause.Span;
            var ownEnd = tokens[next].Kind == TokenKind.Comma ? tokens[next].Span.End : clause.Span.End;
            span = HoldsComment(after) ? new(clause.Span.Start, ownEnd) : after;
            while (span.End < source.Content.Length && source.Content[span.End] == ' ')
            {
                span = span with { End = span.End + 1 };
            }
        }

        _edits.Add(new(span, ""));
    }

    private TextEdit Insertion(IGrouping<int, (TextSpan After, string Clause)> added)
    {
        // The comma before the first clause of a line may be missing; behind a new clause it must not.
        var next = line.Tokens.Tokens.Select((t, i) => (t, i)).FirstOrDefault(t => t.t.Span.Start >= added.Key);
        var needsComma = next.t is { Kind: not (TokenKind.Comma or TokenKind.End) } && line.MissingCommas.Contains(next.i);
        return new(new(added.Key, added.Key), string.Concat(added.Select(a => ", " + a.Clause)) + (needsComma ? "," : ""));
    }

    private int IndexAt(int start) => line.Tokens.Tokens.TakeWhile(t => t.Span.Start < start).Count();

    // What stands after the last token is behind the line.
    private bool HoldsComment(TextSpan span) => line.Tokens.Comments.Any(c =>
        c.Token > 0 && line.Tokens.Tokens[c.Token].Kind != TokenKind.End
        && line.Tokens.Tokens[c.Token - 1].Span.End >= span.Start && line.Tokens.Tokens[c.Token].Span.Start <= span.End);

    private static bool IsWithin(Token token, TextSpan span) => token.Span.Start >= span.Start && token.Span.End <= span.End;
}
