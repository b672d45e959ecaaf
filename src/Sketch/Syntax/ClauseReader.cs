using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Lettering;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Reads clauses: the first word decides which clause it is.</summary>
internal static class ClauseReader
{
    public static ImmutableArray<Clause> ReadClauses(Cursor cursor, ImmutableArray<int>.Builder missingCommas, PieceHead? head)
    {
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        var endOfHead = cursor.Previous.Span.End;
        if (cursor.Failed)
        {
            cursor.SkipClause();
        }
        else if (!cursor.AtEnd && cursor.Current.Kind != TokenKind.Comma)
        {
            // The comma before the first clause is optional; after a colon there is none.
            if (cursor.Position > 0 && cursor.Previous.Kind != TokenKind.Colon)
            {
                missingCommas.Add(cursor.Position);
            }

            if (head is { Texts.IsEmpty: true } && (head.Kind.Traits.IsWords || head.Kind is PieceKind.Banner or PieceKind.Tag)
                && cursor.Current.Kind == TokenKind.Word
                && !Vocabulary.ClauseWords.Contains(cursor.Current.Text)
                && (head.Kind.Traits.IsWords || cursor.Next.Kind == TokenKind.Word) && cursor.BareWords() is { } bare
                && (char.IsUpper(cursor.Current.Text[0])
                || cursor.Meant(FindingCatalogue.UnknownClause, cursor.Current, Vocabulary.ClauseWords) is null))
            {
                // A capital begins a sentence rather than a clause, however close its word is to a clause word.
                ClauseMistakes.ReportUnquoted(cursor, head, bare);
            }

            ReadClauseInto(cursor, clauses, head);
        }

        while (!cursor.AtEnd)
        {
            if (!cursor.TakeKind(TokenKind.Comma))
            {
                cursor.Begin();
                if (head is { Size: null } && SizeReader.BeginsSize(cursor) && !EverydayPlaces.IsDistanceFirst(cursor))
                {
                    PieceReader.ReadLateSize(cursor, head, endOfHead);
                    continue;
                }

                if (cursor.File.Opening == "card" && EverydayPlaces.ReportWithoutComma(cursor))
                {
                    cursor.SkipClause();
                    continue;
                }

                cursor.Fail(FindingCatalogue.LeftOver, cursor.Current.Span,
                    $"Expected a comma before {cursor.Here}, or it does not belong here.",
                    $"Put a comma before {cursor.Here} if it starts a new clause.",
                    cursor.Current.Kind == TokenKind.Word && Vocabulary.ClauseWords.Contains(cursor.Current.Text)
                        ? $", {cursor.Current.Text}" : null);
                cursor.SkipClause();
                continue;
            }

            cursor.Begin();
            if (head is { Size: null } && PieceReader.IsLateSize(cursor))
            {
                PieceReader.ReadLateSize(cursor, head, endOfHead);
            }
            else if (!cursor.AtEnd && !(clauses is [.., OfClause] && head is { Count: not null } && ClauseMistakes.ReportPapers(cursor)))
            {
                ReadClauseInto(cursor, clauses, head);
            }
        }

        return clauses.ToImmutable();
    }

    private static void ReadClauseInto(Cursor cursor, ImmutableArray<Clause>.Builder clauses, PieceHead? head)
    {
        cursor.File.LengthsRead = true;
        var start = cursor.Position;
        if (ReadClause(cursor, head) is { } clause && !cursor.Failed)
        {
            clauses.Add(clause with { Span = TextSpan.Cover(cursor.Peek(start - cursor.Position).Span, cursor.Previous.Span) });
        }
        else
        {
            cursor.SkipClause();
        }
    }

    private static Clause? ReadClause(Cursor cursor, PieceHead? head)
    {
        var token = cursor.Current;
        if (token.Kind == TokenKind.Number)
        {
            return cursor.File.Opening == "card" && EverydayPlaces.ReportDistanceFirst(cursor)
                ? null : StashClauseReader.ReadQuantity(cursor);
        }

        if (token.Kind != TokenKind.Word)
        {
            var (hint, replacement) = ClauseMistakes.InPlaceOf(cursor, head);
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"A clause cannot start with {cursor.Here}.", hint, replacement);
            return null;
        }

        cursor.Take();
        return token.Text.ToLowerInvariant() switch
        {
            "of" => PaintReader.ReadOf(cursor),
            "ink" => PaintReader.ReadPaint(cursor) is { } ink ? new InkClause(ink, default) : null,
            "alternating" => new TakeTurnsClause(true, default),
            "in" => PlaceClauseReader.ReadIn(cursor),
            "with" => PaintReader.ReadWith(cursor),
            "showing" => PlaceClauseReader.ReadSided(cursor, "showing"),
            "border" => PlaceClauseReader.ReadSided(cursor, "border"),
            "left" or "right" when cursor.Current.Is("of") =>
                PlaceClauseReader.ReadBeside(cursor, token.Is("left") ? Side.LeftOf : Side.RightOf),
            "left" => PlaceClauseReader.ReadEdge(cursor, Edge.Left),
            "right" => PlaceClauseReader.ReadEdge(cursor, Edge.Right),
            "top" => PlaceClauseReader.ReadEdge(cursor, Edge.Top),
            "bottom" => PlaceClauseReader.ReadEdge(cursor, Edge.Bottom),
            "upper" => PlaceClauseReader.ReadCorner(cursor, Edge.Top, "upper"),
            "lower" => PlaceClauseReader.ReadCorner(cursor, Edge.Bottom, "lower"),
            "centre" or "center" or "centred" or "centered" => new CentreClause(default),
            "shift" => cursor.ExpectDirection("Write shift up 1/8.") is { } shift && cursor.Length("Write shift up 1/8.") is { } by
                ? new ShiftClause(shift, by.Value, default) : null,
            "above" => PlaceClauseReader.ReadBeside(cursor, Side.Above),
            "below" => PlaceClauseReader.ReadBeside(cursor, Side.Below),
            "measured" => Word(cursor, "from", "measured from sky") && cursor.Path("Write measured from and a piece's name.") is { } from
                ? new MeasuredFromClause(from, default) : null,
            "over" => cursor.ExpectEdge("Write over bottom of pic.") is { } over && Word(cursor, "of", "over bottom of pic")
                && cursor.Path("Write over bottom of pic.") is { } overWhat ? new OverClause(over, overWhat, default) : null,
            "along" => PlaceClauseReader.ReadAlong(cursor),
            "around" when head is { Kind.Traits.IsWords: true } && ClauseMistakes.ReportAroundCircle(cursor) => null,
            "around" => cursor.Path("Write around porthole.") is { } around ? new AroundClause(around, default) : null,
            "same" => Word(cursor, "size", "same size as sky") && Word(cursor, "as", "same size as sky")
                && cursor.Path("Write same size as sky.") is { } same ? new SameSizeClause(same, default) : null,
            "gap" => PlaceClauseReader.ReadGap(cursor),
            "spread" => PlaceClauseReader.ReadSpread(cursor),
            "lined" => Word(cursor, "up", "lined up left") && cursor.ExpectEdge("Write lined up left.") is { } lined
                ? new LinedUpClause(lined, default) : null,
            "step" => cursor.ExpectDirection("Write step right 3/8.") is { } step && cursor.Length("Write step right 3/8.") is { } each
                ? new StepClause(step, each.Value, default) : null,
            "turn" => ReadTurn(cursor),
            "raised" => cursor.Length("Write raised 2 mm.") is { } raised ? new RaisedClause(raised.Value, default) : null,
            "on" when cursor.Current.Is("circle") => LetteringReader.ReadOnCircle(cursor),
            "on" => ReadOnFoam(cursor),
            "shadow" => cursor.Length("Write shadow 1/16 of navy.") is { } fall && Word(cursor, "of", "shadow 1/16 of navy")
                && PaintReader.ReadPaint(cursor) is { } cast ? new ShadowClause(fall.Value, cast, default) : null,
            "torn" => ReadEdgeCut(cursor, EdgeForm.Torn),
            "wavy" => ReadEdgeCut(cursor, EdgeForm.Wavy),
            "scalloped" => ReadEdgeCut(cursor, EdgeForm.Scalloped),
            "pointed" => ReadEdgeCut(cursor, EdgeForm.Pointed),
            "stitched" => cursor.Length("Write stitched 1/16.") is { } inside ? new StitchedClause(inside.Value, default) : null,
            "scored" => cursor.ExpectEdge("Write scored top 1/2.") is { } scoredFrom && cursor.Length("Write scored top 1/2.") is { } score
                ? new ScoredClause(scoredFrom, score.Value, default) : null,
            "wrap" => PlaceClauseReader.ReadSided(cursor, "wrap"),
            "using" => cursor.Name("the name of a die or stamp", "Write using small-tag.") is { } tool
                ? new UsingClause(tool, default) : null,
            "tucked" => ReadTucked(cursor),
            "through" => new ThroughClause(default),
            "swallowtail" => ReadSwallowtail(cursor),
            "corners" or "notch" or "letters" or "flap" or "thick" or "kerf" or "tails" =>
                cursor.Length($"Write {token.Text.ToLowerInvariant()} 1/4.") is { } measure
                ? new MeasureClause(token.Text.ToLowerInvariant(), measure.Value, default) : null,
            "blanks" => cursor.TakeWord("exact") ? new MeasureClause("blanks", Length.Zero, default)
                : cursor.Length("Write blanks 1/8 or blanks exact.") is { } grid ? new MeasureClause("blanks", grid.Value, default) : null,
            "hollow" => ReadHollow(cursor),
            "lines" => cursor.Length("Write lines 5/16 apart.") is { } apart && Word(cursor, "apart", "lines 5/16 apart")
                ? new LinesApartClause(apart.Value, default) : null,
            "file" => cursor.Quoted("Write file \"boat.svg\".") is { } file ? new FileClause(file, default) : null,
            "font" when cursor.Current.Kind == TokenKind.Word && LetteringKinds.Find(cursor.Current.Text) is { } named =>
                ClauseMistakes.ReportKindOfLettering(cursor, token, named),
            "font" => cursor.Quoted("Write font \"Lighthouse.ttf\".") is { } font ? new FontClause(font, default) : null,
            "arched" => LetteringReader.ReadArched(cursor),
            "spaced" => LetteringReader.ReadSpaced(cursor),
            "ranged" => LetteringReader.ReadRanged(cursor),
            "capitals" => new CapitalsClause(default),
            "lettering" => LetteringReader.ReadKind(cursor) is { } lettering ? new FontClause(lettering, default) : null,
            "fold" => ReadFold(cursor),
            "landscape" or "upright" => ReadLie(cursor, token),
            "front" => StashClauseReader.ReadSide(cursor, false),
            "back" => StashClauseReader.ReadSide(cursor, true),
            "trim" => cursor.Length("Write trim 1/4 bottom.") is { } trim && cursor.ExpectEdge("Write trim 1/4 bottom.") is { } edge
                ? new TrimClause(trim.Value, edge, default) : null,
            "collection" => cursor.Quoted("Write collection \"Harbour\".") is { } collection
                ? new CollectionClause(collection, default) : null,
            "made" => StashClauseReader.ReadMadeBy(cursor),
            "weight" => StashClauseReader.ReadWeight(cursor),
            "price" => StashClauseReader.ReadPrice(cursor),
            "by" => cursor.TakeWord("post") ? new FlagClause("by post", default)
                : Word(cursor, "hand", "by hand") ? new FlagClause("by hand", default) : null,
            "any" => Word(cursor, "sheets", "any sheets") ? new FlagClause("any sheets", default) : null,
            "spare" => cursor.Copies("a count", "Write spare 1.") is { } spare ? new SpareClause(spare.Value, default) : null,
            _ => ClauseMistakes.UnknownClause(cursor, token, head),
        };
    }

    public static bool Word(Cursor cursor, string word, string example)
    {
        if (cursor.TakeWord(word))
        {
            return true;
        }

        cursor.MissingWord($"the word {word}", $"Write {example}.", word);
        return false;
    }

    private static FlagClause ReadLie(Cursor cursor, Token word)
    {
        // As people say it: landscape orientation.
        _ = cursor.TakeWord("orientation") || cursor.TakeWord("format");
        return new(word.Text.ToLowerInvariant(), default);
    }

    private static EdgeCutClause? ReadEdgeCut(Cursor cursor, EdgeForm form)
    {
        var edge = cursor.TakeEdge();
        // As people say it: torn edges, torn bottom edge, torn all round.
        _ = cursor.TakeWord("edge") || cursor.TakeWord("edges");
        if (edge is null && cursor.TakeWord("all"))
        {
            _ = cursor.TakeWord("round") || cursor.TakeWord("around");
        }

        if (cursor.Current.Kind != TokenKind.Number)
        {
            return new(form, edge, null, default);
        }

        var word = form.ToString().ToLowerInvariant();
        return cursor.Length($"Write {word} bottom, or {word} bottom 1/8.") is { } depth ? new(form, edge, depth.Value, default) : null;
    }

    private static TurnClause? ReadTurn(Cursor cursor)
    {
        const string hint = "Write turn left 5, in degrees.";
        var sign = cursor.TakeWord("left") ? -1 : 1;
        var way = sign == -1 ? " left" : cursor.TakeWord("right") ? " right" : "";

        if (cursor.Current is not { Kind: TokenKind.Number, Number: { Unit: null } number })
        {
            cursor.Fail(FindingCatalogue.Expected, cursor.Current.Span,
                $"Expected a number of degrees after turn{way}, found {cursor.Here}.", hint);
            return null;
        }

        var span = cursor.Take().Span;
        var degrees = (double)number.Numerator / number.Denominator;
        if (Math.Abs(degrees) > 360)
        {
            cursor.Fail(FindingCatalogue.BadNumber, span, $"{degrees} degrees is more than a full turn.", hint);
            return null;
        }

        TakeDegrees(cursor);
        if (ClauseMistakes.ReportClockwise(cursor, span))
        {
            return null;
        }

        return new(sign * degrees, default);
    }

    /// <summary>Takes the word degrees, which may follow their number.</summary>
    public static void TakeDegrees(Cursor cursor)
    {
        _ = cursor.TakeWord("degrees") || cursor.TakeWord("degree") || cursor.TakeWord("deg");
    }

    private static RaisedClause? ReadOnFoam(Cursor cursor)
    {
        if (ClauseMistakes.ReportLyingOn(cursor))
        {
            return null;
        }

        if (!Word(cursor, "foam", "on foam"))
        {
            return null;
        }

        _ = cursor.TakeWord("tape") || cursor.TakeWord("pads") || cursor.TakeWord("squares") || cursor.TakeWord("dots");

        if (cursor.Current.Kind != TokenKind.Number)
        {
            return new(null, default);
        }

        return cursor.Length("Write on foam 2 mm.") is { } height ? new(height.Value, default) : null;
    }

    private static MeasureClause? ReadHollow(Cursor cursor)
    {
        var written = cursor.Current;
        if (written.Kind != TokenKind.Number)
        {
            return new("hollow", Length.Zero, default);
        }

        if (cursor.Length("Write hollow, or hollow 1/4.") is not { } margin)
        {
            return null;
        }

        if (margin.Value > Length.Zero)
        {
            return new("hollow", margin.Value, default);
        }

        cursor.Fail(FindingCatalogue.BadNumber, written.Span, "A margin of 0 leaves no room for glue.", "Write hollow, or hollow 1/4.");
        return null;
    }

    private static TuckedClause? ReadTucked(Cursor cursor)
    {
        if (!Word(cursor, "under", "tucked under"))
        {
            return null;
        }

        if (cursor.Current.Kind != TokenKind.Word)
        {
            return new(null, default);
        }

        return cursor.Path("Write tucked under lamp.") is { } path ? new(path, default) : null;
    }

    private static SwallowtailClause? ReadSwallowtail(Cursor cursor)
    {
        if (cursor.TakeWord("both"))
        {
            return new(true, true, default);
        }

        if (cursor.TakeWord("left"))
        {
            return new(true, false, default);
        }

        if (cursor.TakeWord("right"))
        {
            return new(false, true, default);
        }

        cursor.MissingWord("left, right or both", "Write swallowtail right.", "left", "right", "both");
        return null;
    }

    private static FoldClause? ReadFold(Cursor cursor)
    {
        foreach (var fold in Enum.GetValues<Fold>())
        {
            if (cursor.TakeWord(fold.ToString().ToLowerInvariant()))
            {
                return new(fold, default);
            }
        }

        cursor.MissingWord("left, top, gate or z", "Write fold left, fold top, fold gate or fold z.", "left", "top", "gate", "z");
        return null;
    }
}
