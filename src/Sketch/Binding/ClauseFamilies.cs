using System.Collections.Immutable;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Binding;

/// <summary>
/// Which clauses specify the same thing, so that a change replaces them and a line that specifies one thing twice is reported.
/// </summary>
internal static class ClauseFamilies
{
    private const string ShowingEverywhere = "showing ";

    private const string WrapAtBothEnds = "wrap ";

    private static readonly ImmutableArray<string> PlacesAcross = ["left", "right", "beside across", "over across"];

    private static readonly ImmutableArray<string> PlacesDown = ["top", "bottom", "beside down", "over down"];

    /// <summary>The names of what a clause specifies; a corner specifies two things.</summary>
    public static ImmutableArray<string> Of(Clause clause) => clause switch
    {
        EdgeClause e => [e.Edge.Name()],
        CornerClause c => [c.Horizontal.Name(), c.Vertical.Name()],
        ShowingClause s => [ShowingEverywhere + s.Edge],
        BesideClause b => [b.Side is Side.LeftOf or Side.RightOf ? "beside across" : "beside down"],
        OverClause o => [o.Edge is Edge.Left or Edge.Right ? "over across" : "over down"],
        GapClause or SpreadClause => ["gaps"],
        BorderClause b => ["border " + b.Edge],
        WrapClause w => [WrapAtBothEnds + w.Edge],
        ArchedClause or OnCircleClause => ["bend"],
        EdgeCutClause c => ["edge cut " + c.Edge],
        ScoredClause s => [$"scored {s.Edge.Name()} {s.Distance.Nanometres}"],
        WithClause w => ["with " + w.Role.Text.ToLowerInvariant()],
        FlagClause f => [f.Word],
        MeasureClause m => [m.Word],
        SideClause s => [s.IsBack ? "back" : "front"],
        TrimClause t => ["trim " + t.Edge.Name()],
        QuantityClause q => ["count " + q.Noun],
        ShiftClause s => [s.Direction is Direction.Left or Direction.Right ? "shift across" : "shift down"],
        _ => [clause.GetType().Name],
    };

    /// <summary>
    /// The old clauses, replaced by new ones where both specify the same. A new place along an axis replaces the old place along it:
    /// <c>left</c> replaces <c>right</c>.
    /// </summary>
    public static ImmutableArray<BoundClause> Replace(ImmutableArray<BoundClause> old, ImmutableArray<BoundClause> changes)
    {
        var settled = changes.SelectMany(c => Replaced(c.Clause)).ToHashSet();
        return [.. old.SelectMany(c => Remaining(c, settled)), .. changes];
    }

    private static IEnumerable<BoundClause> Remaining(BoundClause clause, HashSet<string> settled)
    {
        if (clause.Clause is CornerClause corner)
        {
            // Half of a corner may be replaced while the other half is kept.
            if (!settled.Contains(corner.Horizontal.Name()))
            {
                yield return clause with { Clause = new EdgeClause(corner.Horizontal, corner.Distance, corner.Span) };
            }

            if (!settled.Contains(corner.Vertical.Name()))
            {
                yield return clause with { Clause = new EdgeClause(corner.Vertical, corner.Distance, corner.Span) };
            }
        }
        else if (!Of(clause.Clause).Any(settled.Contains))
        {
            yield return clause;
        }
    }

    /// <summary>What a new clause replaces: all that specifies the same thing in another way.</summary>
    private static IEnumerable<string> Replaced(Clause clause)
    {
        foreach (var family in Of(clause))
        {
            yield return family;
            var others = PlacesAcross.Contains(family) ? PlacesAcross
                : PlacesDown.Contains(family) ? PlacesDown
                : family == nameof(CentreClause) ? [.. PlacesAcross, .. PlacesDown]
                : family == ShowingEverywhere
                ? [.. PlacesAcross, .. PlacesDown, .. Enum.GetValues<Edge>().Select(e => ShowingEverywhere + e)]
                : family == WrapAtBothEnds ? [.. Enum.GetValues<Edge>().Select(e => WrapAtBothEnds + e)]
                : ImmutableArray<string>.Empty;
            foreach (var other in others)
            {
                yield return other;
            }
        }
    }
}
