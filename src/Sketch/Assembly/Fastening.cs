using Sketch.Units;

namespace Sketch.Assembly;

/// <summary>
/// How much foam or adhesive holds a piece: one strip along its longer side, two where it is at least 1 1/2 in across, and a foam pad for
/// each inch of a strip, at least one. Common practice, no source; makers differ, so this is always called an estimate.
/// </summary>
public static class Fastening
{
    /// <summary>The assumed width of a strip of foam, for its area.</summary>
    public static readonly Length FoamStrip = Length.Inch(0, 1, 4);

    private static readonly Length TwoStripsFrom = Length.Inch(1, 1, 2);

    /// <summary>Length of all strips under a piece.</summary>
    public static Length Strips(Size piece) => Length.Max(piece.Width, piece.Height) * Rows(piece);

    /// <summary>Foam pads under a piece.</summary>
    public static long Pads(Size piece) =>
        Math.Max(1, Length.Max(piece.Width, piece.Height).Nanometres / Length.NanometresPerInch) * Rows(piece);

    private static int Rows(Size piece) => Length.Min(piece.Width, piece.Height) >= TwoStripsFrom ? 2 : 1;
}
