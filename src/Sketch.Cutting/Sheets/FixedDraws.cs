namespace Sketch.Cutting.Sheets;

/// <summary>Random numbers that are the same in every run (xorshift: Marsaglia 2003).</summary>
internal sealed class FixedDraws
{
    private ulong _state = 0x9E3779B97F4A7C15;

    /// <summary>A whole number from 0 to below a limit.</summary>
    public int Below(int limit)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)(_state % (ulong)limit);
    }

    /// <summary>A number that differs from the middle by no more than a distance.</summary>
    public double About(double middle, double distance) => middle - distance + 2 * distance * Below(1000) / 1000;
}
