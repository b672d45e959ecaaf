using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Paper that falls into parts when it is cut, such as letters that do not touch, unless one of its mats holds them together. For letters
/// and drawings the hint names the narrowest even border of a mat, on the marks that makers cut by, that is in one part.
/// </summary>
internal sealed class FallsApart : IFitRule
{
    /// <summary>The widest border tried, in steps: 2 in, or 32 mm.</summary>
    private const int MostSteps = 32;

    /// <summary>Parts beyond which no border is searched for: growing that many letters takes long.</summary>
    private const int MostParts = 200;

    public void Check(FitView view, FindingBag findings)
    {
        var reported = new HashSet<Location>();
        for (var i = 0; i < view.Pieces.Length; i++)
        {
            var piece = view.Pieces[i];
            if (view.OwnerOf(i) != i || reported.Contains(piece.Location))
            {
                continue;
            }

            var parts = piece.CutParts;
            if (parts > 1 && !view.StackOf(i).Any(layer => view.Pieces[layer].CutParts == 1))
            {
                reported.Add(piece.Location);
                findings.Add(FindingCatalogue.FallsApart, piece.Location,
                    $"{CheckText.Begin(CheckText.Called(piece))} falls into {parts} parts when it is cut.",
                        HintFor(view.Say, piece, parts));
            }
        }
    }

    private static string HintFor(CheckText say, Piece piece, int parts) =>
        piece.Kind is not (PieceKind.Word or PieceKind.Outline) ? "Make its window smaller, so that paper is left beside it."
        : parts <= MostParts && JoiningBorder(piece.Outline, say.Step) is { } border
            ? $"To keep them together write beneath it mat border {say.Typed(border)}, the narrowest that joins them."
        : "To keep them together put them on a panel.";

    /// <summary>The least number of steps by which the outline must grow to become one part; null when no number does.</summary>
    private static Length? JoiningBorder(Outline outline, Length step)
    {
        var (apart, joined) = (0, 1);
        while (!IsJoined(joined))
        {
            if (joined == MostSteps)
            {
                return null;
            }

            (apart, joined) = (joined, joined * 2);
        }

        while (joined - apart > 1)
        {
            var middle = (apart + joined) / 2;
            (apart, joined) = IsJoined(middle) ? (apart, middle) : (middle, joined);
        }

        return step * joined;

        bool IsJoined(int steps) => outline.Grow((step * steps).Millimetres, closeHoles: true).Parts == 1;
    }
}
