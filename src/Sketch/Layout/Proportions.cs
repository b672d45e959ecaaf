using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Pieces with proportions of their own: shapes, words and drawings.</summary>
internal sealed class Proportions(Words words, Artworks artworks)
{
    /// <summary>Whether one number is enough for its size.</summary>
    public static bool HasProportion(Node node) =>
        node.Draft.Kind is "word" or "text" || Kinds.IsArtwork(node.Draft)
            || (Kinds.ShapeOf(node.Draft) is { } shape && ShapeProportions.Has(shape));

    /// <summary>Height for a width of 1.</summary>
    public double? Ratio(Node node)
    {
        if (Kinds.IsArtwork(node.Draft))
        {
            return artworks.Of(node)?.Bounds is { Width: > 0 } bounds ? bounds.Height / bounds.Width : null;
        }

        if (node.Draft.Kind is "word" or "text")
        {
            return words.Shape(node) is { } shaped ? WordSizes.Ink(node, shaped) is var (width, height) ? height / width : null : null;
        }

        return Kinds.ShapeOf(node.Draft) is { } shape ? ShapeProportions.Ratio(shape, Kinds.StyleOf(node.Draft)) : null;
    }

    /// <summary>The size in the other direction that goes with a known one.</summary>
    public Length? Other(Node node, Length known, Axis wanted)
    {
        if (Kinds.ShapeOf(node.Draft) is { } shape && ShapeProportions.Has(shape) && !Kinds.IsArtwork(node.Draft))
        {
            var style = Kinds.StyleOf(node.Draft);
            return wanted == Axis.Down ? ShapeProportions.HeightFor(shape, style, known) : ShapeProportions.WidthFor(shape, style, known);
        }

        return Ratio(node) is { } ratio
            ? Length.NearestMillimetres(wanted == Axis.Down ? known.Millimetres * ratio : known.Millimetres / ratio) : null;
    }
}
