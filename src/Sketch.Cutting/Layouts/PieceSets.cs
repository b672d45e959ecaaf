namespace Sketch.Cutting.Layouts;

/// <summary>
/// Every collection of pieces, with its limited copies, that can be cut from one stock, each with all the smallest rectangles it can be cut from:
/// built from single pieces by laying two smaller collections side by side or one above the other. Exact, but only for few pieces.
/// </summary>
internal sealed class PieceSets
{
    private readonly Kind[] _kinds;
    private readonly (long Width, long Height)[] _stocks;
    private readonly int[] _most;
    private readonly int[] _weight;
    private readonly Box[]?[] _boxes;

    private PieceSets(Kind[] kinds, (long Width, long Height)[] stocks, int[] most, int[] weight, int count)
    {
        (_kinds, _stocks, _most, _weight) = (kinds, stocks, most, weight);
        _boxes = new Box[]?[count];
    }

    /// <summary>Lists the collections, or gives null when that takes more than <paramref name="effort"/> comparisons or is stopped.</summary>
    /// <param name="kinds">The kinds, in the order of their indexes.</param>
    /// <param name="stocks">Sides of the rectangles to cut from.</param>
    /// <param name="most">How many copies of each kind are of interest.</param>
    /// <param name="effort">The most work to do.</param>
    /// <param name="stop">Ends the work.</param>
    public static PieceSets? TryList(Kind[] kinds, (long Width, long Height)[] stocks, int[] most, long effort, CancellationToken stop)
    {
        var weight = new int[kinds.Length];
        var count = 1L;
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            weight[kind] = (int)count;
            count *= most[kind] + 1;
            if (count > Math.Min(effort, 1 << 21))
            {
                return null;
            }
        }

        var sets = new PieceSets(kinds, stocks, most, weight, (int)count);
        return sets.List(effort, stop) ? sets : null;
    }

    /// <summary>A layout of each collection that fits the rectangle and cannot be enlarged by another piece.</summary>
    public IEnumerable<CutTree> Fullest(long width, long height)
    {
        for (var set = 1; set < _boxes.Length; set++)
        {
            var box = Array.FindIndex(_boxes[set] ?? [], b => b.Width <= width && b.Height <= height);
            if (box >= 0 && !Larger(set).Any(larger => (_boxes[larger] ?? []).Any(b => b.Width <= width && b.Height <= height)))
            {
                yield return Tree(set, box);
            }
        }
    }

    /// <summary>All smallest rectangles of one collection, as layouts.</summary>
    public IEnumerable<CutTree> Layouts(int[] counts)
    {
        var set = Enumerable.Range(0, counts.Length).Sum(k => counts[k] * _weight[k]);
        return Enumerable.Range(0, _boxes[set]?.Length ?? 0).Select(box => Tree(set, box));
    }

    private bool List(long effort, CancellationToken stop)
    {
        var counts = new int[_kinds.Length];
        var part = new int[_kinds.Length];
        var largest = _stocks.Max(s => (double)s.Width * s.Height);
        for (var set = 1; set < _boxes.Length; set++)
        {
            Step(counts, _most);
            var area = 0.0;
            for (var kind = 0; kind < counts.Length; kind++)
            {
                area += counts[kind] * _kinds[kind].Area;
            }

            if (area > largest)
            {
                continue;
            }

            var front = new List<Box>();
            if (counts.Sum() == 1)
            {
                foreach (var (width, height) in _kinds[Array.IndexOf(counts, 1)].Ways())
                {
                    Keep(front, new(width, height, 0, 0, 0, false));
                }
            }
            else
            {
                Array.Clear(part);
                for (Step(part, counts); ; Step(part, counts))
                {
                    var first = 0;
                    for (var kind = 0; kind < part.Length; kind++)
                    {
                        first += part[kind] * _weight[kind];
                    }

                    if (first > set - first)
                    {
                        break;
                    }

                    effort -= 1 + JoinAll(front, first, set - first);
                }
            }

            if (effort < 0 || stop.IsCancellationRequested)
            {
                return false;
            }

            _boxes[set] = front.Count == 0 ? null : [.. front];
        }

        return true;
    }

    // Counts up within the limits, the first kind fastest, which is also the order of the set numbers.
    private static void Step(int[] counts, int[] most)
    {
        var kind = 0;
        while (kind < counts.Length && counts[kind] == most[kind])
        {
            counts[kind++] = 0;
        }

        if (kind < counts.Length)
        {
            counts[kind]++;
        }
    }

    private long JoinAll(List<Box> front, int first, int second)
    {
        if (_boxes[first] is not { } ones || _boxes[second] is not { } others)
        {
            return 0;
        }

        for (var i = 0; i < ones.Length; i++)
        {
            for (var j = 0; j < others.Length; j++)
            {
                var (a, b) = (ones[i], others[j]);
                Keep(front, new(a.Width + b.Width, Math.Max(a.Height, b.Height), first, i, j, true));
                Keep(front, new(Math.Max(a.Width, b.Width), a.Height + b.Height, first, i, j, false));
            }
        }

        return ones.Length * (long)others.Length;
    }

    private void Keep(List<Box> front, Box box)
    {
        if (!_stocks.Any(s => box.Width <= s.Width && box.Height <= s.Height))
        {
            return;
        }

        foreach (var other in front)
        {
            if (other.Width <= box.Width && other.Height <= box.Height)
            {
                return;
            }
        }

        front.RemoveAll(other => box.Width <= other.Width && box.Height <= other.Height);
        front.Add(box);
    }

    private IEnumerable<int> Larger(int set)
    {
        for (var kind = 0; kind < _kinds.Length; kind++)
        {
            if (set / _weight[kind] % (_most[kind] + 1) < _most[kind])
            {
                yield return set + _weight[kind];
            }
        }
    }

    private CutTree Tree(int set, int index)
    {
        var box = _boxes[set]![index];
        return box.First == 0
            ? new PieceLeaf(_kinds[Array.IndexOf(_weight, set)], box.Width, box.Height)
            : new Join(box.SideBySide, Tree(box.First, box.FirstIndex), Tree(set - box.First, box.SecondIndex));
    }

    /// <summary>A smallest rectangle and the two smaller collections it is made of; <see cref="First"/> is 0 for a single piece.</summary>
    private readonly record struct Box(long Width, long Height, int First, int FirstIndex, int SecondIndex, bool SideBySide);
}
