using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Pieces with proportions of their own: shapes, words and drawings.</summary>
internal sealed class Proportions(StackSizes sizes, Words words, Artworks artworks)
{
    /// <summary>Whether one number specifies its size.</summary>
    public static bool HasProportion(Node node) =>
        node.Bound.Kind.Traits.IsWords || node.Bound.OutlineKind.Traits.IsDrawing
            || (node.Bound.OutlineKind.Traits.Shape is { } shape && ShapeProportions.Has(shape));

    /// <summary>The height for a width of 1.</summary>
    public double? Ratio(Node node)
    {
        if (node.Bound.OutlineKind.Traits.IsDrawing)
        {
            return artworks.Of(node)?.Bounds is { Width: > 0 } bounds ? bounds.Height / bounds.Width : null;
        }

        if (node.Bound.Kind.Traits.IsWords)
        {
            return words.Shape(node) is { } shaped ? WordSizes.Ink(node, shaped) is var (width, height) ? height / width : null : null;
        }

        return node.Bound.OutlineKind.Traits.Shape is { } shape ? ShapeProportions.Ratio(shape, node.Bound.Rules.Style) : null;
    }

    /// <summary>The size in the other direction for a known one.</summary>
    public Length? Other(Node node, Length known, Axis wanted)
    {
        if (node.Bound.OutlineKind.Traits.Shape is { } shape && ShapeProportions.Has(shape) && !node.Bound.OutlineKind.Traits.IsDrawing)
        {
            var style = node.Bound.Rules.Style;
            return wanted == Axis.Down ? ShapeProportions.HeightFor(shape, style, known) : ShapeProportions.WidthFor(shape, style, known);
        }

        var border = sizes.WordSizes.Border(node) * 2;
        var inner = (known - border).Millimetres;
        return Ratio(node) is { } ratio ? Length.NearestMillimetres(wanted == Axis.Down ? inner * ratio : inner / ratio) + border : null;
    }
}
