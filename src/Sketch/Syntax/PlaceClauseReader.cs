using Sketch.Diagnostics;
using Sketch.Papers;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Reads clauses that place a piece or arrange copies.</summary>
internal static class PlaceClauseReader
{
    private static readonly string[] Ranged = ["aligned", "align", "justified", "justify"];

    private static readonly string[] CentreWords = ["centre", "center", "centred", "centered", "middle"];

    public static Clause? ReadIn(Cursor cursor)
    {
        const string hint = "Write in a row, in a column, in a grid 2 across, in a honeycomb 4 across, or in turn.";
        if (cursor.TakeWord("turn"))
        {
            return new TakeTurnsClause(false, default);
        }

        if (EverydayPlaces.Report(cursor))
        {
            return null;
        }

        if (cursor.Current.Is("capitals"))
        {
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                "Write the clause for capitals as one word.", "Write capitals.", "capitals");
            return null;
        }

        if (cursor.Current.Kind == TokenKind.Colour
            || (cursor.Current.Kind == TokenKind.Word && ColourWords.TryGet(cursor.Current.Text, out _)))
        {
            cursor.Fail(FindingCatalogue.LeftOver, cursor.Previous.Span, "A paper or colour follows the word of.",
                $"Write of {cursor.Here.Trim('\'')}.", "of");
            return null;
        }

        if (LetteringReader.Meant(cursor.Current) is { } lettering)
        {
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                "Letters are chosen by the word lettering.", $"Write {lettering}.", lettering);
            return null;
        }

        if (IsCorner(cursor))
        {
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                "A corner is upper or lower, left or right, with a distance.", "Write upper left 1/4, or lower right 0.");
            return null;
        }

        if (cursor.Current.Kind == TokenKind.Number || cursor.Current.Is("rows") || cursor.Current.Is("columns"))
        {
            cursor.Missing("the word a", "Write in a grid 2 across, or in a grid 2 x 3: across and down.");
            return null;
        }

        if (!ClauseReader.Word(cursor, "a", "in a row"))
        {
            return null;
        }

        if (cursor.TakeWord("row"))
        {
            return new ArrangeClause(ArrangementKind.Row, 0, null, default);
        }

        if (cursor.TakeWord("column"))
        {
            return new ArrangeClause(ArrangementKind.Column, 0, null, default);
        }

        if (cursor.TakeWord("grid"))
        {
            return ReadRows(cursor, ArrangementKind.Grid, "in a grid");
        }

        if (cursor.TakeWord("honeycomb"))
        {
            return ReadRows(cursor, ArrangementKind.Honeycomb, "in a honeycomb");
        }

        cursor.MissingWord("row, column, grid or honeycomb", hint, "row", "column", "grid", "honeycomb");
        return null;
    }

    /// <summary>Whether words after in name a corner without saying which: <c>the corner</c>, <c>each corner</c>.</summary>
    private static bool IsCorner(Cursor cursor)
    {
        var at = cursor.Current.Is("the") || cursor.Current.Is("a") ? 1 : 0;
        string[] words = ["corner", "corners", "each"];
        return Array.Exists(words, cursor.Peek(at).Is);
    }

    private static ArrangeClause? ReadRows(Cursor cursor, ArrangementKind kind, string words)
    {
        if (cursor.Copies("how many across", $"Write {words} 2 across, or {words} 2 x 3.") is not { IsCorrected: false } across)
        {
            return null;
        }

        if (cursor.TakeTimes())
        {
            return cursor.Copies("how many down", $"Write {words} 2 x 3: across and down.") is { IsCorrected: false } down
                ? new(kind, across.Value, down.Value, default) : null;
        }

        return ClauseReader.Word(cursor, "across", $"{words} 2 across") ? new(kind, across.Value, null, default) : null;
    }

    public static Clause? ReadSided(Cursor cursor, string word)
    {
        var edge = cursor.TakeEdge();
        if (cursor.Length($"Write {word} 1/8, or {word} bottom 1/2.") is not { } amount)
        {
            return null;
        }

        return word switch
        {
            "showing" => new ShowingClause(edge, amount.Value, default),
            "wrap" => new WrapClause(edge, amount.Value, default),
            _ => new BorderClause(edge, amount.Value, default),
        };
    }

    public static EdgeClause? ReadEdge(Cursor cursor, Edge edge)
    {
        var word = edge.Name();
        if (edge is Edge.Top or Edge.Bottom && (cursor.Current.Is("left") || cursor.Current.Is("right")))
        {
            var corner = $"{(edge == Edge.Top ? "upper" : "lower")} {cursor.Current.Text.ToLowerInvariant()}";
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                $"A corner is upper or lower, not {word}.",
                $"Write {corner} 1/4.", cursor.Next.Kind == TokenKind.Number ? corner : null);
            return null;
        }

        if (edge is Edge.Left or Edge.Right && Array.Exists(Ranged, cursor.Current.Is))
        {
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                "The clause ranged aligns lines of words.", $"Write ranged {word}.", $"ranged {word}");
            return null;
        }

        if (cursor.Current.Is("edge") || cursor.Current.Is("side") || CentreWords.Any(cursor.Current.Is))
        {
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                $"A distance goes after the word {word}.",
                cursor.Next.Kind == TokenKind.Number ? $"Write {word} {cursor.Next.Text}."
                    : $"Write {word} 1/4; a piece is centred in the other direction.",
                cursor.Next.Kind == TokenKind.Number ? word : null);
            return null;
        }

        if (cursor.Current.Is("fold"))
        {
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, cursor.Current.Span),
                "Write the side of a fold after it.", $"Write fold {word}.", $"fold {word}");
            return null;
        }

        return cursor.Length($"Write {word} 1/4.", signed: true) is { } distance ? new(edge, distance.Value, default) : null;
    }

    public static CornerClause? ReadCorner(Cursor cursor, Edge vertical, string word)
    {
        Edge? horizontal = cursor.TakeWord("left") ? Edge.Left : cursor.TakeWord("right") ? Edge.Right : null;
        if (horizontal is null)
        {
            cursor.MissingWord("left or right", $"Write {word} left 1/4.", "left", "right");
            return null;
        }

        var side = horizontal == Edge.Left ? "left" : "right";
        return cursor.Length($"Write {word} {side} 1/4.", signed: true) is { } distance
            ? new(vertical, horizontal.Value, distance.Value, default) : null;
    }

    public static BesideClause? ReadBeside(Cursor cursor, Side side)
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

    public static AlongClause? ReadAlong(Cursor cursor)
    {
        if (cursor.ExpectEdge("Write along top.") is not { } edge)
        {
            return null;
        }

        if (cursor.Current.Kind == TokenKind.Number)
        {
            // It is flush with the edge; the clause of the edge moves it away.
            var (side, last) = (edge.Name(), cursor.Next.Kind == TokenKind.Number ? cursor.Next : cursor.Current);
            var written = $"{side}, {side} {cursor.File.Source.Content[cursor.Current.Span.Start..last.Span.End]}";
            cursor.Fail(FindingCatalogue.LeftOver, TextSpan.Cover(cursor.Previous.Span, last.Span),
                $"What lies along the {side} has no distance there.", $"Write along {written}.", written);
            return null;
        }

        if (!cursor.TakeWord("of"))
        {
            return new(edge, null, default);
        }

        return cursor.Path("Write along top of sky.") is { } path ? new(edge, path, default) : null;
    }

    public static GapClause? ReadGap(Cursor cursor)
    {
        const string hint = "Write gap 1/16, or gap 1/8 x 1/4 for across and down.";
        if (cursor.Length(hint, signed: true) is not { } across)
        {
            return null;
        }

        var down = cursor.TakeTimes() ? cursor.Length(hint, signed: true) : across;
        return down is { } d ? new(across.Value, d.Value, default) : null;
    }

    public static SpreadClause? ReadSpread(Cursor cursor)
    {
        if (!cursor.TakeWord("edge"))
        {
            return new(false, default);
        }

        return ClauseReader.Word(cursor, "to", "spread edge to edge") && ClauseReader.Word(cursor, "edge", "spread edge to edge")
            ? new(true, default) : null;
    }
}
