using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads sizes, extents and measures.</summary>
internal static class SizeReader
{
    /// <summary>Whether a size begins here: a length that is not a count with a noun, or full, fit, share, or a plus.</summary>
    public static bool BeginsSize(Cursor cursor) => cursor.Current.Kind switch
    {
        TokenKind.Plus => true,
        TokenKind.Number => !(cursor.Next.Kind == TokenKind.Word && (cursor.Next.Is("long") || IsNoun(cursor.Next.Text))),
        TokenKind.Word => cursor.Current.Is("full") || cursor.Current.Is("fit") || cursor.Current.Is("share"),
        _ => false,
    };

    public static SizeSyntax? ReadSize(Cursor cursor, string hint)
    {
        cursor.File.LengthsRead = true;
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

        if (NamedSides(cursor, width) is { } named)
        {
            return named;
        }

        if (cursor.TakeTimes())
        {
            return ReadExtent(cursor, hint) is { } height ? new BoxSize(width, height, TextSpan.Cover(start, cursor.Previous.Span)) : null;
        }

        if (width is LengthExtent single)
        {
            if (LargerThan(cursor, start) is { } added)
            {
                return added with { Across = single.Value, Down = single.Value };
            }

            var measure = cursor.TakeWord("wide")
                ? SingleMeasure.Wide : cursor.TakeWord("high") ? SingleMeasure.High : SingleMeasure.Unspecified;
            return new SingleSize(single.Value, measure, TextSpan.Cover(start, cursor.Previous.Span));
        }

        cursor.Missing("x and the height", "Write width x height, such as full x 3/4.");
        return null;
    }

    /// <summary>Reads <c>3 wide x 2 high</c>, also with by, or with the sides the other way round.</summary>
    /// <returns>The size, reported as one to write without these words; null where they do not follow.</returns>
    private static BoxSize? NamedSides(Cursor cursor, ExtentSyntax first)
    {
        var highFirst = IsHigh(cursor.Current);
        if ((!highFirst && !IsWide(cursor.Current)) || !(cursor.Next.Kind == TokenKind.Times || cursor.Next.Is("by"))
            || cursor.Peek(2).Kind != TokenKind.Number || !(highFirst ? IsWide(cursor.Peek(3)) : IsHigh(cursor.Peek(3))))
        {
            return null;
        }

        cursor.Take();
        cursor.Take();
        if (ReadExtent(cursor, "") is not { } second)
        {
            return null;
        }

        var span = TextSpan.Cover(first.Span, cursor.Take().Span);
        var (width, height) = highFirst ? (second, first) : (first, second);
        var content = cursor.File.Source.Content;
        var written = $"{content[width.Span.Start..width.Span.End]} x {content[height.Span.Start..height.Span.End]}";
        cursor.Report(FindingCatalogue.LeftOver, span, "A size is width x height.", $"Write {written}.", written);
        return new(width, height, span);
    }

    private static bool IsWide(Token token) => token.Is("wide") || token.Is("width");

    private static bool IsHigh(Token token) => token.Is("high") || token.Is("tall") || token.Is("height");

    /// <summary>Reads <c>larger</c> after the number of a mat, which is written with a plus: <c>mat 1/8 larger</c>.</summary>
    /// <returns>What the mat adds, with its place; null where the word does not follow.</returns>
    private static AddedSize? LargerThan(Cursor cursor, TextSpan start)
    {
        if (!(cursor.Current.Is("larger") || cursor.Current.Is("bigger")) || !cursor.Peek(-2).Is("mat"))
        {
            return null;
        }

        var number = cursor.Previous.Text;
        cursor.Take();
        if (cursor.TakeWord("than"))
        {
            cursor.TakeWord("the");
            cursor.Take();
        }

        var span = TextSpan.Cover(start, cursor.Previous.Span);
        cursor.Report(FindingCatalogue.LeftOver, span, "What a mat adds in total is written with a plus.", $"Write +{number}.",
            $"+{number}");
        return new(default, default, span);
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
    public static MeasureSyntax? ReadMeasure(Cursor cursor)
    {
        const string hint = "Write a size such as A2 or 5 x 7.";
        cursor.File.LengthsRead = true;
        var start = cursor.Current.Span;
        if (cursor.Current.Kind == TokenKind.Number && cursor.Next.Kind == TokenKind.Word && IsNoun(cursor.Next.Text))
        {
            return null;
        }

        if (SquareMeasure(cursor) is { } square)
        {
            return square;
        }

        if (cursor.Current.Kind == TokenKind.Number || cursor.Current.Is("full"))
        {
            // In a stash a bare count may take the place of the size ("offcut gulls: 6 x 4, 2").
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

    /// <summary>Reads <c>square 5</c> and <c>5 square</c>, which are written as width x height.</summary>
    private static MeasureSyntax? SquareMeasure(Cursor cursor)
    {
        if (!((cursor.Current.Is("square") && cursor.Next.Kind == TokenKind.Number)
            || (cursor.Current.Kind == TokenKind.Number && cursor.Next.Is("square"))))
        {
            return null;
        }

        var start = cursor.Current.Span;
        cursor.TakeWord("square");
        var number = cursor.Current.Text;
        if (cursor.Length("Write a size such as 5 x 5.") is not { } side)
        {
            return null;
        }

        cursor.TakeWord("square");
        var span = TextSpan.Cover(start, cursor.Previous.Span);
        cursor.Report(FindingCatalogue.LeftOver, span, "A size is width x height.", $"Write {number} x {number}.", $"{number} x {number}");
        return new(null, null, new BoxSize(new LengthExtent(side.Value, side.Span), new LengthExtent(side.Value, side.Span), span), span);
    }

    public static bool IsSystem(Token token) => token.Is("US") || token.Is("ISO");

    private static bool IsNoun(string word) => Singular(word) is not null;

    /// <summary>The plural of a noun that may follow a count, or null.</summary>
    public static string? Singular(string word) => word.ToLowerInvariant() switch
    {
        "sheet" or "sheets" => "sheets",
        "card" or "cards" => "cards",
        "maker" or "makers" => "makers",
        "piece" or "pieces" => "pieces",
        "point" or "points" => "points",
        "strip" or "strips" => "strips",
        "roll" or "rolls" => "rolls",
        _ => null,
    };
}
