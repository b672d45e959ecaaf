using Sketch.Drafts;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>The distances that a piece's clauses write for each side.</summary>
internal static class Distances
{
    /// <summary>The distance written for a side (<c>left 1/4</c>, <c>lower right 3/8</c>), or null.</summary>
    public static Length? Written(PieceDraft draft, Edge edge)
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

    /// <summary>What is to show at a side, or null where the piece has no <c>showing</c>; a side that is not named shows nothing.</summary>
    public static Length? Showing(PieceDraft draft, Edge edge)
    {
        Length? amount = null;
        foreach (var showing in draft.All<ShowingClause>())
        {
            amount = showing.Edge == edge ? showing.Amount : showing.Edge is null ? amount is null || amount == Length.Zero ? showing.Amount : amount : amount ?? Length.Zero;
            if (showing.Edge == edge)
            {
                return amount;
            }
        }

        return amount;
    }

    /// <summary>How far the piece is held off a side: the distance written, or what shows, or nothing.</summary>
    public static Length Off(PieceDraft draft, Edge edge) => Written(draft, edge) ?? Showing(draft, edge) ?? Length.Zero;
}
