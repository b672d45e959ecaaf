using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>
/// Writes another place of a piece: in each direction the clause that gives its place now (<c>Layout/Places</c> has the order) gets another
/// distance. What is centred or follows another piece is given a distance or a shift.
/// </summary>
internal static class Moving
{
    /// <summary>Where a place comes from in one direction.</summary>
    private enum Source
    {
        /// <summary>A shift on top of any other rule.</summary>
        Shift,

        /// <summary>A neighbour beside which it is.</summary>
        Beside,

        /// <summary>A distance from the left or the top.</summary>
        Low,

        /// <summary>A distance from the right or the bottom.</summary>
        High,

        /// <summary>Distances on both sides.</summary>
        Both,

        /// <summary>Another piece, so that only a shift changes it.</summary>
        Follows,

        /// <summary>The middle of what it lies on.</summary>
        Middle,

        /// <summary>Its size, so that it cannot be moved.</summary>
        Fixed,
    }

    /// <summary>The edge that stays where it is when the piece is resized; null for its middle, or where its size is fixed.</summary>
    public static Edge? HeldEdge(WrittenPiece piece, Axis axis)
    {
        var (low, high) = axis.Edges();
        return Find(piece, axis, ignoresShift: true) switch
        {
            Source.Low => low,
            Source.High => high,
            Source.Beside => piece.Rules.BesideOn(axis)!.Value.Clause.Side is Side.Above or Side.LeftOf ? high : low,
            Source.Follows when piece.Rules.Along is { Clause.Edge: var edge } && edge.Axis() == axis => edge,
            _ => null,
        };
    }

    /// <summary>Whether it stands in the middle of what it lies on because nothing else is written.</summary>
    public static bool IsCentred(WrittenPiece piece, Axis axis) => Find(piece, axis) == Source.Middle;

    /// <summary>Why it cannot be moved in a direction; null when it can.</summary>
    public static Refusal? RefusalOn(WrittenPiece piece, Axis axis) => Find(piece, axis) == Source.Fixed ? Refuse(piece, axis) : null;

    /// <summary>Adds the changes that move a piece to the changes of its line.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="change">How far.</param>
    /// <param name="line">Receives the changes.</param>
    /// <param name="refusals">Receives what cannot be done.</param>
    public static void Write(WrittenPiece piece, MoveChange change, LineEditing line, List<Refusal> refusals)
    {
        var corners = new Dictionary<CornerClause, (Length Vertical, Length Horizontal)>();
        foreach (var (axis, by, centred) in
            new[] { (Axis.Across, change.Across, change.Centred.Across), (Axis.Down, change.Down, change.Centred.Down) })
        {
            var source = Find(piece, axis);
            if (by == Length.Zero && !(centred && source is Source.Low or Source.High))
            {
                continue;
            }

            if (source == Source.Fixed)
            {
                refusals.Add(Refuse(piece, axis));
            }
            else
            {
                Move(piece, axis, source, by, centred, line, corners);
            }
        }

        foreach (var (corner, (vertical, horizontal)) in corners)
        {
            if (vertical == horizontal)
            {
                line.SetNumber(corner.Span, vertical, "");
            }
            else
            {
                line.Replace(corner.Span,
                    $"{corner.Vertical.Name()} {line.Written(vertical)}, {corner.Horizontal.Name()} {line.Written(horizontal)}");
            }
        }
    }

    /// <summary>The move that brings a piece to a distance from an edge.</summary>
    public static MoveChange To(WrittenPiece piece, PlaceChange place)
    {
        var (box, around) = (piece.Box, piece.Reference ?? piece.Box);
        return place.From switch
        {
            Edge.Left => new(around.Left + place.Distance - box.Left, Length.Zero),
            Edge.Right => new(around.Right - place.Distance - box.Right, Length.Zero),
            Edge.Top => new(Length.Zero, around.Top + place.Distance - box.Top),
            _ => new(Length.Zero, around.Bottom - place.Distance - box.Bottom),
        };
    }

    private static void Move(
        WrittenPiece piece, Axis axis, Source source, Length by, bool centred, LineEditing line,
        Dictionary<CornerClause, (Length Vertical, Length Horizontal)> corners)
    {
        var (low, high) = axis.Edges();
        switch (source)
        {
            case Source.Shift:
            case Source.Follows:
                Shift(piece, axis, by, line);
                break;
            case Source.Beside:
                var beside = piece.Rules.BesideOn(axis)!.Value.Clause;
                line.SetNumber(beside.Span, beside.Side is Side.Above or Side.LeftOf ? beside.Distance - by : beside.Distance + by, "by ");
                break;
            case Source.Middle:
                Place(piece, axis, by, line);
                break;
            case Source.Low or Source.High when centred && DistanceAt(piece, source == Source.Low ? low : high) is EdgeClause edge:
                if (piece.Line.Clauses.Any(c => c is CentreClause))
                {
                    line.Remove(edge);
                }
                else
                {
                    line.Replace(edge.Span, "centre");
                }

                break;
            default:
                if (source is Source.Low or Source.Both)
                {
                    SetDistance(piece, low, by, line, corners);
                }

                if (source is Source.High or Source.Both)
                {
                    SetDistance(piece, high, -by, line, corners);
                }

                break;
        }
    }

    private static Source Find(WrittenPiece piece, Axis axis, bool ignoresShift = false)
    {
        var (rules, repeats) = (piece.Rules, piece.IsRepeat);
        var (low, high) = axis.Edges();
        var (hasLow, hasHigh) = (rules.DistanceFrom(low) is not null, rules.DistanceFrom(high) is not null);
        if (rules.IsShifted(axis) && !ignoresShift)
        {
            return Source.Shift;
        }

        if (repeats && (TakesRoom(piece, axis) || rules.ShowsOn(axis)))
        {
            return hasLow && hasHigh ? Source.Both : Source.Fixed;
        }

        if (rules.BesideOn(axis) is not null)
        {
            return Source.Beside;
        }

        if (rules.OverOn(axis) is not null)
        {
            return Source.Follows;
        }

        if (IsFull(piece, axis))
        {
            return hasLow && hasHigh ? Source.Both : Source.Fixed;
        }

        // A share is one of the room that the distances leave, so another distance would change the size.
        if (Extent(piece, axis) is ShareExtent)
        {
            return Source.Follows;
        }

        if (hasLow || hasHigh)
        {
            return hasLow && hasHigh ? Source.Both : hasLow ? Source.Low : Source.High;
        }

        return rules.ShowsOn(axis) ? Source.Fixed
            : rules.Around is not null || rules.Along is not null || rules.Beside is not null ? Source.Follows
            : Source.Middle;
    }

    /// <summary>Whether copies fill the room along an axis: they are spread along it, or they share it.</summary>
    private static bool TakesRoom(WrittenPiece piece, Axis axis) =>
        piece.Size is null && piece.Head!.Kind.Traits.SharesRoom && piece.Rules.SameSize is null
        || (piece.Rules.Spread is not null
            && piece.Copies.Select(c => axis == Axis.Across ? c.Box.Left : c.Box.Top).Distinct().Skip(1).Any());

    private static bool IsFull(WrittenPiece piece, Axis axis) =>
        Extent(piece, axis) is FullExtent
        || (piece.Rules.Along is { Clause.Edge: var edge } && edge.Axis() != axis && piece.Size is not BoxSize
            && piece.Head is { Kind.Traits.IsCutToLength: true });

    private static ExtentSyntax? Extent(WrittenPiece piece, Axis axis) =>
        piece.Size is BoxSize box ? axis == Axis.Across ? box.Width : box.Height : null;

    private static Refusal Refuse(WrittenPiece piece, Axis axis)
    {
        var isAcross = axis == Axis.Across;
        var (side, from) = isAcross ? ("wide", "left to right") : ("high", "top to bottom");
        if (piece.IsRepeat)
        {
            var how = piece.Rules.Spread is not null ? "are spread over" : "share";
            return new($"Its copies {how} the room from {from}, so they cannot be moved that way.", null);
        }

        var own = isAcross ? piece.Piece.Box.Width : piece.Piece.Box.Height;
        var offer = Resizing.LetsGo(piece, isAcross ? own : null, isAcross ? null : own);
        return IsFull(piece, axis)
            ? new($"It is as {side} as what it lies on, so it cannot be moved from {from}.", offer)
            : new($"What shows round it gives its place from {from}.", offer);
    }

    /// <summary>Gives what is centred a distance from the nearer edge, as a ruler shows it.</summary>
    private static void Place(WrittenPiece piece, Axis axis, Length by, LineEditing line)
    {
        if (piece.Reference is not { } reference)
        {
            Shift(piece, axis, by, line);
            return;
        }

        var box = piece.Box;
        var (before, after) = axis == Axis.Across
            ? (box.Left + by - reference.Left, reference.Right - box.Right - by)
            : (box.Top + by - reference.Top, reference.Bottom - box.Bottom - by);
        var (lowEdge, highEdge) = axis.Edges();
        var (edge, distance) = before <= after ? (lowEdge, before) : (highEdge, after);
        var clause = $"{edge.Name()} {line.Written(IsOnRuler(piece, distance) ? distance : OnMark(piece, distance))}";
        var other = axis == Axis.Across ? Axis.Down : Axis.Across;
        if (piece.Line.Clauses.FirstOrDefault(c => c is CentreClause) is { } centre && Find(piece, other) != Source.Middle)
        {
            line.Replace(centre.Span, clause);
        }
        else
        {
            line.AddClause(AfterPlaces(piece), clause);
        }
    }

    private static bool IsOnRuler(WrittenPiece piece, Length length) => piece.Card.Units == UnitSystem.Inches
        ? LengthFormat.IsOnMark(length, LengthFormat.FinestMarks) : (length * 2).Nanometres % Length.NanometresPerMillimetre == 0;

    /// <summary>The nearest mark by which makers cut.</summary>
    internal static Length OnMark(WrittenPiece piece, Length length)
    {
        var format = piece.Card.Units.Format();
        var steps = (length.Abs().Nanometres * 2 + format.Step.Nanometres) / (2 * format.Step.Nanometres);
        var positive = format.Step * steps;
        return length < Length.Zero ? -positive : positive;
    }

    /// <summary>The last clause that places the piece, behind which another one is written; else what stands before all clauses.</summary>
    internal static TextSpan AfterPlaces(WrittenPiece piece) =>
        piece.Line.Clauses.LastOrDefault(c => c is EdgeClause or CornerClause or CentreClause or BesideClause or OverClause or AlongClause
            or AroundClause or MeasuredFromClause or SameSizeClause or ArrangeClause or GapClause or SpreadClause)?.Span ?? piece.HeadEnd;

    private static void Shift(WrittenPiece piece, Axis axis, Length by, LineEditing line)
    {
        var total = piece.Rules.Shift(axis) + by;
        var shifts = piece.Line.Clauses.OfType<ShiftClause>().Where(s => s.Direction.Axis() == axis).ToArray();
        var direction = (axis, total >= Length.Zero) switch
        {
            (Axis.Across, true) => Direction.Right,
            (Axis.Across, false) => Direction.Left,
            (_, true) => Direction.Down,
            _ => Direction.Up,
        };
        foreach (var further in shifts.Skip(1).Concat(total == Length.Zero ? shifts.Take(1) : []))
        {
            line.Remove(further);
        }

        if (total == Length.Zero)
        {
            return;
        }

        var word = $"shift {direction.ToString().ToLowerInvariant()} ";
        if (shifts is not [var first, ..])
        {
            line.AddClause(AfterPlaces(piece), word + line.Written(total.Abs()));
        }
        else if (first.Direction == direction)
        {
            line.SetNumber(first.Span, total.Abs(), "");
        }
        else
        {
            line.Replace(first.Span, word + line.Written(total.Abs()));
        }
    }

    /// <summary>The clause that gives the distance from an edge, or null.</summary>
    private static Clause? DistanceAt(WrittenPiece piece, Edge edge) => piece.Line.Clauses.FirstOrDefault(c =>
        c is EdgeClause at && at.Edge == edge || (c is CornerClause corner && (corner.Horizontal == edge || corner.Vertical == edge)));

    private static void SetDistance(
        WrittenPiece piece, Edge edge, Length by, LineEditing line, Dictionary<CornerClause, (Length Vertical, Length Horizontal)> corners)
    {
        switch (DistanceAt(piece, edge))
        {
            case EdgeClause at:
                line.SetNumber(at.Span, at.Distance + by, "");
                break;
            case CornerClause corner:
                var (vertical, horizontal) = corners.GetValueOrDefault(corner, (corner.Distance, corner.Distance));
                corners[corner] = corner.Vertical == edge ? (vertical + by, horizontal) : (vertical, horizontal + by);
                break;
            default:
                break;
        }
    }
}
