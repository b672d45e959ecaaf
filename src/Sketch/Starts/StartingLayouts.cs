using System.Collections.Immutable;
using System.Text;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Starts;

/// <summary>All layouts to begin a card from. Their cards are the files in the folder Layouts.</summary>
public static class StartingLayouts
{
    private static readonly ImmutableArray<Fold> Halves = [Fold.Left, Fold.Top];
    private static readonly ImmutableArray<Fold> HalvesOfWide = [Fold.Top, Fold.Left];
    private static readonly ImmutableArray<CardSize> Upright = Named(false, "A2", "US A6", "US A7", "A1", "ISO A6", "A5");
    private static readonly ImmutableArray<CardSize> Landscape = Named(true, "A2", "US A6", "US A7", "A1", "ISO A6", "A5");
    private static readonly ImmutableArray<CardSize> Slim = Named(false, "slimline", "no10", "DL");

    private static readonly ImmutableArray<CardSize> Squares =
    [
        CardSize.Square(Length.Inch(5), false), CardSize.Square(Length.Inch(6), false), CardSize.Square(Length.Millimetre(140), true),
    ];

    /// <summary>The layouts, in the order in which they are shown.</summary>
    public static ImmutableArray<StartingLayout> All { get; } =
    [
        new("feature-and-strip", "One large piece above a strip", Upright, Halves),
        new("three-in-a-row", "Three squares in a row", Landscape, HalvesOfWide),
        new("patchwork", "Six squares of two papers", Upright, Halves),
        new("diagonal", "Three squares from corner to corner", Upright, Halves),
        new("column", "Three pieces down a strip at the side", Upright, Halves),
        new("window", "A round hole through the front", Upright, Halves),
        new("tag", "A large tag with a bow", Upright, Halves),
        new("framed", "A tilted picture beside a banner", Landscape, HalvesOfWide),
        new("wide-band", "A band right across", Landscape, HalvesOfWide),
        new("tent", "A small scene on a card that stands", Landscape, [Fold.Top]),
        new("slim", "Four circles down a tall card", Slim, Halves),
        new("square", "A scalloped circle on a square card", Squares, Halves),
        new("gate-fold", "Two doors that meet in the middle", Upright, [Fold.Gate]),
        new("words-only", "Words on a plain panel", Upright, Halves),
    ];

    /// <summary>The layout of that name; null if there is none.</summary>
    public static StartingLayout? Find(string name) => All.FirstOrDefault(l => l.Name == name);

    internal static SourceText TextOf(string name)
    {
        var file = $"{name}.card";
        using var stream = typeof(StartingLayouts).Assembly.GetManifestResourceStream($"layouts/{file}")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return new(file, reader.ReadToEnd().ReplaceLineEndings("\n"));
    }

    private static ImmutableArray<CardSize> Named(bool isLandscape, params string[] names) =>
        [.. names.Select(n => CardSize.Named(n, isLandscape))];
}
