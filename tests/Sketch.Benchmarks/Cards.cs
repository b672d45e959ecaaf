using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Panels;

namespace Sketch.Benchmarks;

/// <summary>The cards that are measured.</summary>
internal static class Cards
{
    /// <summary>The number of random cards to measure.</summary>
    public const int RandomCount = 200;

    /// <summary>A card of 15 pieces: its base, 12 on the front and 2 inside.</summary>
    public const string FifteenPieces = """
        card "Fair winds"
        base A2, fold left, of white
        role sky: waves #d8e9ee #8fbccb
        role deep: navy #16324f
        role rope: stripes #f3e7cf #c9a06a
        role light: foil gold

        front
          sky: panel, showing 1/8, of sky
            mat +1/8, of deep
            rope: strip full x 3/4, bottom 7/8, of rope
              edge: line 1/16, along top, of light, wrap 1/2
              hem: line 1/16, along bottom, of light, wrap 1/2
            lamp: star 1 3/4, right 3/8, top 1/2, of deep, raised 2 mm
              glow: star 1 1/4, of light
            words: banner 2 1/2 x 5/8 "Fair winds", left 1/4, over top of rope, swallowtail right, of kraft, letters 1/4, raised 1 mm
              mat +1/8, of deep
            3 gem 1/8, in a row, gap 1/16, right 3/8, bottom 3/8, of red

        inside
          strip full x 1/2, bottom 1/4, of rope
          text "Calm seas ahead" "and a good light", top 1 1/2, of deep

        """;

    /// <summary>A card of 200 pieces: the card of 15 with 185 more gems.</summary>
    public static readonly string TwoHundredPieces = FifteenPieces.Replace(
        "\n\ninside", "\n    185 gem 1/16, in a grid 37 x 5, gap 1/32, bottom 2, of red\n\ninside", StringComparison.Ordinal);

    /// <summary>Draws every face of a text as SVG, in the same way as the command line.</summary>
    /// <param name="text">A card without errors.</param>
    /// <param name="fonts">Fonts with their cache of shaped words; null for new fonts with an empty cache.</param>
    public static string[] Draw(string text, FontLibrary? fonts) =>
        [.. Lay(text, fonts) is var card ? card.Faces.Select(f => CardDrawing.Draw(card, f.Kind)) : []];

    /// <summary>A text laid out and checked.</summary>
    public static LaidOutCard Lay(string text, FontLibrary? fonts)
    {
        var compilation = Compiler.Compile(new("measured.card", text), new FolderFiles(fonts: fonts));
        return compilation.HasErrors
            ? throw new InvalidOperationException(string.Join('\n', compilation.Findings.Select(f => f.Message)) + "\n" + text)
            : compilation.Card!;
    }
}
