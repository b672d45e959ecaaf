using Sketch.Binding;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>The distances that a piece's clauses write for each side.</summary>
internal static class Distances
{
    /// <summary>The distance written for a side (<c>left 1/4</c>, <c>lower right 3/8</c>), or null.</summary>
    public static Length? Written(BoundPiece draft, Edge edge)
    {
        foreach (var clause in draft.Clauses)
        {
            switch (clause.Clause)
            {
                case EdgeClause e when e.Edge == edge:
                    return e.Distance;
                case CornerClause c when c.Horizontal == edge || c.Vertical == edge:
                    return c.Distance;
                default:
                    break;
            }
        }

        return null;
    }

    /// <summary>
    /// What is to show at a side, or null where the piece has no <c>showing</c>: what is written for the side, else for all sides; where
    /// only other sides are named, nothing shows.
    /// </summary>
    public static Length? Showing(BoundPiece draft, Edge edge)
    {
        var shows = false;
        Length? everywhere = null;
        foreach (var showing in draft.All<ShowingClause>())
        {
            if (showing.Edge == edge)
            {
                return showing.Amount;
            }

            shows = true;
            everywhere = showing.Edge is null ? showing.Amount : everywhere;
        }

        return shows ? everywhere ?? Length.Zero : null;
    }

    /// <summary>Whether a <c>showing</c> speaks of this axis: of all sides, or of one that bounds it.</summary>
    public static bool ShowsOn(BoundPiece draft, Axis axis) =>
        draft.All<ShowingClause>().Any(s => s.Edge is not { } edge || (edge is Edge.Left or Edge.Right) == (axis == Axis.Across));

    /// <summary>How far the piece is held off a side: the distance written, or what shows, or nothing.</summary>
    public static Length Off(BoundPiece draft, Edge edge) => Written(draft, edge) ?? Showing(draft, edge) ?? Length.Zero;
}
