using Sketch.Diagnostics;
using Sketch.Kinds;
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

    public static Clause? UnknownClause(Cursor cursor, Token token, PieceHead? head)
    {
        var (hint, replacement) = cursor.Meant(FindingCatalogue.UnknownClause, token, Vocabulary.ClauseWords) is { } meant
            ? ($"Did you mean {meant}?", meant)
            : token.Is("foam") || token.Is("popped") ? ("Write on foam.", "on foam")
            : head is not null && Vocabulary.Kinds.Contains(token.Text)
            ? ($"Put the {token.Text.ToLowerInvariant()} on its own line, indented under the piece it lies on.", (string?)null)
            // A single word is probably a colour.
            : cursor.File.Opening == "card" && cursor.Current.Kind is TokenKind.Comma or TokenKind.End && cursor.LacksPaper
            ? ($"Write of {token.Text} if that is its paper or colour.", $"of {token.Text}")
            : (ClauseHint(cursor, head), (string?)null);
        cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' does not start a clause.", hint, replacement);
        return null;
    }

    public static string ClauseHint(Cursor cursor, PieceHead? head) => head is not null
        ? "Clauses start with words such as of, left, top, raised, turn or in a row; printed words go in quotes."
        : cursor.File.Opening switch
        {
            "stash" => "A paper takes clauses such as 3 sheets, trim 1/4 bottom, upright, front dots navy, weight 216 gsm or price 0.99.",
            "batch" => "A batch takes clauses such as 24 cards, spare 1, back, upright or kerf 1/32.",
            _ => "Clauses start with words such as of, fold, landscape, left, top, raised, turn or in a row.",
        };
}
