using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Papers;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reports lines that are not understood, with what was probably meant, so that one run reports every mistake.</summary>
internal static class LineMistakes
{
    public static LineSyntax Unknown(Cursor cursor, LogicalLine tokens)
    {
        if (TakeArticles(cursor))
        {
            return LineHeads.ReadHead(cursor, tokens);
        }

        if (cursor.File.Opening == "batch" && ReportFile(cursor) is { } meantByFile)
        {
            return new BadLine(tokens) { Meant = meantByFile };
        }

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
            return new BadLine(tokens);
        }

        if (cursor.Current.Kind == TokenKind.Quoted && cursor.File.Opening == "card" && tokens.Span != cursor.File.FirstLine)
        {
            cursor.Fail(FindingCatalogue.UnknownLine, cursor.Current.Span, "Words do not start a line.", $"Write text {cursor.Here}.",
                $"text {cursor.Here}");
            return new BadLine(tokens);
        }

        if (cursor.File.Opening == "card" && ReportRole(cursor))
        {
            return new BadLine(tokens);
        }

        (IReadOnlyCollection<string> words, var hint) = cursor.File.Opening switch
        {
            // Before words in quotes stands the title, however close another word is.
            _ when tokens.Span == cursor.File.FirstLine => (cursor.Next.Kind == TokenKind.Quoted
                ? ["card", "batch", "stash"] : [.. Vocabulary.CardLines, "batch", "stash"],
                "Start with card \"Fair winds\", then base A2, fold left, of white, then faces such as front with their pieces "
                    + "indented below."),
            "batch" => (Vocabulary.BatchLines, "Start with make, cut, for, stash or another word of a batch."),
            "stash" => (Vocabulary.StashLines, StockMistakes.BareName(cursor) is { } name
                ? $"Write paper {name}: 12 x 12, 3 sheets, with its own size and number."
                : "A line of a stash starts with paper, cardstock, offcut, gem, ribbon or another supply, envelope, units or note."),
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
        return new BadLine(tokens) { Meant = meant?.Text };
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

    /// <summary>Takes and reports articles before a kind of piece: <c>a panel 3 x 2</c>.</summary>
    /// <returns>Whether there are any.</returns>
    public static bool TakeArticles(Cursor cursor)
    {
        var first = cursor.Current;
        while (cursor.Next.Kind == TokenKind.Word
            && (cursor.Current.Is("a") || cursor.Current.Is("an") || cursor.Current.Is("the") || cursor.Current.Is("another")))
        {
            cursor.Take();
        }

        if (cursor.Current == first)
        {
            return false;
        }

        // Together with the blank after them, or the indentation would change.
        cursor.Report(FindingCatalogue.UnknownLine, new(first.Span.Start, cursor.Current.Span.Start),
            $"'{first.Text}' is not needed here.", "Remove it.", "");
        return true;
    }

    /// <summary>Reports a size after the title: <c>card "Lamp night" 5 x 7</c>.</summary>
    public static void ReportSizeOfCard(Cursor cursor)
    {
        var start = cursor.Current.Span;
        while (!cursor.AtEnd)
        {
            cursor.Take();
        }

        var size = TextSpan.Cover(start, cursor.Previous.Span);
        var written = $"base {cursor.File.Source.Content[size.Start..size.End]}";
        cursor.Fail(FindingCatalogue.Misplaced, size, "The size of a card goes on a line of its own.", $"Write {written} on the next line.",
            $"\n{written}");
    }

    /// <summary>Reports a role that is declared by another word: <c>paper sky: gulls</c>, <c>colour sky is blue</c>.</summary>
    public static bool ReportRole(Cursor cursor)
    {
        var (word, name) = (cursor.Current, cursor.Next);
        if (name.Kind != TokenKind.Word || !(word.Is("paper") || word.Is("cardstock") || word.Is("color") || word.Is("colour")))
        {
            return false;
        }

        var hasColon = cursor.Peek(2).Kind == TokenKind.Colon;
        var paint = cursor.Peek(3);
        if (hasColon && paint.Kind != TokenKind.Colour && !BuiltIn.PatternWords.Contains(paint.Text)
            && !ColourWords.TryGet(paint.Text, out _))
        {
            // Before a size it is a line of a stash whose first line cannot be read.
            return false;
        }

        cursor.Fail(FindingCatalogue.UnknownLine, word.Span, "A card names its papers by roles.",
            $"Write role {name.Text}: and its paper or colour.", hasColon ? "role" : null);
        return true;
    }

    /// <summary>Reports a line of a batch that names a file without its word: <c>12 of gull.card</c>, <c>uses shelf.stash</c>.</summary>
    /// <returns>The word that the line lacks; null where it names no file.</returns>
    private static string? ReportFile(Cursor cursor)
    {
        var at = cursor.Next.Is("of") || cursor.Next.Kind == TokenKind.Times ? 2 : 1;
        if (cursor.FileName(at) is not { } file)
        {
            return null;
        }

        var name = cursor.File.Source.Content[file.Start..file.End].Trim('"', '“', '”');
        var (word, written) = cursor.Current.Kind == TokenKind.Number && name.EndsWith(".card", StringComparison.OrdinalIgnoreCase)
            ? ("make", $"make {cursor.Current.Text} of \"{name}\"")
            : cursor.Current.Kind == TokenKind.Word && at == 1 && name.EndsWith(".stash", StringComparison.OrdinalIgnoreCase)
            ? ("stash", $"stash \"{name}\"") : (null, "");
        if (word is null)
        {
            return null;
        }

        cursor.File.Findings.Withdraw(FindingCatalogue.StrayCharacter, new(cursor.File.Source, file));
        cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(cursor.Current.Span, file), $"A line cannot start with {cursor.Here}.",
            $"Write {written}.", written);
        return word;
    }

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

        if (ColourWords.TryGet(paper.Text, out _) && cursor.LacksPaper)
        {
            var last = kind;
            for (var at = 1; cursor.Peek(at) is { Kind: not (TokenKind.Comma or TokenKind.End) } next; at++)
            {
                last = next;
            }

            var written = $"{cursor.File.Source.Content[kind.Span.Start..last.Span.End]}, of {paper.Text}";
            cursor.Fail(FindingCatalogue.UnknownLine, TextSpan.Cover(paper.Span, last.Span),
                $"'{paper.Text}' cannot come before {kind.Text.ToLowerInvariant()}.", $"Write {written}.", written);
            return new(tokens) { Name = name };
        }

        cursor.Fail(FindingCatalogue.UnknownLine, paper.Span, $"'{paper.Text}' cannot come before {kind.Text.ToLowerInvariant()}.",
            $"Write {kind.Text.ToLowerInvariant()}, of {paper.Text} if that is its "
                + $"paper{(name is null ? $", or {paper.Text}: {kind.Text.ToLowerInvariant()} if that is its name" : "")}.");
        return new(tokens) { Name = name };
    }
}
