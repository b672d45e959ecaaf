using System.Globalization;
using System.Xml;

namespace Sketch.Output.Rendering;

/// <summary>The physical size of a picture in inches, as given by its root element.</summary>
internal readonly record struct SvgSize(double Width, double Height)
{
    /// <summary>Reads width and height.</summary>
    /// <exception cref="ArgumentException">The text is not an SVG, or has no width and height in in, mm, cm or pt.</exception>
    public static SvgSize Read(string svg)
    {
        try
        {
            using var reader = XmlReader.Create(
                new StringReader(svg), new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            reader.MoveToContent();
            return new(Inches(reader.GetAttribute("width")), Inches(reader.GetAttribute("height")));
        }
        catch (XmlException broken)
        {
            throw new ArgumentException("The picture is no SVG.", nameof(svg), broken);
        }
    }

    private static double Inches(string? length)
    {
        var (digits, unit) = length is { Length: > 2 } ? (length[..^2], length[^2..]) : ("", "");
        var perInch = unit switch { "in" => 1, "mm" => 25.4, "cm" => 2.54, "pt" => 72, _ => double.NaN };
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && number / perInch is > 0 and < 40_000 and var inches
            ? inches
            : throw new ArgumentException($"A picture's outermost element needs a physical width and height; \"{length}\" is none.");
    }
}
