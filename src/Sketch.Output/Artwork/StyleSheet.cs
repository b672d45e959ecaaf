using System.Xml.Linq;
using ExCSS;

namespace Sketch.Output.Artwork;

/// <summary>
/// The style rules of an SVG file. Selectors of element names, classes and ids are supported, alone or combined (<c>rect.edge</c>), as
/// drawing programs write them. Rules with any other selector, such as one for a part within a part, are ignored.
/// </summary>
internal sealed class StyleSheet
{
    private readonly List<(ISelector Selector, StyleDeclaration Style)> _rules;

    private StyleSheet(IEnumerable<(ISelector Selector, StyleDeclaration Style)> rules) =>
        _rules = [.. rules.OrderBy(r => r.Selector.Specificity)];

    /// <summary>No rules.</summary>
    public static StyleSheet Empty { get; } = new([]);

    /// <summary>Reads CSS. What cannot be read is ignored, as CSS requires (CSS Syntax Module Level 3, error handling).</summary>
    public static StyleSheet Parse(string css) => new(
        from rule in Parser().Parse(css).StyleRules
        from selector in rule.Selector is ListSelector list ? list : [rule.Selector]
        where selector is CompoundSelector compound ? compound.All(IsSimple) : IsSimple(selector)
        select (selector, rule.Style));

    /// <summary>The style of an element whose parent has the given style.</summary>
    public FillStyle StyleOf(XElement element, FillStyle parent)
    {
        var properties = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var attribute in element.Attributes().Where(a => a.Name.Namespace == XNamespace.None))
        {
            properties[attribute.Name.LocalName] = attribute.Value.Trim();
        }

        var declared = _rules.Where(r => Matches(r.Selector, element)).SelectMany(r => r.Style).Concat(Inline(element)).ToList();
        foreach (var property in declared.Where(p => !p.IsImportant).Concat(declared.Where(p => p.IsImportant)))
        {
            properties[property.Name] = property.Original;
        }

        return FillStyle.Of(properties, parent);
    }

    // Values unknown to CSS, such as a gradient with a fallback colour, are still fills.
    private static StylesheetParser Parser() => new(includeUnknownDeclarations: true, tolerateInvalidValues: true);

    private static IEnumerable<IProperty> Inline(XElement element) =>
        element.Attribute("style")?.Value is { } style
            ? Parser().Parse($"x{{{style}}}").StyleRules.FirstOrDefault()?.Style ?? Enumerable.Empty<IProperty>()
            : [];

    private static bool IsSimple(ISelector selector) => selector is AllSelector or TypeSelector or ClassSelector or IdSelector;

    private static bool Matches(ISelector selector, XElement element) => selector switch
    {
        AllSelector => true,
        TypeSelector type => type.Name == element.Name.LocalName,
        ClassSelector named => (element.Attribute("class")?.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [])
            .Contains(named.Class),
        IdSelector named => named.Id == element.Attribute("id")?.Value,
        CompoundSelector compound => compound.All(part => Matches(part, element)),
        _ => false,
    };
}
