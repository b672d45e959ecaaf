using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>
/// Reports places in everyday words with the clause to write: <c>at the bottom</c>, <c>in the top right corner</c>, <c>1/4 from the left
/// edge</c>.
/// </summary>
internal static class EverydayPlaces
{
    private static readonly string[] Prepositions = ["at", "in", "near", "against", "toward", "towards", "across", "along", "down"];

    private static readonly string[] Ways = ["down", "up", "in", "away", "over"];

    private static readonly string[] Articles = ["the", "a", "its", "very"];

    private static readonly string[] Middles = ["middle", "centre", "center", "centred", "centered"];

    private static readonly string[] Nouns = ["corner", "edge", "side", "end", "hand"];

    /// <summary>Whether a word may come before a place.</summary>
    public static bool IsPreposition(Token word) => Array.Exists(Prepositions, word.Is);

    /// <summary>Reports a place after its preposition, which has been taken.</summary>
    /// <returns>Whether there is one.</returns>
    public static bool Report(Cursor cursor) => Find(cursor, 0) is { } place && Report(cursor, place, cursor.Previous.Span, "");

    /// <summary>Reports a place before which the comma is missing as well.</summary>
    /// <returns>Whether there is one.</returns>
    public static bool ReportWithoutComma(Cursor cursor) =>
        IsPreposition(cursor.Current) && Find(cursor, 1) is { } place && Report(cursor, place, cursor.Current.Span, ", ");

    /// <summary>Whether a number here is the distance of a place: <c>1/4 from the top</c>, <c>1/4 down from the top</c>.</summary>
    public static bool IsDistanceFirst(Cursor cursor) => cursor.Current.Kind == TokenKind.Number
        && (cursor.Next.Is("from") || (Array.Exists(Ways, cursor.Next.Is) && cursor.Peek(2).Is("from")));

    /// <summary>Reports a distance that stands before its side: <c>1/4 from the left edge</c>.</summary>
    /// <returns>Whether there is one.</returns>
    public static bool ReportDistanceFirst(Cursor cursor)
    {
        var distance = cursor.Current.Span;
        return IsDistanceFirst(cursor) && Find(cursor, cursor.Next.Is("from") ? 2 : 3) is { IsMiddle: false } place
            && Report(cursor, place with { Distance = cursor.File.Source.Content[distance.Start..distance.End] }, distance, "");
    }

    private static bool Report(Cursor cursor, Place place, TextSpan start, string before)
    {
        var clause = place.Clause(cursor.File.Units);
        cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(start, place.Last),
            place.IsMiddle ? "Write the clause for the middle as one word."
            : place is { Vertical: not null, Horizontal: not null }
                ? "A corner is upper or lower, left or right, with a distance." : "A place is a side with its distance.",
            $"Write {clause}.", before + clause);
        return true;
    }

    /// <summary>The place that the words from a token on name; null where they name none.</summary>
    private static Place? Find(Cursor cursor, int at)
    {
        while (Array.Exists(Articles, cursor.Peek(at).Is))
        {
            at++;
        }

        var (first, place) = (at, new Place());
        for (var isPlace = true; isPlace; at += isPlace ? 1 : 0)
        {
            var word = cursor.Peek(at);
            (isPlace, place) = word.Text.ToLowerInvariant() switch
            {
                _ when word.Kind != TokenKind.Word => (false, place),
                "top" or "upper" => (true, place with { Vertical = Edge.Top }),
                "bottom" or "lower" => (true, place with { Vertical = Edge.Bottom }),
                "left" or "left-hand" => (true, place with { Horizontal = Edge.Left }),
                "right" or "right-hand" => (true, place with { Horizontal = Edge.Right }),
                _ => (Array.Exists(Middles, word.Is), place),
            };
        }

        if (at == first)
        {
            return null;
        }

        while (Array.Exists(Nouns, cursor.Peek(at).Is))
        {
            at++;
        }

        if (cursor.Peek(at).Is("of") && cursor.Peek(at + 1).Is("the") && cursor.Peek(at + 2).Kind == TokenKind.Word)
        {
            at += 3;
        }

        var number = cursor.Peek(at);
        return number.Kind == TokenKind.Number && !place.IsMiddle
            ? place with { Last = number.Span, Distance = cursor.File.Source.Content[number.Span.Start..number.Span.End] }
            : place with { Last = cursor.Peek(at - 1).Span };
    }

    /// <summary>A place in everyday words.</summary>
    /// <param name="Vertical">Top or bottom; null where neither is named.</param>
    /// <param name="Horizontal">Left or right; null where neither is named.</param>
    /// <param name="Distance">The distance as written; null where none is.</param>
    /// <param name="Last">The last of the words.</param>
    private sealed record Place(Edge? Vertical = null, Edge? Horizontal = null, string? Distance = null, TextSpan Last = default)
    {
        /// <summary>Whether only the middle is named; beside a side it says nothing more.</summary>
        public bool IsMiddle => Vertical is null && Horizontal is null;

        /// <summary>The clause to write; with a distance to begin with where none is given.</summary>
        public string Clause(Unit units)
        {
            var distance = Distance ?? units switch
            {
                Unit.Millimetre => "6",
                Unit.Centimetre => "0.6",
                _ => "1/4",
            };
            return (Vertical, Horizontal) switch
            {
                ({ } vertical, { } horizontal) => $"{(vertical == Edge.Top ? "upper" : "lower")} {horizontal.Name()} {distance}",
                _ => (Vertical ?? Horizontal) is { } edge ? $"{edge.Name()} {distance}" : "centre",
            };
        }
    }
}
