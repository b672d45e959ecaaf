using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>The heads of piece lines: count, kind, size and words; and sizes.</summary>
public sealed partial class Parser
{
    private LineSyntax ReadPiece(Cursor cursor, LogicalLine tokens, NameSyntax? name) =>
        IsPaperBeforeKind(cursor) ? ReportPaperBeforeKind(cursor, tokens, name)
        : ReadPieceHead(cursor) is { } head ? new PieceLine(tokens, name, head) : new BadLine(tokens) { Name = name };

    /// <summary>Whether a word stands before a kind as a colour does in speech: <c>blue panel</c>, <c>3 gold star</c>.</summary>
    private static bool IsPaperBeforeKind(Cursor cursor)
    {
        var (word, kind) = cursor.Current.Kind == TokenKind.Number ? (cursor.Next, cursor.Peek(2)) : (cursor.Current, cursor.Next);
        return word.Kind == TokenKind.Word && !Vocabulary.Kinds.Contains(word.Text) && !Vocabulary.Openers.Contains(word.Text)
            && kind.Kind == TokenKind.Word && Vocabulary.Kinds.Contains(kind.Text)
            // "windwo circle 2" is a window.
            && !(Vocabulary.Shapes.Contains(kind.Text) && Text.Nearest.Find(word.Text, Vocabulary.Kinds) == "window");
    }

    private static BadLine ReportPaperBeforeKind(Cursor cursor, LogicalLine tokens, NameSyntax? name)
    {
        if (cursor.Current.Kind == TokenKind.Number)
        {
            cursor.Take();
        }

        var (paper, kind) = (cursor.Take(), cursor.Current);
        if (Vocabulary.Counts.TryGetValue(paper.Text, out var digits))
        {
            cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"Write a count in digits, not as '{paper.Text}'.",
                $"Write {digits} {kind.Text.ToLowerInvariant()}.", digits);
            return new(tokens) { Name = name };
        }

        cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"'{paper.Text}' cannot come before {kind.Text.ToLowerInvariant()}.",
            $"Write {kind.Text.ToLowerInvariant()}, of {paper.Text} if that is its "
                + $"paper{(name is null ? $", or {paper.Text}: {kind.Text.ToLowerInvariant()} if that is its name" : "")}.");
        return new(tokens) { Name = name };
    }

    private PieceHead? ReadPieceHead(Cursor cursor)
    {
        CountSyntax? count = null;
        if (cursor.Current.Kind == TokenKind.Number)
        {
            count = cursor.Count("a count", "Write the count before the kind, as in 3 gem 1/8.", Limits.Copies);
            if (count is null)
            {
                return null;
            }
        }

        if (cursor.Current.Kind != TokenKind.Word || PieceKinds.Find(cursor.Current.Text) is not { } kind)
        {
            var plural = cursor.Current.Kind == TokenKind.Word && cursor.Current.Text.EndsWith('s')
                && Vocabulary.Kinds.Contains(cursor.Current.Text[..^1])
                ? cursor.Current.Text[..^1].ToLowerInvariant() : null;
            var near = plural ?? cursor.Meant(FindingCatalogue.UnknownLine, cursor.Current, Vocabulary.Kinds);
            cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, $"{cursor.Here} is not a kind of piece.",
                near is null ? "Kinds are panel, strip, line, frame, star, heart, circle, tag, banner, text, gem and others."
                    : $"Did you mean {near}?", near);
            return null;
        }

        var kindToken = cursor.Take();
        PieceKind? shape = null;
        if (kind == PieceKind.Window && cursor.Current.Kind == TokenKind.Word
            && PieceKinds.Find(cursor.Current.Text) is { Traits.IsShape: true } found)
        {
            cursor.Take();
            shape = found;
        }

        ReadSizeAndTexts(cursor, out var size, out var texts);
        if (cursor.Failed || cursor.Current.Kind == TokenKind.Bad)
        {
            return null;
        }

        return new(count, kind, kindToken.Span, shape, size, texts);
    }

    private void ReadSizeAndTexts(Cursor cursor, out SizeSyntax? size, out ImmutableArray<QuotedSyntax> texts)
    {
        size = null;
        var all = ImmutableArray.CreateBuilder<QuotedSyntax>();
        while (true)
        {
            if (cursor.Current.Kind == TokenKind.Quoted)
            {
                all.AddRange(ReadTexts(cursor));
            }
            else if (BeginsSize(cursor))
            {
                var second = size is not null;
                var span = cursor.Current.Span;
                var read = ReadSize(cursor, "Write width x height, such as 2 1/2 x 5/8.");
                if (second && !cursor.Failed)
                {
                    cursor.Fail(FindingCatalogue.SaidTwice, span, "A piece has one size.", "Write it as width x height.");
                }

                size ??= read;
            }
            else
            {
                break;
            }
        }

        texts = all.ToImmutable();
    }

    private static ImmutableArray<QuotedSyntax> ReadTexts(Cursor cursor)
    {
        var texts = ImmutableArray.CreateBuilder<QuotedSyntax>();
        while (cursor.Current.Kind == TokenKind.Quoted)
        {
            var token = cursor.Take();
            texts.Add(new(token.Text, token.Span));
        }

        return texts.ToImmutable();
    }

    /// <summary>Whether a size begins here: a length that is not a count with a noun, or full, fit, share, or a plus.</summary>
    private static bool BeginsSize(Cursor cursor) => cursor.Current.Kind switch
    {
        TokenKind.Plus => true,
        TokenKind.Number => !(cursor.Next.Kind == TokenKind.Word && (cursor.Next.Is("long") || IsNoun(cursor.Next.Text))),
        TokenKind.Word => cursor.Current.Is("full") || cursor.Current.Is("fit") || cursor.Current.Is("share"),
        _ => false,
    };

    /// <summary>Whether a size stands where only a clause may; a count before any other word is left to the clauses.</summary>
    private static bool IsLateSize(Cursor cursor) =>
        BeginsSize(cursor) && (cursor.Current.Kind != TokenKind.Number || cursor.Next.Kind != TokenKind.Word || cursor.Next.Is("wide")
            || cursor.Next.Is("high"));

    private void ReadLateSize(Cursor cursor, PieceHead head)
    {
        if (ReadSize(cursor, "Write width x height, such as 2 1/2 x 5/8.") is { } size && !cursor.Failed)
        {
            cursor.Fail(FindingCatalogue.LeftOver, size.Span, "A size goes before the first comma.",
                $"Write {head.Kind.Name}{(head.Shape is { } shape ? " " + shape.Name : "")} {_source.Content[size.Span.Start..size.Span.End]}, "
                    + "then the clauses.");
        }

        cursor.SkipClause();
    }

    private SizeSyntax? ReadSize(Cursor cursor, string hint)
    {
        _lengthsRead = true;
        var start = cursor.Current.Span;
        if (cursor.TakeKind(TokenKind.Plus))
        {
            if (cursor.Length("Write what the mat adds in total, as in +1/8.") is not { } across)
            {
                return null;
            }

            var down = cursor.TakeTimes() ? cursor.Length("Write +1/8 x 1/4: across and down.") : across;
            return down is { } d ? new AddedSize(across.Value, d.Value, TextSpan.Cover(start, cursor.Previous.Span)) : null;
        }

        if (ReadExtent(cursor, hint) is not { } width)
        {
            return null;
        }

        if (cursor.TakeTimes())
        {
            return ReadExtent(cursor, hint) is { } height ? new BoxSize(width, height, TextSpan.Cover(start, cursor.Previous.Span)) : null;
        }

        if (width is LengthExtent single)
        {
            var measure = cursor.TakeWord("wide")
                ? SingleMeasure.Wide : cursor.TakeWord("high") ? SingleMeasure.High : SingleMeasure.Unsaid;
            return new SingleSize(single.Value, measure, TextSpan.Cover(start, cursor.Previous.Span));
        }

        cursor.Missing("x and the height", "Write width x height, such as full x 3/4.");
        return null;
    }

    private static ExtentSyntax? ReadExtent(Cursor cursor, string hint)
    {
        var token = cursor.Current;
        if (cursor.TakeWord("full"))
        {
            return new FullExtent(token.Span);
        }

        if (cursor.TakeWord("fit"))
        {
            return new FitExtent(token.Span);
        }

        if (cursor.TakeWord("share"))
        {
            if (cursor.Current is { Kind: TokenKind.Number, Number: { IsFraction: true, Unit: null } share } number
                && share.Numerator > 0 && share.Numerator <= share.Denominator && share.Denominator <= 10_000)
            {
                cursor.Take();
                return new ShareExtent((int)share.Numerator, (int)share.Denominator, TextSpan.Cover(token.Span, number.Span));
            }

            cursor.Missing("a fraction up to 1/1", "Write share 2/3.");
            return null;
        }

        if (cursor.Current.Kind == TokenKind.Number)
        {
            return cursor.Length(hint) is { } length ? new LengthExtent(length.Value, length.Span) : null;
        }

        cursor.Missing("a size", hint);
        return null;
    }

    /// <summary>A named size, or a written one.</summary>
    private MeasureSyntax? ReadMeasure(Cursor cursor)
    {
        const string hint = "Write a size such as A2 or 5 x 7.";
        _lengthsRead = true;
        var start = cursor.Current.Span;
        if (cursor.Current.Kind == TokenKind.Number && cursor.Next.Kind == TokenKind.Word && IsNoun(cursor.Next.Text))
        {
            return null;
        }

        if (cursor.Current.Kind == TokenKind.Number || cursor.Current.Is("full"))
        {
            // In a stash a bare count may stand where the size would ("offcut gulls: 6 x 4, 2").
            return ReadSize(cursor, hint) is { } size ? new(null, null, size, TextSpan.Cover(start, cursor.Previous.Span)) : null;
        }

        if (cursor.Current.Kind != TokenKind.Word
            || (cursor.Next.Kind != TokenKind.Word && Vocabulary.ClauseWords.Contains(cursor.Current.Text)))
        {
            if (!cursor.AtEnd && cursor.Current.Kind != TokenKind.Comma && cursor.Current.Kind != TokenKind.Word)
            {
                cursor.Missing("a size", hint);
            }

            return null;
        }

        if (Vocabulary.ClauseWords.Contains(cursor.Current.Text) && !IsSystem(cursor.Current))
        {
            return null;
        }

        string? system = null;
        if (IsSystem(cursor.Current))
        {
            system = cursor.Take().Text.ToUpperInvariant();
        }

        if (cursor.Current.Kind == TokenKind.Quoted)
        {
            var quoted = cursor.Take();
            return new(system, quoted.Text, null, TextSpan.Cover(start, quoted.Span));
        }

        var name = cursor.Name("the name of a size", hint);
        return name is null ? null : new(system, name.Text, null, TextSpan.Cover(start, name.Span));
    }

    private static bool IsSystem(Token token) => token.Is("US") || token.Is("ISO");

    private static bool IsNoun(string word) => Singular(word) is not null;

    /// <summary>The nouns that follow a count, in their plural.</summary>
    private static string? Singular(string word) => word.ToLowerInvariant() switch
    {
        "sheet" or "sheets" => "sheets",
        "card" or "cards" => "cards",
        "maker" or "makers" => "makers",
        "piece" or "pieces" => "pieces",
        "point" or "points" => "points",
        _ => null,
    };
}
