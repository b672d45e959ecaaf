namespace Sketch.Lettering;

/// <summary>Where shorter lines stand beside longer ones.</summary>
public enum LineRange
{
    /// <summary>In the middle.</summary>
    Centred,

    /// <summary>All begin at the left.</summary>
    Left,

    /// <summary>All end at the right.</summary>
    Right,
}

/// <summary>How the letters of a line are set.</summary>
/// <param name="Spacing">Room added between letters, in cap heights.</param>
/// <param name="Arc">
/// Degrees of a circle that the baseline covers: positive where the middle is highest, negative where it is lowest, 0 for a straight line.
/// </param>
public readonly record struct LetteringStyle(double Spacing, double Arc)
{
    /// <summary>The most of a circle that words may cover: all of it.</summary>
    public const double FullCircle = 360;
}
