using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Tests.Cutting;

/// <summary>
/// An independent judge of plans: carries out every cut on rectangles and compares what falls off with what the plan says.
/// </summary>
internal static class PlanChecker
{
    /// <summary>What is wrong with a plan; empty when nothing is.</summary>
    public static List<string> Faults(CuttingProblem problem, CuttingPlan plan)
    {
        var faults = new List<string>();
        var made = problem.Pieces.ToDictionary(p => p.Id, _ => 0L);
        foreach (var (layout, number) in plan.Layouts.Select((l, i) => (l, i)))
        {
            faults.AddRange(Faults(problem, layout).Select(fault => $"layout {number}: {fault}"));
            foreach (var piece in layout.Pieces)
            {
                made[piece.Id] += layout.Times;
            }
        }

        foreach (var piece in problem.Pieces)
        {
            var unplaced = plan.Unplaced.Where(u => u.Id == piece.Id).Sum(u => u.Count);
            if (made[piece.Id] + unplaced != piece.Count)
            {
                faults.Add($"{piece.Id}: {made[piece.Id]} made and {unplaced} left out of {piece.Count}");
            }
        }

        if (plan.Sheets != plan.Layouts.Where(l => !l.IsOffcut).Sum(l => l.Times))
        {
            faults.Add("the number of sheets is not that of the layouts");
        }

        if (plan.LowerBound > plan.Sheets || plan.LowerBound < 0)
        {
            faults.Add($"bound {plan.LowerBound} of {plan.Sheets}");
        }

        foreach (var size in plan.Layouts.Where(l => l.IsOffcut).GroupBy(l => l.Stock))
        {
            if (size.Sum(l => (long)l.Times) > problem.Offcuts.Where(o => o.Size == size.Key).Sum(o => (long)o.Count))
            {
                faults.Add($"more offcuts of {size.Key} than there are");
            }
        }

        return faults;
    }

    /// <summary>
    /// The settings of the trimmer that a layout without kerf takes: how far from the left or top edge of the part in hand each cut runs.
    /// </summary>
    public static IEnumerable<Length> Settings(SheetLayout layout)
    {
        var parts = new List<Rect> { new(Length.Zero, Length.Zero, layout.Stock.Width, layout.Stock.Height) };
        foreach (var cut in layout.Cuts)
        {
            var part = parts.First(p => Crosses(p, cut, Length.Zero));
            parts.Remove(part);
            parts.AddRange(Halves(part, cut, Length.Zero));
            yield return cut.IsUpright ? cut.From.Left - part.Left : cut.From.Top - part.Top;
        }
    }

    private static List<string> Faults(CuttingProblem problem, SheetLayout layout)
    {
        var faults = new List<string>();
        if (layout.Times < 1 || layout.Pieces.IsEmpty)
        {
            faults.Add("nothing is cut");
        }

        var parts = new List<Rect> { new(Length.Zero, Length.Zero, layout.Stock.Width, layout.Stock.Height) };
        if (!layout.IsOffcut && layout.Stock != problem.Sheet.Size)
        {
            faults.Add("it is not the sheet");
        }

        foreach (var cut in layout.Cuts)
        {
            var hit = parts.FindIndex(part => Crosses(part, cut, problem.Kerf));
            if (hit < 0)
            {
                faults.Add($"the cut {cut} is not from edge to edge of a part");
                return faults;
            }

            var part = parts[hit];
            parts.RemoveAt(hit);
            parts.AddRange(Halves(part, cut, problem.Kerf).Where(h => h.Width > Length.Zero && h.Height > Length.Zero));
        }

        if (layout.Tree.InOrder().OfType<SheetCut>().Any(c => !Halves(c.Place, c.Cut, problem.Kerf).SequenceEqual([c.First.Place,
            c.Second.Place])))
        {
            faults.Add("the parts of a cut in the tree are not what the cut makes");
        }

        var said = layout.Pieces.Select(p => p.Place).Concat(layout.Leftovers).Concat(layout.Trim).ToList();
        if (!said.Order(Comparer<Rect>.Create(Compare)).SequenceEqual(parts.Order(Comparer<Rect>.Create(Compare))))
        {
            faults.Add("what the cuts make is not what the plan lists");
        }

        foreach (var piece in layout.Pieces)
        {
            var wanted = problem.Pieces.Single(p => p.Id == piece.Id);
            if (piece.Place.Size != (piece.Turned ? wanted.Size.Turned() : wanted.Size) || (piece.Turned && !wanted.MayTurn))
            {
                faults.Add($"{piece} is not {wanted}");
            }
        }

        var usable = problem.Sheet.Usable;
        if (!layout.IsOffcut && layout.Pieces.Any(
            p => p.Place.Left < usable.Left || p.Place.Top < usable.Top || p.Place.Right > usable.Right || p.Place.Bottom > usable.Bottom))
        {
            faults.Add("a piece lies on the trim");
        }

        return faults;
    }

    private static bool Crosses(Rect part, Cut cut, Length kerf) => cut.From.Left == cut.To.Left
        ? cut.From.Top == part.Top && cut.To.Top == part.Bottom && cut.From.Left > part.Left - kerf && cut.From.Left < part.Right
        : cut.From.Top == cut.To.Top && cut.From.Left == part.Left && cut.To.Left == part.Right && cut.From.Top > part.Top - kerf
        && cut.From.Top < part.Bottom;

    private static Rect[] Halves(Rect part, Cut cut, Length kerf) => cut.From.Left == cut.To.Left
        ? [part with { Width = cut.From.Left - part.Left },
            new(cut.From.Left + kerf, part.Top, part.Right - cut.From.Left - kerf, part.Height)]
        : [part with { Height = cut.From.Top - part.Top },
            new(part.Left, cut.From.Top + kerf, part.Width, part.Bottom - cut.From.Top - kerf)];

    private static int Compare(Rect a, Rect b) =>
        (a.Left.Nanometres, a.Top.Nanometres, a.Width.Nanometres, a.Height.Nanometres)
            .CompareTo((b.Left.Nanometres, b.Top.Nanometres, b.Width.Nanometres, b.Height.Nanometres));
}
