using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Drafts;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Surroundings;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// The sizes of every piece with its mats. For each axis a layer's size comes from one rule, chosen by the words written and never by
/// values, so the working-out always ends; a size that leads back to itself is a circle and told with its lines.
/// </summary>
internal sealed class StackSizes(NameLookup names, Words words, Artworks artworks, UnitSystem units, FindingBag findings)
{
    /// <summary>What an unwritten border adds in total: an eighth of an inch (common practice, no source).</summary>
    public static readonly Length UsualMat = Length.Inch(0, 1, 8);

    /// <summary>How many pieces a size or place may depend on, one through the other. No card needs a tenth of it.</summary>
    public const int ChainLimit = 500;

    private readonly List<(Node Node, Axis Axis)> _open = [];
    private readonly HashSet<(Location, string)> _told = [];
    private readonly HashSet<Location> _unsized = [];

    /// <summary>The stack along an axis; null when it cannot be worked out, which has then been told.</summary>
    public Stack? Of(Node node, Axis axis)
    {
        var memo = node.Stacks[(int)axis];
        if (memo.IsDone)
        {
            return memo.Value;
        }

        if (memo.IsOpen)
        {
            TellCircle(node, axis);
            return null;
        }

        if (_open.Count >= ChainLimit)
        {
            findings.Add(FindingCatalogue.LongChain, node.Draft.Location, $"The size of {node.Unit.Called} is reached through more than {ChainLimit} other pieces.", "Write some of these sizes in numbers.");
            return null;
        }

        memo.IsOpen = true;
        _open.Add((node, axis));
        var stack = Solve(node, axis);
        _open.RemoveAt(_open.Count - 1);
        memo.Settle(stack, stack is not null);
        return stack;
    }

    private void TellCircle(Node node, Axis axis)
    {
        var start = _open.FindIndex(o => o.Node == node && o.Axis == axis);
        var lines = _open.Skip(start).Select(o => o.Node.Draft.Location).DistinctBy(l => l.Start.Line).ToArray();
        var chain = string.Join(", which needs ", lines.Append(lines[0]).Select(l => $"line {l.Start.Line}"));
        findings.Add(FindingCatalogue.Circle, node.Draft.Location, $"The {Name(axis)} of {node.Unit.Called} leads back to itself: {chain}.", "Write one of these sizes in numbers.");
    }

    private static string Name(Axis axis) => axis == Axis.Across ? "width" : "height";

    /// <summary>What distances are measured on and full is a part of: the parent, or the piece that <c>measured from</c> names.</summary>
    public Length? ReferenceSize(Unit unit, Axis axis)
    {
        if (unit.Draft.Find<MeasuredFromClause>() is { } from)
        {
            return names.Find(unit, from.From, unit.Draft.LocationOf(from).Source) is { } other ? OwnSize(other, axis) : null;
        }

        return unit.Parent is { } parent ? Of(parent, axis)?.Own
            : axis == Axis.Across ? unit.Face.Size.Width : unit.Face.Size.Height;
    }

    /// <summary>The size of a piece without its mats; of a repeat the block's.</summary>
    public Length? OwnSize(Unit unit, Axis axis) => unit.IsRepeat
        ? new Repeats(this, units, findings).Of(unit, axis)?.Size
        : unit.Copies is [var only] ? Of(only, axis)?.Own : null;

    private sealed record Pin(int Layer, Length Size, Location Location);

    private Stack? Solve(Node node, Axis axis)
    {
        var draft = node.Draft;
        var layers = draft.Mats.Length + 1;
        if (draft.Mats.Length > 0 && axis == Axis.Across && IsFull(draft, Axis.Across) && IsFull(draft, Axis.Down) && HeldOff(draft).Length == 0)
        {
            Tell(FindingCatalogue.SizesContradict, draft.Location, $"{Sentence(node)} is as large as what it lies on, so its mat cannot be seen.", "Write showing 1/8 in place of full x full.");
            return null;
        }

        var low = new Length?[layers];
        var high = new Length?[layers];
        low[0] = high[0] = Length.Zero;
        for (var k = 1; k < layers; k++)
        {
            (low[k], high[k]) = WrittenBorder(draft, draft.Mats[k - 1], axis);
        }

        var pins = new List<Pin>();
        if (!AddPins(node, axis, pins))
        {
            return null;
        }

        if (pins.Count == 0)
        {
            TellHowLarge(node, axis);
            return null;
        }

        return Fill(node, axis, low, high, [.. pins.OrderBy(p => p.Layer)]);
    }

    private void TellHowLarge(Node node, Axis axis)
    {
        // Asked for both directions and for every copy; told once a line, and not at all where the size could not be read.
        if (!node.Draft.IsDamaged && _unsized.Add(node.Draft.Location))
        {
            var how = node.Draft.Size is null ? "large" : axis == Axis.Across ? "wide" : "high";
            findings.Add(FindingCatalogue.HowLarge, node.Draft.Location, $"Nothing says how {how} {node.Unit.Called} is.", HowLargeHint(node));
        }
    }

    private static string HowLargeHint(Node node) => node.Draft.Kind switch
    {
        "line" => "Write line 1/16, along top, or strip full x 1/16.",
        "frame" => "Write frame 1/8, around another piece, or frame 1/8, showing 1/4.",
        "gem" => "Write gem 1/8.",
        var kind => $"Write {kind} 2 x 3, or showing 1/8, or the size of its mat.",
    };

    private static string Sentence(Node node)
    {
        var called = node.Unit.Called;
        return char.ToUpperInvariant(called[0]) + called[1..];
    }

    private static (Length? Low, Length? High) WrittenBorder(PieceDraft draft, PieceDraft mat, Axis axis)
    {
        var (lowEdge, highEdge) = Edges(axis);
        Length? low = null, high = null;
        if (mat.Size is AddedSize added)
        {
            var total = axis == Axis.Across ? added.Across : added.Down;
            low = Parts.Equal(total, 2, 0);
            high = Parts.Equal(total, 2, 1);
        }

        foreach (var border in mat.All<BorderClause>().OrderBy(b => b.Edge is not null))
        {
            low = border.Edge is null || border.Edge == lowEdge ? border.Amount : low;
            high = border.Edge is null || border.Edge == highEdge ? border.Amount : high;
        }

        if (IsFull(draft, axis))
        {
            // The mats of a full piece end flush with it where it runs to the parent's edge.
            var held = HeldOff(draft);
            low = held.Contains(lowEdge) ? low : Length.Zero;
            high = held.Contains(highEdge) ? high : Length.Zero;
        }

        return (low, high);
    }

    private static (Edge Low, Edge High) Edges(Axis axis) => axis == Axis.Across ? (Edge.Left, Edge.Right) : (Edge.Top, Edge.Bottom);

    private static ExtentSyntax? Extent(PieceDraft draft, Axis axis) =>
        draft.Size is BoxSize box ? axis == Axis.Across ? box.Width : box.Height : null;

    private static bool IsFull(PieceDraft draft, Axis axis) => Extent(draft, axis) is FullExtent;

    /// <summary>The sides on which a distance keeps the piece from its parent's edge.</summary>
    private static ImmutableArray<Edge> HeldOff(PieceDraft draft) =>
        [.. Enum.GetValues<Edge>().Where(e => Distances.Off(draft, e) > Length.Zero)];

    /// <summary>The room that full takes: the reference less the distances written on this axis.</summary>
    public Length? Room(Unit unit, Axis axis)
    {
        if (ReferenceSize(unit, axis) is not { } room)
        {
            return null;
        }

        var (lowEdge, highEdge) = Edges(axis);
        return room - Distances.Off(unit.Draft, lowEdge) - Distances.Off(unit.Draft, highEdge);
    }

    private bool AddPins(Node node, Axis axis, List<Pin> pins)
    {
        var draft = node.Draft;
        var outer = draft.Mats.Length;
        for (var k = 1; k <= outer; k++)
        {
            if (!AddMatPin(node, axis, k, pins))
            {
                return false;
            }
        }

        var before = pins.Count;
        var sound = draft.Size switch
        {
            BoxSize => AddExtentPin(node, axis, Extent(draft, axis)!, pins),
            SingleSize single => AddSinglePin(node, axis, single, pins),
            AddedSize added => Refuse(node, added.Span, "Only a mat adds to what lies on it.", "Write the size itself, such as 2 x 3."),
            _ => AddUnwrittenPin(node, axis, pins),
        };
        if (!sound)
        {
            return false;
        }

        var spansRepeat = node.Unit.IsRepeat;
        if (draft.Find<ShowingClause>() is { } showing && !spansRepeat && Extent(draft, axis) is not (FullExtent or ShareExtent)
            && (Distances.ShowsOn(draft, axis) || pins.Count == 0))
        {
            if (Room(node.Unit, axis) is not { } room)
            {
                return false;
            }

            if (!draft.Mats.IsEmpty || pins.Count == before || pins[^1].Size != room)
            {
                pins.Add(new(outer, room, draft.LocationOf(showing)));
            }
        }

        return pins.Count > 0 || draft.Find<ShowingClause>() is not null || TryProportion(node, axis, pins);
    }

    private bool AddExtentPin(Node node, Axis axis, ExtentSyntax extent, List<Pin> pins)
    {
        var draft = node.Draft;
        var location = new Location(draft.Location.Source, extent.Span);
        switch (extent)
        {
            case LengthExtent written:
                pins.Add(new(0, written.Value, location));
                return true;
            case FitExtent:
                return FitWords(node, axis) is { } fit && Add(0, fit);
            case FullExtent when node.Unit.IsRepeat && node.Unit.Arrangement!.Count(axis) > 1:
                return EqualPart(node, axis) is { } part && Add(draft.Mats.Length, part);
            case FullExtent:
                return Room(node.Unit, axis) is { } full && Add(draft.Mats.Length, full);
            case ShareExtent share:
                return Room(node.Unit, axis) is { } room && Add(0, room.Scale(share.Numerator, share.Denominator));
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
        var draft = node.Draft;
        var location = new Location(draft.Location.Source, single.Span);
        if (draft.Kind == "line")
        {
            if (draft.Find<AlongClause>() is not { } along)
            {
                return Refuse(node, single.Span, "This line has a thickness, but nothing says which way it runs.", "Write along top, or a size such as full x 1/16.");
            }

            if (IsEdgeOf(along.Edge, axis))
            {
                pins.Add(new(0, single.Value, location));
                return true;
            }

            return AlongLength(node, axis, along) is { } length && Add(length);
        }

        if (draft.Kind == "frame")
        {
            return AddFramePin(node, axis, single, pins);
        }

        if (!HasProportion(node))
        {
            var value = units == UnitSystem.Inches && RulerText.IsOnMark(single.Value, 64)
                ? RulerText.Inches(single.Value, 64) : RulerText.Millimetres(single.Value);
            return Refuse(node, single.Span, $"A {draft.Kind} needs width x height; one number does not say which.",
                draft.Kind == "panel" ? $"Write panel {value} x {value}, or square {value}." : $"Write {draft.Kind} full x {value}, or {draft.Kind} {value} x full.");
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
        var draft = node.Draft;
        if (draft.Find<AroundClause>() is { } around)
        {
            if (names.Find(node.Unit, around.What, draft.LocationOf(around).Source) is not { } inner || OwnSize(inner, axis) is not { } size)
            {
                return false;
            }

            pins.Add(new(0, size + thickness.Value * 2, draft.LocationOf(around)));
            return true;
        }

        // Its size comes from showing, or from another piece.
        return draft.Find<SameSizeClause>() is null || AddUnwrittenPin(node, axis, pins);
    }

    private bool AddUnwrittenPin(Node node, Axis axis, List<Pin> pins)
    {
        var draft = node.Draft;
        if (draft.Find<SameSizeClause>() is { } same)
        {
            if (names.Find(node.Unit, same.As, draft.LocationOf(same).Source) is not { } other || OwnSize(other, axis) is not { } size)
            {
                return false;
            }

            pins.Add(new(0, size, draft.LocationOf(same)));
            return true;
        }

        if (draft.Kind is "word" or "text")
        {
            if (draft.Kind == "text" && draft.Find<ShowingClause>() is not null && !draft.Texts.IsEmpty)
            {
                return true;
            }

            if (words.Shape(node) is not { } shaped)
            {
                return !draft.Texts.IsEmpty ? false : Refuse(node, null, $"A {draft.Kind} has no words.", $"Write {draft.Kind} \"…\".");
            }

            pins.Add(new(0, InkSize(node, shaped, axis), draft.Location));
            return true;
        }

        if (Kinds.IsArtwork(draft) && draft.Mats.IsEmpty && draft.Find<ShowingClause>() is null)
        {
            if (artworks.Of(node) is not { } drawing)
            {
                return false;
            }

            pins.Add(new(0, Length.NearestMillimetres(axis == Axis.Across ? drawing.Bounds.Width : drawing.Bounds.Height), draft.Location));
            return true;
        }

        if (node.Unit.IsRepeat && !pins.Any(p => p.Layer > 0))
        {
            if (draft.Kind is "gem" or "line" or "frame")
            {
                return true;
            }

            if (EqualPart(node, axis) is not { } part)
            {
                return false;
            }

            pins.Add(new(draft.Mats.Length, part, draft.Location));
        }

        return true;
    }

    /// <summary>The part of the room that a copy of a repeat takes where its size is left out: equal parts, less the gaps.</summary>
    private Length? EqualPart(Node node, Axis axis)
    {
        var unit = node.Unit;
        if (Room(unit, axis) is not { } room)
        {
            return null;
        }

        var count = unit.Arrangement!.Count(axis);
        var gaps = Repeats.GapOf(unit.Draft, axis) * (count - 1);
        return Parts.Equal(room - gaps, count, unit.Arrangement.Cell(node.Index, axis));
    }

    private bool AddMatPin(Node node, Axis axis, int layer, List<Pin> pins)
    {
        var mat = node.Draft.Mats[layer - 1];
        switch (mat.Size)
        {
            case null or AddedSize:
                return true;
            case BoxSize box when (axis == Axis.Across ? box.Width : box.Height) is LengthExtent written:
                pins.Add(new(layer, written.Value, new(mat.Location.Source, written.Span)));
                return true;
            case SingleSize single when HasProportion(node):
                var isWritten = axis == (single.Measure == SingleMeasure.High ? Axis.Down : Axis.Across);
                var grows = mat.Find<BorderClause>() is not null;
                if (!isWritten && grows && Ratio(node) is not 1)
                {
                    return true;
                }

                var size = isWritten ? single.Value : Other(node, single.Value, axis);
                if (size is null)
                {
                    return false;
                }

                pins.Add(new(layer, size.Value, new(mat.Location.Source, single.Span)));
                return true;
            default:
                return Refuse(node, mat.Size.Span, "A mat's size is width x height, what it adds (+1/8), or one number beneath a shape that has proportions of its own.", "Write mat +1/8, or mat border 1/16.");
        }
    }

    private static bool IsEdgeOf(Edge edge, Axis axis) => axis == Axis.Across ? edge is Edge.Left or Edge.Right : edge is Edge.Top or Edge.Bottom;

    /// <summary>How long a line along an edge is: the whole edge, less the distances written.</summary>
    private Length? AlongLength(Node node, Axis axis, AlongClause along)
    {
        Length? edge;
        if (along.Of is { } of)
        {
            edge = names.Find(node.Unit, of, node.Draft.LocationOf(along).Source) is { } other ? OwnSize(other, axis) : null;
        }
        else
        {
            edge = ReferenceSize(node.Unit, axis);
        }

        var (low, high) = Edges(axis);
        return edge is { } e ? e - Distances.Off(node.Draft, low) - Distances.Off(node.Draft, high) : null;
    }

    private static bool HasProportion(Node node) =>
        node.Draft.Kind is "word" or "text" || Kinds.IsArtwork(node.Draft) || (Kinds.ShapeOf(node.Draft) is { } shape && ShapeProportions.Has(shape));

    /// <summary>Height for a width of 1.</summary>
    private double? Ratio(Node node)
    {
        if (Kinds.IsArtwork(node.Draft))
        {
            return artworks.Of(node)?.Bounds is { Width: > 0 } bounds ? bounds.Height / bounds.Width : null;
        }

        if (node.Draft.Kind is "word" or "text")
        {
            return words.Shape(node) is { } shaped ? Ink(node, shaped) is var (width, height) ? height / width : null : null;
        }

        return Kinds.ShapeOf(node.Draft) is { } shape ? ShapeProportions.Ratio(shape, Kinds.StyleOf(node.Draft)) : null;
    }

    private Length? Other(Node node, Length known, Axis wanted)
    {
        if (Kinds.ShapeOf(node.Draft) is { } shape && ShapeProportions.Has(shape) && !Kinds.IsArtwork(node.Draft))
        {
            var style = Kinds.StyleOf(node.Draft);
            return wanted == Axis.Down ? ShapeProportions.HeightFor(shape, style, known) : ShapeProportions.WidthFor(shape, style, known);
        }

        return Ratio(node) is { } ratio ? Length.NearestMillimetres(wanted == Axis.Down ? known.Millimetres * ratio : known.Millimetres / ratio) : null;
    }

    private Length? Proportion(Node node, Axis axis) =>
        Of(node, axis == Axis.Across ? Axis.Down : Axis.Across) is { } known ? Other(node, known.Own, axis) : null;

    /// <summary>A shape with proportions of its own whose other direction is known from its mats.</summary>
    private bool TryProportion(Node node, Axis axis, List<Pin> pins)
    {
        if (!HasProportion(node) || !node.Draft.Mats.Any(m => m.Size is SingleSize or BoxSize))
        {
            return true;
        }

        if (Proportion(node, axis) is not { } size)
        {
            return false;
        }

        pins.Add(new(0, size, node.Draft.Location));
        return true;
    }

    private Stack? Fill(Node node, Axis axis, Length?[] low, Length?[] high, ImmutableArray<Pin> pins)
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
            low[k] ??= Parts.Equal(UsualMat, 2, 0);
            high[k] ??= Parts.Equal(UsualMat, 2, 1);
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
            Tell(FindingCatalogue.NothingLeft, node.Draft.Location, $"Nothing is left of {node.Unit.Called}: its {Name(axis)} would be {Text(sizes.Min())}.", "Make its size larger, or what holds it off smaller.");
            return null;
        }

        if (sizes.Any(s => s > Length.Limit))
        {
            Tell(FindingCatalogue.TooFar, node.Draft.Location, $"The {Name(axis)} of {node.Unit.Called} comes to more than a kilometre.", "Write smaller sizes.");
            return null;
        }

        return new([.. sizes], [.. low.Select(l => l!.Value)], [.. high.Select(h => h!.Value)]);
    }

    /// <summary>Between two known layers exactly one unwritten border is worked out; with none unwritten they must agree.</summary>
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
        var lines = $"line {inner.Location.Start.Line} says {Text(inner.Size)} and line {outer.Location.Start.Line} {Text(outer.Size)}";
        if (open.Count > 1)
        {
            Tell(FindingCatalogue.SizesContradict, outer.Location, $"Two sizes of {node.Unit.Called} are known ({lines}), but {open.Count} borders between them are not written.", "Write all borders but one.");
            return false;
        }

        if (open.Count == 0)
        {
            if (rest == Length.Zero)
            {
                return true;
            }

            var between = inner.Layer == outer.Layer ? "" : $", with {Text(written)} of border between them";
            Tell(FindingCatalogue.SizesContradict, outer.Location, $"The {Name(axis)} of {node.Unit.Called} is said twice and differs: {lines}{between}.", "Take one of them away, or leave a border unwritten so that it is worked out.");
            return false;
        }

        if (rest < Length.Zero)
        {
            Tell(FindingCatalogue.SizesContradict, outer.Location, $"No border is left around {node.Unit.Called}: {lines}, {Text(-rest)} too little.", "Make the inner size smaller or the outer one larger.");
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

    /// <summary>A length as the file's readers know it.</summary>
    private string Text(Length length) => LengthText.Of(length, units);

    /// <summary>Room for the words at their letter height and an eighth at each end, rounded up to a ruler's mark.</summary>
    private Length? FitWords(Node node, Axis axis)
    {
        if (words.Shape(node) is not { } shaped)
        {
            if (node.Draft.Texts.IsEmpty)
            {
                Refuse(node, null, $"There are no words for {node.Unit.Called} to fit.", "Write the words in quotes, or a width.");
            }

            return null;
        }

        if (LetterHeight(node) is not { } letters)
        {
            return null;
        }

        var caps = axis == Axis.Across ? Words.WidthInCaps(shaped) : Words.HeightInCaps(shaped.Length);
        var ink = Length.NearestMillimetres(letters.Millimetres * caps);
        var step = units == UnitSystem.Inches ? Length.NanometresPerInch / 16 : Length.NanometresPerMillimetre;
        var needed = (ink + Words.EndRoom * 2).Nanometres;
        return new((needed + step - 1) / step * step);
    }

    /// <summary>
    /// The height of a capital: as written; for text without a size large-print capitals; else half the piece's height, shared by its lines.
    /// </summary>
    public Length? LetterHeight(Node node)
    {
        var draft = node.Draft;
        if (Kinds.Measure(draft, "letters") is { } written)
        {
            return written;
        }

        if (draft.Kind is "text" or "word")
        {
            if (draft.Size is null)
            {
                return UsualLetters;
            }

            if (draft.Size is SingleSize && words.Shape(node) is { } shaped)
            {
                return Of(node, Axis.Across) is { } width ? Length.NearestMillimetres(width.Own.Millimetres / Ink(node, shaped).Width) : null;
            }
        }

        if (Extent(draft, Axis.Down) is FitExtent)
        {
            Refuse(node, draft.Size!.Span, $"Nothing says how tall the letters of {node.Unit.Called} are.", "Write letters 1/4.");
            return null;
        }

        var lines = Math.Max(1, Words.LinesOf(node).Length);
        return Of(node, Axis.Down) is { } height ? Length.NearestMillimetres(height.Own.Millimetres / (lines == 1 ? 2 : Words.HeightInCaps(lines) + 1)) : null;
    }

    /// <summary>Capitals of 3/16 in (about 19 point type: large print is 16 to 22 point, RNIB), or 5 mm in metric files.</summary>
    private Length UsualLetters => units == UnitSystem.Inches ? Length.Inch(0, 3, 16) : Length.Millimetre(5);

    /// <summary>Width and height of the box of words in cap heights: a cut-out word's whole ink, or lines of text from cap to baseline.</summary>
    private static (double Width, double Height) Ink(Node node, ImmutableArray<ShapedWords> shaped)
    {
        var width = Words.WidthInCaps(shaped);
        return node.Draft.Kind == "word" && shaped is [{ Outline.IsEmpty: false } word]
            ? (width, word.Outline.Bounds.Height)
            : (width, Words.HeightInCaps(shaped.Length));
    }

    private Length InkSize(Node node, ImmutableArray<ShapedWords> shaped, Axis axis)
    {
        var letters = (Kinds.Measure(node.Draft, "letters") ?? UsualLetters).Millimetres;
        var (width, height) = Ink(node, shaped);
        return Length.NearestMillimetres(letters * (axis == Axis.Across ? width : height));
    }

    private bool Refuse(Node node, TextSpan? span, string message, string hint)
    {
        if (!node.Draft.IsDamaged)
        {
            Tell(FindingCatalogue.BadSize, new(node.Draft.Location.Source, span ?? node.Draft.Location.Span), message, hint);
        }

        return false;
    }

    /// <summary>Tells once what is found for both directions or for every copy.</summary>
    private void Tell(FindingKind kind, Location location, string message, string hint)
    {
        if (_told.Add((location, message)))
        {
            findings.Add(kind, location, message, hint);
        }
    }
}
