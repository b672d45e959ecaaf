using Sketch.Cutting.Layouts;

namespace Sketch.Cutting.Tidying;

/// <summary>One part in hand and what is done with it. Sides are in nanometres with one kerf added, as in <see cref="Kind"/>.</summary>
/// <param name="Width">Across.</param>
/// <param name="Height">Down.</param>
internal abstract record Part(long Width, long Height);

/// <summary>It is a piece.</summary>
internal sealed record PiecePart(PieceLeaf Leaf) : Part(Leaf.Width, Leaf.Height);

/// <summary>It is left over.</summary>
internal sealed record LeftoverPart(long Width, long Height) : Part(Width, Height);

/// <summary>It is cut in two: upright when <paramref name="SideBySide"/>.</summary>
internal sealed record CutPart(bool SideBySide, Part First, Part Second) : Part(
    SideBySide ? First.Width + Second.Width : First.Width, SideBySide ? First.Height : First.Height + Second.Height);

/// <summary>
/// Turns a layout into an order of cuts on a given rectangle, so that what is not used stays in pieces as large as may be: the sum of the squares
/// of the leftovers' areas is made greatest, then the number of cuts smallest. Neighbours in a row change places freely; taller ones come first, so that
/// the room above shorter ones is one part.
/// </summary>
internal sealed class CutOrder
{
    private readonly long _kerf;
    private readonly long _smallestUse;
    private readonly Dictionary<(Row Row, int Start, long Width, long Height), Found> _known = [];

    private readonly IReadOnlySet<long> _settings;

    private CutOrder(long kerf, long smallestUse, IReadOnlySet<long> settings) => (_kerf, _smallestUse, _settings) = (kerf, smallestUse, settings);

    /// <summary>Cuts a layout out of a rectangle it fits in.</summary>
    /// <param name="tree">The layout.</param>
    /// <param name="width">The rectangle across.</param>
    /// <param name="height">The rectangle down.</param>
    /// <param name="kerf">The kerf, which all sides have added.</param>
    /// <param name="smallestUse">The shortest side of a leftover worth keeping.</param>
    /// <param name="settings">Settings of the trimmer in use: how far from the left or top edge of a part it is cut.</param>
    public static Part For(CutTree tree, long width, long height, long kerf, long smallestUse, IReadOnlySet<long> settings) =>
        new CutOrder(kerf, smallestUse, settings).Cut(Row.From(tree), 0, width, height).Part;

    private Found Cut(Row row, int start, long width, long height)
    {
        if (_known.TryGetValue((row, start, width, height), out var known))
        {
            return known;
        }

        var only = row.Items.Length - start == 1 ? row.Items[start] : null;
        if (only?.Inner is { } inner)
        {
            return Cut(inner, 0, width, height);
        }

        Found? best = null;
        void Try(Found found)
        {
            if (best is null || found.IsBetterThan(best))
            {
                best = found;
            }
        }

        var (needWidth, needHeight) = row.Needs(start);
        if (only?.Leaf is { } piece && needWidth == width && needHeight == height)
        {
            Try(new(new PiecePart(piece), 0, 0, 0));
        }
        else
        {
            if (needHeight < height)
            {
                Try(Joined(false, Cut(row, start, width, needHeight), Leftover(width, height - needHeight)));
            }

            if (needWidth < width)
            {
                Try(Joined(true, Cut(row, start, needWidth, height), Leftover(width - needWidth, height)));
            }

            if (only is null)
            {
                var first = row.Items[start];
                Try(row.SideBySide
                    ? Joined(true, Cut(first.Alone, 0, first.Width, height), Cut(row, start + 1, width - first.Width, height))
                    : Joined(false, Cut(first.Alone, 0, width, first.Height), Cut(row, start + 1, width, height - first.Height)));
            }
        }

        return _known[(row, start, width, height)] = best!;
    }

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

    /// <summary>An order of cuts and what speaks for it.</summary>
    private sealed record Found(Part Part, double Score, int Cuts, int NewSettings)
    {
        public bool IsBetterThan(Found other) => (Score, -Cuts, -NewSettings).CompareTo((other.Score, -other.Cuts, -other.NewSettings)) > 0;
    }

    /// <summary>Layouts that lie in one row, side by side or one above the other, with no row of the same direction directly inside.</summary>
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
            if (tree is Join join && join.SideBySide == sideBySide)
            {
                Collect(join.First, sideBySide, items);
                Collect(join.Second, sideBySide, items);
            }
            else
            {
                items.Add(new(tree));
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
