using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// One axis of a piece with its mats: sizes from the piece (0) outwards, and the border of each mat at the low and the high side.
/// </summary>
internal sealed record Stack(ImmutableArray<Length> Sizes, ImmutableArray<Length> Low, ImmutableArray<Length> High)
{
    public Length Own => Sizes[0];

    public Length Outer => Sizes[^1];

    private readonly Length[] _insets = Insets(Low);

    /// <summary>From the low edge of the outermost layer to that of layer <paramref name="layer"/>.</summary>
    public Length Inset(int layer) => _insets[layer];

    private static Length[] Insets(ImmutableArray<Length> low)
    {
        var insets = new Length[low.Length];
        for (var i = low.Length - 2; i >= 0; i--)
        {
            insets[i] = insets[i + 1] + low[i + 1];
        }

        return insets;
    }
}
