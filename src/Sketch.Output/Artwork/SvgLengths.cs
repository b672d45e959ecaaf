using System.Globalization;
using System.Xml.Linq;
using Sketch.Shapes;

namespace Sketch.Output.Artwork;

/// <summary>Lengths and viewports of SVG. A user unit is a CSS pixel, 1/96 in (CSS Values and Units, absolute lengths).</summary>
internal static class SvgLengths
{
    /// <summary>Millimetres in a user unit that has no viewport of its own.</summary>
    public const double MillimetresPerUnit = 25.4 / 96;

    private static readonly Dictionary<string, double> UnitsPer = new(StringComparer.OrdinalIgnoreCase)
    {
        [""] = 1,
        ["px"] = 1,
        ["in"] = 96,
        ["cm"] = 96 / 2.54,
        ["mm"] = 96 / 25.4,
        ["q"] = 96 / 101.6,
        ["pt"] = 96 / 72.0,
        ["pc"] = 16,
    };

    /// <summary>An attribute's length in user units; 0 if it is missing, a percentage or malformed.</summary>
    public static double Of(XElement element, string attribute) => Find(element, attribute) ?? 0;

    /// <summary>An attribute's length in user units; null if it is missing, a percentage or malformed.</summary>
    public static double? Find(XElement element, string attribute)
    {
        var text = element.Attribute(attribute)?.Value.Trim() ?? "";
        var digits = text.TrimEnd([.. "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ%"]);
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && double.IsFinite(number)
            && UnitsPer.TryGetValue(text[digits.Length..], out var units)
                ? number * units
                : null;
    }

    /// <summary>The root element's transform from user units to millimetres.</summary>
    public static Affine Root(XElement svg) => Viewport(svg, svg).Then(Affine.Scale(MillimetresPerUnit, MillimetresPerUnit));

    /// <summary>A nested viewport's transform to the surrounding units.</summary>
    /// <param name="svg">The element with the view box.</param>
    /// <param name="sized">The element with the width and height: itself, or the <c>use</c> that shows it.</param>
    public static Affine Nested(XElement svg, XElement sized)
    {
        var place = ReferenceEquals(svg, sized) ? Affine.Shift(Of(svg, "x"), Of(svg, "y")) : Affine.Identity;
        return Viewport(svg, sized).Then(place);
    }

    private static Affine Viewport(XElement svg, XElement sized)
    {
        var box = Numbers(svg.Attribute("viewBox")?.Value ?? "");
        if (box is not [var left, var top, > 0 and var across, > 0 and var down])
        {
            return Affine.Identity;
        }

        var (width, height) = (Find(sized, "width") ?? Find(svg, "width"), Find(sized, "height") ?? Find(svg, "height"));
        var scaleX = (width ?? height * across / down ?? across) / across;
        var scaleY = (height ?? width * down / across ?? down) / down;
        if (svg.Attribute("preserveAspectRatio")?.Value.Trim() != "none")
        {
            scaleX = scaleY = Math.Min(scaleX, scaleY);
        }

        return Affine.Shift(-left, -top).Then(Affine.Scale(scaleX, scaleY));
    }

    /// <summary>The numbers of a list, separated by blanks and commas; empty if one of them is malformed.</summary>
    public static IReadOnlyList<double> Numbers(string list)
    {
        var numbers = new List<double>();
        foreach (var part in list.Split([' ', ',', '\t', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
            {
                return [];
            }

            numbers.Add(number);
        }

        return numbers;
    }
}
