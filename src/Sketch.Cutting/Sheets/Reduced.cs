using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>A problem with equal pieces and equal offcuts merged, in nanometres, without pieces that fit nowhere.</summary>
/// <param name="Kinds">Different pieces, the largest first; <see cref="Kind.Demand"/> counts them.</param>
/// <param name="Stocks">The full sheet first, then the offcuts.</param>
/// <param name="Members">For each kind, the indexes of the demands that it represents.</param>
/// <param name="Misfits">Indexes of the demands that fit no stock.</param>
internal sealed record Reduced(Kind[] Kinds, Stock[] Stocks, int[][] Members, int[] Misfits)
{
    public Stock Sheet => Stocks[0];

    public int[] Demand => [.. Kinds.Select(k => k.Demand)];

    public static Reduced From(CuttingProblem problem)
    {
        var kerf = problem.Kerf.Nanometres;
        var usable = problem.Sheet.Usable;
        var stocks = new List<Stock> { new(
            0, Math.Max(0, usable.Width.Nanometres) + kerf, Math.Max(0, usable.Height.Nanometres) + kerf, null) };
        foreach (var group in problem.Offcuts.Where(o => o.Count > 0).GroupBy(o => o.Size)
            .OrderBy(g => g.Key.Width.Nanometres * (double)g.Key.Height.Nanometres)
            .ThenBy(g => g.Key.Width).ThenBy(g => g.Key.Height))
        {
            stocks.Add(new(stocks.Count, group.Key.Width.Nanometres + kerf, group.Key.Height.Nanometres + kerf,
                (int)Math.Min(int.MaxValue, group.Sum(o => (long)o.Count))));
        }

        var groups = problem.Pieces.Select((piece, index) => (piece, index)).Where(p => p.piece.Count > 0)
            .GroupBy(p => Shape(p.piece, kerf)).OrderByDescending(g => (double)g.Key.Width * g.Key.Height)
            .ThenByDescending(g => g.Key.Height).ThenBy(g => g.Key.MayTurn);
        var (kinds, members, misfits) = (new List<Kind>(), new List<int[]>(), new List<int>());
        foreach (var group in groups)
        {
            var kind = new Kind(kinds.Count, group.Key.Width, group.Key.Height, group.Key.MayTurn,
                checked((int)group.Sum(p => (long)p.piece.Count)));
            if (stocks.Any(s => kind.Fits(s.Width, s.Height)))
            {
                kinds.Add(kind);
                members.Add([.. group.Select(p => p.index)]);
            }
            else
            {
                misfits.AddRange(group.Select(p => p.index));
            }
        }

        stocks.RemoveAll(s => !s.IsSheet && !kinds.Any(k => k.Fits(s.Width, s.Height)));
        return new([.. kinds], [.. stocks.Select((s, i) => s with { Index = i })], [.. members], [.. misfits.Order()]);
    }

    private static (long Width, long Height, bool MayTurn) Shape(PieceDemand piece, long kerf)
    {
        var (width, height) = (piece.Size.Width.Nanometres + kerf, piece.Size.Height.Nanometres + kerf);
        return width == height ? (width, height, true) : piece.MayTurn
            ? (Math.Min(width, height), Math.Max(width, height), true) : (width, height, false);
    }
}
