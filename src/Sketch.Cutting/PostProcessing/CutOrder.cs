using Sketch.Cutting.Layouts;

namespace Sketch.Cutting.PostProcessing;

/// <summary>One part in hand and its use. Sides are in nanometres plus one kerf, as in <see cref="Kind"/>.</summary>
/// <param name="Width">Across.</param>
/// <param name="Height">Down.</param>
internal abstract record Part(long Width, long Height)
{
    /// <summary>The part and all its parts, each before its own parts, the first half before the second.</summary>
    public IEnumerable<Part> InOrder()
    {
        // A row of many pieces is cut many levels deep, too deep for recursion.
        var waiting = new Stack<Part>([this]);
        while (waiting.TryPop(out var part))
        {
            yield return part;
            if (part is CutPart cut)
            {
                waiting.Push(cut.Second);
                waiting.Push(cut.First);
            }
        }
    }
}

/// <summary>A piece.</summary>
internal sealed record PiecePart(PieceLeaf Leaf) : Part(Leaf.Width, Leaf.Height);

/// <summary>A leftover.</summary>
internal sealed record LeftoverPart(long Width, long Height) : Part(Width, Height);

/// <summary>A part cut in two: upright if <paramref name="SideBySide"/>.</summary>
internal sealed record CutPart(bool SideBySide, Part First, Part Second) : Part(
    SideBySide ? First.Width + Second.Width : First.Width, SideBySide ? First.Height : First.Height + Second.Height);

/// <summary>
/// Turns a layout into an order of cuts on a given rectangle that is the least work, and of those with the largest possible leftovers: the
/// sum of the squares of the leftovers' areas is maximised. Neighbours in a row may change places; taller ones come first, so that the
/// room above shorter ones is one part.
/// </summary>
internal sealed class CutOrder
{
    private readonly long _kerf;
    private readonly long _smallestUse;
    private readonly Dictionary<Job, Found> _known = [];

    private readonly IReadOnlySet<long> _settings;

    private CutOrder(long kerf, long smallestUse, IReadOnlySet<long> settings) =>
        (_kerf, _smallestUse, _settings) = (kerf, smallestUse, settings);

    /// <summary>Cuts a layout out of a rectangle it fits in.</summary>
    /// <param name="tree">The layout.</param>
    /// <param name="width">The rectangle across.</param>
    /// <param name="height">The rectangle down.</param>
    /// <param name="kerf">The kerf, which is included in all sides.</param>
    /// <param name="smallestUse">The shortest side of a leftover worth keeping.</param>
    /// <param name="settings">Trimmer settings already in use: the distances of cuts from the left or top edge of a part.</param>
    public static Part For(CutTree tree, long width, long height, long kerf, long smallestUse, IReadOnlySet<long> settings) =>
        new CutOrder(kerf, smallestUse, settings).Cut(Job.Of(Row.From(tree), 0, width, height)).Part;

    // What a job depends on is computed before it on an explicit stack: rows can be longer than recursion can go deep.
    private Found Cut(Job whole)
    {
        var open = new Stack<Job>([whole]);
        while (open.TryPeek(out var job))
        {
            if (_known.ContainsKey(job))
            {
                open.Pop();
                continue;
            }

            var ways = Ways(job);
            var waiting = open.Count;
            foreach (var part in ways.SelectMany(w => w.Parts).Where(p => !_known.ContainsKey(p)))
            {
                open.Push(part);
            }

            if (open.Count == waiting)
            {
                _known[open.Pop()] = ways.Select(Joined).Aggregate((best, found) => found.IsBetterThan(best) ? found : best);
            }
        }

        return _known[whole];
    }

    private static List<Way> Ways(Job job)
    {
        var (row, start, width, height) = job;
        var only = row.Items.Length - start == 1 ? row.Items[start] : null;
        var (needWidth, needHeight) = row.Needs(start);
        if (only?.Leaf is { } piece && needWidth == width && needHeight == height)
        {
            return [new(piece, false, [], default)];
        }

        var ways = new List<Way>();
        if (needHeight < height)
        {
            ways.Add(new(null, false, [Job.Of(row, start, width, needHeight)], (width, height - needHeight)));
        }

        if (needWidth < width)
        {
            ways.Add(new(null, true, [Job.Of(row, start, needWidth, height)], (width - needWidth, height)));
        }

        if (only is null)
        {
            var first = row.Items[start];
            ways.Add(new(null, row.SideBySide, row.SideBySide
                ? [Job.Of(first.Alone, 0, first.Width, height), Job.Of(row, start + 1, width - first.Width, height)]
                : [Job.Of(first.Alone, 0, width, first.Height), Job.Of(row, start + 1, width, height - first.Height)], default));
        }

        return ways;
    }

    private Found Joined(Way way) => way switch
    {
        { Piece: { } piece } => new(new PiecePart(piece), 0, 0, 0),
        { Parts: [var first, var second] } => Joined(way.SideBySide, _known[first], _known[second]),
        _ => Joined(way.SideBySide, _known[way.Parts[0]], Leftover(way.Rest.Width, way.Rest.Height)),
    };

    private Found Joined(bool sideBySide, Found first, Found second)
    {
        var setting = sideBySide ? first.Part.Width : first.Part.Height;
        return new(
            new CutPart(sideBySide, first.Part, second.Part),
            first.Score + second.Score,
            first.Cuts + second.Cuts + 1,
            first.NewSettings + second.NewSettings + (_settings.Contains(setting) ? 0 : 1));
    }

    private Found Leftover(long width, long height)
    {
        var useful = Math.Min(width, height) - _kerf >= _smallestUse;
        var area = (width - _kerf) * (double)(height - _kerf);
        return new(new LeftoverPart(width, height), useful ? area * area : 0, 0, 0);
    }

    /// <summary>A rectangle from which to cut the members of a row, starting with one of them.</summary>
    private readonly record struct Job(Row Row, int Start, long Width, long Height)
    {
        /// <summary>The job; if a member consists of a single row, the job of that row.</summary>
        public static Job Of(Row row, int start, long width, long height)
        {
            while (row.Items.Length - start == 1 && row.Items[start].Inner is { } inner)
            {
                (row, start) = (inner, 0);
            }

            return new(row, start, width, height);
        }
    }

    /// <summary>One way to begin: the rectangle is the piece, or a cut divides it into two jobs, or into a job and a rest.</summary>
    private sealed record Way(PieceLeaf? Piece, bool SideBySide, Job[] Parts, (long Width, long Height) Rest);

    /// <summary>An order of cuts with the sum of the squares of its leftovers.</summary>
    private sealed record Found(Part Part, double Score, int Cuts, int NewSettings)
    {
        // To set the stop takes about as long as two cuts: common practice, no source.
        private int Work => Cuts + 2 * NewSettings;

        public bool IsBetterThan(Found other) => (-Work, Score).CompareTo((-other.Work, other.Score)) > 0;
    }

    /// <summary>
    /// Layouts that lie in one row, side by side or one above the other, with no row of the same direction directly inside.
    /// </summary>
    private sealed class Row
    {
        private readonly (long Width, long Height)[] _needs;

        private Row(bool sideBySide, Item[] items)
        {
            (SideBySide, Items) = (sideBySide, items);
            _needs = new (long, long)[items.Length + 1];
            for (var i = items.Length - 1; i >= 0; i--)
            {
                var (width, height) = _needs[i + 1];
                _needs[i] = sideBySide
                    ? (width + items[i].Width, Math.Max(height, items[i].Height))
                    : (Math.Max(width, items[i].Width), height + items[i].Height);
            }
        }

        public bool SideBySide { get; }

        public Item[] Items { get; }

        public (long Width, long Height) Needs(int start) => _needs[start];

        public static Row From(CutTree tree)
        {
            if (tree is not Join join)
            {
                return new(true, [new(tree)]);
            }

            var items = new List<Item>();
            Collect(join, join.SideBySide, items);
            var ordered = join.SideBySide
                ? items.OrderByDescending(i => i.Height).ThenByDescending(i => i.Width)
                : items.OrderByDescending(i => i.Width).ThenByDescending(i => i.Height);
            return new(join.SideBySide, [.. ordered]);
        }

        private static void Collect(CutTree tree, bool sideBySide, List<Item> items)
        {
            var waiting = new Stack<CutTree>([tree]);
            while (waiting.TryPop(out var next))
            {
                if (next is Join join && join.SideBySide == sideBySide)
                {
                    waiting.Push(join.Second);
                    waiting.Push(join.First);
                }
                else
                {
                    items.Add(new(next));
                }
            }
        }
    }

    /// <summary>A member of a row: a leaf, or a row across.</summary>
    private sealed class Item
    {
        private Row? _alone;

        public Item(CutTree tree)
        {
            (Leaf, Width, Height) = (tree as PieceLeaf, tree.Width, tree.Height);
            Inner = tree is Join ? Row.From(tree) : null;
        }

        public PieceLeaf? Leaf { get; }

        public Row? Inner { get; }

        public long Width { get; }

        public long Height { get; }

        public Row Alone => _alone ??= Inner ?? Row.From(Leaf!);
    }
}
