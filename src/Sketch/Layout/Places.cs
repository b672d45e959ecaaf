using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// Where every piece lies on its face, as if nothing were turned. Sizes never read a place, so places come second; a place that leads
/// back to itself is a circle and reported.
/// </summary>
internal sealed class Places(StackSizes sizes, NameLookup names, UnitSystem units, FindingBag findings)
{
    private readonly Repeats _repeats = new(sizes, units, findings);
    private readonly List<CopySet> _open = [];

    /// <summary>
    /// The low edge (left or top) of the outermost box of a unit; null when it cannot be worked out, which has then been reported.
    /// </summary>
    public Length? Of(CopySet unit, Axis axis)
    {
        var memo = unit.Places[(int)axis];
        if (memo.IsDone)
        {
            return memo.HasValue ? memo.Value : null;
        }

        if (memo.IsOpen)
        {
            var lines = _open.Skip(_open.IndexOf(unit)).Append(unit).Select(u => $"line {u.Draft.Location.Start.Line}");
            findings.Add(FindingCatalogue.Circle, unit.Draft.Location,
                $"The place of {unit.Called} depends on itself: {string.Join(", which is placed by ", lines)}.",
                    "Place one of these pieces by a distance from an edge.");
            return null;
        }

        if (_open.Count >= Limits.Chain)
        {
            findings.Add(FindingCatalogue.LongChain, unit.Draft.Location,
                $"The place of {unit.Called} depends on more than {Limits.Chain} other pieces.",
                    "Place some of these pieces by a distance from an edge.");
            return null;
        }

        memo.IsOpen = true;
        _open.Add(unit);
        var place = Solve(unit, axis);
        _open.RemoveAt(_open.Count - 1);
        if (place is { } p && p.Abs() > Length.Limit)
        {
            findings.Add(FindingCatalogue.TooFar, unit.Draft.Location, $"{unit.Called} lies more than a kilometre away.",
                "Write smaller distances.");
            place = null;
        }

        memo.Settle(place ?? default, place is not null);
        return place;
    }

    /// <summary>The low edge of one layer of one copy.</summary>
    public Length? Of(Node node, int layer, Axis axis) =>
        Of(node.Unit, axis) is { } low && _repeats.Of(node.Unit, axis) is { } block && sizes.Of(node, axis) is { } stack
            ? low + block.Offsets[node.Index] + stack.Inset(layer) + ShiftOf(node.Draft, axis) - ShiftOf(node.Unit.Draft, axis)
            : null;

    private static Length ShiftOf(BoundPiece draft, Axis axis)
    {
        var sum = Length.Zero;
        foreach (var shift in draft.All<ShiftClause>())
        {
            sum += shift.Direction switch
            {
                Direction.Left when axis == Axis.Across => -shift.Distance,
                Direction.Right when axis == Axis.Across => shift.Distance,
                Direction.Up when axis == Axis.Down => -shift.Distance,
                Direction.Down when axis == Axis.Down => shift.Distance,
                _ => Length.Zero,
            };
        }

        return sum;
    }

    /// <summary>One axis of a box that others are placed by: its low edge, size and the line on which things are centred.</summary>
    private readonly record struct Span(Length Low, Length Size, Length Centre)
    {
        public Length High => Low + Size;
    }

    private Length? Solve(CopySet unit, Axis axis)
    {
        if (_repeats.Of(unit, axis) is not { } block || CentreWithin(unit, axis) is not { } ownCentre)
        {
            return null;
        }

        return Rule(unit, axis, block.Size, ownCentre) is { } low ? low + ShiftOf(unit.Draft, axis) : null;
    }

    private Length? Rule(CopySet unit, Axis axis, Length size, Length ownCentre)
    {
        var draft = unit.Draft;
        var (lowEdge, highEdge) = axis == Axis.Across ? (Edge.Left, Edge.Right) : (Edge.Top, Edge.Bottom);
        var low = Distances.Written(draft, lowEdge);
        var high = Distances.Written(draft, highEdge);
        var beside = draft.All<BesideClause>().FirstOrDefault(b => AxisOf(b.Side) == axis);
        var over = draft.All<OverClause>().FirstOrDefault(o => AxisOf(o.Edge) == axis);
        var shows = Distances.ShowsOn(draft, axis);
        if (ReportPlacedTwice(unit, axis,
            (low is not null || high is not null, beside is not null, over is not null, shows && !IsFull(draft, axis))))
        {
            return null;
        }

        if (low is not null && high is not null && !IsFull(draft, axis) && !TakesWholeRoom(unit, axis))
        {
            findings.Add(FindingCatalogue.PlacedTwice, draft.Location,
                $"{unit.Called} is placed by both {lowEdge.ToString().ToLowerInvariant()} and "
                    + $"{highEdge.ToString().ToLowerInvariant()}, but has its own size.",
                        $"Remove one, or write full as its {(axis == Axis.Across ? "width" : "height")}.");
            return null;
        }

        if (beside is not null)
        {
            return Target(unit, beside.Of, beside, axis, outer: true) is { } target
                ? beside.Side is Side.Above or Side.LeftOf ? target.Low - beside.Distance - size : target.High + beside.Distance
                : null;
        }

        if (over is not null)
        {
            return Target(unit, over.Of, over, axis, outer: true) is { } target
                ? (over.Edge is Edge.Left or Edge.Top ? target.Low : target.High) - ownCentre
                : null;
        }

        if (Reference(unit, axis) is not { } reference)
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
            ReportLooseRepeat(unit, axis, size);
            return reference.Low + Distances.Showing(draft, lowEdge)!.Value;
        }

        return ByOther(unit, axis, size, ownCentre, reference);
    }

    /// <summary>
    /// The line across an axis that stays where it is when the one piece of a unit is made larger or smaller; null if it has no place.
    /// </summary>
    public Length? Anchor(Node node, Axis axis)
    {
        var draft = node.Draft;
        if (Of(node, draft.Mats.Length, axis) is not { } low || Of(node, 0, axis) is not { } own || sizes.Of(node, axis) is not { } stack)
        {
            return null;
        }

        var (lowEdge, highEdge) = axis == Axis.Across ? (Edge.Left, Edge.Right) : (Edge.Top, Edge.Bottom);
        var beside = draft.All<BesideClause>().FirstOrDefault(b => AxisOf(b.Side) == axis);
        var along = draft.Find<AlongClause>() is { } a && AxisOf(a.Edge) == axis ? a.Edge : (Edge?)null;
        var isLow = beside?.Side is Side.Below or Side.RightOf || Distances.Written(draft, lowEdge) is not null || along == lowEdge;
        var isHigh = beside?.Side is Side.Above or Side.LeftOf || Distances.Written(draft, highEdge) is not null || along == highEdge;
        return isLow ? low : isHigh ? low + stack.Sizes[^1] : own + OwnCentre(node, axis, stack.Own);
    }

    /// <summary>Copies with a size of their own rarely fill exactly what a <c>showing</c> leaves.</summary>
    private void ReportLooseRepeat(CopySet unit, Axis axis, Length size)
    {
        if (unit.IsRepeat && sizes.Room(unit, axis) is { } room && room != size)
        {
            findings.Add(FindingCatalogue.SizesContradict, unit.Draft.LocationOf(unit.Draft.Find<ShowingClause>()),
                $"The copies take {units.Format().WithUnit(size)} {(axis == Axis.Across ? "across" : "down")}, but what shows leaves "
                    + $"{units.Format().WithUnit(room)}.",
                "Write spread, or leave their size out so that they share the room, or place them by an edge in place of showing.");
        }
    }

    /// <summary>Places that follow from another piece, else the middle.</summary>
    private Length? ByOther(CopySet unit, Axis axis, Length size, Length ownCentre, Span reference)
    {
        var draft = unit.Draft;
        if (draft.Find<AroundClause>() is { } around)
        {
            return Target(unit, around.What, around, axis, outer: false) is { } inner ? inner.Low - (size - inner.Size) / 2 : null;
        }

        if (draft.Find<AlongClause>() is { } along)
        {
            var edge = along.Of is { } of ? Target(unit, of, along, axis, outer: false) : reference;
            return edge is not { } e ? null
                : AxisOf(along.Edge) == axis ? along.Edge is Edge.Left or Edge.Top ? e.Low : e.High - size
                : e.Centre - ownCentre;
        }

        // Next to a piece, the other direction is centred on it.
        if (draft.Find<BesideClause>() is { } beside)
        {
            return Target(unit, beside.Of, beside, axis, outer: true) is { } target ? target.Centre - ownCentre : null;
        }

        return IsFull(draft, axis)
            ? reference.Low + Distances.Off(draft, axis == Axis.Across ? Edge.Left : Edge.Top) : reference.Centre - ownCentre;
    }

    private bool ReportPlacedTwice(CopySet unit, Axis axis, (bool Distance, bool Beside, bool Over, bool Showing) rules)
    {
        var count = (rules.Distance ? 1 : 0) + (rules.Beside ? 1 : 0) + (rules.Over ? 1 : 0) + (rules.Showing ? 1 : 0);
        if (count < 2)
        {
            return false;
        }

        findings.Add(FindingCatalogue.PlacedTwice, unit.Draft.Location,
            $"{count} clauses place {unit.Called} {(axis == Axis.Across ? "from left to right" : "from top to bottom")}.",
                "Keep one of them, and adjust the place with shift.");
        return true;
    }

    private static bool IsFull(BoundPiece draft, Axis axis) =>
        draft.Size is BoxSize box && (axis == Axis.Across ? box.Width : box.Height) is FullExtent;

    /// <summary>A repeat that is spread, or whose copies share the room, lies between both distances.</summary>
    private static bool TakesWholeRoom(CopySet unit, Axis axis) =>
        (unit.IsRepeat && (unit.Draft.Size is null || (unit.Draft.Find<SpreadClause>() is not null && unit.Arrangement!.Count(axis) > 1)))
        || (unit.Draft.Find<AlongClause>() is { } along && AxisOf(along.Edge) != axis);

    private static Axis AxisOf(Edge edge) => edge is Edge.Left or Edge.Right ? Axis.Across : Axis.Down;

    private static Axis AxisOf(Side side) => side is Side.LeftOf or Side.RightOf ? Axis.Across : Axis.Down;

    /// <summary>What distances are measured on: the parent's own box, the face, or the piece that is named.</summary>
    private Span? Reference(CopySet unit, Axis axis)
    {
        if (unit.Draft.Find<MeasuredFromClause>() is { } from)
        {
            return Target(unit, from.From, from, axis, outer: false);
        }

        if (unit.Parent is { } parent)
        {
            return Of(parent, 0, axis) is { } low && sizes.Of(parent, axis) is { } stack
                ? new(low, stack.Own, low + OwnCentre(parent, axis, stack.Own))
                : null;
        }

        var size = axis == Axis.Across ? unit.Face.Size.Width : unit.Face.Size.Height;
        return new(Length.Zero, size, size / 2);
    }

    private Span? Target(CopySet unit, PathSyntax path, Clause clause, Axis axis, bool outer)
    {
        if (IsFlap(unit, path))
        {
            return axis == Axis.Across
                ? new(Length.Zero, unit.Face.Size.Width, unit.Face.Size.Width / 2)
                : new(Length.Zero, unit.Face.Flap!.Value, unit.Face.Flap.Value / 2);
        }

        if (names.Find(unit, path, unit.Draft.LocationOf(clause).Source) is not { } other
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

    private static bool IsFlap(CopySet unit, PathSyntax path) =>
        unit.Face.Flap is not null && path.Names is [var only] && only.Text.Equals("flap", StringComparison.OrdinalIgnoreCase)
        && !unit.Face.ByName.ContainsKey("flap");

    /// <summary>
    /// From the low edge of a unit's outermost box to the line by which it is centred: its middle, but the circumcentre of a star.
    /// </summary>
    private Length? CentreWithin(CopySet unit, Axis axis)
    {
        if (_repeats.Of(unit, axis) is not { } block)
        {
            return null;
        }

        return axis == Axis.Across || unit is not { IsRepeat: false, Copies: [{ Draft.Kind: PieceKind.Star } star] } ? block.Size / 2
            : sizes.Of(star, axis) is { } stack ? stack.Inset(0) + OwnCentre(star, axis, stack.Own) : null;
    }

    private Length OwnCentre(Node node, Axis axis, Length own)
    {
        if (node.Draft.Kind != PieceKind.Star || axis == Axis.Across)
        {
            return own / 2;
        }

        var width = sizes.Of(node, Axis.Across)?.Own ?? own;
        return ShapeProportions.CentreOf(Shape.Star, ShapeStyles.Of(node.Draft), new(width, own)).Top;
    }
}
