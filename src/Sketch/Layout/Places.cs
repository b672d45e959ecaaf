using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// Where every piece lies on its face, as if nothing were turned. Sizes never depend on a place, so places come second; a place that
/// depends on itself is a circle and is reported.
/// </summary>
internal sealed class Places(StackSizes sizes, NameLookup names, UnitSystem units, FindingBag findings)
{
    private readonly Repeats _repeats = new(sizes, units, findings);
    private readonly List<CopySet> _open = [];

    /// <summary>
    /// The low edge (left or top) of the outermost box of a set of copies; null when it cannot be computed, which has been reported.
    /// </summary>
    public Length? Of(CopySet set, Axis axis)
    {
        var memo = set.Places[(int)axis];
        if (memo.IsDone)
        {
            return memo.HasValue ? memo.Value : null;
        }

        if (memo.IsOpen)
        {
            var lines = _open.Skip(_open.IndexOf(set)).Append(set).Select(u => $"line {u.Bound.Location.Start.Line}");
            findings.Add(FindingCatalogue.Circle, set.Bound.Location,
                $"The place of {set.Called} depends on itself: {string.Join(", which is placed by ", lines)}.",
                    "Place one of these pieces by a distance from an edge.");
            return null;
        }

        if (_open.Count >= Limits.Chain)
        {
            findings.Add(FindingCatalogue.LongChain, set.Bound.Location,
                $"The place of {set.Called} depends on more than {Limits.Chain} other pieces.",
                    "Place some of these pieces by a distance from an edge.");
            return null;
        }

        memo.IsOpen = true;
        _open.Add(set);
        var place = Solve(set, axis);
        _open.RemoveAt(_open.Count - 1);
        if (place is { } p && p.Abs() > Length.Limit)
        {
            findings.Add(FindingCatalogue.TooFar, set.Bound.Location, $"{set.Called} lies more than a kilometre away.",
                "Write smaller distances.");
            place = null;
        }

        memo.Settle(place ?? default, place is not null);
        return place;
    }

    /// <summary>The low edge of one layer of one copy.</summary>
    public Length? Of(Node node, int layer, Axis axis) =>
        Of(node.Set, axis) is { } low && _repeats.Of(node.Set, axis) is { } block && sizes.Of(node, axis) is { } stack
            ? low + block.Offsets[node.Index] + stack.Inset(layer) + node.Bound.Rules.Shift(axis) - node.Set.Bound.Rules.Shift(axis)
            : null;

    /// <summary>One axis of a box that others are placed by: its low edge, its size and the line on which others are centred.</summary>
    private readonly record struct Span(Length Low, Length Size, Length Centre)
    {
        public Length High => Low + Size;
    }

    private Length? Solve(CopySet set, Axis axis)
    {
        if (_repeats.Of(set, axis) is not { } block || CentreWithin(set, axis) is not { } ownCentre)
        {
            return null;
        }

        return Rule(set, axis, block.Size, ownCentre) is { } low ? low + set.Bound.Rules.Shift(axis) : null;
    }

    private Length? Rule(CopySet set, Axis axis, Length size, Length ownCentre)
    {
        var bound = set.Bound;
        var (lowEdge, highEdge) = axis.Edges();
        var low = bound.Rules.DistanceFrom(lowEdge);
        var high = bound.Rules.DistanceFrom(highEdge);
        var shows = bound.Rules.ShowsOn(axis);
        if (ReportPlacedTwice(set, axis,
            (low is not null || high is not null, bound.Rules.BesideOn(axis) is not null, bound.Rules.OverOn(axis) is not null,
                shows && !bound.IsFull(axis))))
        {
            return null;
        }

        if (low is not null && high is not null && !bound.IsFull(axis) && !TakesWholeRoom(set, axis))
        {
            findings.Add(FindingCatalogue.PlacedTwice, bound.Location,
                $"{set.Called} is placed by both {lowEdge.Name()} and {highEdge.Name()}, "
                    + "but has its own size.",
                        $"Remove one, or write full as its {(axis == Axis.Across ? "width" : "height")}.");
            return null;
        }

        if (bound.Rules.BesideOn(axis) is { } beside)
        {
            return Target(set, beside.Clause.Of, beside.Source, axis, outer: true) is { } target
                ? beside.Clause.Side is Side.Above or Side.LeftOf ? target.Low - beside.Clause.Distance - size
                    : target.High + beside.Clause.Distance
                : null;
        }

        if (bound.Rules.OverOn(axis) is { } over)
        {
            return Target(set, over.Clause.Of, over.Source, axis, outer: true) is { } target
                ? (over.Clause.Edge is Edge.Left or Edge.Top ? target.Low : target.High) - ownCentre
                : null;
        }

        if (Reference(set, axis) is not { } reference)
        {
            return null;
        }

        if (low is { } l)
        {
            return reference.Low + l;
        }

        if (high is { } h)
        {
            return reference.High - h - size;
        }

        if (shows)
        {
            ReportLooseRepeat(set, axis, size);
            return reference.Low + bound.Rules.ShownAt(lowEdge)!.Value;
        }

        return ByOther(set, axis, size, ownCentre, reference);
    }

    /// <summary>
    /// The line across an axis that stays fixed when the one piece of a set is made larger or smaller; null if it has no place.
    /// </summary>
    public Length? Anchor(Node node, Axis axis)
    {
        var bound = node.Bound;
        if (Of(node, bound.Mats.Length, axis) is not { } low || Of(node, 0, axis) is not { } own || sizes.Of(node, axis) is not { } stack)
        {
            return null;
        }

        var (lowEdge, highEdge) = axis.Edges();
        var beside = bound.Rules.BesideOn(axis)?.Clause.Side;
        var along = bound.Rules.Along is { Clause.Edge: var a } && a.Axis() == axis ? a : (Edge?)null;
        var isLow = beside is Side.Below or Side.RightOf || bound.Rules.DistanceFrom(lowEdge) is not null || along == lowEdge;
        var isHigh = beside is Side.Above or Side.LeftOf || bound.Rules.DistanceFrom(highEdge) is not null || along == highEdge;
        return isLow ? low : isHigh ? low + stack.Sizes[^1] : own + OwnCentre(node, axis, stack.Own);
    }

    /// <summary>Reports copies with a size of their own that do not exactly fill what a <c>showing</c> leaves.</summary>
    private void ReportLooseRepeat(CopySet set, Axis axis, Length size)
    {
        if (set.IsRepeat && sizes.Room(set, axis) is { } room && room != size)
        {
            findings.Add(FindingCatalogue.SizesContradict, set.Bound.Rules.Showing?.Location ?? set.Bound.Location,
                $"The copies take {units.Format().WithUnit(size)} {(axis == Axis.Across ? "across" : "down")}, but what shows leaves "
                    + $"{units.Format().WithUnit(room)}.",
                "Write spread, or leave their size out so that they share the room, or place them by an edge in place of showing.");
        }
    }

    /// <summary>A place that follows from another piece, else the middle.</summary>
    private Length? ByOther(CopySet set, Axis axis, Length size, Length ownCentre, Span reference)
    {
        var bound = set.Bound;
        if (bound.Rules.Around is { } around)
        {
            return Target(set, around.Clause.What, around.Source, axis, outer: false) is { } inner
                ? inner.Low - (size - inner.Size) / 2 : null;
        }

        if (bound.Rules.Along is { } along)
        {
            var edge = along.Clause.Of is { } of ? Target(set, of, along.Source, axis, outer: false) : reference;
            return edge is not { } e ? null
                : along.Clause.Edge.Axis() == axis ? along.Clause.Edge is Edge.Left or Edge.Top ? e.Low : e.High - size
                : e.Centre - ownCentre;
        }

        // Beside a piece, the other direction is centred on it.
        if (bound.Rules.Beside is { } beside)
        {
            return Target(set, beside.Clause.Of, beside.Source, axis, outer: true) is { } target ? target.Centre - ownCentre : null;
        }

        return bound.IsFull(axis) ? reference.Low : reference.Centre - ownCentre;
    }

    private bool ReportPlacedTwice(CopySet set, Axis axis, (bool Distance, bool Beside, bool Over, bool Showing) rules)
    {
        var count = (rules.Distance ? 1 : 0) + (rules.Beside ? 1 : 0) + (rules.Over ? 1 : 0) + (rules.Showing ? 1 : 0);
        if (count < 2)
        {
            return false;
        }

        findings.Add(FindingCatalogue.PlacedTwice, set.Bound.Location,
            $"{count} clauses place {set.Called} {(axis == Axis.Across ? "from left to right" : "from top to bottom")}.",
                "Keep one of them, and adjust the place with shift.");
        return true;
    }

    /// <summary>Whether a repeat takes the whole room between both distances: it is spread, or its copies share the room.</summary>
    private static bool TakesWholeRoom(CopySet set, Axis axis) =>
        (set.IsRepeat && (set.Bound.Size is null || (set.Bound.Rules.Spread is not null && set.Arrangement!.Count(axis) > 1)))
        || (set.Bound.Rules.Along is { } along && along.Clause.Edge.Axis() != axis);

    /// <summary>What distances are measured from: the parent's own box, the face, or the piece that is named.</summary>
    private Span? Reference(CopySet set, Axis axis)
    {
        if (set.Bound.Rules.MeasuredFrom is { } from)
        {
            return Target(set, from.Clause.From, from.Source, axis, outer: false);
        }

        if (set.Parent is { } parent)
        {
            return Of(parent, 0, axis) is { } low && sizes.Of(parent, axis) is { } stack
                ? new(low, stack.Own, low + OwnCentre(parent, axis, stack.Own))
                : null;
        }

        var size = axis == Axis.Across ? set.Face.Size.Width : set.Face.Size.Height;
        return new(Length.Zero, size, size / 2);
    }

    private Span? Target(CopySet set, PathSyntax path, SourceText source, Axis axis, bool outer)
    {
        if (IsFlap(set, path))
        {
            return axis == Axis.Across
                ? new(Length.Zero, set.Face.Size.Width, set.Face.Size.Width / 2)
                : new(Length.Zero, set.Face.Flap!.Value, set.Face.Flap.Value / 2);
        }

        if (names.Find(set, path, source) is not { } other
            || Of(other, axis) is not { } low || _repeats.Of(other, axis) is not { } block || CentreWithin(other, axis) is not { } centre)
        {
            return null;
        }

        if (outer || other.IsRepeat)
        {
            return new(low, block.Size, low + centre);
        }

        return sizes.Of(other.Copies[0], axis) is { } stack && low + stack.Inset(0) is var own
            ? new(own, stack.Own, own + OwnCentre(other.Copies[0], axis, stack.Own))
            : null;
    }

    private static bool IsFlap(CopySet set, PathSyntax path) =>
        set.Face.Flap is not null && path.Names is [var only] && only.Text.Equals("flap", StringComparison.OrdinalIgnoreCase)
        && !set.Face.ByName.ContainsKey("flap");

    /// <summary>
    /// From the low edge of the outermost box of a set to the line by which it is centred: its middle, but the circumcentre of a star.
    /// </summary>
    private Length? CentreWithin(CopySet set, Axis axis)
    {
        if (_repeats.Of(set, axis) is not { } block)
        {
            return null;
        }

        return axis == Axis.Across || set is not { IsRepeat: false, Copies: [{ Bound.Kind: PieceKind.Star } star] } ? block.Size / 2
            : sizes.Of(star, axis) is { } stack ? stack.Inset(0) + OwnCentre(star, axis, stack.Own) : null;
    }

    private Length OwnCentre(Node node, Axis axis, Length own)
    {
        if (node.Bound.Kind != PieceKind.Star || axis == Axis.Across)
        {
            return own / 2;
        }

        var width = sizes.Of(node, Axis.Across)?.Own ?? own;
        return ShapeProportions.CentreOf(Shape.Star, node.Bound.Rules.Style, new(width, own)).Top;
    }
}
