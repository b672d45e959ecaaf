using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Arranges the copies of a repeat in their block. The block is then placed like one piece.</summary>
internal sealed class Repeats(StackSizes sizes, UnitSystem units, FindingBag findings)
{
    /// <summary>One axis of a set: its whole outer size, and where in it the outermost box of each copy begins.</summary>
    public CopyBlock? Of(CopySet set, Axis axis)
    {
        if (set.Blocks[(int)axis] is { } known)
        {
            return known;
        }

        if (set.HasNoBlock[(int)axis])
        {
            return null;
        }

        var outer = new Length[set.Copies.Length];
        for (var i = 0; i < outer.Length; i++)
        {
            if (sizes.Of(set.Copies[i], axis) is not { } stack)
            {
                // A circular size is asked for again while it is being computed; only a completed one is final.
                set.HasNoBlock[(int)axis] = set.Copies[i].Stacks[(int)axis].IsDone;
                return null;
            }

            outer[i] = stack.Outer;
        }

        return set.Blocks[(int)axis] = set.IsRepeat
            ? Arrange(set, axis, outer) : new(outer.Length == 1 ? outer[0] : Length.Zero, [Length.Zero]);
    }

    private CopyBlock? Arrange(CopySet set, Axis axis, Length[] outer)
    {
        var arrangement = set.Arrangement!;
        var count = arrangement.Count(axis);
        var cells = new Length[count];
        for (var i = 0; i < outer.Length; i++)
        {
            var cell = arrangement.Cell(i, axis);
            cells[cell] = Length.Max(cells[cell], outer[i]);
        }

        if (arrangement.Interlocks)
        {
            return Interlocked(set, axis, outer);
        }

        var step = set.Bound.Rules.Step(axis);
        var starts = new Length[count];
        Length whole;
        if (count > 1 && set.Bound.Rules.Spread is { } spread)
        {
            if (sizes.Room(set, axis) is not { } room)
            {
                return null;
            }

            Spread(set, spread, cells, starts, room);
            whole = room;
        }
        else
        {
            var gap = set.Bound.Rules.Gap(axis) + (count > 1 ? step.Abs() : Length.Zero);
            var at = Length.Zero;
            for (var c = 0; c < count; c++)
            {
                starts[c] = at;
                at += cells[c] + gap;
            }

            whole = at - gap;
        }

        var offsets = new Length[outer.Length];
        for (var i = 0; i < outer.Length; i++)
        {
            var cell = arrangement.Cell(i, axis);
            offsets[i] = starts[cell] + Within(set.Bound, axis, cells[cell] - outer[i], step != Length.Zero && count == 1);
        }

        return count == 1 && step != Length.Zero ? Stepped(offsets, outer, step) : new(whole, offsets);
    }

    /// <summary>Interlocking rows: every second row is shifted right by half a copy, so that its copies fit between those above.</summary>
    private CopyBlock? Interlocked(CopySet set, Axis axis, Length[] outer)
    {
        var grid = set.Arrangement!;
        var widths = axis == Axis.Across ? outer : [.. set.Copies.Select(c => sizes.Of(c, Axis.Across)?.Outer ?? Length.Zero)];
        var apart = widths.Max() + set.Bound.Rules.Gap(Axis.Across);
        var offsets = new Length[outer.Length];
        for (var i = 0; i < outer.Length; i++)
        {
            var (column, row) = (grid.Cell(i, Axis.Across), grid.Cell(i, Axis.Down));
            var start = axis == Axis.Down ? CopyGrid.RowBelow(apart) * row : apart * column + (row % 2 == 0 ? Length.Zero : apart / 2);
            offsets[i] = start + (outer.Max() - outer[i]) / 2;
        }

        return new(offsets.Zip(outer, (at, size) => at + size).Max(), offsets);
    }

    /// <summary>A column whose copies step sideways, or a row whose copies step up or down: each copy starts a step further.</summary>
    private static CopyBlock Stepped(Length[] offsets, Length[] outer, Length step)
    {
        var moved = new Length[offsets.Length];
        for (var i = 0; i < offsets.Length; i++)
        {
            moved[i] = step * i;
        }

        var least = moved.Min();
        var most = moved.Zip(outer, (m, o) => m + o).Max();
        return new(most - least, [.. moved.Select(m => m - least)]);
    }

    /// <summary>Where a smaller copy is in its cell: in the middle, or lined up with an edge.</summary>
    private static Length Within(BoundPiece bound, Axis axis, Length free, bool steps) => bound.Rules.LinedUp switch
    {
        Edge.Left when axis == Axis.Across => Length.Zero,
        Edge.Right when axis == Axis.Across => free,
        Edge.Top when axis == Axis.Down => Length.Zero,
        Edge.Bottom when axis == Axis.Down => free,
        _ when steps => Length.Zero,
        _ => free / 2,
    };

    private void Spread(CopySet set, Rule<SpreadClause> spread, Length[] cells, Length[] starts, Length room)
    {
        var taken = cells.Aggregate(Length.Zero, (sum, c) => sum + c);
        var free = room - taken;
        if (free < Length.Zero)
        {
            findings.Add(FindingCatalogue.CopiesCrowd, spread.Location,
                $"{set.Copies.Length} copies need {units.Format().WithUnit(taken)}, but there are {units.Format().WithUnit(room)}, so "
                    + "they overlap.", "Make them smaller, or fewer.");
        }

        var gaps = spread.Clause.EdgeToEdge ? cells.Length - 1 : cells.Length + 1;
        var at = Length.Zero;
        for (var c = 0; c < cells.Length; c++)
        {
            starts[c] = at + Parts.Before(free, gaps, spread.Clause.EdgeToEdge ? c : c + 1);
            at += cells[c];
        }
    }
}
