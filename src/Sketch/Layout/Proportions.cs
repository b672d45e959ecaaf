using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Pieces with proportions of their own: shapes, words and drawings.</summary>
internal sealed class Proportions(Words words, Artworks artworks)
{
    /// <summary>Whether one number is enough for its size.</summary>
    public static bool HasProportion(Node node) =>
        node.Draft.Kind.Traits.IsWords || node.Draft.OutlineKind.Traits.IsDrawing
            || (node.Draft.OutlineKind.Traits.Shape is { } shape && ShapeProportions.Has(shape));

    /// <summary>Height for a width of 1.</summary>
    public double? Ratio(Node node)
    {
        if (node.Draft.OutlineKind.Traits.IsDrawing)
        {
            return artworks.Of(node)?.Bounds is { Width: > 0 } bounds ? bounds.Height / bounds.Width : null;
        }

        if (node.Draft.Kind.Traits.IsWords)
        {
            return words.Shape(node) is { } shaped ? WordSizes.Ink(node, shaped) is var (width, height) ? height / width : null : null;
        }

        return node.Draft.OutlineKind.Traits.Shape is { } shape ? ShapeProportions.Ratio(shape, node.Draft.Rules.Style) : null;
    }

    /// <summary>The size in the other direction that goes with a known one.</summary>
    public Length? Other(Node node, Length known, Axis wanted)
    {
        if (node.Draft.OutlineKind.Traits.Shape is { } shape && ShapeProportions.Has(shape) && !node.Draft.OutlineKind.Traits.IsDrawing)
        {
            var style = node.Draft.Rules.Style;
            return wanted == Axis.Down ? ShapeProportions.HeightFor(shape, style, known) : ShapeProportions.WidthFor(shape, style, known);
        }

        return Ratio(node) is { } ratio
            ? Length.NearestMillimetres(wanted == Axis.Down ? known.Millimetres * ratio : known.Millimetres / ratio) : null;
    }
}
