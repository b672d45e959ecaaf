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
        var clauses = ReadClauses(cursor, missingCommas);
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

    private static BadLine Unknown(Cursor cursor, LogicalLine tokens)
    {
        var near = cursor.Nearest(FindingCatalogue.UnknownLine, cursor.Current, Vocabulary.Kinds.Concat(Vocabulary.Faces).Concat(Vocabulary.Openers));
        cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, $"A line cannot begin with {cursor.Here}.",
            near is null ? "Begin with a kind of piece (panel, strip, star …), a face (front, inside …) or a name and a colon." : $"Did you mean {near}?", near);
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

    private LineSyntax ReadOpener(Cursor cursor, LogicalLine tokens, string word)
    {
        switch (word)
        {
            case "card" or "batch" or "stash" or "like":
                cursor.Take();
                return cursor.Quoted($"Write {word} \"…\".") is { } title ? new TitleLine(tokens, word, title) : new BadLine(tokens);
            case "message" or "note" or "font" or "date":
                cursor.Take();
                return ReadWordsLine(cursor, tokens, word);
            case "units":
                cursor.Take();
                return ReadUnits(cursor, tokens);
            case "refit":
                cursor.Take();
                return ReadRefit(cursor, tokens);
            case "base":
                cursor.Take();
                return new BaseLine(tokens, ReadMeasure(cursor));
            case "part":
                cursor.Take();
                return ReadPart(cursor, tokens);
            case "use":
                cursor.Take();
                return ReadUse(cursor, tokens, null);
            case "item":
                cursor.Take();
                return ReadItem(cursor, tokens);
            case "change":
                cursor.Take();
                return ReadChange(cursor, tokens);
            case "leave" when cursor.Next.Is("out"):
                cursor.Take();
                cursor.Take();
                return cursor.Path("Write leave out and a piece's name.") is { } left ? new LeaveOutLine(tokens, left) : new BadLine(tokens);
            case "add" when cursor.Next.Is("to"):
                cursor.Take();
                cursor.Take();
                return cursor.Path("Write add to and a piece's name.") is { } to ? new AddToLine(tokens, WithFace(cursor, to)) : new BadLine(tokens);
            case "make" or "makers" or "spare" or "for" or "cut":
                cursor.Take();
                return ReadRun(cursor, tokens, word);
            default:
                return Unknown(cursor, tokens);
        }
    }

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

    private static LineSyntax ReadWordsLine(Cursor cursor, LogicalLine tokens, string word)
    {
        var words = ReadTexts(cursor);
        if (words.Length > 0)
        {
            return new WordsLine(tokens, word, words);
        }

        cursor.Missing("something in quotes", $"Write {word} \"…\".");
        return new BadLine(tokens);
    }

    private LineSyntax ReadUnits(Cursor cursor, LogicalLine tokens)
    {
        Unit? unit = cursor.Current.Is("mm") ? Unit.Millimetre : cursor.Current.Is("cm") ? Unit.Centimetre
            : cursor.Current.Is("in") ? Unit.Inch : null;
        if (unit is null)
        {
            cursor.Missing("a unit", "Write units in, units mm or units cm.");
            return new BadLine(tokens);
        }

        cursor.Take();
        if (_lengthsRead && unit != _units)
        {
            cursor.Report(FindingCatalogue.Misplaced, tokens.Span, "The units come after lengths that were already read without them.",
                "Put this line directly below the title.");
        }

        _units = unit.Value;
        return new UnitsLine(tokens, unit.Value);
    }

    private static LineSyntax ReadRefit(Cursor cursor, LogicalLine tokens)
    {
        RefitWhat? what = cursor.TakeWord("sizes") ? RefitWhat.Sizes : cursor.TakeWord("margins") ? RefitWhat.Margins
            : cursor.TakeWord("all") ? RefitWhat.All : null;
        if (what is not null)
        {
            return new RefitLine(tokens, what.Value);
        }

        cursor.Missing("what to refit", "Write refit sizes, refit margins or refit all.");
        return new BadLine(tokens);
    }

    private static LineSyntax ReadRole(Cursor cursor, LogicalLine tokens)
    {
        cursor.Take();
        var name = cursor.Name("the role's name", "Write role sky: gulls #9fc9e8.")!;
        cursor.Take();
        if (cursor.Current.Is("any") && cursor.Next.Is("offcut"))
        {
            cursor.Take();
            cursor.Take();
            return new RoleLine(tokens, name, null, [], true);
        }

        NameSyntax? paper = null;
        if (cursor.Current.Kind == TokenKind.Word)
        {
            paper = cursor.Name("a paper", "");
        }

        var colours = ReadPaints(cursor);
        if (paper is null && colours.Length == 0)
        {
            cursor.Missing("a paper or a colour", $"Write role {name.Text}: gulls, or role {name.Text}: #9fc9e8.");
            return new BadLine(tokens);
        }

        return new RoleLine(tokens, name, paper, colours, false);
    }

    private StockLine ReadStock(Cursor cursor, LogicalLine tokens)
    {
        var stock = cursor.Take().Text.ToLowerInvariant();
        var name = cursor.Name("a name", "")!;
        cursor.Take();
        return new StockLine(tokens, stock, name, cursor.AtEnd ? null : ReadMeasure(cursor));
    }

    private FaceLine ReadFace(Cursor cursor, LogicalLine tokens)
    {
        var face = cursor.Take().Text.ToLowerInvariant();
        if (face == "inside" && (cursor.Current.Is("left") || cursor.Current.Is("top")))
        {
            face = "inside-" + cursor.Take().Text.ToLowerInvariant();
        }
        else if (face == "envelope" && cursor.TakeWord("back"))
        {
            face = "envelope-back";
        }

        // A comma or a clause may follow at once; only an envelope has a measure of its own.
        var hasMeasure = cursor.Current.Kind == TokenKind.Number
            || (cursor.Current.Kind == TokenKind.Word && !Vocabulary.ClauseWords.Contains(cursor.Current.Text));
        return new FaceLine(tokens, face, hasMeasure ? ReadMeasure(cursor) : null);
    }

    private LineSyntax ReadPart(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write part lantern 1 x 2, with its pieces beneath.";
        var name = cursor.Name("the part's name", hint);
        var size = name is null ? null : ReadSize(cursor, hint);
        return name is not null && size is not null ? new PartLine(tokens, name, size) : new BadLine(tokens);
    }

    private static LineSyntax ReadUse(Cursor cursor, LogicalLine tokens, NameSyntax? name) =>
        cursor.Name("the part's name", "Write use and the name of a part.") is { } part ? new UseLine(tokens, name, part) : new BadLine(tokens);

    private LineSyntax ReadItem(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write item 3: of pearl.";
        var items = ImmutableArray.CreateBuilder<CountSyntax>();
        do
        {
            if (cursor.Count("the number of a copy", hint, CountLimit) is not { } item)
            {
                return new BadLine(tokens);
            }

            items.Add(item);
        }
        while (cursor.TakeWord("and"));

        if (!cursor.TakeKind(TokenKind.Colon))
        {
            cursor.Missing("a colon", hint);
            return new BadLine(tokens);
        }

        ReadSizeAndTexts(cursor, out var size, out var texts);
        return new ItemLine(tokens, items.ToImmutable(), size, texts);
    }

    private LineSyntax ReadChange(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write change sky: showing 1/4.";
        if (cursor.Path(hint) is not { } path)
        {
            return new BadLine(tokens);
        }

        if (!cursor.TakeKind(TokenKind.Colon))
        {
            cursor.Missing("a colon", hint);
            return new BadLine(tokens);
        }

        var kindAt = cursor.Current.Kind == TokenKind.Number ? cursor.Next : cursor.Current;
        if (kindAt.Kind == TokenKind.Word && Vocabulary.Kinds.Contains(kindAt.Text))
        {
            return ReadPieceHead(cursor) is { } head ? new ChangeLine(tokens, path, head, null, []) : new BadLine(tokens);
        }

        ReadSizeAndTexts(cursor, out var size, out var texts);
        return new ChangeLine(tokens, path, null, size, texts);
    }

    private LineSyntax ReadRun(Cursor cursor, LogicalLine tokens, string word)
    {
        var hint = word switch
        {
            "make" => "Write make 12 of \"fair-winds.card\".",
            "for" => "Write for \"Cliff ward\", 24 cards.",
            "cut" => "Write cut 12 of 4 x 5 1/4 from gulls.",
            _ => $"Write {word} 2.",
        };
        if (word == "for")
        {
            return cursor.Quoted(hint) is { } whom ? new ForLine(tokens, whom) : new BadLine(tokens);
        }

        if (cursor.Count("a count", hint, 1_000_000) is not { } count)
        {
            return new BadLine(tokens);
        }

        if (word is "makers" or "spare")
        {
            return new CountLine(tokens, word, count);
        }

        if (!cursor.TakeWord("of"))
        {
            cursor.Missing("the word of", hint);
            return new BadLine(tokens);
        }

        if (word == "make")
        {
            return cursor.Quoted(hint) is { } file ? new MakeLine(tokens, count, file) : new BadLine(tokens);
        }

        if (ReadSize(cursor, hint) is not { } size)
        {
            return new BadLine(tokens);
        }

        if (!cursor.TakeWord("from"))
        {
            cursor.Missing("the word from", hint);
            return new BadLine(tokens);
        }

        return cursor.Name("a paper's name", hint) is { } paper ? new CutLine(tokens, count, size, paper) : new BadLine(tokens);
    }

    private void Report(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null) =>
        _findings.Add(kind, new(_source, span), message, hint, replacement);
}
