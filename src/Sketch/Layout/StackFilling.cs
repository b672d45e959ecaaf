using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Computes the sizes of a whole stack from its known layers and written borders.</summary>
internal sealed class StackFilling(SizeFindings findings)
{
    /// <summary>The whole stack, or null when its sizes contradict each other, which has been reported.</summary>
    public Stack? Fill(Node node, Axis axis, Length?[] low, Length?[] high, ImmutableArray<Pin> pins)
    {
        var layers = low.Length;
        var sizes = new Length[layers];
        for (var p = 0; p < pins.Length; p++)
        {
            sizes[pins[p].Layer] = pins[p].Size;
            if (p > 0 && !Between(node, axis, pins[p - 1], pins[p], low, high))
            {
                return null;
            }
        }

        for (var k = 1; k < layers; k++)
        {
            low[k] ??= Parts.Equal(Borders.UsualMat, 2, 0);
            high[k] ??= Parts.Equal(Borders.UsualMat, 2, 1);
        }

        for (var k = pins[0].Layer; k > 0; k--)
        {
            sizes[k - 1] = sizes[k] - low[k]!.Value - high[k]!.Value;
        }

        for (var k = pins[0].Layer + 1; k < layers; k++)
        {
            sizes[k] = sizes[k - 1] + low[k]!.Value + high[k]!.Value;
        }

        if (sizes.Any(s => s <= Length.Zero))
        {
            findings.Report(FindingCatalogue.NothingLeft, node.Bound.Location,
                $"Nothing is left of {node.Set.Called}: its {SizeFindings.Name(axis)} would be {findings.Text(sizes.Min())}.",
                    "Make its size larger, or its distances smaller.");
            return null;
        }

        if (sizes.Any(s => s > Length.Limit))
        {
            findings.Report(FindingCatalogue.TooFar, node.Bound.Location,
                $"The {SizeFindings.Name(axis)} of {node.Set.Called} is more than a kilometre.", "Write smaller sizes.");
            return null;
        }

        return new([.. sizes], [.. low.Select(l => l!.Value)], [.. high.Select(h => h!.Value)]);
    }

    /// <summary>Between two known layers exactly one unwritten border is computed; with none unwritten they must agree.</summary>
    private bool Between(Node node, Axis axis, Pin inner, Pin outer, Length?[] low, Length?[] high)
    {
        var written = Length.Zero;
        var open = new List<int>();
        for (var k = inner.Layer + 1; k <= outer.Layer; k++)
        {
            written += (low[k] ?? Length.Zero) + (high[k] ?? Length.Zero);
            if (low[k] is null || high[k] is null)
            {
                open.Add(k);
            }
        }

        var rest = outer.Size - inner.Size - written;
        var lines = $"line {inner.Location.Start.Line} says {findings.Text(inner.Size)} and line {outer.Location.Start.Line} "
            + $"{findings.Text(outer.Size)}";
        if (open.Count > 1)
        {
            findings.Report(FindingCatalogue.SizesContradict, outer.Location,
                $"Two sizes of {node.Set.Called} are known ({lines}), but {open.Count} borders between them are not written.",
                    "Write all borders but one.");
            return false;
        }

        if (open.Count == 0)
        {
            if (rest == Length.Zero)
            {
                return true;
            }

            var between = inner.Layer == outer.Layer ? "" : $", with {findings.Text(written)} of border between them";
            findings.Report(FindingCatalogue.SizesContradict, outer.Location,
                $"The {SizeFindings.Name(axis)} of {node.Set.Called} is given twice and differs: {lines}{between}.",
                    "Remove one of them, or leave a border unwritten so that it is computed.");
            return false;
        }

        if (rest < Length.Zero)
        {
            findings.Report(FindingCatalogue.SizesContradict, outer.Location,
                $"No border is left around {node.Set.Called}: {lines}, {findings.Text(-rest)} too little.",
                    "Make the inner size smaller or the outer one larger.");
            return false;
        }

        var border = open[0];
        if (low[border] is null && high[border] is null)
        {
            low[border] = Parts.Equal(rest, 2, 0);
            high[border] = Parts.Equal(rest, 2, 1);
        }
        else if (low[border] is null)
        {
            low[border] = rest;
        }
        else
        {
            high[border] = rest;
        }

        return true;
    }
}
