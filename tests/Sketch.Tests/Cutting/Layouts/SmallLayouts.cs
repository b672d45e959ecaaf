using CsCheck;
using Sketch.Cutting.Layouts;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>Rectangles of whole numbers, small enough to try every layout.</summary>
internal static class SmallLayouts
{
    public const int Side = 8;

    /// <summary>One to three kinds of piece, each with a demand of one or two and a worth.</summary>
    public static readonly Gen<(Kind[] Kinds, int[] Worth)> Any =
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Bool, Gen.Int[1, 2], Gen.Int[1, 9]).Array[1, 3].Select(pieces => (
            pieces.Select((p, i) => new Kind(i, p.Item1, p.Item2, p.Item3 || p.Item1 == p.Item2, p.Item4)).ToArray(),
            pieces.Select(p => p.Item5).ToArray()));

    public static CutPoints Points(IEnumerable<Kind> kinds, bool across, int copies = 100) => CutPoints.For(
        kinds.SelectMany(k => k.Ways()).Select(way => (across ? way.Width : way.Height, copies)), Side, 1000);

    public static int[] Counts(this CutTree tree, int kinds)
    {
        var counts = new int[kinds];
        tree.Count(counts);
        return counts;
    }

    /// <summary>The best worth of each rectangle, any number of copies allowed.</summary>
    public static int[,] Best(Kind[] kinds, int[] worth)
    {
        var best = new int[Side + 1, Side + 1];
        for (var width = 1; width <= Side; width++)
        {
            for (var height = 1; height <= Side; height++)
            {
                var most = kinds.Where(k => k.Fits(width, height)).Select(k => worth[k.Index]).DefaultIfEmpty().Max();
                for (var cut = 1; cut < width; cut++)
                {
                    most = Math.Max(most, best[cut, height] + best[width - cut, height]);
                }

                for (var cut = 1; cut < height; cut++)
                {
                    most = Math.Max(most, best[width, cut] + best[width, height - cut]);
                }

                best[width, height] = most;
            }
        }

        return best;
    }

    /// <summary>Whether pieces can be cut from a rectangle, as many of each kind as counted.</summary>
    public static bool CanBeCut(Kind[] kinds, int[] counts, long width, long height)
    {
        if (counts.Sum() == 0)
        {
            return true;
        }

        if (kinds.Sum(k => k.Width * k.Height * counts[k.Index]) > width * height)
        {
            return false;
        }

        if (counts.Sum() == 1)
        {
            return kinds[Array.IndexOf(counts, 1)].Fits(width, height);
        }

        return UpTo(counts).Where(part => part.Sum() > 0 && part.Sum() < counts.Sum()).Any(part =>
        {
            int[] rest = [.. counts.Zip(part, (all, some) => all - some)];
            for (var cut = 1; cut < width; cut++)
            {
                if (CanBeCut(kinds, part, cut, height) && CanBeCut(kinds, rest, width - cut, height))
                {
                    return true;
                }
            }

            for (var cut = 1; cut < height; cut++)
            {
                if (CanBeCut(kinds, part, width, cut) && CanBeCut(kinds, rest, width, height - cut))
                {
                    return true;
                }
            }

            return false;
        });
    }

    /// <summary>All counts from zero up to the given ones.</summary>
    public static IEnumerable<int[]> UpTo(int[] counts) => counts.Aggregate(
        Enumerable.Repeat(Array.Empty<int>(), 1),
        (before, most) => before.SelectMany(b => Enumerable.Range(0, most + 1).Select(n => (int[])[.. b, n])));
}
