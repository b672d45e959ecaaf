using System.Collections.Immutable;

namespace Sketch.Output.Lettering;

/// <summary>Thickness of letters by its usual name; the values are those of OpenType's usWeightClass.</summary>
internal enum FontWeight
{
    /// <summary>The thinnest.</summary>
    Thin = 100,

    /// <summary>Thinner than light.</summary>
    ExtraLight = 200,

    /// <summary>Thinner than regular.</summary>
    Light = 300,

    /// <summary>The weight of running text.</summary>
    Regular = 400,

    /// <summary>A little heavier than regular.</summary>
    Medium = 500,

    /// <summary>Between medium and bold.</summary>
    SemiBold = 600,

    /// <summary>Heavy letters for emphasis.</summary>
    Bold = 700,

    /// <summary>Heavier than bold.</summary>
    ExtraBold = 800,

    /// <summary>The heaviest.</summary>
    Black = 900,
}

/// <summary>A font as a maker names it: a family, with or without style words at the end.</summary>
/// <param name="Family">The family's name.</param>
/// <param name="Weight">The requested weight, or null if the name gives none.</param>
/// <param name="Italic">Whether slanted letters are requested.</param>
internal sealed record FontName(string Family, FontWeight? Weight, bool Italic)
{
    private static readonly Dictionary<string, FontWeight> WeightWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["thin"] = FontWeight.Thin,
        ["extralight"] = FontWeight.ExtraLight,
        ["light"] = FontWeight.Light,
        ["regular"] = FontWeight.Regular,
        ["normal"] = FontWeight.Regular,
        ["book"] = FontWeight.Regular,
        ["medium"] = FontWeight.Medium,
        ["semibold"] = FontWeight.SemiBold,
        ["demibold"] = FontWeight.SemiBold,
        ["bold"] = FontWeight.Bold,
        ["extrabold"] = FontWeight.ExtraBold,
        ["black"] = FontWeight.Black,
        ["heavy"] = FontWeight.Black,
    };

    /// <summary>
    /// All ways to read a name, the longest family first: "Harbour Black italic" may be a family of that name, the italic of
    /// "Harbour Black", or the black italic of "Harbour".
    /// </summary>
    public static ImmutableArray<FontName> Readings(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var readings = ImmutableArray.CreateBuilder<FontName>();
        FontWeight? weight = null;
        var italic = false;
        for (var count = words.Length; count > 0; count--)
        {
            readings.Add(new(string.Join(' ', words[..count]), weight, italic));
            var last = words[count - 1].Replace("-", "", StringComparison.Ordinal);
            if (weight is null && WeightWords.TryGetValue(last, out var named))
            {
                weight = named;
            }
            else if (!italic && (last.Equals("italic", StringComparison.OrdinalIgnoreCase)
                || last.Equals("oblique", StringComparison.OrdinalIgnoreCase)))
            {
                italic = true;
            }
            else
            {
                break;
            }
        }

        return readings.ToImmutable();
    }

    /// <summary>The style in words, such as "bold italic"; "regular" if the name gives none.</summary>
    public string Style => (Weight, Italic) switch
    {
        (null, true) => "italic",
        (var weight, true) => $"{Words(weight.Value)} italic",
        (var weight, false) => Words(weight ?? FontWeight.Regular),
    };

    /// <summary>A weight as usually written.</summary>
    public static string Words(FontWeight weight) => weight.ToString().ToLowerInvariant();
}
