using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Sizes to cut that no ruler in sixteenths of an inch shows; in files in inches only, and not if the base
/// is metric and the units are simply missing. Straight-edged pieces are cut to both measures; for
/// a shape that is traced, one measure is chosen and the other follows, so one on the ruler is enough; what follows its letters is only
/// traced. The thickness of a foil line
/// is bought and not cut.
/// </summary>
internal sealed class OffTheRuler : IFitRule
{
    private static readonly LengthFormat Ruler = UnitSystem.Inches.Format();

    public void Check(FitView view, FindingBag findings)
    {
        if (view.Card.Units != UnitSystem.Inches || view.Card.Base.UndeclaredUnits is not null)
        {
            return;
        }

        var reported = new HashSet<Location>();
        for (var i = 0; i < view.Pieces.Length; i++)
        {
            var piece = view.Pieces[i];
            if (piece.Cut is not { } cut || IsOnRuler(piece, cut, view.Pieces[view.OwnerOf(i)].Kind) || !reported.Add(piece.Location))
            {
                continue;
            }

            findings.Add(FindingCatalogue.OffTheRuler, piece.Location,
                $"{CheckText.Begin(CheckText.Called(piece))} is cut {view.Say.Size(cut)}, which is between two sixteenths on a ruler.",
                HintFor(piece, cut));
        }
    }

    // Writing both measures would give up the proportions of a shape; a size that follows from another must not be written as well.
    private static string HintFor(Piece piece, Size cut) => (piece.Written, piece.Sizing, piece.Wrap == default) switch
    {
        _ when piece.IsReadyMade =>
            $"The nearest length is {Nearest(Length.Max(cut.Width, cut.Height))}: write that, or change the piece along which it runs.",
        (WrittenMeasure.Width, _, _) => $"The nearest is {Nearest(cut.Width)} wide: write that, and its height follows.",
        (WrittenMeasure.Height, _, _) => $"The nearest is {Nearest(cut.Height)} high: write that, and its width follows.",
        (_, (Sizing.Written, Sizing.Written), true) => $"The nearest is {Nearest(cut.Width)} x {Nearest(cut.Height)}: write that.",
        _ => $"The nearest is {Nearest(cut.Width)} x {Nearest(cut.Height)}: "
            + "change the border, gap, share or distance from which the size follows.",
    };

    private static bool IsOnRuler(Piece piece, Size cut, PieceKind kind) =>
        piece.IsReadyMade ? IsOnMark(Length.Max(cut.Width, cut.Height))
        : kind.Traits.FollowsLetters ? true
        : kind.Traits.IsCutByRuler && !IsPartOfFrame(piece) ? IsOnMark(cut.Width) && IsOnMark(cut.Height)
        : IsOnMark(cut.Width) || IsOnMark(cut.Height);

    /// <summary>A frame that covers a part of the way round is traced.</summary>
    private static bool IsPartOfFrame(Piece piece) => piece.Kind == PieceKind.Frame && piece.Finished != piece.Box;

    private static bool IsOnMark(Length length)
    {
        var off = new Length(length.Nanometres % Ruler.Step.Nanometres);
        return Length.Min(off, Ruler.Step - off) <= LengthFormat.Crumb;
    }

    private static string Nearest(Length length) => Ruler.Text(Ruler.Nearest(length));
}
