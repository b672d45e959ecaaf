using System.Numerics;

namespace Sketch.Cutting.Layouts;

/// <summary>Sums over whole columns of a table, many cells at once.</summary>
internal static class Sums
{
    /// <summary>Raises each cell to at least the one beside it.</summary>
    public static void Raise(Span<int> target, ReadOnlySpan<int> other)
    {
        for (var at = 0; at < target.Length; at++)
        {
            target[at] = Math.Max(target[at], other[at]);
        }
    }

    /// <summary>Raises each cell to at least the sum of the two beside it.</summary>
    public static void Raise(Span<int> target, ReadOnlySpan<int> first, ReadOnlySpan<int> second)
    {
        var at = 0;
        for (; at <= target.Length - Vector<int>.Count; at += Vector<int>.Count)
        {
            var sum = new Vector<int>(first[at..]) + new Vector<int>(second[at..]);
            Vector.Max(new Vector<int>(target[at..]), sum).CopyTo(target[at..]);
        }

        for (; at < target.Length; at++)
        {
            target[at] = Math.Max(target[at], first[at] + second[at]);
        }
    }

    /// <summary>Sets each number to the sum of two, at most its limit; neither of the two is above the limit.</summary>
    public static void SetCapped(Span<ushort> target, ReadOnlySpan<ushort> first, ReadOnlySpan<ushort> second, ReadOnlySpan<ushort> most)
    {
        var at = 0;
        for (; at <= target.Length - Vector<ushort>.Count; at += Vector<ushort>.Count)
        {
            // What is left up to the limit, since the sum itself may be too large for a number.
            var (one, left) = (new Vector<ushort>(first[at..]), new Vector<ushort>(most[at..]) - new Vector<ushort>(first[at..]));
            (one + Vector.Min(new Vector<ushort>(second[at..]), left)).CopyTo(target[at..]);
        }

        for (; at < target.Length; at++)
        {
            target[at] = (ushort)Math.Min(first[at] + second[at], most[at]);
        }
    }
}
