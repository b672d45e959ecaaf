using System.Xml.Linq;
using Sketch.Output.Paths;
using Sketch.Shapes;
using SkiaSharp;

namespace Sketch.Output.Artwork;

/// <summary>Walks through an SVG document and collects its filled shapes at their final places.</summary>
internal sealed class ShapeCollector
{
    private const int DepthLimit = 100;

    // A part that uses a part ten times, which uses another ten times, and so on, grows without end although its depth is small.
    private const int ElementLimit = 200_000;

    private const double FarthestMillimetres = 1e6;
    private const string XLink = "http://www.w3.org/1999/xlink";

    private readonly List<Outline> _shapes = [];
    private readonly Dictionary<string, XElement> _named = new(StringComparer.Ordinal);
    private StyleSheet _sheet = StyleSheet.Empty;
    private int _segments;
    private int _elements;

    /// <summary>The filled shapes in millimetres.</summary>
    public IReadOnlyList<Outline> Shapes => _shapes;

    /// <summary>Whether there are photographs in the document.</summary>
    public bool HasImages { get; private set; }

    /// <summary>Collects the shapes of a whole document.</summary>
    /// <exception cref="ArtworkException">It contains something that no outline can represent.</exception>
    public void Collect(XElement root)
    {
        foreach (var element in root.DescendantsAndSelf())
        {
            if (element.Attribute("id") is { } id)
            {
                _named.TryAdd(id.Value, element);
            }
        }

        _sheet = StyleSheet.Parse(string.Concat(root.Descendants().Where(e => e.Name.LocalName == "style").Select(e => e.Value)));
        Children(root, new(SvgLengths.Root(root), _sheet.StyleOf(root, FillStyle.Initial), null), 0);
    }

    private void Children(XElement parent, Context context, int depth)
    {
        foreach (var element in parent.Elements())
        {
            Element(element, context, depth + 1);
        }
    }

    private void Element(XElement element, Context outer, int depth)
    {
        if (depth > DepthLimit || ++_elements > ElementLimit)
        {
            throw new ArtworkException("is nested too deeply, or uses a part within itself; ungroup it in a drawing program.");
        }

        var style = _sheet.StyleOf(element, outer.Style);
        if (!style.IsDisplayed || element.Name.NamespaceName is not ("" or "http://www.w3.org/2000/svg"))
        {
            return;
        }

        var context = new Context(SvgTransform.Parse(element.Attribute("transform")?.Value).Then(outer.Place), style, outer.Clip);
        context = Clipped(context, style, depth);
        switch (element.Name.LocalName)
        {
            case "g" or "a" or "switch":
                Children(element, context, depth);
                break;
            case "svg":
                Children(element, context with { Place = SvgLengths.Nested(element, element).Then(context.Place) }, depth);
                break;
            case "use":
                Use(element, context, depth);
                break;
            case "image":
                HasImages = true;
                break;
            case "text" when style.IsFilled && !string.IsNullOrWhiteSpace(element.Value):
                throw new ArtworkException("holds words as text; turn them into paths in a drawing program.");
            case var _ when style.IsFilled && SvgShapes.Path(element) is { } path:
                Add(path, context);
                break;
        }
    }

    private void Use(XElement use, Context context, int depth)
    {
        var target = Target(use);
        var place = Affine.Shift(SvgLengths.Of(use, "x"), SvgLengths.Of(use, "y")).Then(context.Place);
        if (target.Name.LocalName is "symbol" or "svg")
        {
            var style = _sheet.StyleOf(target, context.Style);
            Children(target, context with { Place = SvgLengths.Nested(target, use).Then(place), Style = style }, depth + 1);
        }
        else
        {
            Element(target, context with { Place = place }, depth + 1);
        }
    }

    private XElement Target(XElement use)
    {
        var link = use.Attribute("href")?.Value ?? use.Attribute(XName.Get("href", XLink))?.Value ?? "";
        return link.StartsWith('#') && _named.TryGetValue(link[1..], out var target)
            ? target
            : throw new ArtworkException($"uses \"{link}\", which is not in the file.");
    }

    private Context Clipped(Context context, FillStyle style, int depth)
    {
        if (style.Mask is not null)
        {
            throw new ArtworkException("has a mask, which no cut can follow; flatten it in a drawing program.");
        }

        if (style.ClipPath is null || !_named.TryGetValue(style.ClipPath, out var clipPath))
        {
            return context;
        }

        var inner = new ShapeCollector { _sheet = _sheet, _elements = _elements, _segments = _segments };
        foreach (var (name, element) in _named)
        {
            inner._named.Add(name, element);
        }

        var place = SvgTransform.Parse(clipPath.Attribute("transform")?.Value).Then(context.Place);
        inner.Children(clipPath, new(place, FillStyle.Initial, null), depth + 1);
        (_elements, _segments) = (inner._elements, inner._segments);
        Tangle.Refuse(inner._shapes);
        var clip = Outline.Union(inner._shapes);
        return context with { Clip = context.Clip is null ? clip : context.Clip.Intersect(clip) };
    }

    private void Add(SKPath path, Context context)
    {
        var shape = context.Style.IsEvenOdd ? PathOutline.ReadEvenOdd(path, context.Place) : PathOutline.Read(path, context.Place);
        _segments += shape.Contours.Sum(c => c.Segments.Length);
        if (_segments > ArtworkReader.SegmentLimit)
        {
            throw new ArtworkException($"has more than {ArtworkReader.SegmentLimit} corners and curves; simplify it in a drawing program.");
        }

        if (shape.Bounds is var box && !(box.Width < FarthestMillimetres && box.Height < FarthestMillimetres))
        {
            throw new ArtworkException("has a shape that is too large.");
        }

        if (context.Clip is not null)
        {
            Tangle.Refuse([shape]);
            shape = context.Clip.Intersect(shape);
        }

        _shapes.Add(shape);
    }

    private sealed record Context(Affine Place, FillStyle Style, Outline? Clip);
}
