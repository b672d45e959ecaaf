using System.Collections.Immutable;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads papers, colours and the clauses that name them.</summary>
internal static class PaintReader
{
    public static PaintSyntax? ReadPaint(Cursor cursor)
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

        return cursor.Name("a role or colour", "Write of navy, or of #16324f.") is { } name ? new(name.Text, false, name.Span) : null;
    }

    public static ImmutableArray<PaintSyntax> ReadPaints(Cursor cursor)
    {
        var paints = ImmutableArray.CreateBuilder<PaintSyntax>();
        while ((cursor.Current.Kind == TokenKind.Colour
            || (cursor.Current.Kind == TokenKind.Word && !Vocabulary.ClauseWords.Contains(cursor.Current.Text)))
            && ReadPaint(cursor) is { } paint)
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
