using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>
/// The basic colour words: a role that is not declared but is one of them means plain stock of that colour. Metals are foil, kraft is
/// kraft, pearl is pearl, everything else is cardstock. The tones are our own choice of quiet paper colours, from no source.
/// </summary>
public static class ColourWords
{
    private static readonly ImmutableArray<(string Word, string Hex, Pattern Pattern)> Table =
    [
        ("white", "ffffff", Pattern.Cardstock),
        ("ivory", "fbf5e4", Pattern.Cardstock),
        ("cream", "f4e9cf", Pattern.Cardstock),
        ("black", "1f1e1d", Pattern.Cardstock),
        ("charcoal", "45474a", Pattern.Cardstock),
        ("grey", "9a9c9e", Pattern.Cardstock),
        ("gray", "9a9c9e", Pattern.Cardstock),
        ("red", "b8332f", Pattern.Cardstock),
        ("coral", "ec7c64", Pattern.Cardstock),
        ("pink", "efb0bd", Pattern.Cardstock),
        ("rose", "c9637b", Pattern.Cardstock),
        ("orange", "e6883a", Pattern.Cardstock),
        ("peach", "f7c8a8", Pattern.Cardstock),
        ("yellow", "f4d35e", Pattern.Cardstock),
        ("mustard", "cf9d34", Pattern.Cardstock),
        ("green", "4c8a5b", Pattern.Cardstock),
        ("olive", "7f8447", Pattern.Cardstock),
        ("sage", "a9b99a", Pattern.Cardstock),
        ("mint", "bfe3d0", Pattern.Cardstock),
        ("teal", "2c7a7b", Pattern.Cardstock),
        ("aqua", "8fd0d3", Pattern.Cardstock),
        ("blue", "4a83b8", Pattern.Cardstock),
        ("navy", "1d3557", Pattern.Cardstock),
        ("purple", "6f4a8e", Pattern.Cardstock),
        ("lilac", "c6b3dc", Pattern.Cardstock),
        ("brown", "6f4a33", Pattern.Cardstock),
        ("tan", "cfb08a", Pattern.Cardstock),
        ("kraft", "c29a6b", Pattern.Kraft),
        ("silver", "b9bec3", Pattern.Foil),
        ("gold", "cfa646", Pattern.Foil),
        ("copper", "bd7650", Pattern.Foil),
        ("pearl", "f6f1ee", Pattern.Pearl),
    ];

    private static readonly FrozenDictionary<string, PaperLook> Looks = Table.ToFrozenDictionary(
        t => t.Word, t => new PaperLook(t.Pattern, Rgb.FromHex(t.Hex), []), StringComparer.OrdinalIgnoreCase);

    /// <summary>All colour words, neutrals first, then round the colour circle, then kraft, metals and pearl.</summary>
    public static ImmutableArray<string> All { get; } = [.. Table.Select(t => t.Word)];

    /// <summary>The stock that a colour word means; capitals do not matter.</summary>
    /// <returns>Whether the word is a basic colour word.</returns>
    public static bool TryGet(string word, [NotNullWhen(true)] out PaperLook? look) => Looks.TryGetValue(word, out look);
}
