using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>The outlines of pieces and mats in their computed boxes, in millimetres on the face.</summary>
internal sealed class PieceShapes(Words words, Artworks artworks, StackSizes sizes, NameLookup names, Places places)
{
    /// <summary>Thickness of a writing line in millimetres.</summary>
    private const double RuleThickness = 0.3;

    /// <summary>
    /// The room between two lines of small letters in cap heights, the pitch less the height of an x in scripts with tall capitals: a
    /// sentiment is not cut apart there.
    /// </summary>
    private const double BetweenLines = WordBlock.LinePitch - 0.4;

    /// <summary>How much of the width of a stamp its name takes.</summary>
    private const double NameShare = 0.8;

    /// <summary>The number of corners and curves above which an outline is long: a word of eighty letters.</summary>
    private const int LongOutline = 2_000;

    /// <summary>A piece's own outline; empty where there is nothing to draw.</summary>
    public Outline Own(Node node, Rect box)
    {
        var bound = node.Bound;
        if (bound.NamedStamp is not null)
        {
            return NamedStamp(node, box);
        }

        if (bound.OutlineKind.Traits.IsDrawing)
        {
            return artworks.Of(node) is { } drawing ? Stretch(drawing, Bounds.Of(box)) : Outline.Empty;
        }

        return bound.Kind switch
        {
            PieceKind.Group => Outline.Empty,
            PieceKind.Word => words.Shape(node) is { } shaped ? Stretch(shaped.Ink, Bounds.Of(box)) : Outline.Empty,
            PieceKind.Sentiment => CutRound(node, box),
            PieceKind.Text => Lines(node, box),
            PieceKind.Ruled => Rules(bound, box),
            PieceKind.Frame => EdgeCutting.Apply(Frame(node, box), bound.Rules.Style.Edges, box),
            _ => ShapeOutline.Build(bound.OutlineKind.Traits.Shape ?? Shape.Rectangle, bound.Rules.Style, box),
        };
    }

    /// <summary>
    /// The outlines of a piece (0) and its mats outwards, with the forms of their own sides: rectangles keep sharp corners; every other
    /// outline is grown by the border with round joins, holes closed. A mat of a plain size, or with borders that differ, is the same shape
    /// at that size.
    /// </summary>
    public static Outline[] WithMats(Node node, Outline own, Rect[] boxes)
    {
        var layers = new Outline[boxes.Length];
        layers[0] = own;

        // A mat is simpler than what it lies behind, so growing it further takes less work than growing a long outline again.
        var isLong = own.Corners > LongOutline;
        var (from, fromBox) = (isLong ? own.WithoutHoles() : own, boxes[0]);
        for (var layer = 1; layer < layers.Length; layer++)
        {
            var (box, cuts) = (boxes[layer], node.Bound.Mats[layer - 1].Rules.Style.Edges);
            if (EvenBorder(node, layer, boxes[0], box) is null || !isLong || EvenBorder(node, layer, fromBox, box) is not { } grown)
            {
                layers[layer] = EdgeCutting.Apply(Mat(node, layer, own, boxes[0], box), cuts, box);
                continue;
            }

            (from, fromBox) = (from.Grow(grown.Millimetres), box);
            layers[layer] = EdgeCutting.Apply(from, cuts, box);
        }

        return layers;
    }

    /// <summary>How far a mat's outline is grown from one inside it; null where it is the same shape at a size of its own.</summary>
    private static Length? EvenBorder(Node node, int layer, Rect innerBox, Rect box)
    {
        var mat = node.Bound.Mats[layer - 1];
        var grown = box.Left < innerBox.Left ? (innerBox.Left - box.Left) : Length.Zero;
        var even = innerBox.Grow(Insets.All(grown)) == box;
        var isPlainSize = mat.Size is SingleSize or BoxSize && mat.Rules.Borders.IsEmpty;
        return even && !isPlainSize ? grown : null;
    }

    private static Outline Mat(Node node, int layer, Outline own, Rect ownBox, Rect box)
    {
        var bound = node.Bound;
        if (EvenBorder(node, layer, ownBox, box) is { } grown)
        {
            return own.Grow(grown.Millimetres, closeHoles: true);
        }

        return bound.OutlineKind.Traits.Shape is { } shape && !bound.OutlineKind.Traits.IsDrawing
            ? ShapeOutline.Build(shape, bound.Rules.Style, box).WithoutHoles()
            : Stretch(own.WithoutHoles(), Bounds.Of(box));
    }

    /// <summary>The words inked on a paper piece, centred, or null when it has none.</summary>
    public PieceWords? InkedWords(Node node, Rect box, Paint? ink)
    {
        var bound = node.Bound;
        if (bound.Kind.Traits.IsWords || bound.NamedStamp is not null || words.Shape(node) is not { } shaped
            || sizes.WordSizes.LetterHeight(node) is not { } letters)
        {
            return null;
        }

        var room = Words.Room(bound, box, shaped);
        var outline = shaped.In(Bounds.Of(room), letters.Millimetres);
        var (width, height) = (shaped.Width * letters.Millimetres, shaped.Height * letters.Millimetres);
        var fits = width <= room.Width.Millimetres + Words.Slack && height <= room.Height.Millimetres + Words.Slack;
        return new(TextOf(node), outline, ink, letters, fits)
        {
            Room = room,
            Height = height,
            SmallLetterHeight = Length.NearestMillimetres(letters.Millimetres * words.SmallLetters(node)),
        };
    }

    /// <summary>The words of a text, sentiment or cut-out word.</summary>
    public PieceWords? OwnWords(Node node, Paint? ink, Outline inked, Rect box)
    {
        if (words.Shape(node) is not { } shaped || sizes.WordSizes.LetterHeight(node) is not { } letters)
        {
            return null;
        }

        var fits = shaped.Width * letters.Millimetres <= box.Width.Millimetres + Words.Slack;
        var clause = node.Bound.Kind == PieceKind.Word || (ink is not null && node.Bound.Rules.Ink is null) ? "of" : "ink";
        var outline = node.Bound.Kind switch
        {
            PieceKind.Word => Outline.Empty,
            PieceKind.Sentiment => Stamped(node, box),
            _ => inked,
        };
        return new(TextOf(node), outline, ink, letters, fits)
        {
            InkClause = clause,
            Room = box,
            Height = shaped.Height * letters.Millimetres,
            SmallLetterHeight = Length.NearestMillimetres(letters.Millimetres * words.SmallLetters(node)),
        };
    }

    /// <summary>A rubber stamp without a drawing: its name in a thin frame.</summary>
    private Outline NamedStamp(Node node, Rect box)
    {
        var line = Length.NearestMillimetres(RuleThickness);
        var frame = ShapeOutline.Build(Shape.Rounded, ShapeStyle.Plain, box)
            .Subtract(ShapeOutline.Build(Shape.Rounded, ShapeStyle.Plain, box.Grow(Insets.All(-line))));
        if (words.Shape(node) is not { Width: > 0, Height: > 0 } name)
        {
            return frame;
        }

        var letters = Math.Min(box.Width.Millimetres * NameShare / name.Width, box.Height.Millimetres / 4 / name.Height);
        return new([.. frame.Contours, .. name.In(Bounds.Of(box), letters).Contours]);
    }

    private Outline CutRound(Node node, Rect box)
    {
        if (Stamped(node, box) is not { IsEmpty: false } letters || sizes.WordSizes.LetterHeight(node) is not { } height)
        {
            return Outline.Empty;
        }

        var border = sizes.WordSizes.Border(node).Millimetres;
        var between = Words.LinesOf(node).Length > 1 ? height.Millimetres * BetweenLines : 0;
        return letters.CutRound(border, Math.Max(2 * border, between));
    }

    /// <summary>The letters of a sentiment, which leave its border free.</summary>
    private Outline Stamped(Node node, Rect box) => words.Shape(node) is { } shaped
        ? Stretch(shaped.Ink, Bounds.Of(box.Grow(Insets.All(-sizes.WordSizes.Border(node))))) : Outline.Empty;

    private static string TextOf(Node node) => string.Join('\n', Words.LinesOf(node).Select(t => t.Text));

    private Outline Lines(Node node, Rect box) =>
        words.Shape(node) is { } shaped && sizes.WordSizes.LetterHeight(node) is { } letters
            ? shaped.In(Bounds.Of(box), letters.Millimetres)
            : Outline.Empty;

    private static Outline Stretch(Outline drawing, Bounds box)
    {
        if (drawing.IsEmpty)
        {
            return drawing;
        }

        var from = drawing.Bounds;
        var (across, down) = (box.Width / Math.Max(1e-9, from.Width), box.Height / Math.Max(1e-9, from.Height));
        return drawing.Transform(
            Affine.Shift(-from.Left, -from.Top).Then(Affine.Scale(across, down)).Then(Affine.Shift(box.Left, box.Top)));
    }

    /// <summary>Writing lines as thin bars, the first one spacing below the top.</summary>
    private static Outline Rules(BoundPiece bound, Rect box)
    {
        var apart = bound.Rules.LinesApart.Millimetres;
        var bounds = Bounds.Of(box);
        var contours = ImmutableArray.CreateBuilder<Contour>();
        var count = apart > 0.1 ? (int)Math.Min(1000, Math.Floor(bounds.Height / apart + 1e-9)) : 0;
        for (var i = 1; i <= count; i++)
        {
            var y = bounds.Top + i * apart;
            contours.Add(ContourPen.Polygon(
                new(bounds.Left, y - RuleThickness), new(bounds.Right, y - RuleThickness), new(bounds.Right, y), new(bounds.Left, y)));
        }

        return new(contours.ToImmutable());
    }

    private Outline Frame(Node node, Rect box)
    {
        var ring = WholeFrame(node, box);
        return node.Bound.IsArcFrame && node.Bound.Rules.Arc is { } arc
            ? ring.Intersect(Sector.Of(Bounds.Of(box), arc.Clause.Degrees)) : ring;
    }

    private Outline WholeFrame(Node node, Rect box)
    {
        var bound = node.Bound;
        var thickness = bound.Size is SingleSize single ? single.Value : Length.Inch(0, 1, 8);
        if (bound.Rules.Around is { } around
            && names.Find(node.Set, around.Clause.What, around.Source) is { Copies: [var inner] }
            && inner.Bound.Kind.Traits.HasOutlineToFrame
            && BoxOf(inner) is { } innerBox
            && Own(inner, innerBox) is { IsEmpty: false } outline)
        {
            return outline.Ring(thickness.Millimetres);
        }

        var outer = Outline.Rectangle(box);
        return thickness * 2 < box.Width && thickness * 2 < box.Height
            ? outer.Subtract(Outline.Rectangle(box.Grow(Insets.All(-thickness))))
            : outer;
    }

    private Rect? BoxOf(Node node) =>
        places.Of(node, 0, Axis.Across) is { } left && places.Of(node, 0, Axis.Down) is { } top
        && sizes.Of(node, Axis.Across) is { } across && sizes.Of(node, Axis.Down) is { } down
            ? new(left, top, across.Own, down.Own)
            : null;
}
