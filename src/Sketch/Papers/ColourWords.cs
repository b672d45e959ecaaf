using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>
/// The basic colour words: a role that is not declared but is one of them means plain stock of that colour. Metals are foil, kraft is
/// kraft, pearl is pearl, everything else is cardstock. The tones are our own choice of quiet paper colours, without a source.
/// </summary>
public static class ColourWords
{
    private static readonly ImmutableArray<(string Word, string Hex, PaperPattern Pattern)> Table =
    [
        ("white", "ffffff", PaperPattern.Cardstock),
        ("ivory", "fbf5e4", PaperPattern.Cardstock),
        ("cream", "f4e9cf", PaperPattern.Cardstock),
        ("black", "1f1e1d", PaperPattern.Cardstock),
        ("charcoal", "45474a", PaperPattern.Cardstock),
        ("grey", "9a9c9e", PaperPattern.Cardstock),
        ("gray", "9a9c9e", PaperPattern.Cardstock),
        ("red", "b8332f", PaperPattern.Cardstock),
        ("coral", "ec7c64", PaperPattern.Cardstock),
        ("pink", "efb0bd", PaperPattern.Cardstock),
        ("rose", "c9637b", PaperPattern.Cardstock),
        ("orange", "e6883a", PaperPattern.Cardstock),
        ("peach", "f7c8a8", PaperPattern.Cardstock),
        ("yellow", "f4d35e", PaperPattern.Cardstock),
        ("mustard", "cf9d34", PaperPattern.Cardstock),
        ("green", "4c8a5b", PaperPattern.Cardstock),
        ("olive", "7f8447", PaperPattern.Cardstock),
        ("sage", "a9b99a", PaperPattern.Cardstock),
        ("mint", "bfe3d0", PaperPattern.Cardstock),
        ("teal", "2c7a7b", PaperPattern.Cardstock),
        ("aqua", "8fd0d3", PaperPattern.Cardstock),
        ("blue", "4a83b8", PaperPattern.Cardstock),
        ("navy", "1d3557", PaperPattern.Cardstock),
        ("purple", "6f4a8e", PaperPattern.Cardstock),
        ("lilac", "c6b3dc", PaperPattern.Cardstock),
        ("brown", "6f4a33", PaperPattern.Cardstock),
        ("tan", "cfb08a", PaperPattern.Cardstock),
        ("kraft", "c29a6b", PaperPattern.Kraft),
        ("silver", "b9bec3", PaperPattern.Foil),
        ("gold", "cfa646", PaperPattern.Foil),
        ("copper", "bd7650", PaperPattern.Foil),
        ("pearl", "f6f1ee", PaperPattern.Pearl),
    ];

    private static readonly FrozenDictionary<string, PaperLook> Looks = Table.ToFrozenDictionary(
        t => t.Word, t => new PaperLook(t.Pattern, Rgb.FromHex(t.Hex), []), StringComparer.OrdinalIgnoreCase);

    /// <summary>All colour words, neutrals first, then round the colour circle, then kraft, metals and pearl.</summary>
    public static ImmutableArray<string> All { get; } = [.. Table.Select(t => t.Word)];

    /// <summary>The stock that a colour word means; capitals do not matter.</summary>
    /// <returns>Whether the word is a basic colour word.</returns>
    public static bool TryGet(string word, [NotNullWhen(true)] out PaperLook? look) => Looks.TryGetValue(word, out look);
}
