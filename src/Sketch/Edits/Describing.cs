using System.Globalization;
using Sketch.Binding;
using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>Writes what a piece is made of and how it lies: paper, words, letters, foam, turn, borders.</summary>
internal static class Describing
{
    /// <summary>What the line of a piece says.</summary>
    public static PieceDescription Read(WrittenPiece piece)
    {
        var (content, clauses) = (piece.File.Source.Content, piece.Line.Clauses);
        return new(content[piece.Line.Span.Start..piece.Line.Span.End], [.. piece.Head?.Texts.Select(t => t.Text) ?? []])
        {
            Paper = clauses.OfType<OfClause>().FirstOrDefault() is { Paints: var paints } of
                ? Written(paints is [var only] ? only.Span : PaintOf(piece, of))
                : piece.Piece.Kind == PieceKind.Text && piece.Rules.Ink is { Clause.Paint.Span: var ink } ? Written(ink) : null,
            Letters = piece.Rules.Letters?.Clause.Amount,
            Lettering = clauses.OfType<FontClause>().FirstOrDefault() is { Span: var font } ? Written(font) : null,
            Showing = clauses.OfType<ShowingClause>().FirstOrDefault(c => c.Edge is null)?.Amount,
            Foam = piece.Rules.Foam,
            Turn = piece.Rules.Turn,
        };

        string Written(TextSpan span) => content[span.Start..span.End];
    }

    /// <summary>Adds a change to the edits of its line.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="change">A change about its material, words or position in the stack.</param>
    /// <param name="line">Receives the changes.</param>
    /// <returns>Why it cannot be done; null when it can.</returns>
    public static string? Write(WrittenPiece piece, PieceChange change, LineEditing line)
    {
        switch (change)
        {
            case TurnChange turn:
                Clause(piece, First<TurnClause>(piece), turn.Degrees == 0 ? null : Turn(turn.Degrees), line);
                return null;
            case FoamChange foam:
                Clause(piece, First<RaisedClause>(piece), foam.Height is { } height ? Foam(height) : null, line);
                return null;
            case WordsChange words:
                return Words(piece, words, line);
            case LettersChange letters:
                Length(piece, First<MeasureClause>(piece, c => c.Word == "letters"), "letters ", letters.Height, line);
                return null;
            case LetteringChange lettering:
                Clause(piece, First<FontClause>(piece), lettering.Kind is { } kind ? "lettering " + kind : null, line);
                return null;
            case PaperChange paper:
                return Paper(piece, paper.Paper, line);
            case BorderChange border:
                return Border(piece, border.Border, line);
            case ShowingChange showing:
                Length(piece, First<ShowingClause>(piece, c => c.Edge is null), "showing ", showing.Amount, line);
                return null;
            default:
                throw new ArgumentException("A change of an unknown kind", nameof(change));
        }
    }

    private static T? First<T>(WrittenPiece piece, Func<T, bool>? which = null)
        where T : Clause => piece.Line.Clauses.OfType<T>().FirstOrDefault(which ?? (_ => true));

    private static string Turn(double degrees) => string.Create(
        CultureInfo.InvariantCulture, $"turn {(degrees < 0 ? "left" : "right")} {Math.Round(Math.Abs(degrees), 2):0.##}");

    private static string Foam(Length height) =>
        height == PieceRules.UsualFoam ? "on foam" : "raised " + LengthFormat.Millimetres(height, 6);

    /// <summary>Writes a clause in place of another, at the end where there is none; null takes it away.</summary>
    private static void Clause(WrittenPiece piece, Clause? written, string? clause, LineEditing line)
    {
        if (written is null)
        {
            if (clause is not null)
            {
                line.AddClause(piece.Line.Clauses is [.., var last] ? last.Span : piece.HeadEnd, clause);
            }
        }
        else if (clause is null)
        {
            line.Remove(written);
        }
        else
        {
            line.Replace(written.Span, clause);
        }
    }

    private static void Length(WrittenPiece piece, Clause? written, string word, Length? length, LineEditing line)
    {
        if (written is not null && length is { } number)
        {
            line.SetNumber(written.Span, number, "");
        }
        else
        {
            Clause(piece, written, length is { } added ? word + line.Written(added) : null, line);
        }
    }

    private static string? Words(WrittenPiece piece, WordsChange change, LineEditing line)
    {
        if (piece.Head is not { Kind.Traits.HoldsWords: true } head)
        {
            return "It holds no words.";
        }

        if (head.Kind.Traits.IsWords && change.Lines.IsEmpty)
        {
            return $"A {head.Kind.Name} needs words.";
        }

        var written = head.Texts;
        var common = Math.Min(written.Length, change.Lines.Length);
        for (var at = 0; at < common; at++)
        {
            if (written[at].Text != change.Lines[at])
            {
                line.Replace(written[at].Span, StartingText.Quoted(change.Lines[at]));
            }
        }

        var more = string.Concat(change.Lines.Skip(common).Select(w => " " + StartingText.Quoted(w)));
        if (more.Length > 0)
        {
            line.Add(written is [.., var last] ? last.Span : piece.HeadEnd, more);
        }

        foreach (var text in written.Skip(common))
        {
            var before = piece.Line.Tokens.Tokens.Last(t => t.Span.End <= text.Span.Start).Span.End;
            line.Replace(new(before, text.Span.End), "");
        }

        return null;
    }

    private static string? Paper(WrittenPiece piece, string paper, LineEditing line)
    {
        if (piece.Line is UseLine)
        {
            return "A part has its own papers. Choose a piece of the part.";
        }

        if (piece.Piece.Kind is PieceKind.Window or PieceKind.Group)
        {
            return $"A {piece.Piece.Kind.Name} has no paper.";
        }

        if (!KeptPapers.CanBeWritten("paper", paper))
        {
            return $"\"{paper}\" cannot be written after \"of\". Choose a role, a colour, or a paper whose name is one word.";
        }

        if (piece.Line.Clauses.OfType<OfClause>().FirstOrDefault() is { Paints: var paints } of)
        {
            line.Replace(paints is [_] ? new(paints[0].Span.Start, of.Span.End) : PaintOf(piece, of), paper);
        }
        else if (piece.Piece.Kind == PieceKind.Text && piece.Line.Clauses.OfType<InkClause>().FirstOrDefault() is { } ink)
        {
            line.Replace(ink.Paint.Span, paper);
        }
        else
        {
            line.AddClause(Moving.AfterPlaces(piece), "of " + paper);
        }

        return null;
    }

    /// <summary>The one of several papers that this copy is made of.</summary>
    private static TextSpan PaintOf(WrittenPiece piece, OfClause of)
    {
        var paint = piece.Piece.Paint;
        var named = of.Paints.FirstOrDefault(p => p.Text.Equals(paint.Role ?? paint.Paper, StringComparison.OrdinalIgnoreCase));
        return (named ?? of.Paints[((piece.Piece.Path.Copy ?? 1) - 1) % of.Paints.Length]).Span;
    }

    private static string? Border(WrittenPiece piece, Length border, LineEditing line)
    {
        if (piece.Head is not { Kind: PieceKind.Mat } mat)
        {
            return "Only a mat has a border.";
        }

        switch (mat.Size)
        {
            case AddedSize added:
                line.Replace(added.Span, "+" + line.Written(border * 2));
                break;
            case not null:
                return "The size of this mat is written, so its border follows from that.";
            default:
                if (piece.Line.Clauses.OfType<BorderClause>().FirstOrDefault(c => c.Edge is null) is { } everywhere)
                {
                    line.SetNumber(everywhere.Span, border, "");
                }
                else
                {
                    line.Add(mat.KindSpan, " +" + line.Written(border * 2));
                }

                break;
        }

        return null;
    }
}
