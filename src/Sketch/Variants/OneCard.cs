using Sketch.Stashes;
using Sketch.Units;

namespace Sketch.Variants;

/// <summary>
/// Whether the stock of a paper is enough for one card, by laying the pieces in rows, the highest first, each in the first row with
/// room (first fit decreasing height). A careful plan may fit in a little more; this is a preview, not the cutting plan.
/// </summary>
internal static class OneCard
{
    /// <summary>No card needs more sheets of one paper.</summary>
    private const int SheetLimit = 20;

    private const int PieceLimit = 400;

    public static bool IsEnough(Stash stash, StockPaper paper, IReadOnlyList<Size> pieces)
    {
        var stock = Enumerable.Repeat(paper.Usable, Math.Min(paper.Sheets ?? SheetLimit, SheetLimit))
            .Concat(stash.OffcutsOf(paper).SelectMany(o => Enumerable.Repeat(o.Size, Math.Min(o.Count, SheetLimit))))
            .OrderBy(s => (Int128)s.Width.Nanometres * s.Height.Nanometres)
            .Select(s => new Sheet(s)).ToList();
        return pieces.Take(PieceLimit)
            .Select(p => paper.Upright || p.Width >= p.Height ? p : p.Turned())
            .OrderByDescending(p => p.Height.Nanometres).ThenByDescending(p => p.Width.Nanometres)
            .All(p => stock.Exists(s => s.TakesIn(p) || (!paper.Upright && s.TakesIn(p.Turned()))));
    }

    private sealed class Sheet(Size size)
    {
        private readonly List<(Length Height, Length Left)> _rows = [];
        private Length _below = size.Height;

        public bool TakesIn(Size piece)
        {
            var row = _rows.FindIndex(r => piece.Height <= r.Height && piece.Width <= r.Left);
            if (row >= 0)
            {
                _rows[row] = (_rows[row].Height, _rows[row].Left - piece.Width);
                return true;
            }

            if (piece.Height > _below || piece.Width > size.Width)
            {
                return false;
            }

            _rows.Add((piece.Height, size.Width - piece.Width));
            _below -= piece.Height;
            return true;
        }
    }
}
