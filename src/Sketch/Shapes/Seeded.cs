using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>
/// Numbers that look random and are the same on every machine: SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number
/// generators", 2014; constants from memory).
/// </summary>
internal sealed class Seeded(ulong seed)
{
    private ulong _state = seed;

    /// <summary>
    /// A seed from a paper's name and the size of a piece of it, so that pieces of different sizes show different parts of the sheet:
    /// FNV-1a, 64 bits (offset and prime as published by Fowler, Noll and Vo).
    /// </summary>
    internal static ulong SeedOf(string paper, Size size)
    {
        const ulong Prime = 1099511628211;
        var hash = 14695981039346656037UL;
        foreach (var c in paper)
        {
            hash = (hash ^ c) * Prime;
        }

        hash = (hash ^ (ulong)size.Width.Nanometres) * Prime;
        return (hash ^ (ulong)size.Height.Nanometres) * Prime;
    }

    /// <summary>At least <paramref name="from"/> and less than <paramref name="to"/>.</summary>
    internal double Between(double from, double to) => from + (to - from) * ((Next() >> 11) * (1.0 / (1UL << 53)));

    /// <summary>A whole number from 0, less than <paramref name="count"/>.</summary>
    internal int Below(int count) => (int)(Next() % (ulong)count);

    private ulong Next()
    {
        var z = _state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
