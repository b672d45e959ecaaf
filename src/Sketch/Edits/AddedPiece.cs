using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>A piece put onto a card: one line more in its text.</summary>
/// <param name="Edit">The line, in its place in the outline.</param>
/// <param name="Line">The number of the new line, from 1.</param>
public sealed record AddedPiece(TextEdit Edit, int Line)
{
    /// <summary>The kinds of piece that can be put on: those that need no drawing and show something by themselves.</summary>
    public static IEnumerable<PieceKind> Kinds => PieceKinds.All.Where(k =>
        k.Traits.HasLine && k is not (PieceKind.Group or PieceKind.Outline or PieceKind.Stamp));

    /// <summary>
    /// Puts a piece on a card, as a maker would type it: a size in round numbers, distances from the nearest edges to marks of a ruler or
    /// whole millimetres, nothing for what is in the middle, and a paper of the card that stands out.
    /// </summary>
    /// <param name="text">The text of the card.</param>
    /// <param name="card">The card, laid out from it.</param>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="spot">Where.</param>
    /// <param name="lay">Lays out a text with the piece in the middle; null where that is impossible.</param>
    /// <returns>The piece; a problem reads as a sentence.</returns>
    public static Result<AddedPiece> Put(
        SourceText text, LaidOutCard card, PieceKind kind, PieceSpot spot, Func<SourceText, LaidOutCard?> lay)
    {
        var outline = CardOutline.Of(text);
        if (Ground.Find(outline, card, kind, spot) is not { } ground)
        {
            return new Failure(kind == PieceKind.Mat
                ? "A mat goes under a piece. Click the piece that is to get one."
                : $"The text has no line to put it under. Write a line {Face.NameOf(spot.Face).Replace('-', ' ')}, and try again.");
        }

        var words = new AddedWords(card, kind, ground);
        var centred = ground.Insert(outline, words.Line(words.Middle));
        var trial = new SourceText(text.Path, TextEdit.Apply(text.Content, [centred.Edit]));
        if (kind == PieceKind.Mat || spot.At is not { } at)
        {
            return Result.Of(centred);
        }

        var made = lay(trial)?.Pieces.FirstOrDefault(
            p => p.Kind == kind && p.Location.Source == trial && p.Location.Start.Line == centred.Line);
        return Result.Of(made is null ? centred : ground.Insert(outline, words.Line(words.Places(made.Box, at))));
    }
}

/// <summary>Where a piece is put.</summary>
/// <param name="Face">The face.</param>
/// <param name="Line">The line of the piece on which it is put; 0 for the face itself.</param>
/// <param name="At">The point for its middle, in millimetres on the face; null for the middle of what it lies on.</param>
public sealed record PieceSpot(FaceKind Face, int Line, Point? At);
