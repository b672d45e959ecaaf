using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reports lines that are not understood, with what was probably meant, so that one run reports every mistake.</summary>
internal static class LineMistakes
{
    public static BadLine Unknown(Cursor cursor, LogicalLine tokens)
    {
        if (IsPaperBeforeKind(cursor))
        {
            return ReportPaperBeforeKind(cursor, tokens, null);
        }

        if (cursor.Current.Is("role"))
        {
            return ReportMissingColon(cursor, tokens);
        }

        if (cursor.Current.Kind == TokenKind.Number && ReportSizeBeforeKind(cursor))
        {
            return new(tokens);
        }

        if (cursor.Current.Kind == TokenKind.Quoted && cursor.File.Opening == "card" && tokens.Span != cursor.File.FirstLine)
        {
            cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, "Words do not start a line.", $"Write text {cursor.Here}.",
                $"text {cursor.Here}");
            return new(tokens);
        }

        (IReadOnlyCollection<string> words, var hint) = cursor.File.Opening switch
        {
            // Before words in quotes stands the title, however close another word is.
            _ when tokens.Span == cursor.File.FirstLine => (cursor.Next.Kind == TokenKind.Quoted
                ? ["card", "batch", "stash"] : [.. Vocabulary.CardLines, "batch", "stash"],
                "Start with card \"Fair winds\", then base A2, fold left, of white, then faces such as front with their pieces "
                    + "indented below."),
            "batch" => (Vocabulary.BatchLines, "Start with make, cut, for, stash or another word of a batch."),
            "stash" => (Vocabulary.StashLines,
                "A line of a stash starts with paper, cardstock, offcut, gem, ribbon or another supply, envelope, units or note."),
            // A title stands only in the first line.
            _ => ([.. Vocabulary.CardLines.Where(w => w != "card")], cursor.Current.Text.ToLowerInvariant() switch
            {
                "row" or "column" or "grid" or "honeycomb" =>
                    "Write a count before the kind, and how the copies stand after its size: 5 pennant 1/2, in a row.",
                var word when Vocabulary.Counts.TryGetValue(word, out var digits) => $"Write a count in digits: {digits} gem 1/8.",
                "leave" => "Write leave out and a piece's name.",
                "add" => "Write add to and a piece's name, with the new pieces indented below.",
                var word when Vocabulary.ClauseWords.Contains(word) =>
                    $"Write {word} on the line of its piece, after a comma.",
                var word => EverydayTurns.HintForLine(word)
                    ?? "Start with a kind of piece (panel, strip, star …), a face (front, inside …) or a name and a colon.",
            }),
        };
        // Before a size, a kind of piece is likelier than another word that is as close.
        var meant = (cursor.File.Opening == "card" && cursor.Next.Kind == TokenKind.Number
            ? cursor.Meant(FindingCatalogue.UnknownLine, cursor.Current, Vocabulary.Kinds) : null)
            ?? (cursor.Current.Is("row") || Vocabulary.Counts.ContainsKey(cursor.Current.Text) ? null
                : cursor.Meant(FindingCatalogue.UnknownLine, cursor.Current, words));
        cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, $"A line cannot start with {cursor.Here}.", meant?.Hint ?? hint,
            meant?.Text);
        return new(tokens) { Meant = meant?.Text };
    }

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

    /// <summary>
    /// Reports that a line which declares a name has no colon after it: <c>paper gulls 12 x 12</c>, <c>paper blue gulls: 12 x 12</c>,
    /// <c>gem gold 3 mm: 20</c>.
    /// </summary>
    public static BadLine ReportMissingColon(Cursor cursor, LogicalLine tokens)
    {
        var word = cursor.Take();
        var stock = word.Text.ToLowerInvariant();
        var example = word.Is("role") ? "role sky: gulls" : StockExamples.Of(stock);
        if (cursor.Current.Kind == TokenKind.Word && cursor.Next.Kind == TokenKind.Word && cursor.Peek(2).Kind == TokenKind.Colon)
        {
            return ReportTwoWords(cursor, tokens, cursor.Current, cursor.Next);
        }

        if (cursor.Current.Kind == TokenKind.Word)
        {
            var name = cursor.Current;
            if (!word.Is("role") && tokens.Tokens.FirstOrDefault(t => t.Kind == TokenKind.Colon) is { } late)
            {
                var size = cursor.File.Source.Content[name.Span.End..late.Span.Start].Trim();
                var rest = cursor.File.Source.Content[late.Span.End..tokens.Span.End];
                var corrected = $"{name.Text}: {size}{(rest.Length == 0 || rest.TrimStart().StartsWith(',') ? "" : ",")}";
                cursor.Fail(FindingCatalogue.Expected, TextSpan.Cover(name.Span, late.Span),
                    $"The colon goes after the name {name.Text}, before the size.", $"Write {stock} {corrected}{rest}.", corrected);
                return new(tokens);
            }

            cursor.Fail(FindingCatalogue.Expected, name.Span, $"Expected a colon after the name {name.Text}.",
                $"Write {stock} {name.Text}: and what it is.", name.Text + ":");
        }
        else
        {
            cursor.Fail(FindingCatalogue.Expected, cursor.Current.Span, $"Expected a name and a colon, found {cursor.Here}.",
                $"Write {example}.");
        }

        return new(tokens);
    }

    /// <summary>Reports a size that stands before its kind: <c>2 mm twine</c>, <c>3 x 2 panel</c>.</summary>
    private static bool ReportSizeBeforeKind(Cursor cursor)
    {
        var at = 0;
        while (cursor.Peek(at).Kind is TokenKind.Number or TokenKind.Times)
        {
            at++;
        }

        var (size, kind) = (TextSpan.Cover(cursor.Current.Span, cursor.Peek(at - 1).Span), cursor.Peek(at));
        if (kind.Kind != TokenKind.Word || !Vocabulary.Kinds.Contains(kind.Text))
        {
            return false;
        }

        var written = $"{kind.Text.ToLowerInvariant()} {cursor.File.Source.Content[size.Start..size.End]}";
        cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(size, kind.Span), "A size goes after the kind of piece.",
            $"Write {written}.", written);
        return true;
    }

    public static BadLine ReportTwoWords(Cursor cursor, LogicalLine tokens, Token first, Token second)
    {
        var joined = $"{first.Text}-{second.Text}";
        cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(first.Span, second.Span), "A name is one word.",
            $"Join the words: {joined}.", joined);
        return new(tokens) { Name = new(joined, TextSpan.Cover(first.Span, second.Span)) };
    }

    /// <summary>
    /// Removes and reports a needless colon after a face, a kind or another word that takes none: <c>front:</c>, <c>base:
    /// A2</c>. Before a kind of piece, the colon makes the word a name.
    /// </summary>
    public static LogicalLine WithoutNeedlessColon(LogicalLine line, ParseState file)
    {
        var first = line.Tokens[0];
        var at = line.Tokens.Count > 2 && line.Tokens[1].Kind != TokenKind.Colon
            && (first.Is("inside") ? line.Tokens[1].Is("left") || line.Tokens[1].Is("top") : first.Is("envelope")
            && line.Tokens[1].Is("back")) ? 2 : 1;
        if (first.Kind != TokenKind.Word || LineHeads.IsStock(first, file) || line.Tokens.Count <= at + 1
            || line.Tokens[at].Kind != TokenKind.Colon
            || !(Vocabulary.Faces.Contains(first.Text) || Vocabulary.WithoutColon.Contains(first.Text)
            || (file.Opening == "card" && Vocabulary.Kinds.Contains(first.Text)))
            || IsPiece(new(file, line), at + 1))
        {
            return line;
        }

        var (colon, next) = (line.Tokens[at].Span, line.Tokens[at + 1]);
        var words = file.Source.Content[first.Span.Start..line.Tokens[at - 1].Span.End];
        file.Findings.Add(FindingCatalogue.LeftOver, new(file.Source, colon), $"No colon goes after {words}.",
            $"Write {words} without it.", next.Kind == TokenKind.End || next.Span.Start > colon.End ? "" : " ");
        return line with { Tokens = [.. line.Tokens.Where((_, i) => i != at)] };
    }

    /// <summary>
    /// Whether a piece is described from this token on: a kind, also misspelt or with a paper before it, a count with a word, or
    /// use.
    /// </summary>
    public static bool IsPiece(Cursor cursor, int at)
    {
        var token = cursor.Peek(at);
        var word = token.Kind == TokenKind.Number ? cursor.Peek(at + 1) : token;
        return word.Kind == TokenKind.Word
            && (word.Is("use") || Vocabulary.Kinds.Contains(word.Text) || Text.Nearest.Find(word.Text, Vocabulary.Kinds) is not null
                || (cursor.Peek(at + 1) is { Kind: TokenKind.Word } kind && Vocabulary.Kinds.Contains(kind.Text)));
    }

    public static string Proposal(string name) => name.ToLowerInvariant() switch
    {
        "back" => "backing",
        "front" => "cover",
        "left" or "right" or "top" or "bottom" => name + "piece",
        "text" or "word" => "words",
        _ => "my" + name,
    };

    /// <summary>Whether a word comes before a kind as a colour does in English: <c>blue panel</c>, <c>3 gold star</c>.</summary>
    public static bool IsPaperBeforeKind(Cursor cursor)
    {
        var (word, kind) = cursor.Current.Kind == TokenKind.Number ? (cursor.Next, cursor.Peek(2)) : (cursor.Current, cursor.Next);
        return word.Kind == TokenKind.Word && !Vocabulary.Kinds.Contains(word.Text) && !Vocabulary.Openers.Contains(word.Text)
            && kind.Kind == TokenKind.Word && Vocabulary.Kinds.Contains(kind.Text)
            // "windwo circle 2" is a window.
            && !(Vocabulary.Shapes.Contains(kind.Text) && Text.Nearest.Find(word.Text, Vocabulary.Kinds) == "window");
    }

    public static BadLine ReportPaperBeforeKind(Cursor cursor, LogicalLine tokens, NameSyntax? name)
    {
        if (cursor.Current.Kind == TokenKind.Number)
        {
            cursor.Take();
        }

        var (paper, kind) = (cursor.Take(), cursor.Current);
        if (Vocabulary.Counts.TryGetValue(paper.Text, out var digits))
        {
            cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"Write a count in digits, not as '{paper.Text}'.",
                $"Write {digits} {kind.Text.ToLowerInvariant()}.", digits);
            return new(tokens) { Name = name };
        }

        if (paper.Text.EndsWith('s') && PieceKinds.Find(paper.Text[..^1]) is { Traits: { TakesShape: true } shaped })
        {
            cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"'{paper.Text}' is not a kind of piece.",
                $"Write {shaped.Word} {kind.Text.ToLowerInvariant()}.", shaped.Word);
            return new(tokens) { Name = name };
        }

        if (paper.Is("foam") || paper.Is("puffy") || paper.Is("raised"))
        {
            cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, "Foam is a clause, written after the kind and size.",
                $"Write {kind.Text.ToLowerInvariant()} 1, on foam.");
            return new(tokens) { Name = name };
        }

        if (EverydayTurns.HintForLine(paper.Text) is { } turn && !paper.Is("glitter"))
        {
            cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"'{paper.Text}' cannot come before {kind.Text.ToLowerInvariant()}.",
                turn);
            return new(tokens) { Name = name };
        }

        if (EverydayWords.Meant(paper.Text, Vocabulary.Kinds).Contains(kind.Text, StringComparer.OrdinalIgnoreCase))
        {
            cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(paper.Span, kind.Span), "One word names a kind of piece.",
                $"Write {kind.Text.ToLowerInvariant()}.", kind.Text.ToLowerInvariant());
            return new(tokens) { Name = name };
        }

        cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"'{paper.Text}' cannot come before {kind.Text.ToLowerInvariant()}.",
            $"Write {kind.Text.ToLowerInvariant()}, of {paper.Text} if that is its "
                + $"paper{(name is null ? $", or {paper.Text}: {kind.Text.ToLowerInvariant()} if that is its name" : "")}.");
        return new(tokens) { Name = name };
    }
}
