using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Clauses: each is told by its first word.</summary>
public sealed partial class Parser
{
    private ImmutableArray<Clause> ReadClauses(Cursor cursor, ImmutableArray<int>.Builder missingCommas)
    {
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        if (cursor.Failed)
        {
            cursor.SkipClause();
        }
        else if (!cursor.AtEnd && cursor.Current.Kind != TokenKind.Comma)
        {
            // The comma before the first clause may be left out; after a colon there is none.
            if (cursor.Position > 0 && cursor.Previous.Kind != TokenKind.Colon)
            {
                missingCommas.Add(cursor.Position);
            }

            ReadClauseInto(cursor, clauses);
        }

        while (!cursor.AtEnd)
        {
            if (!cursor.TakeKind(TokenKind.Comma))
            {
                cursor.Begin();
                cursor.Fail(FindingCatalogue.LeftOver, cursor.Current.Span, $"Before {cursor.Here} a comma is missing, or it does not belong here.",
                    $"Put a comma before {cursor.Here} if it begins a clause of its own.");
                cursor.SkipClause();
                continue;
            }

            cursor.Begin();
            if (!cursor.AtEnd)
            {
                ReadClauseInto(cursor, clauses);
            }
        }

        return clauses.ToImmutable();
    }

    private void ReadClauseInto(Cursor cursor, ImmutableArray<Clause>.Builder clauses)
    {
        _lengthsRead = true;
        var start = cursor.Position;
        if (ReadClause(cursor) is { } clause && !cursor.Failed)
        {
            clauses.Add(clause with { Span = TextSpan.Cover(cursor.Peek(start - cursor.Position).Span, cursor.Previous.Span) });
        }
        else
        {
            cursor.SkipClause();
        }
    }

    private static Clause? ReadClause(Cursor cursor)
    {
        var token = cursor.Current;
        if (token.Kind == TokenKind.Number)
        {
            return ReadQuantity(cursor);
        }

        if (token.Kind != TokenKind.Word)
        {
            cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"A clause cannot begin with {cursor.Here}.",
                "Begin it with a word such as of, left, top, raised or in a row.");
            return null;
        }

        cursor.Take();
        return token.Text.ToLowerInvariant() switch
        {
            "of" => ReadOf(cursor),
            "ink" => ReadPaint(cursor) is { } ink ? new InkClause(ink, default) : null,
            "alternating" => new TakeTurnsClause(true, default),
            "in" => ReadIn(cursor),
            "with" => ReadWith(cursor),
            "showing" => ReadSided(cursor, "showing"),
            "border" => ReadSided(cursor, "border"),
            "left" or "right" when cursor.Current.Is("of") => ReadBeside(cursor, token.Is("left") ? Side.LeftOf : Side.RightOf),
            "left" => ReadEdge(cursor, Edge.Left),
            "right" => ReadEdge(cursor, Edge.Right),
            "top" => ReadEdge(cursor, Edge.Top),
            "bottom" => ReadEdge(cursor, Edge.Bottom),
            "upper" => ReadCorner(cursor, Edge.Top, "upper"),
            "lower" => ReadCorner(cursor, Edge.Bottom, "lower"),
            "centre" or "center" or "centred" or "centered" => new CentreClause(default),
            "shift" => cursor.ExpectDirection("Write shift up 1/8.") is { } shift && cursor.Length("Write shift up 1/8.") is { } by
                ? new ShiftClause(shift, by.Value, default) : null,
            "above" => ReadBeside(cursor, Side.Above),
            "below" => ReadBeside(cursor, Side.Below),
            "measured" => Word(cursor, "from", "measured from sky") && cursor.Path("Write measured from and a piece's name.") is { } from
                ? new MeasuredFromClause(from, default) : null,
            "over" => cursor.ExpectEdge("Write over bottom of pic.") is { } over && Word(cursor, "of", "over bottom of pic")
                && cursor.Path("Write over bottom of pic.") is { } overWhat ? new OverClause(over, overWhat, default) : null,
            "along" => ReadAlong(cursor),
            "around" => cursor.Path("Write around porthole.") is { } around ? new AroundClause(around, default) : null,
            "same" => Word(cursor, "size", "same size as sky") && Word(cursor, "as", "same size as sky")
                && cursor.Path("Write same size as sky.") is { } same ? new SameSizeClause(same, default) : null,
            "gap" => ReadGap(cursor),
            "spread" => ReadSpread(cursor),
            "lined" => Word(cursor, "up", "lined up left") && cursor.ExpectEdge("Write lined up left.") is { } lined ? new LinedUpClause(lined, default) : null,
            "step" => cursor.ExpectDirection("Write step right 3/8.") is { } step && cursor.Length("Write step right 3/8.") is { } each
                ? new StepClause(step, each.Value, default) : null,
            "turn" => ReadTurn(cursor),
            "raised" => cursor.Length("Write raised 2 mm.") is { } raised ? new RaisedClause(raised.Value, default) : null,
            "on" => ReadOnFoam(cursor),
            "wrap" => cursor.Length("Write wrap 1/2.") is { } wrap ? new WrapClause(wrap.Value, default) : null,
            "tucked" => ReadTucked(cursor),
            "through" => new ThroughClause(default),
            "swallowtail" => ReadSwallowtail(cursor),
            "corners" or "notch" or "letters" or "flap" or "thick" or "kerf" => cursor.Length($"Write {token.Text.ToLowerInvariant()} 1/4.") is { } measure
                ? new MeasureClause(token.Text.ToLowerInvariant(), measure.Value, default) : null,
            "lines" => cursor.Length("Write lines 5/16 apart.") is { } apart && Word(cursor, "apart", "lines 5/16 apart") ? new LinesApartClause(apart.Value, default) : null,
            "file" => cursor.Quoted("Write file \"boat.svg\".") is { } file ? new FileClause(file, default) : null,
            "font" => cursor.Quoted("Write font \"Lighthouse.ttf\".") is { } font ? new FontClause(font, default) : null,
            "fold" => ReadFold(cursor),
            "landscape" or "upright" => new FlagClause(token.Text.ToLowerInvariant(), default),
            "front" => ReadSide(cursor, false),
            "back" => ReadSide(cursor, true),
            "trim" => cursor.Length("Write trim 1/4 bottom.") is { } trim && cursor.ExpectEdge("Write trim 1/4 bottom.") is { } edge
                ? new TrimClause(trim.Value, edge, default) : null,
            "weight" => ReadWeight(cursor),
            "price" => ReadPrice(cursor),
            "any" => Word(cursor, "sheets", "any sheets") ? new FlagClause("any sheets", default) : null,
            "spare" => cursor.Count("a count", "Write spare 1.", CountLimit) is { } spare ? new SpareClause(spare.Value, default) : null,
            _ => UnknownClause(cursor, token),
        };
    }

    private static Clause? UnknownClause(Cursor cursor, Token token)
    {
        var near = cursor.Nearest(FindingCatalogue.UnknownClause, token, Vocabulary.ClauseWords);
        cursor.Fail(FindingCatalogue.UnknownClause, token.Span, $"'{token.Text}' begins no clause.",
            near is null ? "Clauses begin with words such as of, left, top, raised, turn or in a row." : $"Did you mean {near}?", near);
        return null;
    }

    private static bool Word(Cursor cursor, string word, string example)
    {
        if (cursor.TakeWord(word))
        {
            return true;
        }

        cursor.Missing($"the word {word}", $"Write {example}.");
        return false;
    }

    private static PaintSyntax? ReadPaint(Cursor cursor)
    {
        if (cursor.Current.Kind == TokenKind.Colour)
        {
            var token = cursor.Take();
            return new(token.Text, true, token.Span);
        }

        return cursor.Name("a role or colour", "Write of navy, or of #16324f.") is { } name ? new(name.Text, false, name.Span) : null;
    }

    private static ImmutableArray<PaintSyntax> ReadPaints(Cursor cursor)
    {
        var paints = ImmutableArray.CreateBuilder<PaintSyntax>();
        while ((cursor.Current.Kind == TokenKind.Colour || (cursor.Current.Kind == TokenKind.Word && !Vocabulary.ClauseWords.Contains(cursor.Current.Text)))
            && ReadPaint(cursor) is { } paint)
        {
            paints.Add(paint);
        }

        return paints.ToImmutable();
    }

    private static OfClause? ReadOf(Cursor cursor)
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

    private static Clause? ReadIn(Cursor cursor)
    {
        const string hint = "Write in a row, in a column, in a grid 2 across, or in turn.";
        if (cursor.TakeWord("turn"))
        {
            return new TakeTurnsClause(false, default);
        }

        if (!Word(cursor, "a", "in a row"))
        {
            return null;
        }

        if (cursor.TakeWord("row"))
        {
            return new ArrangeClause(Arrangement.Row, 0, null, default);
        }

        if (cursor.TakeWord("column"))
        {
            return new ArrangeClause(Arrangement.Column, 0, null, default);
        }

        if (!cursor.TakeWord("grid"))
        {
            cursor.Missing("row, column or grid", hint);
            return null;
        }

        if (cursor.Count("how many across", "Write in a grid 2 across, or in a grid 2 x 3.", CountLimit) is not { } across)
        {
            return null;
        }

        if (cursor.TakeKind(TokenKind.Times))
        {
            return cursor.Count("how many down", "Write in a grid 2 x 3: across and down.", CountLimit) is { } down
                ? new ArrangeClause(Arrangement.Grid, across.Value, down.Value, default) : null;
        }

        return Word(cursor, "across", "in a grid 2 across") ? new ArrangeClause(Arrangement.Grid, across.Value, null, default) : null;
    }

    private static WithClause? ReadWith(Cursor cursor) =>
        cursor.Name("a role", "Write with deep as red.") is { } role && Word(cursor, "as", "with deep as red") && ReadPaint(cursor) is { } paint
            ? new(role, paint, default) : null;

    private static Clause? ReadSided(Cursor cursor, string word)
    {
        var edge = cursor.TakeEdge();
        if (cursor.Length($"Write {word} 1/8, or {word} bottom 1/2.") is not { } amount)
        {
            return null;
        }

        return word == "showing" ? new ShowingClause(edge, amount.Value, default) : new BorderClause(edge, amount.Value, default);
    }

    private static EdgeClause? ReadEdge(Cursor cursor, Edge edge)
    {
        var word = edge.ToString().ToLowerInvariant();
        return cursor.Length($"Write {word} 1/4.", signed: true) is { } distance ? new(edge, distance.Value, default) : null;
    }

    private static CornerClause? ReadCorner(Cursor cursor, Edge vertical, string word)
    {
        Edge? horizontal = cursor.TakeWord("left") ? Edge.Left : cursor.TakeWord("right") ? Edge.Right : null;
        if (horizontal is null)
        {
            cursor.Missing("left or right", $"Write {word} left 1/4.");
            return null;
        }

        return cursor.Length($"Write {word} left 1/4.", signed: true) is { } distance ? new(vertical, horizontal.Value, distance.Value, default) : null;
    }

    private static BesideClause? ReadBeside(Cursor cursor, Side side)
    {
        var word = side switch { Side.Above => "above", Side.Below => "below", Side.LeftOf => "left of", _ => "right of" };
        if (side is Side.LeftOf or Side.RightOf)
        {
            cursor.TakeWord("of");
        }

        var hint = $"Write {word} lamp by 1/4.";
        if (cursor.Path(hint) is not { } path)
        {
            return null;
        }

        if (!cursor.TakeWord("by"))
        {
            return new(side, path, Units.Length.Zero, default);
        }

        return cursor.Length(hint, signed: true) is { } distance ? new(side, path, distance.Value, default) : null;
    }

    private static AlongClause? ReadAlong(Cursor cursor)
    {
        if (cursor.ExpectEdge("Write along top.") is not { } edge)
        {
            return null;
        }

        if (!cursor.TakeWord("of"))
        {
            return new(edge, null, default);
        }

        return cursor.Path("Write along top of sky.") is { } path ? new(edge, path, default) : null;
    }

    private static GapClause? ReadGap(Cursor cursor)
    {
        const string hint = "Write gap 1/16, or gap 1/8 x 1/4 for across and down.";
        if (cursor.Length(hint, signed: true) is not { } across)
        {
            return null;
        }

        var down = cursor.TakeKind(TokenKind.Times) ? cursor.Length(hint, signed: true) : across;
        return down is { } d ? new(across.Value, d.Value, default) : null;
    }

    private static SpreadClause? ReadSpread(Cursor cursor)
    {
        if (!cursor.TakeWord("edge"))
        {
            return new(false, default);
        }

        return Word(cursor, "to", "spread edge to edge") && Word(cursor, "edge", "spread edge to edge") ? new(true, default) : null;
    }

    private static TurnClause? ReadTurn(Cursor cursor)
    {
        const string hint = "Write turn left 5, in degrees.";
        var sign = cursor.TakeWord("left") ? -1 : 1;
        if (sign == 1)
        {
            cursor.TakeWord("right");
        }

        if (cursor.Current is not { Kind: TokenKind.Number, Number: { Unit: null } number })
        {
            cursor.Missing("the degrees", hint);
            return null;
        }

        var span = cursor.Take().Span;
        var degrees = (double)number.Numerator / number.Denominator;
        if (Math.Abs(degrees) > 360)
        {
            cursor.Fail(FindingCatalogue.BadNumber, span, $"{degrees} degrees is more than a full turn.", hint);
            return null;
        }

        return new(sign * degrees, default);
    }

    private static RaisedClause? ReadOnFoam(Cursor cursor)
    {
        if (!Word(cursor, "foam", "on foam"))
        {
            return null;
        }

        if (cursor.Current.Kind != TokenKind.Number)
        {
            return new(null, default);
        }

        return cursor.Length("Write on foam 2 mm.") is { } height ? new(height.Value, default) : null;
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

        cursor.Missing("left, right or both", "Write swallowtail right.");
        return null;
    }

    private static FoldClause? ReadFold(Cursor cursor)
    {
        Edge? edge = cursor.TakeWord("left") ? Edge.Left : cursor.TakeWord("top") ? Edge.Top : null;
        if (edge is null)
        {
            cursor.Missing("left or top", "Write fold left, or fold top.");
            return null;
        }

        return new(edge.Value, default);
    }

    private static SideClause? ReadSide(Cursor cursor, bool isBack)
    {
        QuotedSyntax? words = null;
        if (cursor.Current.Kind == TokenKind.Quoted)
        {
            var token = cursor.Take();
            words = new(token.Text, token.Span);
        }

        var colours = ReadPaints(cursor);
        Length? width = null;
        if (cursor.Current.Kind == TokenKind.Number)
        {
            if (cursor.Length("Write front \"scan.jpg\" 12 wide.") is not { } length || !Word(cursor, "wide", "front \"scan.jpg\" 12 wide"))
            {
                return null;
            }

            width = length.Value;
        }

        return new(isBack, words, colours, width, default);
    }

    private static WeightClause? ReadWeight(Cursor cursor)
    {
        const string hint = "Write weight 216 gsm, or weight 80 lb cover.";
        if (cursor.Current is not { Kind: TokenKind.Number, Number: { Unit: null, Numerator: > 0 } number })
        {
            cursor.Missing("a weight", hint);
            return null;
        }

        cursor.Take();
        var amount = (double)number.Numerator / number.Denominator;
        if (cursor.TakeWord("gsm"))
        {
            return new(amount, false, null, default);
        }

        if (!cursor.TakeWord("lb"))
        {
            cursor.Missing("gsm or lb", hint);
            return null;
        }

        return new(amount, true, cursor.Current.Kind == TokenKind.Word ? cursor.Take().Text.ToLowerInvariant() : null, default);
    }

    private static PriceClause? ReadPrice(Cursor cursor)
    {
        if (cursor.Current is not { Kind: TokenKind.Number, Number: { IsFraction: false, Unit: null, Numerator: >= 0 } number })
        {
            cursor.Missing("a price", "Write price 0.99.");
            return null;
        }

        cursor.Take();
        return new((decimal)number.Numerator / number.Denominator, default);
    }

    private static Clause? ReadQuantity(Cursor cursor)
    {
        if (cursor.Current.Number is { IsWhole: true, Unit: null } && !cursor.Next.Is("long"))
        {
            // Of what lies on a shelf none may be left; a star without points or a share of no cards is a mistake.
            var least = Singular(cursor.Next.Text) is "points" or "cards" or "makers" ? 1 : 0;
            if (cursor.Count("a count", "Write a count such as 3 sheets.", 1_000_000, least) is not { } count)
            {
                return null;
            }

            if (cursor.Current.Kind != TokenKind.Word)
            {
                return new QuantityClause(count.Value, null, default);
            }

            if (Singular(cursor.Current.Text) is { } noun)
            {
                cursor.Take();
                return new QuantityClause(count.Value, noun, default);
            }

            cursor.Missing("sheets, cards, makers, pieces or points", "Write 3 sheets, or 60 pieces.");
            return null;
        }

        return cursor.Length("Write 40 ft long.") is { } length && Word(cursor, "long", "40 ft long") ? new LongClause(length.Value, default) : null;
    }
}
