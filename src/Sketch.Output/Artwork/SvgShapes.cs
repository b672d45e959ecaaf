using System.Xml.Linq;
using SkiaSharp;

namespace Sketch.Output.Artwork;

/// <summary>The basic shapes and the path of SVG.</summary>
internal static class SvgShapes
{
    /// <summary>A shape in its own units; null for an element that is not a shape, or a shape without an area.</summary>
    /// <exception cref="ArtworkException">Its numbers are malformed.</exception>
    public static SKPath? Path(XElement element) => element.Name.LocalName switch
    {
        "path" => FromData(element.Attribute("d")?.Value ?? ""),
        "rect" => Rectangle(element),
        "circle" => Oval(element, SvgLengths.Of(element, "r"), SvgLengths.Of(element, "r")),
        "ellipse" => Oval(element, SvgLengths.Find(element, "rx") ?? SvgLengths.Of(element, "ry"), SvgLengths.Find(element, "ry")
            ?? SvgLengths.Of(element, "rx")),
        "polygon" or "polyline" => Polygon(SvgLengths.Numbers(element.Attribute("points")?.Value ?? "")),
        _ => null,
    };

    private static SKPath FromData(string data) =>
        SKPath.ParseSvgPathData(data) ?? throw new ArtworkException("has a path whose numbers cannot be read.");

    private static SKPath? Rectangle(XElement element)
    {
        var (x, y) = (SvgLengths.Of(element, "x"), SvgLengths.Of(element, "y"));
        var (width, height) = (SvgLengths.Of(element, "width"), SvgLengths.Of(element, "height"));
        if (width <= 0 || height <= 0)
        {
            return null;
        }

        var (radiusX, radiusY) = (SvgLengths.Find(element, "rx"), SvgLengths.Find(element, "ry"));
        using var builder = new SKPathBuilder();
        builder.AddRoundRect(
            new((float)x, (float)y, (float)(x + width), (float)(y + height)),
            (float)Math.Clamp(radiusX ?? radiusY ?? 0, 0, width / 2),
            (float)Math.Clamp(radiusY ?? radiusX ?? 0, 0, height / 2),
            SKPathDirection.Clockwise);
        return builder.Detach();
    }

    private static SKPath? Oval(XElement element, double radiusX, double radiusY)
    {
        if (radiusX <= 0 || radiusY <= 0)
        {
            return null;
        }

        var (x, y) = (SvgLengths.Of(element, "cx"), SvgLengths.Of(element, "cy"));
        using var builder = new SKPathBuilder();
        builder.AddOval(new((float)(x - radiusX), (float)(y - radiusY), (float)(x + radiusX), (float)(y + radiusY)),
            SKPathDirection.Clockwise);
        return builder.Detach();
    }

    private static SKPath? Polygon(IReadOnlyList<double> numbers)
    {
        if (numbers.Count < 6)
        {
            return null;
        }

        using var builder = new SKPathBuilder();
        builder.AddPoly([.. Enumerable.Range(0, numbers.Count / 2)
            .Select(i => new SKPoint((float)numbers[2 * i], (float)numbers[2 * i + 1]))], close: true);
        return builder.Detach();
    }
}
