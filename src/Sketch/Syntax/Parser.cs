using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>
/// Reads a text into an outline of lines. Every clause is told by its first word, so the parser never backs up and goes on after a
/// mistake at the next comma; one run reports every mistake.
/// </summary>
public sealed partial class Parser
{
    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private IReadOnlyList<LogicalLine> _lines = [];
    private int _next;
    private bool _depthReported;
    private string _opening = "";
    private Unit _units = Unit.Inch;
    private bool _lengthsRead;
    private ImmutableHashSet<Unit> _bareUnits = [];

    private Parser(SourceText source, FindingBag findings)
    {
        _source = source;
        _findings = findings;
    }

    /// <summary>Reads a text. Mistakes go to <paramref name="findings"/>; the outline holds what could be read.</summary>
    public static FileSyntax Parse(SourceText source, FindingBag findings)
    {
        if (source.Content.Length > Limits.Characters)
        {
            findings.Add(FindingCatalogue.Unreadable, new(source, new(0, 0)),
                $"The file has {source.Content.Length:N0} characters, more than {Limits.Characters:N0}.",
                "A card has a few dozen lines. Is this the right file?");
            return new(source, [], []);
        }

        return new Parser(source, findings).ParseFile();
    }

    private FileSyntax ParseFile()
    {
        (_lines, var trailing) = Lexer.Read(_source, _findings);
        _opening = OpeningOf(_lines);
        var lines = ImmutableArray.CreateBuilder<LineSyntax>();
        while (_next < _lines.Count)
        {
            lines.AddRange(ParseBlock(_lines[_next].Indent, 0));
        }

        return new(_source, lines.ToImmutable(), trailing) { BareUnits = _bareUnits };
    }

    /// <summary>The first word of the file tells which lines belong in it: batch, stash, or card for all others.</summary>
    private static string OpeningOf(IReadOnlyList<LogicalLine> lines) =>
        lines.Count == 0 || lines[0].Tokens[0] is not { Kind: TokenKind.Word, Text: var word } ? "card"
        : Vocabulary.CardLines.Contains(word) ? "card" : Text.Nearest.Find(word, ["batch", "card", "stash"]) ?? "card";

    private ImmutableArray<LineSyntax> ParseBlock(int indent, int depth)
    {
        var block = ImmutableArray.CreateBuilder<LineSyntax>();
        while (_next < _lines.Count && _lines[_next].Indent >= indent)
        {
            var tokens = _lines[_next++];
            if (tokens.Indent > indent && depth < Limits.Depth)
            {
                Report(FindingCatalogue.BadIndent, tokens.Tokens[0].Span, "The indentation of this line matches no line above.",
                    "Indent it under the line that it lies on, or align it with its neighbours.");
            }

            var line = ParseLine(tokens);
            if (_next < _lines.Count && _lines[_next].Indent > tokens.Indent && !IsTooDeep(depth))
            {
                line = line with { Children = ParseBlock(_lines[_next].Indent, depth + 1) };
            }

            block.Add(line);
        }

        return block.ToImmutable();
    }

    private bool IsTooDeep(int depth)
    {
        if (depth < Limits.Depth)
        {
            return false;
        }

        if (!_depthReported)
        {
            _depthReported = true;
            Report(FindingCatalogue.TooDeep, _lines[_next].Tokens[0].Span, $"Lines lie on lines more than {Limits.Depth} deep here.",
                "Start again from a piece directly on a face.");
        }

        return true;
    }

    private LineSyntax ParseLine(LogicalLine tokens)
    {
        tokens = WithoutNeedlessColon(tokens);
        var cursor = new Cursor(_source, tokens, _findings, _units);
        var line = ReadHead(cursor, tokens);
        if (line is BadLine && cursor.Position == 0)
        {
            return line;
        }

        var missingCommas = ImmutableArray.CreateBuilder<int>();
        var clauses = ReadClauses(cursor, missingCommas, (line as PieceLine)?.Head);
        _bareUnits = _bareUnits.Union(cursor.BareUnits);
        return line with
        {
            Clauses = clauses,
            MissingCommas = missingCommas.ToImmutable(),
            NameTokens = [.. cursor.NameTokens],
            IsDamaged = cursor.EverFailed
        };
    }

    private LineSyntax ReadHead(Cursor cursor, LogicalLine tokens)
    {
        var first = cursor.Current;
        if (first.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Colon)
        {
            return ReadNamed(cursor, tokens);
        }

        if (first.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Word && cursor.Peek(2).Kind == TokenKind.Colon)
        {
            if (first.Is("role"))
            {
                return ReadRole(cursor, tokens);
            }

            if (Vocabulary.Stock.Contains(first.Text))
            {
                return ReadStock(cursor, tokens);
            }

            if (!Vocabulary.Kinds.Contains(first.Text) && !Vocabulary.Openers.Contains(first.Text) && _opening == "card"
                && IsPiece(cursor, 3)
                && !IsRole(cursor))
            {
                return ReportTwoWords(cursor, tokens, first, cursor.Next);
            }
        }

        if (IsStock(first))
        {
            return ReportMissingColon(cursor, tokens);
        }

        if (first.Kind == TokenKind.Number && first.Number is { IsWhole: true, Unit: null }
            && cursor.Next.Kind == TokenKind.Word
            && (Vocabulary.Kinds.Contains(cursor.Next.Text) || !Vocabulary.ClauseWords.Contains(cursor.Next.Text)))
        {
            return ReadPiece(cursor, tokens, null);
        }

        if (first.Kind != TokenKind.Word)
        {
            return Unknown(cursor, tokens);
        }

        var word = first.Text.ToLowerInvariant();
        if (Vocabulary.Faces.Contains(word))
        {
            return ReadFace(cursor, tokens);
        }

        return Vocabulary.Kinds.Contains(word) ? ReadPiece(cursor, tokens, null) : ReadOpener(cursor, tokens, word);
    }

    /// <summary>
    /// Whether a line means to declare a role: its first word is nearly that, and no kind of piece follows (<c>rloe sky: stripes</c>).
    /// </summary>
    private static bool IsRole(Cursor cursor) =>
        Text.Nearest.Find(cursor.Current.Text, ["role"]) is not null && !Vocabulary.Kinds.Contains(cursor.Peek(3).Text);

    private BadLine Unknown(Cursor cursor, LogicalLine tokens)
    {
        if (IsPaperBeforeKind(cursor))
        {
            return ReportPaperBeforeKind(cursor, tokens, null);
        }

        if (cursor.Current.Is("role"))
        {
            return ReportMissingColon(cursor, tokens);
        }

        (IReadOnlyCollection<string> words, var hint) = _opening switch
        {
            _ when tokens.Span == _lines[0].Span => ([.. Vocabulary.CardLines, "batch", "stash"],
                "Start with card \"Fair winds\", then base A2, fold left, of white, then faces such as front with their pieces "
                    + "indented below."),
            "batch" => (Vocabulary.BatchLines, "Start with make, cut, for, stash or another word of a batch."),
            "stash" => (Vocabulary.StashLines,
                "A line of a stash starts with paper, cardstock, offcut, gem, line, foam, tape, envelope, units or note."),
            _ => ((IReadOnlyCollection<string>)Vocabulary.CardLines, cursor.Current.Text.ToLowerInvariant() switch
            {
                "leave" => "Write leave out and a piece's name.",
                "add" => "Write add to and a piece's name, with the new pieces indented below.",
                _ => "Start with a kind of piece (panel, strip, star …), a face (front, inside …) or a name and a colon.",
            }),
        };
        // Before a size a kind of piece is meant rather than another word as near.
        var meant = (_opening == "card" && cursor.Next.Kind == TokenKind.Number
            ? cursor.Meant(FindingCatalogue.UnknownLine, cursor.Current, Vocabulary.Kinds) : null)
            ?? cursor.Meant(FindingCatalogue.UnknownLine, cursor.Current, words);
        cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, $"A line cannot start with {cursor.Here}.", meant is null
            ? hint : $"Did you mean {meant}?", meant);
        return new(tokens) { Meant = meant };
    }

    /// <summary>Whether a word is a thing in the stash, in a file that is one.</summary>
    private bool IsStock(Token word) => _opening == "stash" && word.Kind == TokenKind.Word && Vocabulary.Stock.Contains(word.Text);

    /// <summary>
    /// Tells that a line which declares a name has no colon after it: <c>paper gulls 12 x 12</c>, <c>paper blue gulls: 12 x 12</c>,
    /// <c>gem gold 3 mm: 20</c>.
    /// </summary>
    private BadLine ReportMissingColon(Cursor cursor, LogicalLine tokens)
    {
        var word = cursor.Take();
        var stock = word.Text.ToLowerInvariant();
        var example = word.Is("role") ? "role sky: gulls" : StockExamples.Of(stock);
        if (cursor.Current.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Word && cursor.Peek(2).Kind == TokenKind.Colon)
        {
            return ReportTwoWords(cursor, tokens, cursor.Current, cursor.Next);
        }

        if (cursor.Current.Kind == TokenKind.Word)
        {
            var name = cursor.Current;
            if (!word.Is("role") && tokens.Tokens.FirstOrDefault(t => t.Kind == TokenKind.Colon) is { } late)
            {
                var size = _source.Content[name.Span.End..late.Span.Start].Trim();
                var rest = _source.Content[late.Span.End..tokens.Span.End];
                var corrected = $"{name.Text}: {size}{(rest.Length == 0 || rest.TrimStart().StartsWith(',') ? "" : ",")}";
                cursor.Fail(FindingCatalogue.Expected, TextSpan.Cover(name.Span, late.Span),
                    $"The colon goes after the name {name.Text}, before the size.", $"Write {stock} {corrected}{rest}.", corrected);
                return new(tokens);
            }

            cursor.Fail(FindingCatalogue.Expected, name.Span, $"Expected a colon after the name {name.Text}.",
                $"Write {stock} {name.Text}: and what it is.", name.Text + ":");
        }
        else
        {
            cursor.Fail(FindingCatalogue.Expected, cursor.Current.Span, $"Expected a name and a colon, found {cursor.Here}.",
                $"Write {example}.");
        }

        return new(tokens);
    }

    private static BadLine ReportTwoWords(Cursor cursor, LogicalLine tokens, Token first, Token second)
    {
        var joined = $"{first.Text}-{second.Text}";
        cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(first.Span, second.Span), "A name is one word.",
            $"Join the words: {joined}.", joined);
        return new(tokens) { Name = new(joined, TextSpan.Cover(first.Span, second.Span)) };
    }

    /// <summary>
    /// Takes the colon away, and tells so, that people put after a face, a kind or another word that needs none: <c>front:</c>, <c>base:
    /// A2</c>. Before a kind of piece it makes the word a name.
    /// </summary>
    private LogicalLine WithoutNeedlessColon(LogicalLine line)
    {
        var first = line.Tokens[0];
        var at = line.Tokens.Count > 2 && line.Tokens[1].Kind != TokenKind.Colon
            && (first.Is("inside") ? line.Tokens[1].Is("left") || line.Tokens[1].Is("top") : first.Is("envelope")
            && line.Tokens[1].Is("back")) ? 2 : 1;
        if (first.Kind != TokenKind.Word || IsStock(first) || line.Tokens.Count <= at + 1 || line.Tokens[at].Kind != TokenKind.Colon
            || !(Vocabulary.Faces.Contains(first.Text) || Vocabulary.WithoutColon.Contains(first.Text)
            || (_opening == "card" && Vocabulary.Kinds.Contains(first.Text)))
            || IsPiece(new(_source, line, _findings, _units), at + 1))
        {
            return line;
        }

        var (colon, next) = (line.Tokens[at].Span, line.Tokens[at + 1]);
        var words = _source.Content[first.Span.Start..line.Tokens[at - 1].Span.End];
        Report(FindingCatalogue.LeftOver, colon, $"No colon goes after {words}.", $"Write {words} without it.", next.Kind == TokenKind.End
            || next.Span.Start > colon.End ? "" : " ");
        return line with { Tokens = [.. line.Tokens.Where((_, i) => i != at)] };
    }

    /// <summary>
    /// Whether a piece is described from a token on: a kind, also a misspelt one or one with a paper before it, a count with a word, or
    /// use.
    /// </summary>
    private static bool IsPiece(Cursor cursor, int at)
    {
        var token = cursor.Peek(at);
        var word = token.Kind == TokenKind.Number ? cursor.Peek(at + 1) : token;
        return word.Kind == TokenKind.Word
            && (word.Is("use") || Vocabulary.Kinds.Contains(word.Text) || Text.Nearest.Find(word.Text, Vocabulary.Kinds) is not null
                || (cursor.Peek(at + 1) is { Kind: TokenKind.Word } kind && Vocabulary.Kinds.Contains(kind.Text)));
    }

    private LineSyntax ReadNamed(Cursor cursor, LogicalLine tokens)
    {
        var name = cursor.Name("a name", "")!;
        cursor.Take();
        if (_opening == "stash")
        {
            // The colon stands after the thing in the stash instead of after its name.
            var example = !Vocabulary.Stock.Contains(name.Text) ? "paper gulls: and its size"
                : cursor.Current.Kind == TokenKind.Word && !IsSystem(cursor.Current) ? $"{name.Text} {cursor.Current.Text}: and its size"
                : StockExamples.Of(name.Text.ToLowerInvariant());
            cursor.Fail(FindingCatalogue.Misplaced, name.Span, "The colon of a stash line goes after the kind and the name.",
                $"Write {example}.");
            return new BadLine(tokens);
        }

        if (Vocabulary.NotNames.Contains(name.Text))
        {
            cursor.Report(FindingCatalogue.ReservedName, name.Span, $"'{name.Text}' is a word of the language and cannot be a name.",
                $"Call it {Proposal(name.Text)}:", Proposal(name.Text));
        }

        if (cursor.TakeWord("use"))
        {
            return ReadUse(cursor, tokens, name);
        }

        var kindAt = cursor.Current.Kind == TokenKind.Number ? cursor.Next : cursor.Current;
        if (kindAt.Kind == TokenKind.Word && (Vocabulary.Kinds.Contains(kindAt.Text) || cursor.Current.Kind == TokenKind.Word))
        {
            return ReadPiece(cursor, tokens, name);
        }

        cursor.Missing("the kind of piece", $"Write {name.Text}: and a kind, such as panel, strip or star.");
        return new BadLine(tokens) { Name = name };
    }

    private static string Proposal(string name) => name.ToLowerInvariant() switch
    {
        "back" => "backing",
        "front" => "cover",
        "left" or "right" or "top" or "bottom" => name + "piece",
        "text" or "word" => "words",
        _ => "my" + name,
    };

    /// <summary>A face of two words as a path has it: <c>inside left</c> is <c>inside-left</c>.</summary>
    private static PathSyntax WithFace(Cursor cursor, PathSyntax path)
    {
        if (path.Names is not [var first] || !(first.Text.ToLowerInvariant() switch
        {
            "inside" => cursor.Current.Is("left") || cursor.Current.Is("top"),
            "envelope" => cursor.Current.Is("back"),
            _ => false,
        }))
        {
            return path;
        }

        var second = cursor.Take();
        return new([new($"{first.Text}-{second.Text}", TextSpan.Cover(first.Span, second.Span))]);
    }

    private void Report(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null) =>
        _findings.Add(kind, new(_source, span), message, hint, replacement);
}
