using System.Collections.Immutable;
using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.PostProcessing;
using Sketch.Units;

namespace Sketch.Cutting;

/// <summary>Finds room for pieces that may come from any paper in the leftovers of plans. It never adds a sheet.</summary>
public static class LeftoverFilling
{
    /// <summary>
    /// Places the largest pieces first, each in the smallest leftover or unused offcut that it fits, as many at once as fit there. What is
    /// placed already does not move; sheets cut the same way may split into separate layouts.
    /// </summary>
    /// <param name="planned">The plans with their problems, one for each paper.</param>
    /// <param name="pieces">The pieces; their ids occur in none of the problems.</param>
    /// <param name="mayCutFrom">Whether a piece may come from the paper at an index; null if all may come from any.</param>
    /// <returns>The plans in the same order with the pieces added, and the pieces without room.</returns>
    public static (ImmutableArray<CuttingPlan> Plans, ImmutableArray<UnplacedPieces> Unplaced) Fill(
        ImmutableArray<(CuttingProblem Problem, CuttingPlan Plan)> planned, ImmutableArray<PieceDemand> pieces,
        Func<PieceDemand, int, bool>? mayCutFrom = null)
    {
        var layouts = planned.Select(p => p.Plan.Layouts.Concat(UnusedOffcuts(p.Problem, p.Plan)).ToList()).ToArray();
        var unplaced = ImmutableArray.CreateBuilder<UnplacedPieces>();
        foreach (var piece in pieces.OrderByDescending(p => Area(p.Size)))
        {
            var left = piece.Count;
            while (left > 0 && SmallestRoom(layouts, piece, paper => mayCutFrom?.Invoke(piece, paper) ?? true) is var (paper, index, room))
            {
                var (problem, layout) = (planned[paper].Problem, layouts[paper][index]);
                var grid = Grid(piece, room, problem.Kerf, left);
                var each = (int)Math.Min(left, (long)grid.Across * grid.Down);
                var times = Math.Min(layout.Times, left / each);
                var further = Cut(problem, layout, room, piece, grid, each) with { Times = times };
                layouts[paper][index] = further;
                if (times < layout.Times)
                {
                    layouts[paper].Insert(index + 1, layout with { Times = layout.Times - times });
                }

                left -= times * each;
            }

            if (left > 0)
            {
                unplaced.Add(new(piece.Id, left));
            }
        }

        var plans = planned.Zip(layouts, (p, l) =>
            p.Plan with { Layouts = [.. LayoutOrder.Of(p.Problem, l.Where(x => !x.Pieces.IsEmpty))] });
        return ([.. plans], unplaced.ToImmutable());
    }

    private static IEnumerable<SheetLayout> UnusedOffcuts(CuttingProblem problem, CuttingPlan plan) =>
        from same in problem.Offcuts.GroupBy(o => (o.Size, o.FreedBy))
        let used = plan.Layouts.Where(l => l.IsOffcut && (l.Stock, l.FreedBy) == same.Key).Sum(l => l.Times)
        let unused = same.Sum(o => o.Count) - used
        where unused > 0
        let whole = new Rect(Length.Zero, Length.Zero, same.Key.Size.Width, same.Key.Size.Height)
        select new SheetLayout(same.Key.Size, true, unused, new SheetRest(whole, IsTrim: false)) { FreedBy = same.Key.FreedBy };

    private static (int Paper, int Layout, Rect Room)? SmallestRoom(
        List<SheetLayout>[] layouts, PieceDemand piece, Func<int, bool> mayCutFrom)
    {
        (int, int, Rect)? best = null;
        var smallest = Int128.MaxValue;
        foreach (var paper in Enumerable.Range(0, layouts.Length).Where(mayCutFrom))
        {
            for (var layout = 0; layout < layouts[paper].Count; layout++)
            {
                foreach (var room in layouts[paper][layout].Leftovers)
                {
                    if (Area(room.Size) < smallest
                        && (Holds(room.Size, piece.Size) || (piece.MayTurn && Holds(room.Size, piece.Size.Turned()))))
                    {
                        (best, smallest) = ((paper, layout, room), Area(room.Size));
                    }
                }
            }
        }

        return best;
    }

    private static bool Holds(Size room, Size piece) => piece.Width <= room.Width && piece.Height <= room.Height;

    private static Int128 Area(Size size) => (Int128)size.Width.Nanometres * size.Height.Nanometres;

    // Rows of the piece in one orientation: the one in which more fit.
    private static (Size Lying, int Across, int Down) Grid(PieceDemand piece, Rect room, Length kerf, int wanted) =>
        (piece.MayTurn ? new[] { piece.Size, piece.Size.Turned() } : [piece.Size])
            .Select(way => (Lying: way, Across: Fitting(room.Width, way.Width, kerf, wanted),
                Down: Fitting(room.Height, way.Height, kerf, wanted)))
            .MaxBy(grid => Math.Min(wanted, (long)grid.Across * grid.Down)) switch
        {
            var (lying, across, down) => (lying, across, (int)Math.Min(down, ((long)wanted + across - 1) / across)),
        };

    private static int Fitting(Length room, Length side, Length kerf, int wanted) =>
        (int)Math.Min(wanted, (room + kerf).Nanometres / (side + kerf).Nanometres);

    private static SheetLayout Cut(
        CuttingProblem problem, SheetLayout layout, Rect room, PieceDemand piece, (Size Lying, int Across, int Down) grid, int count)
    {
        var kerf = problem.Kerf.Nanometres;
        var (width, height) = (grid.Lying.Width.Nanometres + kerf, grid.Lying.Height.Nanometres + kerf);
        var leaf = new PieceLeaf(new(0, width, height, false, count), width, height);
        CutTree? tree = null;
        for (var left = count; left > 0; left -= grid.Across)
        {
            CutTree row = leaf;
            for (var i = 1; i < Math.Min(left, grid.Across); i++)
            {
                row = new Join(true, row, leaf);
            }

            tree = tree is null ? row : new Join(false, tree, row);
        }

        var part = CutOrder.For(tree!, room.Width.Nanometres + kerf, room.Height.Nanometres + kerf, kerf, problem.SmallestUse.Nanometres,
            new HashSet<long> { width, height });
        return LayoutWriter.Further(layout, room, part, problem.Kerf, [new(Enumerable.Repeat(piece, count))]);
    }
}
