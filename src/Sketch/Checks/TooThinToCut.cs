using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Cut-out words and drawings with strokes or bridges so thin that a hand cannot cut them. A place is thin if cutting half of a width away
/// on all sides parts the outline there, or leaves nothing of a part of it; fine ends of strokes do not count.
/// </summary>
internal sealed class TooThinToCut : IFitRule
{
    /// <summary>The narrowest paper that a hand cuts and glues, as with the border of a mat.</summary>
    private static readonly Length Least = MatBorders.Least;

    /// <summary>How often the thinnest place is bracketed: to a sixty-fourth of <see cref="Least"/>.</summary>
    private const int Halvings = 6;

    /// <summary>Corners beyond which an outline is not examined: that takes long, and such letters are not cut by hand.</summary>
    private const int MostCorners = 4_000;

    public void Check(FitView view, FindingBag findings)
    {
        var reported = new HashSet<Location>();
        foreach (var piece in view.Pieces)
        {
            if (piece.Kind is not (PieceKind.Word or PieceKind.Outline) || piece.Outline.Corners > MostCorners
                || !reported.Add(piece.Location) || ThinnestOf(piece.Outline) is not { } thinnest)
            {
                continue;
            }

            findings.Add(FindingCatalogue.TooThinToCut, piece.Location,
                $"{CheckText.Begin(CheckText.Called(piece))} is only about {LengthFormat.Millimetres(thinnest)} thick at its thinnest; "
                    + $"a hand needs at least {view.Say.Length(Least)}.",
                HintFor(view, piece, thinnest));
        }
    }

    private static string HintFor(FitView view, Piece piece, Length thinnest)
    {
        var heavier = piece.Kind == PieceKind.Word ? "choose heavier lettering, such as lettering rounded bold" : "simplify the drawing";
        var wide = view.Say.UpToMark(Length.NearestMillimetres(
            piece.Box.Width.Millimetres * Least.Millimetres / Math.Max(thinnest.Millimetres, 0.01)));
        return wide <= view.Card.SizeOf(piece.Face).Width
            ? $"Make it {view.Say.Typed(wide)} wide, or {heavier}; a cutting machine may manage it as it is."
            : $"Make it larger, or {heavier}; a cutting machine may manage it as it is.";
    }

    /// <summary>The width of the thinnest place, rounded down to a tenth of a millimetre; null if none is thinner than the least.</summary>
    private static Length? ThinnestOf(Outline outline)
    {
        var parts = outline.Parts;
        if (parts == 0 || Holds(Least.Millimetres))
        {
            return null;
        }

        var (holds, parted) = (0.0, Least.Millimetres);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (holds + parted) / 2;
            (holds, parted) = Holds(middle) ? (middle, parted) : (holds, middle);
        }

        return Length.NearestMillimetres(Math.Max(1, Math.Floor(holds * 10)) / 10);

        bool Holds(double width) => outline.Grow(-width / 2).Parts == parts;
    }
}
