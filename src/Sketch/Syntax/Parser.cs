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
    /// <summary>How deep lines may lie on lines. No card needs a tenth of it.</summary>
    public const int DepthLimit = 64;

    /// <summary>The largest file that is read, in characters.</summary>
    public const int SizeLimit = 10_000_000;

    /// <summary>The largest count of copies that a line may ask for.</summary>
    public const int CountLimit = 100_000;

    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private IReadOnlyList<LogicalLine> _lines = [];
    private int _next;
    private bool _depthReported;
    private Unit _units = Unit.Inch;
    private bool _lengthsRead;

    private Parser(SourceText source, FindingBag findings)
    {
        _source = source;
        _findings = findings;
    }

    /// <summary>Reads a text. Mistakes go to <paramref name="findings"/>; the outline holds what could be read.</summary>
    public static FileSyntax Parse(SourceText source, FindingBag findings)
    {
        if (source.Content.Length > SizeLimit)
        {
            findings.Add(FindingCatalogue.Unreadable, new(source, new(0, 0)), $"The file has more than {SizeLimit / 1_000_000} million characters.",
                "A card is some dozens of lines; is this the right file?");
            return new(source, [], []);
        }

        return new Parser(source, findings).ParseFile();
    }

    private FileSyntax ParseFile()
    {
        (_lines, var trailing) = Lexer.Read(_source, _findings);
        var lines = ImmutableArray.CreateBuilder<LineSyntax>();
        while (_next < _lines.Count)
        {
            lines.AddRange(ParseBlock(_lines[_next].Indent, 0));
        }

        return new(_source, lines.ToImmutable(), trailing);
    }

    private ImmutableArray<LineSyntax> ParseBlock(int indent, int depth)
    {
        var block = ImmutableArray.CreateBuilder<LineSyntax>();
        while (_next < _lines.Count && _lines[_next].Indent >= indent)
        {
            var tokens = _lines[_next++];
            if (tokens.Indent > indent && depth < DepthLimit)
            {
                Report(FindingCatalogue.BadIndent, tokens.Tokens[0].Span, "This line is indented like no line above it.",
                    "Put it under the line on which it lies, or in line with its neighbours.");
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
        if (depth < DepthLimit)
        {
            return false;
        }

        if (!_depthReported)
        {
            _depthReported = true;
            Report(FindingCatalogue.TooDeep, _lines[_next].Tokens[0].Span, $"Lines lie on lines more than {DepthLimit} deep here.",
                "Begin again from a piece that lies directly on a face.");
        }

        return true;
    }

    private LineSyntax ParseLine(LogicalLine tokens)
    {
        var cursor = new Cursor(_source, tokens, _findings, _units);
        var line = ReadHead(cursor, tokens);
        if (line is BadLine && cursor.Position == 0)
        {
            return line;
        }

        var missingCommas = ImmutableArray.CreateBuilder<int>();
        var clauses = ReadClauses(cursor, missingCommas, (line as PieceLine)?.Head);
        return line with { Clauses = clauses, MissingCommas = missingCommas.ToImmutable(), NameTokens = [.. cursor.NameTokens], IsDamaged = cursor.EverFailed };
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
        }

        if (first.Kind == TokenKind.Number && first.Number is { IsWhole: true, Unit: null }
            && cursor.Next.Kind == TokenKind.Word && (Vocabulary.Kinds.Contains(cursor.Next.Text) || !Vocabulary.ClauseWords.Contains(cursor.Next.Text)))
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

    private BadLine Unknown(Cursor cursor, LogicalLine tokens)
    {
        if (IsPaperBeforeKind(cursor))
        {
            return TellPaperBeforeKind(cursor, tokens, null);
        }

        // The first word of the file tells which lines belong in it.
        (IEnumerable<string> words, var hint) = _lines[0].Tokens[0].Text.ToLowerInvariant() switch
        {
            "batch" => (Vocabulary.BatchLines, "Begin with make, cut, for, stash or another word of a batch."),
            "stash" => (Vocabulary.StashLines, "Begin with paper, cardstock, offcut or another thing on a shelf."),
            _ => (Vocabulary.CardLines.Concat(tokens == _lines[0] ? ["batch", "stash"] : []), "Begin with a kind of piece (panel, strip, star …), a face (front, inside …) or a name and a colon."),
        };
        var near = cursor.Nearest(FindingCatalogue.UnknownLine, cursor.Current, words);
        cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, $"A line cannot begin with {cursor.Here}.", near is null ? hint : $"Did you mean {near}?", near);
        return new(tokens);
    }

    private LineSyntax ReadNamed(Cursor cursor, LogicalLine tokens)
    {
        var name = cursor.Name("a name", "")!;
        cursor.Take();
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
