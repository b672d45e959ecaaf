using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads how words are lettered.</summary>
internal static class LetteringReader
{
    /// <summary>The flattest arc, in degrees.</summary>
    private const int LeastArc = 1;

    /// <summary>The widest spacing, in percent of the letter height.</summary>
    private const int MostSpacing = 500;

    private static readonly string[] Styles = ["bold", "italic"];

    /// <summary>Whether a word is a style of letters, which follows their kind.</summary>
    public static bool IsStyle(Token token) => Array.Exists(Styles, token.Is);

    /// <summary>How to write a kind or style of letters that a word names: <c>lettering script</c>; null where it names none.</summary>
    public static string? Meant(Token word)
    {
        if (word.Kind != TokenKind.Word)
        {
            return null;
        }

        return IsStyle(word) ? $"lettering plain {word.Text.ToLowerInvariant()}"
            : (LetteringKinds.Find(word.Text)?.Word ?? EverydayWords.Meant(word.Text, [.. LetteringKinds.All.Select(k => k.Word)])
                .FirstOrDefault()) is { } kind ? $"lettering {kind}" : null;
    }

    /// <summary>The font that a kind of lettering stands for, with its style: <c>script bold</c>; null with a finding otherwise.</summary>
    public static QuotedSyntax? ReadKind(Cursor cursor)
    {
        var first = cursor.Current;
        if (first.Kind == TokenKind.Quoted)
        {
            cursor.Fail(FindingCatalogue.Expected, TextSpan.Cover(cursor.Previous.Span, first.Span),
                "A font is named after the word font; lettering names a kind.", $"Write font \"{first.Text}\".", $"font \"{first.Text}\"");
            return null;
        }

        if (first.Kind != TokenKind.Word || LetteringKinds.Find(first.Text) is not { } kind)
        {
            cursor.MissingWord("a kind of lettering", IsStyle(first) ? $"Write lettering plain {first.Text.ToLowerInvariant()}."
                : $"Write one of {string.Join(", ", LetteringKinds.All.Select(k => k.Word))}, as in lettering script bold.",
                [.. LetteringKinds.All.Select(k => k.Word)]);
            return null;
        }

        var (name, span) = (kind.Family, cursor.Take().Span);
        while (IsStyle(cursor.Current))
        {
            var style = cursor.Take();
            (name, span) = ($"{name} {style.Text.ToLowerInvariant()}", TextSpan.Cover(span, style.Span));
        }

        return new(name, span);
    }

    /// <summary>Reads <c>arched 60</c>, <c>arched up 60</c> and <c>arched down 60</c>.</summary>
    public static ArchedClause? ReadArched(Cursor cursor)
    {
        const string hint = "Write arched 60, or arched down 60: the degrees of a circle that the words cover.";
        var sign = cursor.TakeWord("down") ? -1 : 1;
        if (sign == 1)
        {
            cursor.TakeWord("up");
        }

        if (Number(cursor, "the degrees of a circle", hint) is not { } number)
        {
            return null;
        }

        if (number.Value is < LeastArc or > LetteringStyle.FullCircle)
        {
            cursor.Fail(FindingCatalogue.BadNumber, number.Span, $"Words cannot cover {number.Value} degrees of a circle.",
                $"Write a number from {LeastArc} to {LetteringStyle.FullCircle}, as in arched 60.");
            return null;
        }

        ClauseReader.TakeDegrees(cursor);
        return new(sign * number.Value, default);
    }

    /// <summary>Reads <c>on circle 2</c>, after <c>on</c>.</summary>
    public static OnCircleClause? ReadOnCircle(Cursor cursor)
    {
        cursor.Take();
        return cursor.Length("Write on circle 2, the diameter on which the letters stand.") is { } diameter
            ? new(diameter.Value, default) : null;
    }

    /// <summary>Reads <c>spaced 20 percent</c>.</summary>
    public static SpacedClause? ReadSpaced(Cursor cursor)
    {
        const string hint = "Write spaced 20 percent for letters, a part of their height; copies take gap 1/8 or spread.";
        if (Number(cursor, "a part of the letter height", hint) is not { } number)
        {
            return null;
        }

        if (number.Value > MostSpacing)
        {
            cursor.Fail(FindingCatalogue.BadNumber, number.Span, $"Letters are spaced by at most {MostSpacing} percent of their height.",
                hint);
            return null;
        }

        if (!cursor.TakeWord("percent"))
        {
            cursor.MissingWord("the word percent", hint, "percent");
            return null;
        }

        return new(number.Value / 100, default);
    }

    /// <summary>Reads <c>ranged left</c> and <c>ranged right</c>.</summary>
    public static RangedClause? ReadRanged(Cursor cursor)
    {
        LineRange? range = cursor.TakeWord("left") ? LineRange.Left : cursor.TakeWord("right") ? LineRange.Right : null;
        if (range is null)
        {
            cursor.MissingWord("left or right", "Write ranged left, or ranged right; lines are centred without it.", "left", "right");
            return null;
        }

        return new(range.Value, default);
    }

    private static (double Value, TextSpan Span)? Number(Cursor cursor, string what, string hint)
    {
        if (cursor.Current is not { Kind: TokenKind.Number, Number: { Unit: null } number })
        {
            cursor.Missing(what, hint);
            return null;
        }

        return ((double)number.Numerator / number.Denominator, cursor.Take().Span);
    }
}
