using System.Collections.Immutable;
using System.Globalization;
using Sketch.Assembly;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>A step of the assembly: the copies of one line are attached together.</summary>
/// <param name="Number">The number of the step in the assembly of the card.</param>
/// <param name="Words">What to attach.</param>
/// <param name="Outlines">Where each copy goes on the face, in millimetres, with its turn; for ink the box around it.</param>
/// <param name="Written">The box around the words on each copy of a piece of paper, likewise.</param>
internal sealed record GuideStep(int Number, string Words, ImmutableArray<Outline> Outlines, ImmutableArray<Outline> Written)
{
    /// <summary>On what it lies and how far from two of its edges.</summary>
    public required string Place { get; init; }

    /// <summary>The steps of a face, sorted by what lies beneath: the order in which they are drawn.</summary>
    public static ImmutableArray<GuideStep> Of(LaidOutCard card, ImmutableArray<AssemblyStep> steps, FaceKind face) =>
        [.. steps.Where(s => s.Face == face && !s.Pieces.IsEmpty).OrderBy(s => card.Pieces.IndexOf(s.Pieces[0]))
            .Select(s => new GuideStep(s.Number, Reported(s.Pieces), [.. s.Pieces.Select(Placed)],
                [.. s.Pieces.Where(p => p is { Matter: PieceMatter.Paper, Words.Ink.IsEmpty: false })
                    .Select(p => BoxAround(p.Words!.Ink, p.Turning))])
            {
                Place = StepText.Place(card, s),
            })];

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
