using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads the heads of piece lines: count, kind, size and words.</summary>
internal static class PieceReader
{
    public static LineSyntax ReadPiece(Cursor cursor, LogicalLine tokens, NameSyntax? name)
    {
        LineMistakes.TakeArticles(cursor);
        return LineMistakes.IsPaperBeforeKind(cursor) ? LineMistakes.ReportPaperBeforeKind(cursor, tokens, name)
            : ReadPieceHead(cursor) is { } head ? new PieceLine(tokens, name, head) : new BadLine(tokens) { Name = name };
    }

    public static PieceHead? ReadPieceHead(Cursor cursor)
    {
        CountSyntax? count = null;
        if (cursor.Current.Kind == TokenKind.Number)
        {
            count = cursor.Copies("a count", "Write the count before the kind, as in 3 gem 1/8.");
            if (count is null)
            {
                return null;
            }
        }

        if (cursor.Current.Kind != TokenKind.Word || PieceKinds.Find(cursor.Current.Text) is not { } kind)
        {
            if (ReportPaperBeforePlural(cursor, count))
            {
                return null;
            }

            var plural = cursor.Current.Kind == TokenKind.Word && cursor.Current.Text.EndsWith('s')
                && Vocabulary.Kinds.Contains(cursor.Current.Text[..^1])
                ? cursor.Current.Text[..^1].ToLowerInvariant() : null;
            var near = plural is not null ? new([plural]) : cursor.Meant(FindingCatalogue.UnknownLine, cursor.Current, Vocabulary.Kinds);
            cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, $"{cursor.Here} is not a kind of piece.",
                near?.Hint ?? EverydayTurns.HintForLine(cursor.Current.Text)
                    ?? "Kinds are panel, strip, line, frame, star, heart, circle, tag, banner, text, gem and others.",
                near?.Text);
            return null;
        }

        var kindToken = cursor.Take();
        PieceKind? shape = null;
        if (kind.Traits.TakesShape && cursor.Current.Kind == TokenKind.Word
            && PieceKinds.Find(cursor.Current.Text) is { Traits.IsShape: true } found)
        {
            cursor.Take();
            shape = found;
        }
        else if (kind.Traits.IsShape && cursor.Current.Kind == TokenKind.Word
            && PieceKinds.Find(cursor.Current.Text) is { Traits.TakesShape: true } shaped && cursor.Next.Kind == TokenKind.Number)
        {
            // As people say it: heart sticker 1, star gem 1/4.
            var meant = $"{shaped.Name} {kind.Name}";
            cursor.Report(FindingCatalogue.UnknownLine, TextSpan.Cover(kindToken.Span, cursor.Take().Span),
                $"The shape of a {shaped.Name} goes after it.", $"Write {meant}.", meant);
            (kind, shape) = (shaped, kind);
        }

        ReadSizeAndTexts(cursor, out var size, out var texts);
        if (cursor.Failed || cursor.Current.Kind == TokenKind.Bad)
        {
            return null;
        }

        return new(count, kind, kindToken.Span, shape, size, texts);
    }

    /// <summary>Reports a paper that stands before the plural of a kind: <c>3 red gems</c>.</summary>
    private static bool ReportPaperBeforePlural(Cursor cursor, CountSyntax? count)
    {
        var (paper, kinds) = (cursor.Current, cursor.Next);
        if (count is null || paper.Kind != TokenKind.Word || kinds.Kind != TokenKind.Word || !kinds.Text.EndsWith('s')
            || !Vocabulary.Kinds.Contains(kinds.Text[..^1])
            || EverydayWords.Meant(paper.Text, Vocabulary.Kinds) is not [])
        {
            return false;
        }

        var kind = kinds.Text[..^1].ToLowerInvariant();
        cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(paper.Span, kinds.Span),
            $"'{paper.Text}' cannot come before {kind}.",
            $"Write {count.Value.Value} {kind}, with its size, and of {paper.Text} after a comma.",
            kind);
        return true;
    }

    public static void ReadSizeAndTexts(Cursor cursor, out SizeSyntax? size, out ImmutableArray<QuotedSyntax> texts)
    {
        size = null;
        var all = ImmutableArray.CreateBuilder<QuotedSyntax>();
        while (true)
        {
            if (cursor.Current.Kind == TokenKind.Quoted)
            {
                all.AddRange(ReadTexts(cursor));
            }
            else if (SizeReader.BeginsSize(cursor))
            {
                var second = size is not null;
                var span = cursor.Current.Span;
                var read = SizeReader.ReadSize(cursor, "Write width x height, such as 2 1/2 x 5/8.");
                if (second && !cursor.Failed)
                {
                    cursor.Fail(FindingCatalogue.GivenTwice, span, "A piece has one size.", "Write it as width x height.");
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

    public static ImmutableArray<QuotedSyntax> ReadTexts(Cursor cursor)
    {
        var texts = ImmutableArray.CreateBuilder<QuotedSyntax>();
        while (cursor.Current.Kind == TokenKind.Quoted)
        {
            var token = cursor.Take();
            texts.Add(new(token.Text, token.Span));
        }

        return texts.ToImmutable();
    }

    /// <summary>Whether there is a size where only a clause is allowed; a count before any other word is left to the clauses.</summary>
    public static bool IsLateSize(Cursor cursor) =>
        SizeReader.BeginsSize(cursor) && (cursor.Current.Kind != TokenKind.Number || cursor.Next.Kind != TokenKind.Word
            || cursor.Next.Is("wide")
            || cursor.Next.Is("high"));

    /// <summary>Reports a size where only a clause is allowed, and offers to move it to the end of the head.</summary>
    public static void ReadLateSize(Cursor cursor, PieceHead head, int endOfHead)
    {
        if (SizeReader.ReadSize(cursor, "Write width x height, such as 2 1/2 x 5/8.") is { } size && !cursor.Failed)
        {
            var content = cursor.File.Source.Content;
            var written = content[size.Span.Start..size.Span.End];
            if (head.Kind is PieceKind.Mat && size is SingleSize)
            {
                cursor.Fail(FindingCatalogue.LeftOver, size.Span, "A mat's size is what it adds, before the first comma.",
                    $"Write mat +{written} for both sides together, or mat, border {written} for each side.");
            }
            else
            {
                var clauses = content[endOfHead..size.Span.Start].Trim(' ', '\t', ',');
                cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(head.KindSpan, size.Span), "A size goes before the first comma.",
                    $"Write {head.Kind.Name}{(head.Shape is { } shape ? " " + shape.Name : "")} {written}, then the clauses.",
                    $"{content[head.KindSpan.Start..endOfHead]} {written}, {clauses}");
            }
        }

        cursor.SkipClause();
    }
}
