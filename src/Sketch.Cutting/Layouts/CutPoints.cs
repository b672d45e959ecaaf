namespace Sketch.Cutting.Layouts;

/// <summary>
/// The distances at which cuts are worth trying along one side: sums of side lengths, each used no more often than demanded (normal
/// patterns; Herz 1972, Christofides and Whitlock 1977). Every layout can be pushed left and up onto them without losing a piece.
/// </summary>
internal sealed class CutPoints
{
    private const int MostWhenThinned = 240;

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
    /// <param name="limit">The longest distance to consider.</param>
    /// <param name="most">How many points may be kept; if there are more, far fewer are, since a result that may miss something need not
    /// be slow too.</param>
    public static CutPoints For(IEnumerable<(long Side, int Copies)> sides, long limit, int most)
    {
        var merged = sides.Where(s => s.Side <= limit && s.Copies > 0).GroupBy(s => s.Side)
            .Select(g => (Side: g.Key, Copies: (int)Math.Min(g.Sum(s => (long)s.Copies), limit / g.Key))).OrderByDescending(s => s.Side)
            .ToList();
        var points = new SortedSet<long> { 0 };
        foreach (var (side, copies) in merged)
        {
            Extend(points, side, copies, limit);
            if (points.Count > most)
            {
                return Thinned(merged, limit, Math.Min(most, MostWhenThinned));
            }
        }

        return new([.. points], isComplete: true);
    }

    /// <summary>All whole numbers up to a limit.</summary>
    public static CutPoints Grid(int limit) => new([.. Enumerable.Range(0, limit + 1).Select(i => (long)i)], isComplete: true);

    /// <summary>The index of the last point not beyond a distance that is not negative.</summary>
    public int Floor(long distance)
    {
        var index = Array.BinarySearch(_points, distance);
        return index >= 0 ? index : ~index - 1;
    }

    /// <summary>
    /// For each point, and for the first, second and further points up to half of it: the last point that leaves room beside them.
    /// </summary>
    public int[][] Rests()
    {
        var rests = new int[Count][];
        for (var j = 0; j < Count; j++)
        {
            var halves = 0;
            while (halves < j && 2 * _points[halves + 1] <= _points[j])
            {
                halves++;
            }

            rests[j] = new int[halves];
            var rest = j;
            for (var k = 1; k <= halves; k++)
            {
                while (_points[rest] > _points[j] - _points[k])
                {
                    rest--;
                }

                rests[j][k - 1] = rest;
            }
        }

        return rests;
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

    // Rows of one kind come first: they make up most of a good layout. Then sums of more and more different sides, as far as there is room.
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
