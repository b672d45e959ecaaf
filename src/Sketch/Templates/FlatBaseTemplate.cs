using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// What a template shows on the card base before it is folded, seen from the side that shows the front.
/// </summary>
internal static class FlatBaseTemplate
{
    /// <summary>The length of an arrow that is seen at once and leaves room for words, in millimetres.</summary>
    private const double LongestArrow = 60;

    /// <summary>
    /// An arrow along the fold, in the panel before the first one: card folds without cracks when its grain runs with the fold (common
    /// practice, no source).
    /// </summary>
    public static (Point Middle, Point Half) Grain(BaseSheet sheet)
    {
        var (width, height, quarter) =
            (sheet.Size.Width.Millimetres, sheet.Size.Height.Millimetres, sheet.Scores[0].Millimetres / 4);
        return sheet.HasUprightScores
            ? (new(quarter, height / 2), new(0, Math.Min(LongestArrow, height * 0.8) / 2))
            : (new(width / 2, quarter), new(Math.Min(LongestArrow, width * 0.8) / 2, 0));
    }
}
