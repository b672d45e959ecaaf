using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Tests.Cutting;

/// <summary>
/// The fewest sheets for a handful of pieces, by trying every cut and every way of sharing the pieces between both parts.
/// </summary>
internal sealed class BruteForce
{
    private readonly List<(int Width, int Height, bool MayTurn)> _pieces;
    private readonly Dictionary<(int Mask, int Width, int Height), bool> _known = [];

    private BruteForce(CuttingProblem problem) => _pieces =
        [.. problem.Pieces.SelectMany(
            p => Enumerable.Repeat(((int)p.Size.Width.Nanometres, (int)p.Size.Height.Nanometres, p.MayTurn), p.Count))];

    /// <summary>
    /// The fewest sheets, or null when something fits nowhere. Sizes are small whole numbers of nanometres; there is no kerf.
    /// </summary>
    public static int? Sheets(CuttingProblem problem)
    {
        var search = new BruteForce(problem);
        var all = (1 << search._pieces.Count) - 1;
        var covered = new HashSet<int> { 0 };
        foreach (var offcut in problem.Offcuts.SelectMany(o => Enumerable.Repeat(o.Size, o.Count)))
        {
            covered = search.OneMore(covered, offcut, all);
        }

        var usable = problem.Sheet.Usable.Size;
        for (var sheets = 0; sheets <= search._pieces.Count; sheets++)
        {
            if (covered.Contains(all))
            {
                return sheets;
            }

            covered = search.OneMore(covered, usable, all);
        }

        return null;
    }

    private HashSet<int> OneMore(HashSet<int> covered, Size stock, int all)
    {
        var fitting = Enumerable.Range(0, all + 1).Where(mask => Fits(mask, (int)stock.Width.Nanometres, (int)stock.Height.Nanometres))
            .ToList();
        return [.. from before in covered from mask in fitting where (before & mask) == 0 select before | mask];
    }

    private bool Fits(int mask, int width, int height)
    {
        if (mask == 0)
        {
            return true;
        }

        if (_known.TryGetValue((mask, width, height), out var known))
        {
            return known;
        }

        return _known[(mask, width, height)] = (mask & (mask - 1)) == 0
            ? FitsAlone(_pieces[int.TrailingZeroCount(mask)], width, height)
            : Shares(mask).Any(part => Enumerable.Range(1, Math.Max(0, width - 1))
            .Any(x => Fits(part, x, height) && Fits(mask ^ part, width - x, height))
                || Enumerable.Range(1, Math.Max(0, height - 1)).Any(y => Fits(part, width, y) && Fits(mask ^ part, width, height - y)));
    }

    private static IEnumerable<int> Shares(int mask)
    {
        for (var part = (mask - 1) & mask; part > 0; part = (part - 1) & mask)
        {
            yield return part;
        }
    }

    private static bool FitsAlone((int Width, int Height, bool MayTurn) piece, int width, int height) =>
        (piece.Width <= width && piece.Height <= height) || (piece.MayTurn && piece.Height <= width && piece.Width <= height);
}
