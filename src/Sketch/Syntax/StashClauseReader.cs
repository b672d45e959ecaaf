using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Reads clauses of stash and batch files.</summary>
internal static class StashClauseReader
{
    public static SideClause? ReadSide(Cursor cursor, bool isBack)
    {
        QuotedSyntax? words = null;
        if (cursor.Current.Kind == TokenKind.Quoted)
        {
            var token = cursor.Take();
            words = new(token.Text, token.Span);
        }

        var colours = PaintReader.ReadPaints(cursor);
        Length? width = null;
        if (cursor.Current.Kind == TokenKind.Number)
        {
            if (cursor.Length("Write front \"scan.jpg\" 12 wide.") is not { } length
                || !ClauseReader.Word(cursor, "wide", "front \"scan.jpg\" 12 wide"))
            {
                return null;
            }

            width = length.Value;
        }

        return new(isBack, words, colours, width, default);
    }

    public static MadeByClause? ReadMadeBy(Cursor cursor)
    {
        const string hint = "Write made by \"Ann\" and \"Beth\".";
        if (!ClauseReader.Word(cursor, "by", "made by \"Ann\""))
        {
            return null;
        }

        var makers = ImmutableArray.CreateBuilder<QuotedSyntax>();
        do
        {
            if (cursor.Quoted(hint) is not { } maker)
            {
                return null;
            }

            makers.Add(maker);
        }
        while (cursor.TakeWord("and"));
        return new(makers.ToImmutable(), default);
    }

    public static WeightClause? ReadWeight(Cursor cursor)
    {
        const string hint = "Write weight 216 gsm, or weight 80 lb cover.";
        if (cursor.Current is not { Kind: TokenKind.Number, Number: { Unit: null, Numerator: > 0 } number })
        {
            cursor.Missing("a weight", hint);
            return null;
        }

        cursor.Take();
        var amount = (double)number.Numerator / number.Denominator;
        if (cursor.TakeWord("gsm"))
        {
            return new(amount, false, null, default);
        }

        if (!cursor.TakeWord("lb"))
        {
            cursor.MissingWord("gsm or lb", hint, "gsm", "lb");
            return null;
        }

        return new(amount, true, cursor.Current.Kind == TokenKind.Word ? cursor.Take().Text.ToLowerInvariant() : null, default);
    }

    public static PriceClause? ReadPrice(Cursor cursor)
    {
        if (cursor.Current is not { Kind: TokenKind.Number, Number: { IsFraction: false, Unit: null, Numerator: >= 0 } number })
        {
            cursor.Missing("a price", "Write price 0.99.");
            return null;
        }

        cursor.Take();
        return new((decimal)number.Numerator / number.Denominator, default);
    }

    public static Clause? ReadQuantity(Cursor cursor)
    {
        // Everyday word order: "1/4 from left", "1/8 border".
        var from = cursor.Next.Is("from") ? 2 : 1;
        var what = cursor.Peek(from);
        if (what.Kind == TokenKind.Word
            && (Vocabulary.Edges.Contains(what.Text) || (from == 1 && Vocabulary.BeforeLengths.Contains(what.Text))))
        {
            var corrected = $"{what.Text.ToLowerInvariant()} {cursor.Current.Text}";
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Current.Span, what.Span),
                $"A length goes after the word {what.Text.ToLowerInvariant()}.", $"Write {corrected}.", corrected);
            return null;
        }

        if (cursor.Current.Number is { IsWhole: true, Unit: null } && !cursor.Next.Is("long"))
        {
            // A stash may have none left of something; a star without points or a share of no cards is a mistake.
            var least = SizeReader.Singular(cursor.Next.Text) is "points" or "cards" or "makers" ? 1 : 0;
            if (cursor.Count("a count", "Write a count such as 3 sheets.", 1_000_000, least) is not { } count)
            {
                return null;
            }

            if (cursor.Current.Kind != TokenKind.Word)
            {
                return new QuantityClause(count.Value, null, default);
            }

            if (SizeReader.Singular(cursor.Current.Text) is { } noun)
            {
                var word = cursor.Take();
                if (cursor.Current.Is("of") && cursor.Next.Kind == TokenKind.Number && noun is "strips" or "rolls")
                {
                    var corrected = $"{word.Text.ToLowerInvariant()}, {cursor.Next.Text} long";
                    cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(word.Span, cursor.Next.Span),
                        "The length of strips and rolls is a clause of its own.", $"Write {count.Value} {corrected}.", corrected);
                    return null;
                }

                return new QuantityClause(count.Value, noun, default);
            }

            cursor.MissingWord("sheets, cards, makers, pieces, strips, rolls or points", "Write 3 sheets, or 60 pieces.", "sheets", "cards",
                "makers", "pieces", "strips", "rolls", "points");
            return null;
        }

        var written = cursor.Current.Text;
        if (SizeReader.Singular(cursor.Next.Text) is "rolls" or "strips" && cursor.Next.Kind == TokenKind.Word)
        {
            var corrected = $"1 {(cursor.Next.Text[0] is 'r' or 'R' ? "roll" : "strip")}, {written} long";
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Current.Span, cursor.Next.Span),
                "A number of rolls or strips comes before their length.", $"Write {corrected}.", corrected);
            return null;
        }

        return cursor.Length("Write 40 ft long.") is { } length && ClauseReader.Word(cursor, "long", $"{written} long")
            ? new LongClause(length.Value, default) : null;
    }
}
