namespace Sketch.Cutting.Layouts;

/// <summary>
/// The distances at which cuts are worth trying along one side: sums of side lengths, each used no more often than it is asked for (normal
/// patterns; Herz 1972, Christofides and Whitlock 1977). Every layout can be pushed left and up onto them without losing a piece.
/// </summary>
internal sealed class CutPoints
{
    private readonly long[] _points;

    private CutPoints(long[] points, bool isComplete)
    {
        _points = points;
        IsComplete = isComplete;
    }

    /// <summary>Whether no sum is missing; otherwise layouts remain valid, but better ones may exist between the points.</summary>
    public bool IsComplete { get; }

    public int Count => _points.Length;

    public long this[int index] => _points[index];

    /// <param name="sides">Side lengths with how often each may be used.</param>
    /// <param name="limit">The longest distance of interest.</param>
    /// <param name="most">How many points may be kept.</param>
    public static CutPoints For(IEnumerable<(long Side, int Copies)> sides, long limit, int most)
    {
        var merged = sides.Where(s => s.Side <= limit && s.Copies > 0).GroupBy(s => s.Side)
            .Select(g => (Side: g.Key, Copies: (int)Math.Min(g.Sum(s => (long)s.Copies), limit / g.Key))).OrderByDescending(s => s.Side).ToList();
        var points = new SortedSet<long> { 0 };
        foreach (var (side, copies) in merged)
        {
            Extend(points, side, copies, limit);
            if (points.Count > most)
            {
                return Thinned(merged, limit, most);
            }
        }

        return new([.. points], isComplete: true);
    }

    /// <summary>All whole numbers up to a limit.</summary>
    public static CutPoints Grid(int limit) => new([.. Enumerable.Range(0, limit + 1).Select(i => (long)i)], isComplete: true);

    /// <summary>These points together with their distances from the far ends, where leftovers begin.</summary>
    public CutPoints WithMirror(IEnumerable<long> ends) =>
        new([.. ends.SelectMany(end => _points.Where(p => p <= end).Select(p => end - p)).Concat(_points).Distinct().Order()], IsComplete);

    /// <summary>The index of the last point not beyond a distance that is not negative.</summary>
    public int Floor(long distance)
    {
        var index = Array.BinarySearch(_points, distance);
        return index >= 0 ? index : ~index - 1;
    }

    private static void Extend(SortedSet<long> points, long side, int copies, long limit)
    {
        var frontier = points.ToList();
        for (var copy = 0; copy < copies && frontier.Count > 0; copy++)
        {
            var next = new List<long>();
            foreach (var point in frontier)
            {
                if (point + side <= limit && points.Add(point + side))
                {
                    next.Add(point + side);
                }
            }

            frontier = next;
        }
    }

    // Rows of one kind come first: they make up most of a good layout. Then sums of ever more different sides, as far as there is room.
    private static CutPoints Thinned(List<(long Side, int Copies)> sides, long limit, int most)
    {
        var points = new SortedSet<long> { 0 };
        var rows = sides.SelectMany(s => Enumerable.Range(1, s.Copies).Select(c => c * s.Side)).Distinct().ToList();
        foreach (var row in rows.Take(most))
        {
            points.Add(row);
        }

        var frontier = rows;
        while (points.Count < most && frontier.Count > 0)
        {
            var next = new List<long>();
            foreach (var sum in from point in frontier from side in sides select point + side.Side)
            {
                if (points.Count < most && sum <= limit && points.Add(sum))
                {
                    next.Add(sum);
                }
            }

            frontier = next;
        }

        return new([.. points], isComplete: false);
    }
}
