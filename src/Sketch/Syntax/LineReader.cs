using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Papers;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads the heads of all lines but pieces: titles, faces, roles, parts, changes and the lines of batches and stashes.</summary>
internal static class LineReader
{
    /// <summary>A face of two words as written in a path: <c>inside left</c> is <c>inside-left</c>.</summary>
    private static PathSyntax WithFace(Cursor cursor, PathSyntax path)
    {
        if (path.Names is not [var first] || !(first.Text.ToLowerInvariant() switch
        {
            "inside" => cursor.Current.Is("left") || cursor.Current.Is("top"),
            "envelope" => cursor.Current.Is("back"),
            _ => false,
        }))
        {
            return path;
        }

        var second = cursor.Take();
        return new([new($"{first.Text}-{second.Text}", TextSpan.Cover(first.Span, second.Span))]);
    }

    public static LineSyntax ReadOpener(Cursor cursor, LogicalLine tokens, string word)
    {
        switch (word)
        {
            case "card" or "batch" or "stash" or "like":
                cursor.Take();
                if (cursor.Quoted($"Write {word} \"…\".") is not { } title)
                {
                    return new BadLine(tokens);
                }

                if (word == "card" && cursor.Current.Kind == TokenKind.Number)
                {
                    LineMistakes.ReportSizeOfCard(cursor);
                }

                return new TitleLine(tokens, word, title);
            case "message" or "note" or "date" or "rules" or "rule" or "names":
                cursor.Take();
                return ReadWordsLine(cursor, tokens, word);
            case "font":
                cursor.Take();
                return cursor.Quoted("Write font \"Lighthouse.ttf\".") is { } font ? new FontLine(tokens, font) : new BadLine(tokens);
            case "lettering":
                cursor.Take();
                cursor.File.Lettering = cursor.Current.Text.ToLowerInvariant();
                return LetteringReader.ReadKind(cursor) is { } lettering ? new FontLine(tokens, lettering) : new BadLine(tokens);
            case "units":
                cursor.Take();
                return ReadUnits(cursor, tokens);
            case "refit":
                cursor.Take();
                return ReadRefit(cursor, tokens);
            case "base":
                cursor.Take();
                return ReadBase(cursor, tokens);
            case "part":
                cursor.Take();
                return ReadPart(cursor, tokens);
            case "use":
                cursor.Take();
                return cursor.File.Opening == "batch" ? ReadUseOnHand(cursor, tokens) : ReadUse(cursor, tokens, null);
            case "item":
                cursor.Take();
                return ReadItem(cursor, tokens);
            case "change":
                cursor.Take();
                return ReadChange(cursor, tokens);
            case "leave" when cursor.Next.Is("out"):
                cursor.Take();
                cursor.Take();
                return cursor.Path("Write leave out and a piece's name.") is { } left
                    ? new LeaveOutLine(tokens, left) : new BadLine(tokens);
            case "add" when cursor.Next.Is("to"):
                cursor.Take();
                cursor.Take();
                return cursor.Path("Write add to and a piece's name.") is { } to
                    ? new AddToLine(tokens, WithFace(cursor, to)) : new BadLine(tokens);
            case "make" or "makers" or "spare" or "for" or "cut":
                cursor.Take();
                return ReadRun(cursor, tokens, word);
            default:
                return LineMistakes.Unknown(cursor, tokens);
        }
    }

    /// <summary>Reads a base; the word card may stand beside its size: <c>base card A2</c>, <c>base A2 card</c>.</summary>
    private static BaseLine ReadBase(Cursor cursor, LogicalLine tokens)
    {
        if (cursor.Next.Kind is TokenKind.Word or TokenKind.Number)
        {
            cursor.TakeWord("card");
        }

        var measure = SizeReader.ReadMeasure(cursor);
        if (measure is not null)
        {
            cursor.TakeWord("card");
        }

        return new(tokens, measure);
    }

    private static LineSyntax ReadWordsLine(Cursor cursor, LogicalLine tokens, string word)
    {
        var words = PieceReader.ReadTexts(cursor);
        if (words.Length > 0)
        {
            return new WordsLine(tokens, word, words);
        }

        cursor.MissingQuotes($"Write {word} \"…\".", word);
        return new BadLine(tokens);
    }

    private static LineSyntax ReadUnits(Cursor cursor, LogicalLine tokens)
    {
        Unit? unit = cursor.Current.Is("mm") ? Unit.Millimetre : cursor.Current.Is("cm") ? Unit.Centimetre
            : cursor.Current.Is("in") ? Unit.Inch : null;
        if (unit is null)
        {
            cursor.MissingWord("a unit", "Write units in, units mm or units cm.", "in", "mm", "cm");
            return new BadLine(tokens);
        }

        cursor.Take();
        if (cursor.File.LengthsRead && unit != cursor.File.Units)
        {
            cursor.Report(FindingCatalogue.Misplaced, tokens.Span, "The units line comes after lengths that have already been read.",
                "Put this line directly below the title.");
        }

        cursor.File.Units = unit.Value;
        return new UnitsLine(tokens, unit.Value);
    }

    private static LineSyntax ReadRefit(Cursor cursor, LogicalLine tokens)
    {
        RefitWhat? what = cursor.TakeWord("sizes") ? RefitWhat.Sizes : cursor.TakeWord("margins") ? RefitWhat.Margins
            : cursor.TakeWord("all") ? RefitWhat.All : null;
        if (what is not null)
        {
            return new RefitLine(tokens, what.Value);
        }

        cursor.MissingWord("what to refit", "Write refit sizes, refit margins or refit all.", "sizes", "margins", "all");
        return new BadLine(tokens);
    }

    public static LineSyntax ReadRole(Cursor cursor, LogicalLine tokens)
    {
        cursor.Take();
        var name = cursor.Name("the role's name", "Write role sky: gulls #9fc9e8.")!;
        cursor.Take();
        if (cursor.Current.Is("any") && cursor.Next.Is("offcut"))
        {
            cursor.Take();
            cursor.Take();
            return new RoleLine(tokens, name, null, [], true)
            {
                OffcutOf = cursor.TakeWord("of")
                    ? PaintReader.ReadName(cursor, "patterned, cardstock, a colour or a paper", "Write any offcut of patterned.") : null,
            };
        }

        NameSyntax? paper = null;
        if (cursor.Current.Kind == TokenKind.Word)
        {
            // After another first word, a colour is that of the paper: "sky blue" is a paper called sky, in blue.
            paper = ColourWords.IsTone(cursor.Current.Text) ? PaintReader.ReadName(cursor, "a paper", "") : cursor.Name("a paper", "");
        }

        var colours = PaintReader.ReadPaints(cursor);
        if (paper is null && colours.Length == 0)
        {
            cursor.Missing("a paper or a colour", $"Write role {name.Text}: gulls, or role {name.Text}: #9fc9e8.");
            return new BadLine(tokens);
        }

        return new RoleLine(tokens, name, paper, colours, false);
    }

    public static StockLine ReadStock(Cursor cursor, LogicalLine tokens)
    {
        var stock = cursor.Take().Text.ToLowerInvariant();
        var name = cursor.Name("a name", "")!;
        cursor.Take();
        return new StockLine(tokens, stock, name, cursor.AtEnd ? null : SizeReader.ReadMeasure(cursor));
    }

    public static FaceLine ReadFace(Cursor cursor, LogicalLine tokens)
    {
        var face = cursor.Take().Text.ToLowerInvariant();
        if (face == "inside" && (cursor.Current.Is("left") || cursor.Current.Is("top")))
        {
            face = "inside-" + cursor.Take().Text.ToLowerInvariant();
        }
        else if (face == "envelope" && cursor.TakeWord("back"))
        {
            face = "envelope-back";
        }

        // A comma or a clause may follow immediately; only an envelope has a measure of its own.
        var hasMeasure = cursor.Current.Kind == TokenKind.Number
            || (cursor.Current.Kind == TokenKind.Word && !Vocabulary.ClauseWords.Contains(cursor.Current.Text));
        return new FaceLine(tokens, face, hasMeasure ? SizeReader.ReadMeasure(cursor) : null);
    }

    private static LineSyntax ReadPart(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write part lantern 1 x 2, with its pieces indented below.";
        var name = cursor.Name("the part's name", hint);
        var size = name is null ? null : SizeReader.ReadSize(cursor, hint);
        return name is not null && size is not null ? new PartLine(tokens, name, size) : new BadLine(tokens);
    }

    public static LineSyntax ReadUse(Cursor cursor, LogicalLine tokens, NameSyntax? name) =>
        cursor.Name("the part's name", "Write use and the name of a part.") is { } part
            ? new UseLine(tokens, name, part) : new BadLine(tokens);

    private static LineSyntax ReadUseOnHand(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write use 4 of \"fair-winds.card\" on hand.";
        if (cursor.Count("a count", hint, 1_000_000) is not { } count)
        {
            return new BadLine(tokens);
        }

        if (!cursor.TakeWord("of"))
        {
            cursor.MissingWord("the word of", hint, "of");
            return new BadLine(tokens);
        }

        if (cursor.Quoted(hint) is not { } file)
        {
            return new BadLine(tokens);
        }

        if (cursor.TakeWord("on") && cursor.TakeWord("hand"))
        {
            return new UseOnHandLine(tokens, count, file);
        }

        cursor.MissingWord("the words on hand", hint, "on", "hand");
        return new BadLine(tokens);
    }

    private static LineSyntax ReadItem(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write item 3: of pearl.";
        var items = ImmutableArray.CreateBuilder<CountSyntax>();
        do
        {
            if (cursor.Copies("the number of a copy", hint) is not { } item)
            {
                return new BadLine(tokens);
            }

            items.Add(item);
        }
        while (cursor.TakeWord("and"));

        if (!cursor.TakeKind(TokenKind.Colon))
        {
            cursor.Missing("a colon", hint);
            return new BadLine(tokens);
        }

        PieceReader.ReadSizeAndTexts(cursor, out var size, out var texts);
        return new ItemLine(tokens, items.ToImmutable(), size, texts);
    }

    private static LineSyntax ReadChange(Cursor cursor, LogicalLine tokens)
    {
        const string hint = "Write change sky: showing 1/4.";
        if (cursor.Path(hint) is not { } path)
        {
            return new BadLine(tokens);
        }

        if (!cursor.TakeKind(TokenKind.Colon))
        {
            cursor.Missing("a colon", hint);
            return new BadLine(tokens);
        }

        var kindAt = cursor.Current.Kind == TokenKind.Number ? cursor.Next : cursor.Current;
        if (kindAt.Kind == TokenKind.Word && Vocabulary.Kinds.Contains(kindAt.Text))
        {
            return PieceReader.ReadPieceHead(cursor) is { } head ? new ChangeLine(tokens, path, head, null, []) : new BadLine(tokens);
        }

        PieceReader.ReadSizeAndTexts(cursor, out var size, out var texts);
        return new ChangeLine(tokens, path, null, size, texts);
    }

    private static LineSyntax ReadRun(Cursor cursor, LogicalLine tokens, string word)
    {
        var hint = word switch
        {
            "make" => "Write make 12 of \"fair-winds.card\".",
            "for" => "Write for \"Cliff ward\", 24 cards.",
            "cut" => "Write cut 12 of 4 x 5 1/4 from gulls.",
            _ => $"Write {word} 2.",
        };
        if (word == "for")
        {
            return cursor.Quoted(hint) is { } whom ? new ForLine(tokens, whom) : new BadLine(tokens);
        }

        if (word == "makers" && cursor.Current.Kind == TokenKind.Quoted)
        {
            return ReadWordsLine(cursor, tokens, word);
        }

        if (cursor.Count("a count", hint, 1_000_000) is not { } count)
        {
            return new BadLine(tokens);
        }

        if (word is "makers" or "spare")
        {
            return new CountLine(tokens, word, count);
        }

        if (word == "make" && cursor.Next.Is("of") && (cursor.Current.Is("card") || cursor.Current.Is("cards")))
        {
            cursor.Report(FindingCatalogue.LeftOver, cursor.Current.Span, "A make line always counts cards.",
                $"Remove '{cursor.Current.Text}'.", "");
            cursor.Take();
        }

        if (word == "make" && cursor.Current.Kind == TokenKind.Quoted)
        {
            cursor.Fail(FindingCatalogue.Expected, cursor.Current.Span, $"Expected the word of, found {cursor.Here}.",
                $"Write make {count.Value} of {cursor.Here}.", $"of {cursor.Here}");
            return new BadLine(tokens);
        }

        if (word == "make" && cursor.Current.Kind == TokenKind.Word && !cursor.Current.Is("of") && cursor.FileName(0) is { } bare)
        {
            var written = $"of \"{cursor.File.Source.Content[bare.Start..bare.End]}\"";
            cursor.File.Findings.Withdraw(FindingCatalogue.StrayCharacter, new(cursor.File.Source, bare));
            cursor.Fail(FindingCatalogue.Expected, bare, $"Expected the word of, found {cursor.Here}.",
                $"Write make {count.Value} {written}.", written);
            return new BadLine(tokens);
        }

        if (!cursor.TakeWord("of"))
        {
            cursor.MissingWord("the word of", hint, "of");
            return new BadLine(tokens);
        }

        if (word == "make")
        {
            return cursor.Quoted(hint) is { } file ? new MakeLine(tokens, count, file) : new BadLine(tokens);
        }

        if (SizeReader.ReadSize(cursor, hint) is not { } size)
        {
            return new BadLine(tokens);
        }

        if (!cursor.TakeWord("from"))
        {
            cursor.MissingWord("the word from", hint, "from");
            return new BadLine(tokens);
        }

        if (cursor.Current.Is("any") && cursor.Next.Is("offcut"))
        {
            cursor.Fail(FindingCatalogue.Misplaced, TextSpan.Cover(cursor.Current.Span, cursor.Next.Span),
                "Loose pieces are not cut from any offcut.", "Name their paper, as in from gulls; its offcuts are cut before a new sheet.");
            return new BadLine(tokens);
        }

        return cursor.Name("a paper's name", hint) is { } paper ? new CutLine(tokens, count, size, paper) : new BadLine(tokens);
    }
}
