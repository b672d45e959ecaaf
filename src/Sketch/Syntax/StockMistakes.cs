using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reports lines of a stash whose kind, name and colon are in another order or missing.</summary>
internal static class StockMistakes
{
    /// <summary>
    /// Reports a line of a stash with the colon after its first word: <c>paper: gulls 12 x 12</c>, <c>navy: cardstock 12 x 12</c>,
    /// <c>navy: 12 x 12</c>.
    /// </summary>
    /// <param name="cursor">After the colon.</param>
    /// <param name="first">The word before it.</param>
    public static void ReportColonOfStock(Cursor cursor, NameSyntax first)
    {
        const string Message = "The colon of a stash line goes after the kind and the name.";
        var next = cursor.Current;
        if (Vocabulary.Stock.Contains(first.Text))
        {
            var example = next.Kind == TokenKind.Word && !SizeReader.IsSystem(next)
                ? $"{first.Text} {next.Text}: and its size" : StockExamples.Of(first.Text.ToLowerInvariant());
            cursor.Fail(FindingCatalogue.Misplaced, first.Span, Message, $"Write {example}.");
        }
        else if (next.Kind == TokenKind.Word && Vocabulary.Stock.Contains(next.Text))
        {
            var start = $"{next.Text.ToLowerInvariant()} {first.Text}:";
            cursor.Fail(FindingCatalogue.Misplaced, TextSpan.Cover(first.Span, next.Span), Message, $"Write {start} and its size.", start);
        }
        else
        {
            cursor.Fail(FindingCatalogue.Misplaced, first.Span, Message, $"Write paper {first.Text}: and its size.", $"paper {first.Text}");
        }
    }

    /// <summary>
    /// Reports a line of a stash that does not begin with its kind: <c>navy cardstock: 12 x 12</c>, <c>blue waves: 12 x 12</c>.
    /// </summary>
    /// <returns>Whether it is one; a misspelt kind is not.</returns>
    public static bool ReportKindOfStock(Cursor cursor)
    {
        var (first, second) = (cursor.Current, cursor.Next);
        var isKindSecond = Vocabulary.Stock.Contains(second.Text);
        if (!isKindSecond && Nearest.Find(first.Text, Vocabulary.StashLines) is not null)
        {
            return false;
        }

        var start = isKindSecond ? $"{second.Text.ToLowerInvariant()} {first.Text}" : $"paper {first.Text}-{second.Text}";
        cursor.Fail(FindingCatalogue.Misplaced, TextSpan.Cover(first.Span, second.Span), "A line of a stash starts with its kind.",
            $"Write {start}: and its size.", start);
        return true;
    }

    /// <summary>The words of a stash line up to its first number, as one name; null where it does not begin with a few words.</summary>
    public static string? BareName(Cursor cursor)
    {
        var words = new List<string>();
        while (words.Count < 4 && cursor.Peek(words.Count).Kind == TokenKind.Word)
        {
            words.Add(cursor.Peek(words.Count).Text);
        }

        return words.Count is > 0 and < 4 && cursor.Peek(words.Count).Kind == TokenKind.Number ? string.Join('-', words) : null;
    }
}
