using System.Collections.Frozen;
using System.Collections.Immutable;
using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>
/// The papers that need no stash. A file writes a pattern word, then the ground colour, then the colours of the figures
/// (<c>dots navy cream</c>, <c>plaid #f3e9d2 #a33 #246</c>), or a colour word with or without a colour of its own (<c>navy #16324f</c>).
/// Colours left out are derived: the ground from the pattern, the figures from the ground.
/// </summary>
public static class BuiltIn
{
    private static readonly ImmutableArray<(string Word, PaperPattern Pattern, string Ground, string[] Figures)> Table =
    [
        ("plain", PaperPattern.Plain, "ffffff", []),
        ("cardstock", PaperPattern.Cardstock, "ffffff", []),
        ("kraft", PaperPattern.Kraft, "c29a6b", []),
        ("dots", PaperPattern.Dots, "9fc9e0", ["fbf7ec"]),
        ("stripes", PaperPattern.Stripes, "fbf6e9", ["88aec4"]),
        ("gingham", PaperPattern.Gingham, "fdfbf5", ["b8433c"]),
        ("plaid", PaperPattern.Plaid, "e9dfca", ["3f6a7d", "b5523f"]),
        ("chevron", PaperPattern.Chevron, "f7f1e3", ["e0a25b"]),
        ("waves", PaperPattern.Waves, "cfe4e8", ["3d7f93", "ffffff"]),
        ("stars", PaperPattern.Stars, "24395a", ["f2dfa7", "ffffff"]),
        ("woodgrain", PaperPattern.Woodgrain, "c9a57a", []),
        ("foil", PaperPattern.Foil, "b9bec3", []),
        ("pearl", PaperPattern.Pearl, "f6f1ee", []),
    ];

    private static readonly FrozenDictionary<string, PaperLook> Defaults = Table.ToFrozenDictionary(
        t => t.Word,
        t => new PaperLook(t.Pattern, Rgb.FromHex(t.Ground), [.. t.Figures.Select(Rgb.FromHex)]),
        StringComparer.OrdinalIgnoreCase);

    /// <summary>The look of any offcut: light enough for ink and dark enough to be seen on white. Files cannot name it.</summary>
    public static PaperLook AnyOffcut { get; } =
        new(PaperPattern.Patches, Rgb.FromHex("e3d6bd"), [Rgb.FromHex("c9d6df"), Rgb.FromHex("cddac4"), Rgb.FromHex("e4cac4")]);

    /// <summary>The pattern words, plain ones first.</summary>
    public static ImmutableArray<string> PatternWords { get; } = [.. Table.Select(t => t.Word)];

    /// <summary>A built-in paper by its first word.</summary>
    /// <param name="name">A pattern word or a basic colour word; capitals do not matter.</param>
    /// <param name="colours">Ground, then figures; empty for the pattern's or the colour word's own.</param>
    /// <returns>The look, or null if the name is neither.</returns>
    public static PaperLook? Find(string name, ImmutableArray<Rgb> colours)
    {
        if (!Defaults.TryGetValue(name, out var look) && !ColourWords.TryGet(name, out look))
        {
            return null;
        }

        return colours.IsDefaultOrEmpty ? look : new(look.Pattern, colours[0], colours[1..]);
    }

    /// <summary>
    /// A built-in paper as a file writes it, word by word: a pattern or colour word, then colour words or <c>#</c> and 3 or 6 hex digits.
    /// </summary>
    /// <returns>The look, or null if the first word is not a built-in paper or a later one not a colour.</returns>
    public static PaperLook? FromWords(IReadOnlyList<string> words)
    {
        if (words.Count == 0)
        {
            return null;
        }

        var colours = ImmutableArray.CreateBuilder<Rgb>(words.Count - 1);
        foreach (var word in words.Skip(1))
        {
            if (ColourOf(word) is not { } colour)
            {
                return null;
            }

            colours.Add(colour);
        }

        return Find(words[0], colours.DrainToImmutable());
    }

    private static Rgb? ColourOf(string word)
    {
        if (ColourWords.TryGet(word, out var look))
        {
            return look.Ground;
        }

        return word.Length is 4 or 7 && word[0] == '#' && word.Skip(1).All(char.IsAsciiHexDigit)
            ? Rgb.FromHex(word[1..])
            : null;
    }
}
