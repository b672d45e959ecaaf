using Sketch.Cutting.Layouts;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Plain plans without a search: the pieces in a fixed order, each in the first place with room for it, offcuts before sheets. They are
/// quick for any number of pieces and kinds, and no plan needs to be worse than they are.
/// </summary>
internal sealed class FirstFit(Reduced problem)
{
    // A layout of more pieces would be nested too deep.
    private const int MostOnOneSheet = 2000;

    private static readonly Func<Kind, double>[] _orders =
    [
        k => k.Area,
        k => Math.Max(k.Width, k.Height),
        k => k.Height,
        k => k.Width,
        k => k.Width + k.Height,
    ];

    /// <summary>The best plan on shelves, in which the shelves run across or down the sheet.</summary>
    public List<(Pattern Pattern, int Times)> OnShelves(int[] wanted, IReadOnlyList<int?> onHand) =>
        Best([Shelves(wanted, onHand, isUpright: false), Shelves(wanted, onHand, isUpright: true)], wanted)!;

    /// <summary>
    /// The best of the plans in which each piece divides a free part of a sheet in three (guillotine placement), in several orders; null if
    /// a sheet would hold too many pieces.
    /// </summary>
    public List<(Pattern Pattern, int Times)>? InParts(int[] wanted, IReadOnlyList<int?> onHand, Model.WorkBudget work)
    {
        var plans = new List<List<(Pattern, int)>?>();
        foreach (var order in _orders.TakeWhile(_ => !work.IsOver))
        {
            foreach (var longestFirst in (bool[])[true, false])
            {
                plans.Add(Parts(wanted, onHand, order, longestFirst, work));
            }
        }

        return Best(plans, wanted);
    }

    private static List<(Pattern Pattern, int Times)>? Best(IEnumerable<List<(Pattern Pattern, int Times)>?> plans, int[] wanted) =>
        plans.OfType<List<(Pattern Pattern, int Times)>>().Select(p => (Uses: p, Whole: WholePlan.From(p, wanted)))
            .OrderBy(p => p.Whole.LeftOut).ThenBy(p => p.Whole.Sheets).ThenBy(p => p.Whole.Uses.Count).Select(p => p.Uses).FirstOrDefault();

    // Stocks in the order of use: as many offcuts as there are pieces at most, then sheets as needed.
    private IEnumerable<Stock> Offcuts(int[] wanted, IReadOnlyList<int?> onHand)
    {
        var pieces = (int)Math.Min(int.MaxValue, wanted.Sum(w => (long)w));
        return problem.Stocks.Where(s => !s.IsSheet).SelectMany(s => Enumerable.Repeat(s, Math.Min(pieces, onHand[s.Index] ?? 0)));
    }

    // Tallest first, each piece on the first shelf with room for it (next-fit, first-fit and best-fit shelves: Coffman et al. 1980).
    private List<(Pattern Pattern, int Times)> Shelves(int[] wanted, IReadOnlyList<int?> onHand, bool isUpright)
    {
        var bins = Offcuts(wanted, onHand).Select(s => new ShelfBin(s, isUpright)).ToList();
        var shelves = new List<Shelf>();
        var lying = problem.Kinds.Where(k => wanted[k.Index] > 0).Select(k => (Kind: k, Way: WayOnShelf(k, isUpright)))
            .OrderByDescending(k => k.Way.Tall);
        foreach (var (kind, way) in lying)
        {
            var (shelf, bin) = (0, 0);
            for (var copy = 0; copy < wanted[kind.Index]; copy++)
            {
                while (shelf < shelves.Count && !shelves[shelf].HasRoom(way))
                {
                    shelf++;
                }

                if (shelf == shelves.Count)
                {
                    while (bin < bins.Count && !bins[bin].HasRoom(way))
                    {
                        bin++;
                    }

                    if (bin == bins.Count && !NewSheet(bins, way))
                    {
                        break; // what fits only offcuts is left out when none is left
                    }

                    shelves.Add(bins[bin].Open(way.Tall));
                }

                shelves[shelf].Put(kind, way);
            }
        }

        return [.. bins.Where(b => !b.IsEmpty).Select(b => (new Pattern(b.Stock, b.Tree(), problem.Kinds.Length), 1))];

        bool NewSheet(List<ShelfBin> bins, (long Long, long Tall) way)
        {
            var fresh = new ShelfBin(problem.Sheet, isUpright);
            if (fresh.HasRoom(way))
            {
                bins.Add(fresh);
            }

            return fresh.HasRoom(way);
        }
    }

    // Its long side along the shelf, if it fits the sheet like that.
    private (long Long, long Tall) WayOnShelf(Kind kind, bool isUpright)
    {
        var ways = kind.Ways().Select(w => isUpright ? (Long: w.Height, Tall: w.Width) : (Long: w.Width, Tall: w.Height))
            .OrderByDescending(w => w.Long).ToList();
        foreach (var stock in problem.Stocks)
        {
            var (along, tall) = isUpright ? (stock.Height, stock.Width) : (stock.Width, stock.Height);
            if (ways.FindIndex(w => w.Long <= along && w.Tall <= tall) is >= 0 and var way)
            {
                return ways[way];
            }
        }

        return ways[0];
    }

    private List<(Pattern Pattern, int Times)>? Parts(
        int[] wanted, IReadOnlyList<int?> onHand, Func<Kind, double> order, bool longestFirst, Model.WorkBudget work)
    {
        var bins = Offcuts(wanted, onHand).Select(s => new PartBin(s, longestFirst)).ToList();
        foreach (var kind in problem.Kinds.Where(k => wanted[k.Index] > 0).OrderByDescending(order))
        {
            var bin = 0;
            for (var copy = 0; copy < wanted[kind.Index] && !work.IsOver; copy++)
            {
                while (bin < bins.Count && !bins[bin].TryPut(kind, work))
                {
                    bin++;
                }

                if (bin == bins.Count)
                {
                    var fresh = new PartBin(problem.Sheet, longestFirst);
                    if (!fresh.TryPut(kind, work))
                    {
                        break;
                    }

                    bins.Add(fresh);
                }

                if (bins[bin].Pieces > MostOnOneSheet)
                {
                    return null;
                }
            }
        }

        return [.. bins.Where(b => b.Pieces > 0).Select(b => (new Pattern(b.Stock, b.Tree()!, problem.Kinds.Length), 1))];
    }

    // Halves of a row joined, so that the tree of a long row stays shallow.
    private static CutTree Joined(bool sideBySide, List<CutTree> trees, int from, int count) => count == 1 ? trees[from]
        : new Join(sideBySide, Joined(sideBySide, trees, from, count / 2), Joined(sideBySide, trees, from + count / 2, count - count / 2));

    private sealed class Shelf(long left, long tall, bool isUpright)
    {
        public List<CutTree> Pieces { get; } = [];

        private long Left { get; set; } = left;

        public bool HasRoom((long Long, long Tall) way) => way.Long <= Left && way.Tall <= tall;

        public void Put(Kind kind, (long Long, long Tall) way)
        {
            Left -= way.Long;
            Pieces.Add(isUpright ? new PieceLeaf(kind, way.Tall, way.Long) : new PieceLeaf(kind, way.Long, way.Tall));
        }
    }

    private sealed class ShelfBin(Stock stock, bool isUpright)
    {
        private readonly List<Shelf> _shelves = [];
        private long _left = isUpright ? stock.Width : stock.Height;

        public Stock Stock => stock;

        public bool IsEmpty => _shelves.Count == 0;

        public bool HasRoom((long Long, long Tall) way) => way.Tall <= _left && way.Long <= (isUpright ? stock.Height : stock.Width);

        public Shelf Open(long tall)
        {
            _left -= tall;
            var shelf = new Shelf(isUpright ? stock.Height : stock.Width, tall, isUpright);
            _shelves.Add(shelf);
            return shelf;
        }

        public CutTree Tree()
        {
            var rows = _shelves.Select(s => Joined(!isUpright, s.Pieces, 0, s.Pieces.Count)).ToList();
            return Joined(isUpright, rows, 0, rows.Count);
        }
    }

    /// <summary>A stock as free and used parts.</summary>
    private sealed class PartBin
    {
        private readonly bool _longestFirst;
        private readonly FreePart _whole;
        private readonly List<FreePart> _free;
        private long _widest;
        private long _highest;

        public PartBin(Stock stock, bool longestFirst)
        {
            (Stock, _longestFirst, _whole) = (stock, longestFirst, new(stock.Width, stock.Height));
            (_free, _widest, _highest) = ([_whole], stock.Width, stock.Height);
        }

        public Stock Stock { get; }

        public int Pieces { get; private set; }

        /// <summary>Puts a piece into the free part that it fits best: where the shorter rest is shortest.</summary>
        public bool TryPut(Kind kind, Model.WorkBudget work)
        {
            work.Spend(2 * _free.Count + 4);
            // Most stocks have no free part that is wide or high enough.
            if (!kind.Fits(_widest, _highest))
            {
                return false;
            }

            var (best, bestWay, shortest) = (-1, default((long Width, long Height)), long.MaxValue);
            foreach (var way in kind.Ways())
            {
                for (var i = 0; i < _free.Count; i++)
                {
                    var rest = Math.Min(_free[i].Width - way.Width, _free[i].Height - way.Height);
                    if (rest >= 0 && rest < shortest)
                    {
                        (best, bestWay, shortest) = (i, way, rest);
                    }
                }
            }

            if (best < 0)
            {
                return false;
            }

            var part = _free[best];
            _free.RemoveAt(best);
            _free.AddRange(part.Divide(new(kind, bestWay.Width, bestWay.Height), _longestFirst));
            (_widest, _highest) = _free.Count == 0 ? (0, 0) : (_free.Max(f => f.Width), _free.Max(f => f.Height));
            Pieces++;
            return true;
        }

        public CutTree? Tree() => _whole.Tree();
    }

    /// <summary>A free part of a stock, or one that a piece has divided in three.</summary>
    private sealed class FreePart(long width, long height)
    {
        private PieceLeaf? _piece;
        private FreePart? _beside;
        private FreePart? _beyond;
        private bool _isRowAcross;

        public long Width => width;

        public long Height => height;

        /// <summary>Puts a piece into the upper left corner and returns the rests that have an area.</summary>
        public IEnumerable<FreePart> Divide(PieceLeaf piece, bool longestFirst)
        {
            _piece = piece;
            var (right, below) = (width - piece.Width, height - piece.Height);
            _isRowAcross = longestFirst ? right <= below : right > below;
            _beside = _isRowAcross ? new(right, piece.Height) : new(piece.Width, below);
            _beyond = _isRowAcross ? new(width, below) : new(right, height);
            return new[] { _beside, _beyond }.Where(p => p.Width > 0 && p.Height > 0);
        }

        public CutTree? Tree() => _piece is null ? null
            : Joined(!_isRowAcross, Joined(_isRowAcross, _piece, _beside!.Tree())!, _beyond!.Tree());

        private static CutTree? Joined(bool sideBySide, CutTree first, CutTree? second) =>
            second is null ? first : new Join(sideBySide, first, second);
    }
}
