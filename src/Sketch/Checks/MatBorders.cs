using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Mats with uneven borders that no clause asks for, and mats that show next to nothing.</summary>
internal sealed class MatBorders : IFitRule
{
    /// <summary>The least border that can be cut and glued straight: 1/32 in, about 0.8 mm (common practice, no source).</summary>
    public static readonly Length Least = Length.Inch(0, 1, 32);

    public void Check(FitView view, FindingBag findings)
    {
        var reported = new HashSet<Location>();
        foreach (var piece in view.Pieces)
        {
            if (piece.Border is not { } border || !reported.Add(piece.Location))
            {
                continue;
            }

            var shown = Sides.All.Select(s => border.On(s)).ToList();
            var (least, most) = (shown.Min(), shown.Max());
            var subject = CheckText.Begin(CheckText.Called(piece));
            if (!piece.UnevenAsWritten && most - least > FitView.Tolerance)
            {
                findings.Add(FindingCatalogue.UnevenMat, piece.Location, $"{subject} shows {Reported(view.Say, border)}.",
                    $"For an even border write mat border {view.Say.Typed(least > Length.Zero ? least : most)}; if it is intended, "
                        + $"give each side, such as border top {view.Say.Typed(border.Top)}.");
            }

            // A mat that shows nothing at all is hidden, and one written flush need not show.
            var narrow = Sides.All.Where(s => border.On(s) < Least && !(piece.UnevenAsWritten && border.On(s) == Length.Zero)).ToList();
            if (narrow.Count > 0 && most > Length.Zero)
            {
                findings.Add(FindingCatalogue.NarrowMat, piece.Location,
                    $"{subject} shows only {view.Say.Length(narrow.Max(s => border.On(s)))} {At(narrow)}, which is hard to cut and "
                        + "glue evenly.",
                    $"Write mat border {view.Say.Typed(view.Say.UpToMark(Least * 2))}, or leave the mat out.");
            }
        }
    }

    private static string Reported(CheckText say, Insets border) =>
        border.Left == border.Right && border.Top == border.Bottom
            ? $"{say.Length(border.Left)} at the left and right, but {say.Length(border.Top)} at the top and bottom"
            : CheckText.List([.. Sides.All.Select(s => $"{say.Length(border.On(s))} at the {s.Name()}")]);

    private static string At(List<Edge> sides) =>
        sides.Count == 4 ? "on each side" : "at the " + CheckText.List([.. sides.Select(s => s.Name())]);
}
