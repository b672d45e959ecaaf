using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Text;

namespace Sketch.Checks;

/// <summary>
/// What is glued to the front of a gate fold on both sides of the middle, where its two doors meet, so that they no longer open. What lies
/// on a piece of one door is glued to that door alone.
/// </summary>
internal sealed class AcrossBothDoors : IFitRule
{
    public void Check(FitView view, FindingBag findings)
    {
        if (view.Card.Base.Fold != Fold.Gate)
        {
            return;
        }

        var reported = new HashSet<Location>();
        for (var i = 0; i < view.Pieces.Length; i++)
        {
            var piece = view.Pieces[i];
            if (view.OwnerOf(i) == i && piece.Face == FaceKind.Front && piece.Matter is PieceMatter.Paper or PieceMatter.Ready
                && view.StackOf(i).Any(s => view.Pieces[s].LiesOn < 0 && IsAcross(view, view.Pieces[s])) && reported.Add(piece.Location))
            {
                findings.Add(FindingCatalogue.AcrossBothDoors, piece.Location,
                    $"{CheckText.Begin(CheckText.Called(piece))} lies across both doors and ties them together.",
                    "Indent it under a piece of one door, so that it is glued to that door alone, or move it onto one door.");
            }
        }
    }

    private static bool IsAcross(FitView view, Piece piece)
    {
        var (middle, tolerance) = (view.Card.Base.Closed.Width.Millimetres / 2, FitView.Tolerance.Millimetres);
        var bounds = piece.TurnedOutline.Bounds;
        return bounds.Left < middle - tolerance && bounds.Right > middle + tolerance;
    }
}
