using Sketch.Diagnostics;

namespace Sketch.Syntax;

/// <summary>Recognizes a line by its first words.</summary>
internal static class LineHeads
{
    public static LineSyntax ReadHead(Cursor cursor, LogicalLine tokens)
    {
        var first = cursor.Current;
        if (first.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Colon)
        {
            return ReadNamed(cursor, tokens);
        }

        if (first.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Word && cursor.Peek(2).Kind == TokenKind.Colon)
        {
            if (first.Is("role"))
            {
                return LineReader.ReadRole(cursor, tokens);
            }

            if (cursor.File.Opening == "card" && LineMistakes.ReportRole(cursor))
            {
                return new BadLine(tokens);
            }

            if (Vocabulary.Stock.Contains(first.Text))
            {
                return LineReader.ReadStock(cursor, tokens);
            }

            if (cursor.File.Opening == "stash" && StockMistakes.ReportKindOfStock(cursor))
            {
                return new BadLine(tokens);
            }

            if (!Vocabulary.Kinds.Contains(first.Text) && !Vocabulary.Openers.Contains(first.Text) && cursor.File.Opening == "card"
                && LineMistakes.IsPiece(cursor, 3)
                && !IsRole(cursor))
            {
                return LineMistakes.ReportTwoWords(cursor, tokens, first, cursor.Next);
            }
        }

        if (IsStock(first, cursor.File))
        {
            return LineMistakes.ReportMissingColon(cursor, tokens);
        }

        if (first.Kind == TokenKind.Number && first.Number is { IsWhole: true, Unit: null }
            && cursor.Next.Kind == TokenKind.Word
            && (Vocabulary.Kinds.Contains(cursor.Next.Text) || !Vocabulary.ClauseWords.Contains(cursor.Next.Text)))
        {
            return PieceReader.ReadPiece(cursor, tokens, null);
        }

        if (first.Kind != TokenKind.Word)
        {
            return LineMistakes.Unknown(cursor, tokens);
        }

        var word = first.Text.ToLowerInvariant();
        if (Vocabulary.Faces.Contains(word))
        {
            return LineReader.ReadFace(cursor, tokens);
        }

        return Vocabulary.Kinds.Contains(word) ? PieceReader.ReadPiece(cursor, tokens, null) : LineReader.ReadOpener(cursor, tokens, word);
    }

    /// <summary>
    /// Whether a line probably declares a role: its first word is nearly <c>role</c>, and no kind follows (<c>rloe sky: stripes</c>).
    /// </summary>
    private static bool IsRole(Cursor cursor) =>
        Text.Nearest.Find(cursor.Current.Text, ["role"]) is not null && !Vocabulary.Kinds.Contains(cursor.Peek(3).Text);

    /// <summary>Whether a word is a kind of stock and the file is a stash.</summary>
    public static bool IsStock(Token word, ParseState file) =>
        file.Opening == "stash" && word.Kind == TokenKind.Word && Vocabulary.Stock.Contains(word.Text);

    private static LineSyntax ReadNamed(Cursor cursor, LogicalLine tokens)
    {
        var name = cursor.Name("a name", "")!;
        cursor.Take();
        if (cursor.File.Opening == "stash")
        {
            StockMistakes.ReportColonOfStock(cursor, name);
            return new BadLine(tokens);
        }

        if (Vocabulary.NotNames.Contains(name.Text))
        {
            cursor.Report(FindingCatalogue.ReservedName, name.Span, $"'{name.Text}' is a word of the language and cannot be a name.",
                $"Call it {LineMistakes.Proposal(name.Text)}:", LineMistakes.Proposal(name.Text));
        }

        if (cursor.TakeWord("use"))
        {
            return LineReader.ReadUse(cursor, tokens, name);
        }

        var kindAt = cursor.Current.Kind == TokenKind.Number ? cursor.Next : cursor.Current;
        if (kindAt.Kind == TokenKind.Word && (Vocabulary.Kinds.Contains(kindAt.Text) || cursor.Current.Kind == TokenKind.Word))
        {
            return PieceReader.ReadPiece(cursor, tokens, name);
        }

        cursor.Missing("the kind of piece", $"Write {name.Text}: and a kind, such as panel, strip or star.");
        return new BadLine(tokens) { Name = name };
    }
}
