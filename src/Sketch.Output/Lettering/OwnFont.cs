using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sketch.Lettering;

namespace Sketch.Output.Lettering;

/// <summary>A weight of a family, upright or italic.</summary>
internal readonly record struct FontStyle(FontWeight Weight, bool Italic);

/// <summary>
/// A family of fonts that comes with the tool, so that words look the same on every machine. All are under the SIL Open Font License; the
/// licences lie beside the files. A file is read when its font is first used.
/// </summary>
/// <param name="Name">Its name.</param>
/// <param name="Styles">The styles that it has, upright and lightest first.</param>
internal sealed record OwnFont(string Name, ImmutableArray<FontStyle> Styles)
{
    /// <summary>The style of words that ask for no other.</summary>
    public static readonly FontStyle Regular = new(FontWeight.Regular, false);
    private static readonly FontStyle Bold = new(FontWeight.Bold, false);
    private static readonly FontStyle Italic = new(FontWeight.Regular, true);
    private static readonly FontStyle BoldItalic = new(FontWeight.Bold, true);

    private readonly ConcurrentDictionary<FontStyle, Lazy<LetterFont>> _opened = new();

    /// <summary>The font of words for which no other is named.</summary>
    public static OwnFont Plain { get; } = new("Inter",
        [
            new(FontWeight.Thin, false), new(FontWeight.Light, false), Regular, new(FontWeight.Medium, false),
            new(FontWeight.SemiBold, false), Bold,
        ]);

    /// <summary>All families, one for each kind of lettering (<see cref="LetteringKinds"/>).</summary>
    public static ImmutableArray<OwnFont> All { get; } =
    [
        Plain,
        new("Great Vibes", [Regular]),
        new("Dancing Script", [Regular, Bold]),
        new("Caveat", [Regular, Bold]),
        new("Patrick Hand", [Regular]),
        new("Amatic SC", [Regular, Bold]),
        new("Courier Prime", [Regular, Bold, Italic]),
        new("Zilla Slab", [Regular, Bold]),
        new("Playfair Display", [Regular, Bold, Italic, BoldItalic]),
        new("Nunito", [Regular, Bold]),
        new("Saira Stencil One", [Regular]),
    ];

    /// <summary>The family with a name, ignoring case; null when none has it.</summary>
    public static OwnFont? Find(string family) => All.FirstOrDefault(f => f.Name.Equals(family, StringComparison.OrdinalIgnoreCase));

    /// <summary>One of <see cref="Styles"/>, opened once for the whole run.</summary>
    public LetterFont Open(FontStyle style) => _opened.GetOrAdd(style, s => new(() => Read(s))).Value;

    private LetterFont Read(FontStyle style)
    {
        var file = $"{Name.Replace(" ", "", StringComparison.Ordinal)}-{style.Weight}{(style.Italic ? "Italic" : "")}.ttf";
        using var resource = typeof(OwnFont).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"The tool was built without its font {file}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return LetterFont.Open(bytes, 0) ?? throw new InvalidOperationException($"The tool's own font {file} is broken.");
    }
}
