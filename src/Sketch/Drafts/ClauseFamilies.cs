using System.Collections.Immutable;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Drafts;

/// <summary>
/// Which clauses say the same thing, so that a change replaces them and a line that says one twice is told.
/// </summary>
internal static class ClauseFamilies
{
    /// <summary>The names of what a clause settles; a corner settles two things.</summary>
    public static ImmutableArray<string> Of(Clause clause) => clause switch
    {
        EdgeClause e => [EdgeName(e.Edge)],
        CornerClause c => [EdgeName(c.Horizontal), EdgeName(c.Vertical)],
        ShowingClause s => ["showing " + s.Edge],
        BorderClause b => ["border " + b.Edge],
        WithClause w => ["with " + w.Role.Text.ToLowerInvariant()],
        FlagClause f => [f.Word],
        MeasureClause m => [m.Word],
        SideClause s => [s.IsBack ? "back" : "front"],
        QuantityClause q => ["count " + q.Noun],
        ShiftClause s => [s.Direction is Direction.Left or Direction.Right ? "shift across" : "shift down"],
        _ => [clause.GetType().Name],
    };

    /// <summary>
    /// The old clauses with the new ones put in their place. A new place in one direction replaces the old place in that direction:
    /// <c>left</c> does away with <c>right</c>.
    /// </summary>
    public static ImmutableArray<DraftClause> Replace(ImmutableArray<DraftClause> old, ImmutableArray<DraftClause> changes)
    {
        var settled = changes.SelectMany(c => Replaced(c.Clause)).ToHashSet();
        return [.. old.SelectMany(c => Remaining(c, settled)), .. changes];
    }

    private static IEnumerable<DraftClause> Remaining(DraftClause clause, HashSet<string> settled)
    {
        if (clause.Clause is CornerClause corner)
        {
            // Half of a corner may go while the other half stays.
            if (!settled.Contains(EdgeName(corner.Horizontal)))
            {
                yield return clause with { Clause = new EdgeClause(corner.Horizontal, corner.Distance, corner.Span) };
            }

            if (!settled.Contains(EdgeName(corner.Vertical)))
            {
                yield return clause with { Clause = new EdgeClause(corner.Vertical, corner.Distance, corner.Span) };
            }
        }
        else if (!Of(clause.Clause).Any(settled.Contains))
        {
            yield return clause;
        }
    }

    private static IEnumerable<string> Replaced(Clause clause)
    {
        foreach (var family in Of(clause))
        {
            yield return family;
            switch (family)
            {
                case "left" or "right":
                    yield return family == "left" ? "right" : "left";
                    break;
                case "top" or "bottom":
                    yield return family == "top" ? "bottom" : "top";
                    break;
                case "showing ":
                    foreach (var edge in Enum.GetValues<Edge>())
                    {
                        yield return "showing " + edge;
                    }

                    break;
                case nameof(CentreClause):
                    yield return "left";
                    yield return "right";
                    yield return "top";
                    yield return "bottom";
                    yield return nameof(BesideClause);
                    yield return nameof(OverClause);
                    break;
                default:
                    break;
            }
        }
    }

    private static string EdgeName(Edge edge) => edge.ToString().ToLowerInvariant();
}
