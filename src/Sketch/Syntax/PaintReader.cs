using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Papers;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads papers, colours and the clauses that name them.</summary>
internal static class PaintReader
{
    /// <summary>The most words of a colour name: <c>light golden rod yellow</c>.</summary>
    private const int MostWords = 4;

    /// <summary>Nouns that people add to a colour.</summary>
    public static readonly string[] Nouns = ["cardstock", "card", "paper", "foil"];

    /// <summary>One paper, where no other paper follows immediately.</summary>
    public static PaintSyntax? ReadPaint(Cursor cursor)
    {
        if (ReadFirstPaint(cursor) is not { } paint)
        {
            return null;
        }

        if (!paint.IsHex && cursor.File.Opening == "card" && PatternAndColour(paint.Text, cursor.Current.Text) is { } inRole)
        {
            var role = $"{paint.Text}-{cursor.Current.Text}".ToLowerInvariant();
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(paint.Span, cursor.Current.Span),
                "A pattern and its colours belong to a role.",
                $"Write of {role}, and declare it above the faces: role {role}: {inRole}.", role);
            return null;
        }

        if (!paint.IsHex && cursor.Current.Kind == TokenKind.Word && ColourInPlaceOf(paint.Text, cursor.Current.Text) is { } colour)
        {
            var span = TextSpan.Cover(paint.Span, cursor.Current.Span);
            cursor.Fail(FindingCatalogue.LeftOver, span, $"'{paint.Text} {cursor.Current.Text}' is not the name of a colour.",
                $"Write {colour}, or {(colour[0] == '#' ? "other " : "")}hex digits.", colour);
            return null;
        }

        TakeNoun(cursor, paint);
        if (!paint.IsHex && cursor.Current.Kind == TokenKind.Word && cursor.Next.Kind is TokenKind.Comma or TokenKind.End
            && !Vocabulary.ClauseWords.Contains(cursor.Current.Text) && cursor.File.Opening == "card"
            && cursor.Meant(FindingCatalogue.UnknownClause, cursor.Current, Vocabulary.ClauseWords) is null)
        {
            var joined = $"{paint.Text}-{cursor.Current.Text}".ToLowerInvariant();
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(paint.Span, cursor.Current.Span), "A paper is named by one word.",
                $"Write of {joined}, and declare it above the faces: role {joined}: {paint.Text}.", joined);
            return null;
        }

        return paint;
    }

    /// <summary>
    /// Takes the noun that people add to a paper and that changes nothing: <c>red cardstock</c>, <c>gulls paper</c>, and foil after a
    /// metal, which is foil anyway.
    /// </summary>
    private static void TakeNoun(Cursor cursor, PaintSyntax paint)
    {
        if (!paint.IsHex && cursor.Next.Kind is TokenKind.Comma or TokenKind.End)
        {
            var isFoil = ColourWords.TryGet(paint.Text, out var look) && look.Pattern == PaperPattern.Foil;
            _ = Array.Exists(Nouns, noun => (noun != "foil" || isFoil) && cursor.TakeWord(noun));
        }
    }

    /// <summary>The paint of a role from a pattern and a colour in either order; null for any other two words.</summary>
    private static string? PatternAndColour(string first, string second) => (IsPattern(first), IsPattern(second)) switch
    {
        (true, false) when ColourWords.TryGet(second, out _) => $"{first} {second}".ToLowerInvariant(),
        (false, true) when ColourWords.TryGet(first, out _) => $"{second} {first}".ToLowerInvariant(),
        _ => null,
    };

    private static bool IsPattern(string word) =>
        !Nouns.Contains(word, StringComparer.OrdinalIgnoreCase) && !ColourWords.TryGet(word, out _)
        && BuiltIn.PatternWords.Contains(word, StringComparer.OrdinalIgnoreCase);

    /// <summary>How to write a colour that two words describe: <c>pale teal</c>, <c>navy blue</c>; null where they describe none.</summary>
    private static string? ColourInPlaceOf(string first, string second) =>
        ColourWords.IsOneName([first, second]) ? (first + second).ToLowerInvariant()
        : ColourWords.Toned(first, second) is { } toned ? toned.Hex
        : !ColourWords.TryGet(second, out _) ? null
        : ColourWords.TryGet(first, out _) ? first : second;

    /// <summary>
    /// How many of the next words are one colour name, such as <c>light blue</c>; 1 where the first is a colour of its own, because a
    /// pattern of <c>orange red</c> has two colours.
    /// </summary>
    public static int WordsOfName(Cursor cursor)
    {
        if (cursor.Current.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Word && !ColourWords.TryGet(cursor.Current.Text, out _))
        {
            for (var count = MostWords; count > 1; count--)
            {
                var words = Enumerable.Range(0, count).Select(cursor.Peek).ToList();
                if (words.TrueForAll(w => w.Kind == TokenKind.Word) && ColourWords.IsOneName(words.Select(w => w.Text)))
                {
                    return count;
                }
            }
        }

        return 1;
    }

    /// <summary>Takes a paper's name: one word, or the words of one colour name, which are then joined.</summary>
    public static NameSyntax? ReadName(Cursor cursor, string what, string hint)
    {
        var more = WordsOfName(cursor) - 1;
        var name = cursor.Name(what, hint);
        for (; name is not null && more > 0; more--)
        {
            name = cursor.Name(what, hint) is { } next ? new(name.Text + next.Text, TextSpan.Cover(name.Span, next.Span)) : null;
        }

        return name;
    }

    private static PaintSyntax? ReadFirstPaint(Cursor cursor)
    {
        if (cursor.Current.Kind == TokenKind.Colour)
        {
            var token = cursor.Take();
            return new(token.Text, true, token.Span);
        }

        if (cursor.Current.Is("any") && cursor.Next.Is("offcut"))
        {
            return new("any offcut", false, TextSpan.Cover(cursor.Take().Span, cursor.Take().Span)) { IsAnyOffcut = true };
        }

        return ReadName(cursor, "a role or colour", "Write of navy, or of #16324f.") is { } name ? new(name.Text, false, name.Span) : null;
    }

    public static ImmutableArray<PaintSyntax> ReadPaints(Cursor cursor)
    {
        var paints = ImmutableArray.CreateBuilder<PaintSyntax>();
        while ((cursor.Current.Kind == TokenKind.Colour
            || (cursor.Current.Kind == TokenKind.Word && !Vocabulary.ClauseWords.Contains(cursor.Current.Text)))
            && ReadFirstPaint(cursor) is { } paint)
        {
            paints.Add(paint);
        }

        return paints.ToImmutable();
    }

    public static OfClause? ReadOf(Cursor cursor)
    {
        var paints = ImmutableArray.CreateBuilder<PaintSyntax>();
        do
        {
            if (ReadPaint(cursor) is not { } paint)
            {
                return null;
            }

            paints.Add(paint);
        }
        while (cursor.TakeWord("and"));

        return new(paints.ToImmutable(), default);
    }

    public static WithClause? ReadWith(Cursor cursor) =>
        cursor.Name("a role", "Write with deep as red.") is { } role && ClauseReader.Word(cursor, "as", "with deep as red")
            && ReadPaint(cursor) is { } paint
            ? new(role, paint, default) : null;
}
