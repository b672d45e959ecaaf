using Sketch.Binding;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>A layer whose size is known by itself, with the place that specifies it.</summary>
internal sealed record Pin(int Layer, Length Size, Location Location);

/// <summary>
/// Finds the layers of a stack whose size is known by itself: written, full, a share, fitting its words, of its own proportions, an
/// equal part, or another piece's.
/// </summary>
internal sealed class StackPins(StackSizes sizes, NameLookup names, Words words, Artworks artworks, SizeFindings findings)
{
    private readonly Proportions _proportions = new(sizes, words, artworks);

    /// <summary>
    /// Adds the known layers of a piece along an axis; false when one of them cannot be computed, which has been reported.
    /// </summary>
    public bool Add(Node node, Axis axis, List<Pin> pins)
    {
        var bound = node.Bound;
        var outer = bound.Mats.Length;
        for (var k = 1; k <= outer; k++)
        {
            if (!AddMatPin(node, axis, k, pins))
            {
                return false;
            }
        }

        var before = pins.Count;
        var sound = bound.Size switch
        {
            { } written when bound.Kind.Traits.IsWords && Words.LinesOf(node).IsEmpty => findings.Refuse(
                node, written.Span, $"A {bound.Kind.Name} has no words.", $"Write {bound.Kind.Name} \"…\"."),
            BoxSize box when bound.Kind == PieceKind.Sentiment => findings.Refuse(node, box.Span,
                "The outline of a sentiment follows its letters, so one number gives its size.",
                "Write sentiment 3 wide \"…\", or write the words on a panel."),
            BoxSize => AddExtentPin(node, axis, bound.Extent(axis)!, pins),
            SingleSize single => AddSinglePin(node, axis, single, pins),
            AddedSize added => findings.Refuse(
                node, added.Span, "Only a mat takes a size that starts with +.", "Write the size itself, such as 2 x 3."),
            _ => AddUnwrittenPin(node, axis, pins),
        };
        if (!sound)
        {
            return false;
        }

        var spansRepeat = node.Set.IsRepeat;
        if (bound.Rules.Showing is { } showing && !spansRepeat && bound.Extent(axis) is not (FullExtent or ShareExtent)
            && (bound.Rules.ShowsOn(axis) || pins.Count == 0))
        {
            if (sizes.Room(node.Set, axis) is not { } room)
            {
                return false;
            }

            if (!bound.Mats.IsEmpty || pins.Count == before || pins[^1].Size != room)
            {
                pins.Add(new(outer, room, showing.Location));
            }
        }

        return pins.Count > 0 || bound.Rules.Showing is not null || TryProportion(node, axis, pins);
    }

    private bool AddExtentPin(Node node, Axis axis, ExtentSyntax extent, List<Pin> pins)
    {
        var bound = node.Bound;
        var location = new Location(bound.Location.Source, extent.Span);
        switch (extent)
        {
            case LengthExtent written:
                pins.Add(new(0, written.Value, location));
                return true;
            case FitExtent:
                return sizes.WordSizes.FitWords(node, axis) is { } fit && Add(0, fit);
            case FullExtent when node.Set.IsRepeat && node.Set.Arrangement!.Count(axis) > 1:
                return sizes.EqualPart(node, axis) is { } part && Add(bound.Mats.Length, part);
            case FullExtent:
                return sizes.Room(node.Set, axis) is { } full && Add(bound.Mats.Length, full);
            case ShareExtent share:
                return sizes.Room(node.Set, axis) is { } room && Add(0, room.Scale(share.Numerator, share.Denominator));
            default:
                throw new InvalidOperationException("an extent of an unknown kind");
        }

        bool Add(int layer, Length size)
        {
            pins.Add(new(layer, size, location));
            return true;
        }
    }

    private bool AddSinglePin(Node node, Axis axis, SingleSize single, List<Pin> pins)
    {
        var bound = node.Bound;
        var location = new Location(bound.Location.Source, single.Span);
        if (bound.Kind.Traits is { IsCutToLength: true, IsSizedByThickness: true })
        {
            if (bound.Rules.Along is not { } along)
            {
                return findings.Refuse(node, single.Span, $"This {bound.Kind.Name} has a thickness, but no direction.",
                    "Write along top, or a size such as full x 1/16.");
            }

            if (along.Clause.Edge.Axis() == axis)
            {
                pins.Add(new(0, single.Value, location));
                return true;
            }

            return AlongLength(node, axis, along) is { } length && Add(length);
        }

        if (bound.Kind == PieceKind.Frame)
        {
            return AddFramePin(node, axis, single, pins);
        }

        if (!Proportions.HasProportion(node))
        {
            var value = sizes.Units == UnitSystem.Inches && LengthFormat.IsOnMark(single.Value, LengthFormat.FinestMarks)
                ? LengthFormat.Ruler(single.Value, LengthFormat.FinestMarks) : LengthFormat.Millimetres(single.Value);
            return findings.Refuse(node, single.Span, $"A {bound.Kind.Name} needs width x height; one number does not say which.",
                bound.Kind == PieceKind.Panel ? $"Write panel {value} x {value}, or square {value}."
                    : bound.Kind.Traits.TakesShape
                    ? $"Write {bound.Kind.Name} {value} x {value}, or a shape: {bound.Kind.Name} circle {value}."
                : $"Write {bound.Kind.Name} full x {value}, or {bound.Kind.Name} {value} x full.");
        }

        var writtenAxis = single.Measure == SingleMeasure.High ? Axis.Down : Axis.Across;
        return axis == writtenAxis ? Add(single.Value) : Proportion(node, axis) is { } other && Add(other);

        bool Add(Length size)
        {
            pins.Add(new(0, size, location));
            return true;
        }
    }

    private bool AddFramePin(Node node, Axis axis, SingleSize thickness, List<Pin> pins)
    {
        var bound = node.Bound;
        if (thickness.Value == Length.Zero)
        {
            return findings.Refuse(node, thickness.Span, "A frame of no thickness cannot be cut.",
                "Write its thickness, such as frame 1/8.");
        }

        if (bound.Rules.Around is { } around)
        {
            if (names.Find(node.Set, around.Clause.What, around.Source) is not { } inner
                || sizes.OwnSize(inner, axis) is not { } size)
            {
                return false;
            }

            var overhang = inner.Copies is [{ Bound.Kind: PieceKind.Text } text] ? sizes.WordSizes.Overhang(text, axis) : Length.Zero;
            pins.Add(new(0, size + (overhang + thickness.Value) * 2, around.Location));
            return true;
        }

        // Its size comes from showing, or from another piece.
        return bound.Rules.SameSize is null || AddUnwrittenPin(node, axis, pins);
    }

    private bool AddUnwrittenPin(Node node, Axis axis, List<Pin> pins)
    {
        var bound = node.Bound;
        if (bound.Rules.SameSize is { } same)
        {
            if (names.Find(node.Set, same.Clause.As, same.Source) is not { } other
                || sizes.OwnSize(other, axis) is not { } size)
            {
                return false;
            }

            pins.Add(new(0, size, same.Location));
            return true;
        }

        if (bound.Kind.Traits.IsWords)
        {
            if (bound.Kind == PieceKind.Text && bound.Rules.Showing is not null && !bound.Texts.IsEmpty)
            {
                return true;
            }

            if (words.Shape(node) is not { } shaped)
            {
                return !bound.Texts.IsEmpty
                    ? false : findings.Refuse(node, null, $"A {bound.Kind.Name} has no words.", $"Write {bound.Kind.Name} \"…\".");
            }

            pins.Add(new(0, sizes.WordSizes.InkSize(node, shaped, axis), bound.Location));
            return true;
        }

        if (bound.OutlineKind.Traits.IsDrawing && bound.Mats.IsEmpty && bound.Rules.Showing is null)
        {
            if (artworks.Of(node) is not { } drawing)
            {
                return false;
            }

            pins.Add(new(0, Length.NearestMillimetres(axis == Axis.Across ? drawing.Bounds.Width : drawing.Bounds.Height), bound.Location));
            return true;
        }

        if (node.Set.IsRepeat && !pins.Any(p => p.Layer > 0))
        {
            if (!bound.Kind.Traits.SharesRoom)
            {
                return true;
            }

            if (sizes.EqualPart(node, axis) is not { } part)
            {
                return false;
            }

            pins.Add(new(bound.Mats.Length, part, bound.Location));
        }

        return true;
    }

    private bool AddMatPin(Node node, Axis axis, int layer, List<Pin> pins)
    {
        var mat = node.Bound.Mats[layer - 1];
        switch (mat.Size)
        {
            case null or AddedSize:
                return true;
            case BoxSize box when (axis == Axis.Across ? box.Width : box.Height) is LengthExtent written:
                pins.Add(new(layer, written.Value, new(mat.Location.Source, written.Span)));
                return true;
            case SingleSize single when Proportions.HasProportion(node):
                var isWritten = axis == (single.Measure == SingleMeasure.High ? Axis.Down : Axis.Across);
                var grows = !mat.Rules.Borders.IsEmpty;
                if (!isWritten && grows && _proportions.Ratio(node) is not 1)
                {
                    return true;
                }

                var size = isWritten ? single.Value : _proportions.Other(node, single.Value, axis);
                if (size is null)
                {
                    return false;
                }

                pins.Add(new(layer, size.Value, new(mat.Location.Source, single.Span)));
                return true;
            default:
                return findings.Refuse(node, mat.Size.Span,
                    "A mat's size is width x height, what it adds (+1/8), or one number under a shape with fixed proportions.",
                        "Write mat +1/8, or mat border 1/16.");
        }
    }

    /// <summary>The length of a line along an edge: the whole edge, less the distances written.</summary>
    private Length? AlongLength(Node node, Axis axis, Rule<AlongClause> along)
    {
        Length? edge;
        if (along.Clause.Of is { } of)
        {
            edge = names.Find(node.Set, of, along.Source) is { } other ? sizes.OwnSize(other, axis) : null;
        }
        else
        {
            edge = sizes.ReferenceSize(node.Set, axis);
        }

        var (low, high) = axis.Edges();
        return edge is { } e ? e - node.Bound.Rules.Off(low) - node.Bound.Rules.Off(high) : null;
    }

    private Length? Proportion(Node node, Axis axis) =>
        sizes.Of(node, axis == Axis.Across ? Axis.Down : Axis.Across) is { } known ? _proportions.Other(node, known.Own, axis) : null;

    /// <summary>A shape with proportions of its own whose other direction is known from its mats.</summary>
    private bool TryProportion(Node node, Axis axis, List<Pin> pins)
    {
        if (!Proportions.HasProportion(node) || !node.Bound.Mats.Any(m => m.Size is SingleSize or BoxSize))
        {
            return true;
        }

        if (Proportion(node, axis) is not { } size)
        {
            return false;
        }

        pins.Add(new(0, size, node.Bound.Location));
        return true;
    }
}
