using System.Numerics;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Layouts;

/// <summary>
/// Every collection of pieces, with its limited copies, that can be cut from one of the stocks, each with all the smallest rectangles it
/// can be cut from: built from single pieces by laying two smaller collections side by side or one above the other (after Wang 1983, with
/// collections in place of values). Rectangles that hold more waste than a plan can afford are left out, which keeps the list short when
/// sheets are nearly full.
/// </summary>
internal sealed class PieceSets
{
    private const long StepsOfComparison = 4;

    private readonly Kind[] _kinds;
    private readonly (long Width, long Height)[] _stocks;
    private readonly double _largest;
    private readonly Limits _limits;
    private readonly int[] _shift;
    private readonly ulong _guard;
    private readonly ulong _headroom;
    private readonly Dictionary<ulong, PieceSet> _sets = [];

    private PieceSets(Kind[] kinds, (long Width, long Height)[] stocks, Limits limits, int[] shift, ulong guard, ulong headroom)
    {
        (_kinds, _stocks, _limits, _shift, _guard, _headroom) = (kinds, stocks, limits, shift, guard, headroom);
        _largest = stocks.Max(s => (double)s.Width * s.Height);
    }

    /// <summary>
    /// Lists the collections, or returns null if that takes more than <paramref name="effort"/> comparisons or is stopped.
    /// </summary>
    /// <param name="kinds">The kinds, in the order of their indexes.</param>
    /// <param name="stocks">Sides of the rectangles to cut from.</param>
    /// <param name="most">The most copies of each kind to consider.</param>
    /// <param name="limits">What a rectangle may waste.</param>
    /// <param name="effort">The most work to do.</param>
    /// <param name="work">What may be done in all.</param>
    public static PieceSets? TryList(
        Kind[] kinds, (long Width, long Height)[] stocks, int[] most, Limits limits, long effort, WorkBudget work)
    {
        // A collection is one number with a field of bits for each kind. One more bit than the count needs stays free: with the headroom
        // added, it is set when two collections together hold too many.
        var shift = new int[kinds.Length];
        var (bits, guard, headroom) = (0, 0UL, 0UL);
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            var width = BitOperations.Log2((uint)most[kind]) + 1;
            if (bits + width + 1 > 64)
            {
                return null;
            }

            shift[kind] = bits;
            guard |= 1UL << (bits + width);
            headroom |= (ulong)((1 << width) - 1 - most[kind]) << bits;
            bits += width + 1;
        }

        var sets = new PieceSets(kinds, stocks, limits, shift, guard, headroom);
        var allowed = Math.Min(effort, work.Left / StepsOfComparison);
        var left = allowed;
        var isDone = sets.List(ref left, work);
        work.Spend((allowed - left) * StepsOfComparison);
        return isDone ? sets : null;
    }

    /// <summary>
    /// A layout of each collection that fits the rectangle, is within the limits there, and cannot be enlarged by another piece.
    /// </summary>
    public IEnumerable<CutTree> Fullest(long width, long height, Limits limits)
    {
        var fitting = _sets.Values.Where(s => s.Boxes.Any(b => b.Width <= width && b.Height <= height)).ToList();
        var codes = fitting.Select(s => s.Code).ToHashSet();
        return from set in fitting
               where limits.Allow(width, height, set.Area, set.Worths) && !_shift.Any(s => codes.Contains(set.Code + (1UL << s)))
               select Tree(set.Boxes.First(b => b.Width <= width && b.Height <= height));
    }

    private bool List(ref long effort, WorkBudget work)
    {
        var bySize = new List<List<PieceSet>> { new(), new() };
        foreach (var kind in _kinds)
        {
            var single = new PieceSet(1UL << _shift[kind.Index], kind.Area, [.. _limits.Losses.Select(l => (long)l.Worth[kind.Index])]);
            foreach (var (width, height) in kind.Ways())
            {
                Keep(single, new(width, height, null, null, kind, false));
            }

            if (single.Boxes.Count > 0)
            {
                _sets.Add(single.Code, single);
                bySize[1].Add(single);
            }
        }

        for (var size = 2; ; size++)
        {
            var made = new List<PieceSet>();
            for (var part = 1; part <= size / 2; part++)
            {
                if (!JoinAll(bySize[part], bySize[size - part], made, ref effort, work))
                {
                    return false;
                }
            }

            bySize.Add(made);
            if (made.Count == 0 && bySize.Skip(size / 2 + 1).All(sets => sets.Count == 0))
            {
                return true;
            }
        }
    }

    private bool JoinAll(List<PieceSet> ones, List<PieceSet> others, List<PieceSet> made, ref long effort, WorkBudget work)
    {
        for (var i = 0; i < ones.Count; i++)
        {
            var one = ones[i];
            effort -= others.Count;
            if (effort < 0 || work.IsOver)
            {
                return false;
            }

            for (var j = ReferenceEquals(ones, others) ? i : 0; j < others.Count; j++)
            {
                var other = others[j];
                var code = one.Code + other.Code;
                if (((code + _headroom) & _guard) != 0 || one.Area + other.Area > _largest)
                {
                    continue;
                }

                var isNew = !_sets.TryGetValue(code, out var set);
                set ??= new(code, one.Area + other.Area, [.. one.Worths.Zip(other.Worths, (a, b) => a + b)]);
                effort -= one.Boxes.Count * (long)other.Boxes.Count;
                Join(set, one, other);
                if (isNew && set.Boxes.Count > 0)
                {
                    _sets.Add(code, set);
                    made.Add(set);
                }
            }
        }

        return true;
    }

    private void Join(PieceSet set, PieceSet one, PieceSet other)
    {
        foreach (var a in one.Boxes)
        {
            foreach (var b in other.Boxes)
            {
                Keep(set, new(a.Width + b.Width, Math.Max(a.Height, b.Height), a, b, null, true));
                Keep(set, new(Math.Max(a.Width, b.Width), a.Height + b.Height, a, b, null, false));
            }
        }
    }

    private void Keep(PieceSet set, in NewBox box)
    {
        var fits = false;
        foreach (var (width, height) in _stocks)
        {
            fits |= box.Width <= width && box.Height <= height;
        }

        if (!fits)
        {
            return;
        }

        var (wide, tall) = (box.Width, box.Height);
        foreach (var other in set.Boxes)
        {
            if (other.Width <= wide && other.Height <= tall)
            {
                return;
            }
        }

        if (!_limits.Allow(wide, tall, set.Area, set.Worths))
        {
            return;
        }

        set.Boxes.RemoveAll(other => wide <= other.Width && tall <= other.Height);
        set.Boxes.Add(new(wide, tall, box.First, box.Second, box.Kind, box.SideBySide));
    }

    private static CutTree Tree(Box box) => box.Kind is { } kind
        ? new PieceLeaf(kind, box.Width, box.Height)
        : new Join(box.SideBySide, Tree(box.First!), Tree(box.Second!));

    /// <summary>What the rectangles of a plan can afford to lose, so that costlier ones need not be listed.</summary>
    /// <param name="MostWaste">The area, in square nanometres, that may stay unused.</param>
    /// <param name="Losses">Bounds by value, which are stronger.</param>
    public sealed record Limits(double MostWaste, Loss[] Losses)
    {
        /// <summary>No limits.</summary>
        public static readonly Limits None = new(double.PositiveInfinity, []);

        /// <summary>A share of the limits.</summary>
        public Limits Times(double share) =>
            share == 1 ? this : new(MostWaste * share, [.. Losses.Select(l => l with { Most = (Int128)((double)l.Most * share) })]);

        /// <summary>Whether a rectangle may hold only pieces of this area and these values.</summary>
        public bool Allow(long width, long height, double area, long[] worths)
        {
            if ((double)width * height - area > MostWaste)
            {
                return false;
            }

            for (var i = 0; i < Losses.Length; i++)
            {
                if (Losses[i].Table.Best(width, height) - worths[i] > Losses[i].Most)
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>
    /// With values given to pieces, a rectangle loses the difference between its best layout and its pieces; the sheet around it can then
    /// hold no more than the best sheet minus that loss.
    /// </summary>
    /// <param name="Table">The best value of every rectangle; it must be exact.</param>
    /// <param name="Worth">Value of each kind, as in the table.</param>
    /// <param name="Most">The most that may be lost.</param>
    public sealed record Loss(LayoutTable Table, int[] Worth, Int128 Most);

    /// <summary>A rectangle not yet known to be worth keeping.</summary>
    private readonly record struct NewBox(long Width, long Height, Box? First, Box? Second, Kind? Kind, bool SideBySide);

    /// <summary>A smallest rectangle: a single piece, or two smaller rectangles.</summary>
    private sealed record Box(long Width, long Height, Box? First, Box? Second, Kind? Kind, bool SideBySide);

    /// <summary>A collection with its smallest rectangles.</summary>
    private sealed record PieceSet(ulong Code, double Area, long[] Worths)
    {
        public List<Box> Boxes { get; } = [];
    }
}
