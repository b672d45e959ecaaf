using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Tests.Cutting;

/// <summary>
/// The plain way: tallest first, each piece on the first shelf with room for it, a new shelf when there is none, on offcuts before sheets.
/// </summary>
internal static class ShelfFirstFit
{
    public static int Sheets(CuttingProblem problem)
    {
        var usable = problem.Sheet.Usable.Size;
        var shelves = new List<(Length Height, Length Left)>();
        var stocks = problem.Offcuts.SelectMany(o => Enumerable.Repeat((o.Size.Width, Left: o.Size.Height), o.Count)).ToList();
        var offcuts = stocks.Count;
        foreach (var size in Lying(problem, usable))
        {
            var shelf = shelves.FindIndex(s => s.Left >= size.Width && s.Height >= size.Height);
            if (shelf < 0)
            {
                var stock = stocks.FindIndex(s => s.Width >= size.Width && s.Left >= size.Height);
                if (stock < 0)
                {
                    stock = stocks.Count;
                    stocks.Add((usable.Width, usable.Height));
                }

                stocks[stock] = stocks[stock] with { Left = stocks[stock].Left - size.Height };
                shelf = shelves.Count;
                shelves.Add((size.Height, stocks[stock].Width));
            }

            shelves[shelf] = shelves[shelf] with { Left = shelves[shelf].Left - size.Width };
        }

        return stocks.Count - offcuts;
    }

    private static IEnumerable<Size> Lying(CuttingProblem problem, Size usable) =>
        from piece in problem.Pieces
        let turned = piece.MayTurn && (piece.Size.Width < piece.Size.Height || !Fits(piece.Size, usable))
            && Fits(piece.Size.Turned(), usable)
        let size = turned ? piece.Size.Turned() : piece.Size
        where Fits(size, usable)
        orderby size.Height.Nanometres descending
        from copy in Enumerable.Repeat(size, piece.Count)
        select copy;

    private static bool Fits(Size size, Size usable) => size.Width <= usable.Width && size.Height <= usable.Height;
}
