using Sketch.Lettering;
using Sketch.Output.Lettering;

namespace Sketch.Preview.Views;

/// <summary>Words in a kind of lettering, as a picture to show beside its word.</summary>
/// <param name="Word">The word of the kind.</param>
/// <param name="Box">The view box of the picture.</param>
/// <param name="Path">The outlines of the letters, as SVG path data.</param>
internal sealed record LetteringSample(string Word, string Box, string Path);

/// <summary>A sample of each kind of lettering that comes with the tool.</summary>
/// <param name="Samples">The samples, in the order of the kinds.</param>
internal sealed record LetteringView(IEnumerable<LetteringSample> Samples)
{
    /// <summary>The words of the samples: they have capitals, joins and letters below the line.</summary>
    public const string Words = "Fair winds, keep glowing";

    /// <summary>Room above the baseline and below it in heights of a capital: ascenders and descenders of all kinds fit in.</summary>
    private const double Above = 1.6, Below = 0.8;

    /// <summary>The samples; their fonts are read now and not earlier.</summary>
    public static LetteringView Of() => new([.. LetteringKinds.All.Select(Sample)]);

    private static LetteringSample Sample(LetteringKind kind)
    {
        var words = new FontLibrary([]).Shape(Words, kind.Family).Value.Outline;
        return new(kind.Word, FormattableString.Invariant($"0 {-Above} {words.Bounds.Right:0.###} {Above + Below}"), words.ToSvgPath(3));
    }
}
