using Sketch.Cutting;
using Sketch.Units;

namespace Sketch.Tests.Cutting;

/// <summary>The plain way: tallest first, each piece on the first shelf with room for it, a new shelf or sheet when there is none.</summary>
internal static class ShelfFirstFit
{
    public static int Sheets(CuttingProblem problem)
    {
        var usable = problem.Sheet.Usable;
        var shelves = new List<(int Sheet, Length Height, Length Left)>();
        var heights = new List<Length>();
        foreach (var size in Lying(problem, usable.Size))
        {
            var shelf = shelves.FindIndex(s => s.Left >= size.Width && s.Height >= size.Height);
            if (shelf < 0)
            {
                var sheet = heights.FindIndex(used => used + size.Height <= usable.Height);
                if (sheet < 0)
                {
                    sheet = heights.Count;
                    heights.Add(Length.Zero);
                }

                heights[sheet] += size.Height;
                shelf = shelves.Count;
                shelves.Add((sheet, size.Height, usable.Width));
            }

            shelves[shelf] = shelves[shelf] with { Left = shelves[shelf].Left - size.Width };
        }

        return heights.Count;
    }

    private static IEnumerable<Size> Lying(CuttingProblem problem, Size usable) =>
        from piece in problem.Pieces
        let turned = piece.MayTurn && (piece.Size.Width < piece.Size.Height || !Fits(piece.Size, usable)) && Fits(piece.Size.Turned(), usable)
        let size = turned ? piece.Size.Turned() : piece.Size
        where Fits(size, usable)
        orderby size.Height.Nanometres descending
        from copy in Enumerable.Repeat(size, piece.Count)
        select copy;

    private static bool Fits(Size size, Size usable) => size.Width <= usable.Width && size.Height <= usable.Height;
}
