using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// The sizes of every piece with its mats. For each axis a layer's size comes from one rule, chosen by the words written and never by
/// values, so the computation always ends; a size that depends on itself is a circle and is reported with its lines.
/// </summary>
internal sealed class StackSizes
{
    private readonly List<(Node Node, Axis Axis)> _open = [];
    private readonly NameLookup _names;
    private readonly SizeFindings _reported;
    private readonly StackPins _pins;
    private readonly StackFilling _filling;
    private readonly FindingBag _findings;

    public StackSizes(NameLookup names, Words words, Artworks artworks, UnitSystem units, FindingBag findings)
    {
        _names = names;
        Units = units;
        _findings = findings;
        _reported = new(units, findings);
        WordSizes = new(this, words, units, _reported);
        _pins = new(this, names, words, artworks, _reported);
        _filling = new(_reported);
    }

    /// <summary>The units of the file.</summary>
    public UnitSystem Units { get; }

    /// <summary>The sizes that follow from words.</summary>
    public WordSizes WordSizes { get; }

    /// <summary>The stack along an axis; null when it cannot be computed, which has been reported.</summary>
    public Stack? Of(Node node, Axis axis)
    {
        var memo = node.Stacks[(int)axis];
        if (memo.IsDone)
        {
            return memo.Value;
        }

        if (memo.IsOpen)
        {
            ReportCircle(node, axis);
            return null;
        }

        if (_open.Count >= Limits.Chain)
        {
            _findings.Add(FindingCatalogue.LongChain, node.Bound.Location,
                $"The size of {node.Set.Called} depends on more than {Limits.Chain} other pieces.",
                    "Write some of these sizes in numbers.");
            return null;
        }

        memo.IsOpen = true;
        _open.Add((node, axis));
        var stack = Solve(node, axis);
        _open.RemoveAt(_open.Count - 1);
        memo.Settle(stack, stack is not null);
        return stack;
    }

    private void ReportCircle(Node node, Axis axis)
    {
        var start = _open.FindIndex(o => o.Node == node && o.Axis == axis);
        var lines = _open.Skip(start).Select(o => o.Node.Bound.Location).DistinctBy(l => l.Start.Line).ToArray();
        var chain = string.Join(", which needs ", lines.Append(lines[0]).Select(l => $"line {l.Start.Line}"));
        _findings.Add(FindingCatalogue.Circle, node.Bound.Location,
            $"The {SizeFindings.Name(axis)} of {node.Set.Called} depends on itself: {chain}.", "Write one of these sizes in numbers.");
    }

    /// <summary>What distances are measured from and <c>full</c> refers to: the parent, or the piece after <c>measured from</c>.</summary>
    public Length? ReferenceSize(CopySet set, Axis axis)
    {
        if (set.Bound.Rules.MeasuredFrom is { } from)
        {
            return _names.Find(set, from.Clause.From, from.Source) is { } other ? OwnSize(other, axis) : null;
        }

        return set.Parent is { } parent ? Of(parent, axis)?.Own
            : axis == Axis.Across ? set.Face.Size.Width : set.Face.Size.Height;
    }

    /// <summary>The size of a piece without its mats; for a repeat, the size of the block.</summary>
    public Length? OwnSize(CopySet set, Axis axis) => set.IsRepeat
        ? new Repeats(this, Units, _findings).Of(set, axis)?.Size
        : set.Copies is [var only] ? Of(only, axis)?.Own : null;

    /// <summary>The size of <c>full</c>: the reference less the distances written on this axis.</summary>
    public Length? Room(CopySet set, Axis axis)
    {
        if (ReferenceSize(set, axis) is not { } room)
        {
            return null;
        }

        var (lowEdge, highEdge) = axis.Edges();
        return room - set.Bound.Rules.Off(lowEdge) - set.Bound.Rules.Off(highEdge);
    }

    /// <summary>The part of the room that a copy of a repeat takes where its size is omitted: equal parts, less the gaps.</summary>
    public Length? EqualPart(Node node, Axis axis)
    {
        var set = node.Set;
        if (Room(set, axis) is not { } room)
        {
            return null;
        }

        var count = set.Arrangement!.Count(axis);
        if (set.Arrangement is { Interlocks: true, Down: > 1 })
        {
            var gap = set.Bound.Rules.Gap(Axis.Across);
            return axis == Axis.Across ? ((room + gap) * 2).Scale(1, 2 * count + 1) - gap
                : Of(node, Axis.Across) is { } across ? room - CopyGrid.RowBelow(across.Outer + gap) * (count - 1) : null;
        }

        var gaps = set.Bound.Rules.Gap(axis) * (count - 1);
        return Parts.Equal(room - gaps, count, set.Arrangement.Cell(node.Index, axis));
    }

    private Stack? Solve(Node node, Axis axis)
    {
        var bound = node.Bound;
        var layers = bound.Mats.Length + 1;
        if (bound.Mats.Length > 0 && axis == Axis.Across && bound.IsFull(Axis.Across) && bound.IsFull(Axis.Down)
            && Borders.HeldOff(bound).Length == 0)
        {
            _reported.Report(FindingCatalogue.SizesContradict, bound.Location,
                $"{Sentence(node)} is as large as the piece below, so its mat is hidden.", "Write showing 1/8 in place of full x full.");
            return null;
        }

        var low = new Length?[layers];
        var high = new Length?[layers];
        low[0] = high[0] = Length.Zero;
        for (var k = 1; k < layers; k++)
        {
            (low[k], high[k]) = Borders.WrittenBorder(bound, bound.Mats[k - 1], axis);
        }

        var pins = new List<Pin>();
        if (!_pins.Add(node, axis, pins))
        {
            return null;
        }

        if (pins.Count == 0)
        {
            _reported.ReportHowLarge(node, axis);
            return null;
        }

        return _filling.Fill(node, axis, low, high, [.. pins.OrderBy(p => p.Layer)]);
    }

    private static string Sentence(Node node)
    {
        var called = node.Set.Called;
        return char.ToUpperInvariant(called[0]) + called[1..];
    }
}
