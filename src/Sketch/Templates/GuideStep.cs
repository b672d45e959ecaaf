using System.Collections.Immutable;
using System.Globalization;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>A step of the assembly: the copies of one line are attached together.</summary>
/// <param name="Number">Counted from 1 on each face, what lies beneath first.</param>
/// <param name="Words">What to attach.</param>
/// <param name="Outlines">Where each copy goes on the face, in millimetres, with its turn; for ink the box around it.</param>
/// <param name="Written">The box around the words on each copy of a piece of paper, likewise.</param>
internal sealed record GuideStep(int Number, string Words, ImmutableArray<Outline> Outlines, ImmutableArray<Outline> Written)
{
    /// <summary>The steps of a face, in drawing order.</summary>
    public static ImmutableArray<GuideStep> Of(LaidOutCard card, FaceKind face) =>
        [.. card.On(face)
            .Where(p => p.Matter is not (PieceMatter.Hole or PieceMatter.Unseen) && !p.Outline.IsEmpty)
            .GroupBy(p => p.Path.WithoutCopies)
            .Select((copies, i) => new GuideStep(i + 1, Reported([.. copies]), [.. copies.Select(Placed)],
                [.. copies.Where(c => c is { Matter: PieceMatter.Paper, Words.Ink.IsEmpty: false })
                    .Select(c => BoxAround(c.Words!.Ink, c.Turning))]))];

    private static string Reported(ImmutableArray<Piece> copies)
    {
        var first = copies[0];
        var words = first.Words is { } written && first.Kind != PieceKind.Word ? $" “{written.Text.ReplaceLineEndings(" ")}”" : "";
        var count = copies.Length > 1 ? string.Create(CultureInfo.InvariantCulture, $", {copies.Length} times") : "";
        var foam = first.Foam > Length.Zero ? $", on {LengthFormat.Millimetres(first.Foam)} foam" : "";
        return $"{TemplatePieces.NameOf(first)}{words}{count}{foam}";
    }

    private static Outline Placed(Piece piece) => piece.Matter == PieceMatter.Ink
        ? BoxAround(piece.Outline, piece.Turning)
        : piece.TurnedOutline;

    private static Outline BoxAround(Outline ink, Affine turning) => Outline.Rectangle(ink.Bounds.ToRect()).Transform(turning);
}
