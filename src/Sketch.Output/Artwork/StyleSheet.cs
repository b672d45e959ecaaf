using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Sketch.Output.Artwork;

/// <summary>What decides whether and how a shape is filled; all of it but the clip and the mask is handed down.</summary>
/// <param name="IsFilled">Whether it has a fill that can be seen.</param>
/// <param name="IsEvenOdd">Whether every second layer of a path that overlaps itself is a hole.</param>
/// <param name="IsDisplayed">Whether it and what is in it is there at all.</param>
/// <param name="ClipPath">The id of its clip path, or null.</param>
/// <param name="Mask">The id of its mask, or null.</param>
internal sealed record ShapeStyle(bool IsFilled, bool IsEvenOdd, bool IsDisplayed, string? ClipPath, string? Mask)
{
    /// <summary>What holds where nothing is said: filled, as SVG has it.</summary>
    public static readonly ShapeStyle Initial = new(true, false, true, null, null);
}

/// <summary>
/// The style rules of an SVG file, as far as they decide about fills: rules for element names, classes and ids, as drawing programs
/// write them. Rules for parts within parts and the like are passed over.
/// </summary>
internal sealed partial class StyleSheet
{
    private readonly List<(string Selector, string Declarations)> _rules;

    private StyleSheet(List<(string Selector, string Declarations)> rules) => _rules = rules;

    /// <summary>No rules.</summary>
    public static StyleSheet Empty { get; } = new([]);

    /// <summary>Reads CSS; what cannot be read is passed over, as CSS has it.</summary>
    public static StyleSheet Parse(string css) => new([.. Rule().Matches(Comment().Replace(css, ""))
        .SelectMany(rule => rule.Groups[1].Value.Split(',').Select(selector => (selector.Trim(), rule.Groups[2].Value)))]);

    /// <summary>An element's style, given that of its parent.</summary>
    public ShapeStyle StyleOf(XElement element, ShapeStyle parent)
    {
        var said = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var attribute in element.Attributes().Where(a => a.Name.Namespace == XNamespace.None))
        {
            said[attribute.Name.LocalName] = attribute.Value.Trim();
        }

        foreach (var (_, declarations) in _rules.Select(r => (Weight: Weight(r.Selector, element), r.Declarations)).Where(r => r.Weight > 0).OrderBy(r => r.Weight))
        {
            Declare(said, declarations);
        }

        Declare(said, element.Attribute("style")?.Value ?? "");
        return Apply(said, parent);
    }

    private static ShapeStyle Apply(Dictionary<string, string> said, ShapeStyle parent)
    {
        var filled = said.GetValueOrDefault("fill") switch
        {
            null or "inherit" or "" => parent.IsFilled,
            "none" or "transparent" => false,
            _ => true,
        };
        return new(
            filled && said.GetValueOrDefault("fill-opacity") is not ("0" or "0%"),
            (said.GetValueOrDefault("fill-rule") ?? said.GetValueOrDefault("clip-rule")) switch { "evenodd" => true, "nonzero" => false, _ => parent.IsEvenOdd },
            said.GetValueOrDefault("display") != "none" && said.GetValueOrDefault("visibility") is not ("hidden" or "collapse") && said.GetValueOrDefault("opacity") is not ("0" or "0%"),
            Reference(said.GetValueOrDefault("clip-path")),
            Reference(said.GetValueOrDefault("mask")));
    }

    private static void Declare(Dictionary<string, string> said, string declarations)
    {
        foreach (var declaration in declarations.Split(';'))
        {
            if (declaration.Split(':', 2) is [var property, var value])
            {
                said[property.Trim()] = value.Replace("!important", "", StringComparison.Ordinal).Trim();
            }
        }
    }

    private static int Weight(string selector, XElement element)
    {
        var name = element.Name.LocalName;
        if (selector == $"#{element.Attribute("id")?.Value}")
        {
            return 3;
        }

        var classes = element.Attribute("class")?.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [];
        return classes.Any(c => selector == $".{c}" || selector == $"{name}.{c}") ? 2 : selector == name || selector == "*" ? 1 : 0;
    }

    private static string? Reference(string? value) => value is not null && Link().Match(value) is { Success: true } link ? link.Groups[1].Value : null;

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"([^{}]+)\{([^{}]*)\}")]
    private static partial Regex Rule();

    [GeneratedRegex(@"url\(\s*['""]?#([^'"")\s]+)")]
    private static partial Regex Link();
}
