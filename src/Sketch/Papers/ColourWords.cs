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

    private static readonly FrozenDictionary<string, PaperLook> WebLooks = WebColours.All.ToFrozenDictionary(
        c => c.Key, c => new PaperLook(PaperPattern.Cardstock, c.Value, []), StringComparer.OrdinalIgnoreCase);

    /// <summary>How much lighter a tone word makes a colour, as a share of the way from black to white, and its chroma.</summary>
    private static readonly FrozenDictionary<string, (double Lighter, double Chroma)> Tones = new Dictionary<string, (double, double)>
    {
        ["light"] = (0.15, 0.8),
        ["pale"] = (0.2, 0.6),
        ["pastel"] = (0.2, 0.6),
        ["soft"] = (0.1, 0.7),
        ["medium"] = (0, 1),
        ["bright"] = (0.05, 1.4),
        ["deep"] = (-0.1, 1.1),
        ["dark"] = (-0.15, 1),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The stock that a colour name means; capitals do not matter. Names of the web are plain cardstock.</summary>
    /// <returns>Whether the word is a basic colour word or a colour name of the web.</returns>
    public static bool TryGet(string word, [NotNullWhen(true)] out PaperLook? look) =>
        Looks.TryGetValue(word, out look) || WebLooks.TryGetValue(word, out look);

    /// <summary>Whether these words, written apart, are one colour name of the web, as <c>light blue</c> is <c>lightblue</c>.</summary>
    public static bool IsOneName(IEnumerable<string> words) => WebColours.All.ContainsKey(string.Concat(words));

    /// <summary>Whether a word says how light or bright a colour is, and is no colour itself.</summary>
    public static bool IsTone(string word) => Tones.ContainsKey(word);

    /// <summary>A colour made lighter, darker or brighter, as in <c>pale teal</c>; null where the words do not say that.</summary>
    public static Rgb? Toned(string tone, string colour) => Tones.TryGetValue(tone, out var by) && TryGet(colour, out var look)
        ? Shades.Lighten(look.Ground, by.Lighter, by.Chroma) : null;
}
