namespace Sketch.Output.Artwork;

/// <summary>What determines whether and how a shape is filled. Everything except the clip path and the mask is inherited.</summary>
/// <param name="IsFilled">Whether it has a visible fill.</param>
/// <param name="IsEvenOdd">Whether the even-odd rule determines the inside of a path that overlaps itself.</param>
/// <param name="IsDisplayed">Whether it and its children are drawn at all.</param>
/// <param name="ClipPath">The id of its clip path, or null.</param>
/// <param name="Mask">The id of its mask, or null.</param>
internal sealed record FillStyle(bool IsFilled, bool IsEvenOdd, bool IsDisplayed, string? ClipPath, string? Mask)
{
    /// <summary>SVG's initial values: filled, by the nonzero rule.</summary>
    public static readonly FillStyle Initial = new(true, false, true, null, null);

    /// <summary>The style of an element from its own properties and its parent's style.</summary>
    /// <param name="properties">Its CSS properties and presentation attributes, the strongest value of each.</param>
    /// <param name="parent">The parent's style.</param>
    public static FillStyle Of(IReadOnlyDictionary<string, string> properties, FillStyle parent)
    {
        var filled = properties.GetValueOrDefault("fill") switch
        {
            null or "inherit" or "" => parent.IsFilled,
            "none" or "transparent" => false,
            _ => true,
        };
        var isEvenOdd = (properties.GetValueOrDefault("fill-rule") ?? properties.GetValueOrDefault("clip-rule")) switch
        {
            "evenodd" => true,
            "nonzero" => false,
            _ => parent.IsEvenOdd,
        };
        var isDisplayed = properties.GetValueOrDefault("display") != "none"
            && properties.GetValueOrDefault("visibility") is not ("hidden" or "collapse")
            && properties.GetValueOrDefault("opacity") is not ("0" or "0%");
        return new(
            filled && properties.GetValueOrDefault("fill-opacity") is not ("0" or "0%"),
            isEvenOdd,
            isDisplayed,
            Reference(properties.GetValueOrDefault("clip-path")),
            Reference(properties.GetValueOrDefault("mask")));
    }

    /// <summary>The id in <c>url(#id)</c>; null for any other value.</summary>
    private static string? Reference(string? value) =>
        value is not null && value.StartsWith("url(", StringComparison.OrdinalIgnoreCase)
            && value[4..].TrimEnd(')').Trim().Trim('"', '\'') is ['#', .. var id]
            ? id.Trim()
            : null;
}
