using System.Globalization;

namespace Sketch.Fuzz.Inputs;

/// <summary>Random numbers that depend only on the seed: SplitMix64 (Steele, Lea and Flood, 2014).</summary>
internal sealed class Draws(ulong seed)
{
    private ulong _state = seed;

    public int Below(int count) => (int)(Next() % (ulong)count);

    public int From(int least, int most) => least + Below(most - least + 1);

    /// <summary>Whether an event of this likelihood happens: once in so many times.</summary>
    public bool OnceIn(int times) => Below(times) == 0;

    public T Any<T>(IReadOnlyList<T> all) => all[Below(all.Count)];

    /// <summary>A random length in inches, within a range of sixteenths.</summary>
    public string Sixteenths(int least, int most) => string.Create(CultureInfo.InvariantCulture, $"{From(least, most)}/16");

    private ulong Next()
    {
        var z = _state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
