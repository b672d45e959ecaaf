using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Lettering;
using Sketch.Papers;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reports clauses that are not understood, with what was probably meant.</summary>
internal static class ClauseMistakes
{
    public static void ReportUnquoted(Cursor cursor, PieceHead head, TextSpan bare)
    {
        var words = $"\"{cursor.File.Source.Content[bare.Start..bare.End]}\"";
        cursor.Fail(FindingCatalogue.UnknownClause, bare, $"{cursor.Here} does not start a clause.",
            $"Put printed words in quotes: {head.Kind.Name} {words}.", words);
    }

    /// <summary>
    /// Reports papers after a comma that belong to the clause before it: <c>of red, blue</c>. Any single word may be one, as a role has any
    /// name.
    /// </summary>
    /// <returns>Whether papers follow; they are then skipped.</returns>
    public static bool ReportPapers(Cursor cursor)
    {
        var (comma, papers) = (cursor.Previous, new List<Token>());
        for (var at = 0; IsPaper(cursor, at); at += 2)
        {
            papers.Add(cursor.Peek(at));
            if (cursor.Peek(at + 1).Kind == TokenKind.End)
            {
                break;
            }
        }

        if (papers.Count == 0)
        {
            return false;
        }

        var all = string.Concat(papers.Select(p => $" and {(p.Kind == TokenKind.Colour ? "#" : "")}{p.Text}"));
        cursor.Fail(FindingCatalogue.UnknownClause, TextSpan.Cover(comma.Span, papers[^1].Span), "Papers are joined by the word and.",
            $"Write{all} after the first.", all);
        while (papers.Count > 0 && cursor.Current.Span.Start <= papers[^1].Span.Start)
        {
            cursor.Take();
        }

        return true;
    }

    private static bool IsPaper(Cursor cursor, int at)
    {
        var (token, after) = (cursor.Peek(at), cursor.Peek(at + 1));
        return after.Kind is TokenKind.Comma or TokenKind.End
            && (token.Kind == TokenKind.Colour || (token.Kind == TokenKind.Word && !Vocabulary.ClauseWords.Contains(token.Text)
                && !Vocabulary.Kinds.Contains(token.Text) && !LetteringReader.IsStyle(token)
                && (ColourWords.TryGet(token.Text, out _)
                    || cursor.Meant(FindingCatalogue.UnknownClause, token, Vocabulary.ClauseWords) is null)));
    }

    /// <summary>
    /// Reports what a piece lies on where it is written as a clause: <c>on tag</c>, <c>on the tag</c>, <c>on top of tag</c>.
    /// </summary>
    public static bool ReportLyingOn(Cursor cursor)
    {
        var at = cursor.Current.Is("top") && cursor.Next.Is("of") ? 2 : 0;
        at += cursor.Peek(at).Is("the") || cursor.Peek(at).Is("a") || cursor.Peek(at).Is("an") ? 1 : 0;
        var under = cursor.Peek(at);
        if (under.Is("arc") || under.Is("arch") || under.Is("curve") || (at > 0 && under.Is("circle")))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, TextSpan.Cover(cursor.Previous.Span, under.Span), "Another clause bends words.",
                under.Is("circle") ? "Write on circle 2, its diameter." : "Write arched 60, the degrees of a circle that the words cover.");
            return true;
        }

        if (under.Is("pop") || under.Is("popped") || under.Is("dimensional"))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, TextSpan.Cover(cursor.Previous.Span, under.Span), "Foam lifts a piece.",
                "Write on foam, or on foam 3 mm.");
            return true;
        }

        if (under.Kind != TokenKind.Word || cursor.Current.Is("foam")
            || cursor.Meant(FindingCatalogue.Expected, under, ["foam"]) is not null)
        {
            return false;
        }

        cursor.Fail(FindingCatalogue.UnknownClause, TextSpan.Cover(cursor.Previous.Span, under.Span),
            "No clause says what a piece lies on; its indentation does.",
            $"Remove this clause, and indent the line under {under.Text}.");
        return true;
    }

    /// <summary>Reports the way of a turn in other words, after its number: <c>turn 10 clockwise</c>.</summary>
    public static bool ReportClockwise(Cursor cursor, TextSpan number)
    {
        var way = cursor.Current.Is("clockwise") ? "right"
            : cursor.Current.Is("counterclockwise") || cursor.Current.Is("anticlockwise") ? "left" : null;
        if (way is null)
        {
            return false;
        }

        var written = $"{way} {cursor.File.Source.Content[number.Start..number.End]}";
        cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(number, cursor.Current.Span), "A turn is to the left or to the right.",
            $"Write turn {written}.", written);
        return true;
    }

    /// <summary>Reports words that are bent round a circle in other words: <c>around circle 2</c>, <c>around a circle</c>.</summary>
    public static bool ReportAroundCircle(Cursor cursor)
    {
        var at = cursor.Current.Is("a") || cursor.Current.Is("the") ? 1 : 0;
        if (!cursor.Peek(at).Is("circle"))
        {
            return false;
        }

        cursor.Fail(FindingCatalogue.UnknownClause, TextSpan.Cover(cursor.Previous.Span, cursor.Peek(at).Span),
            "Another clause bends words.", "Write on circle 2, its diameter.",
            cursor.Peek(at + 1).Kind == TokenKind.Number ? "on circle" : null);
        return true;
    }

    /// <summary>Reports a style of letters that is a clause of its own: <c>bold</c>, or <c>lettering script, bold</c>.</summary>
    private static void ReportStyle(Cursor cursor, Token style)
    {
        var word = style.Text.ToLowerInvariant();
        // Between them are the comma and the style itself.
        if (cursor.Position >= 4 && LetteringKinds.Find(cursor.Peek(-3).Text) is { } kind && cursor.Peek(-4).Is("lettering"))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, TextSpan.Cover(cursor.Peek(-2).Span, style.Span),
                $"No comma goes before {word}.", $"Write lettering {kind.Word} {word}.", $" {word}");
            return;
        }

        var own = cursor.After("lettering")?.Text.ToLowerInvariant();
        var lettering = $"lettering {own ?? cursor.File.Lettering ?? LetteringKinds.All[0].Word} {word}";
        cursor.Fail(FindingCatalogue.UnknownClause, style.Span, $"'{style.Text}' goes after a kind of lettering.",
            own is null ? $"Write {lettering}." : $"Remove it here, and write {lettering}.", own is null ? lettering : null);
    }

    /// <summary>Reports a kind of lettering that is named as a font: <c>font script</c>.</summary>
    public static Clause? ReportKindOfLettering(Cursor cursor, Token font, LetteringKind kind)
    {
        cursor.Fail(FindingCatalogue.Expected, TextSpan.Cover(font.Span, cursor.Current.Span), $"'{kind.Word}' is a kind of lettering.",
            $"Write lettering {kind.Word}.", $"lettering {kind.Word}");
        return null;
    }

    public static Clause? UnknownClause(Cursor cursor, Token token, PieceHead? head)
    {
        if (LetteringReader.IsStyle(token))
        {
            ReportStyle(cursor, token);
            return null;
        }

        if (cursor.File.Opening == "card" && cursor.LacksPaper && ColourWords.IsOneName([token.Text, cursor.Current.Text]))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, "A paper or colour follows the word of.",
                $"Write of {token.Text} {cursor.Current.Text}.", $"of {token.Text}");
            return null;
        }

        if (cursor.File.Opening == "card" && EverydayPlaces.IsPreposition(token) && EverydayPlaces.Report(cursor))
        {
            return null;
        }

        if (head is { Kind: PieceKind.Circle } && (token.Is("radius") || token.Is("diameter")))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, "The size of a circle is its diameter.",
                token.Is("radius") ? "Write circle 2 where the radius is 1." : "Write circle 2.",
                token.Is("diameter") && head.Size is not null ? "" : null);
            return null;
        }

        if (EverydayTurns.HintFor(cursor.File.Opening ?? "card", token.Text, cursor.Current.Text) is { } turn)
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' does not start a clause.", turn);
            return null;
        }

        // A colour is likelier than a word that is spelled like one.
        if (cursor.File.Opening == "card" && head is not null && ColourWords.TryGet(token.Text, out _)
            && (cursor.Current.Kind is TokenKind.Comma or TokenKind.End || Array.Exists(PaintReader.Nouns, cursor.Current.Is)))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, "A paper or colour follows the word of.",
                cursor.After("of") is null ? $"Write of {token.Text}."
                    : $"One piece has one paper; only copies take turns, as in 3 star 1, of red and {token.Text}, in turn.",
                cursor.LacksPaper ? $"of {token.Text}" : null);
            return null;
        }

        if (cursor.File.Opening == "batch" && cursor.Current.Kind == TokenKind.Colon)
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' does not start a clause.",
                $"Write role {token.Text}: and its paper on a line of its own, indented below.");
            return null;
        }

        if (cursor.File.Opening == "stash" && (ColourWords.TryGet(token.Text, out _) || BuiltIn.PatternWords.Contains(token.Text)))
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, "The colours of a paper go after its side.",
                $"Write front {token.Text}.", $"front {token.Text}");
            return null;
        }

        if (head is not null && LetteringKinds.Find(token.Text) is { Word: not ("plain" or "rounded") } lettering)
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' is a kind of lettering.",
                $"Write lettering {lettering.Word}.", $"lettering {lettering.Word}");
            return null;
        }

        if (head is { Kind: PieceKind.Frame } && Vocabulary.Shapes.Contains(token.Text))
        {
            var shape = token.Text.ToLowerInvariant();
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' does not start a clause.",
                $"Name the {shape}, as in moon: {shape} 2, and frame it on the next line: frame 1/8, around moon.");
            return null;
        }

        var (hint, replacement) = cursor.Meant(FindingCatalogue.UnknownClause, token, Vocabulary.ClauseWords) is { } meant
            ? (meant.Hint, meant.Text)
            : head is not null && Vocabulary.Kinds.Contains(token.Text)
            ? ($"Put the {token.Text.ToLowerInvariant()} on its own line, indented under the piece it lies on.", (string?)null)
            // A single word is probably a colour.
            : cursor.File.Opening == "card" && cursor.Current.Kind is TokenKind.Comma or TokenKind.End && cursor.LacksPaper
            ? ($"Write of {token.Text} if that is its paper or colour.", $"of {token.Text}")
            : (ClauseHint(cursor, head), (string?)null);
        cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' does not start a clause.", hint, replacement);
        return null;
    }

    /// <summary>
    /// What to write in place of a token that is no word: a colour without <c>of</c>, or a slash before the side of a paper.
    /// </summary>
    public static (string Hint, string? Replacement) InPlaceOf(Cursor cursor, PieceHead? head)
    {
        var (token, next) = (cursor.Current, cursor.Next);
        if (token.Kind == TokenKind.Colour && cursor.File.Opening == "card" && cursor.LacksPaper)
        {
            return ($"Write of #{token.Text}.", $"of #{token.Text}");
        }

        return token.Kind == TokenKind.Slash && (next.Is("back") || next.Is("front")) && cursor.After("role") is not null
            ? ($"Write {cursor.Previous.Text}, {next.Text}.", ", ")
            : (ClauseHint(cursor, head), null);
    }

    public static string ClauseHint(Cursor cursor, PieceHead? head) => head is not null
        ? "Clauses start with words such as of, left, top, raised, turn or in a row; printed words go in quotes."
        : cursor.File.Opening switch
        {
            "stash" => "A paper takes clauses such as 3 sheets, trim 1/4 bottom, upright, front dots navy, weight 216 gsm or price 0.99.",
            "batch" => "A batch takes clauses such as 24 cards, spare 1, back, upright, kerf 1/32, blanks 1/8 or hollow.",
            _ => "Clauses start with words such as of, fold, landscape, left, top, raised, turn or in a row.",
        };
}
