using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Sketch.Units;

namespace Sketch.Cutting.PostProcessing;

/// <summary>Gives orders of cuts their places on the whole sheet and the names of their pieces.</summary>
internal sealed class LayoutWriter
{
    private readonly long _kerf;

    private LayoutWriter(Length kerf) => _kerf = kerf.Nanometres;

    /// <summary>A layout of a whole stock, its trim cut first.</summary>
    /// <param name="problem">The problem that the stock belongs to.</param>
    /// <param name="stock">The sheet or an offcut.</param>
    /// <param name="part">The use of the stock without its trim.</param>
    /// <param name="times">How many are cut this way.</param>
    /// <param name="names">The pieces of each kind, in the order of use.</param>
    public static SheetLayout Whole(CuttingProblem problem, Stock stock, Part part, int times, Queue<PieceDemand>[] names)
    {
        var writer = new LayoutWriter(problem.Kerf);
        if (!stock.IsSheet)
        {
            var size = new Size(new(stock.Width - writer._kerf), new(stock.Height - writer._kerf));
            return new(size, true, times, writer.Write(part, 0, 0, names));
        }

        var usable = problem.Sheet.Usable;
        var used = writer.Write(part, usable.Left.Nanometres, usable.Top.Nanometres, names);
        return new(problem.Sheet.Size, false, times, WithTrim(problem, used));
    }

    /// <summary>The same layout with one of its leftovers cut up further.</summary>
    public static SheetLayout Further(SheetLayout layout, Rect leftover, Part part, Length kerf, Queue<PieceDemand>[] names)
    {
        var further = new LayoutWriter(kerf).Write(part, leftover.Left.Nanometres, leftover.Top.Nanometres, names);
        return new(layout.Stock, layout.IsOffcut, layout.Times, layout.Tree.With(leftover, further)) { FreedBy = layout.FreedBy };
    }

    // The left edge is cut off, then the right, the upper and the lower one: the tree grows from the last cut to the first. The blade runs
    // in the trim, not in the part that is used.
    private static SheetPart WithTrim(CuttingProblem problem, SheetPart used)
    {
        var (size, usable, kerf) = (problem.Sheet.Size, problem.Sheet.Usable, problem.Kerf);
        var hand = used;
        if (usable.Bottom < size.Height)
        {
            var place = new Rect(usable.Left, usable.Top, usable.Width, size.Height - usable.Top);
            var trim = place with { Top = usable.Bottom + kerf, Height = place.Bottom - usable.Bottom - kerf };
            hand = new SheetCut(place, false, usable.Height, hand, new SheetRest(trim, IsTrim: true));
        }

        if (usable.Top > Length.Zero)
        {
            var place = new Rect(usable.Left, Length.Zero, usable.Width, size.Height);
            var trim = place with { Height = usable.Top - kerf };
            hand = new SheetCut(place, false, trim.Height, new SheetRest(trim, IsTrim: true), hand);
        }

        if (usable.Right < size.Width)
        {
            var place = new Rect(usable.Left, Length.Zero, size.Width - usable.Left, size.Height);
            var trim = place with { Left = usable.Right + kerf, Width = place.Right - usable.Right - kerf };
            hand = new SheetCut(place, true, usable.Width, hand, new SheetRest(trim, IsTrim: true));
        }

        if (usable.Left > Length.Zero)
        {
            var place = new Rect(Length.Zero, Length.Zero, size.Width, size.Height);
            var trim = place with { Width = usable.Left - kerf };
            hand = new SheetCut(place, true, trim.Width, new SheetRest(trim, IsTrim: true), hand);
        }

        return hand;
    }

    private SheetPart Write(Part whole, long wholeLeft, long wholeTop, Queue<PieceDemand>[] names)
    {
        // On explicit stacks: a row of many pieces is cut many levels deep. Places and names are assigned from the whole to its parts, the
        // tree is then built from the parts to the whole.
        var placed = new List<(Part Part, Rect Place, SheetPart? Leaf)>();
        var waiting = new Stack<(Part Part, long Left, long Top)>([(whole, wholeLeft, wholeTop)]);
        while (waiting.TryPop(out var next))
        {
            var (part, left, top) = next;
            var place = new Rect(new(left), new(top), new(part.Width - _kerf), new(part.Height - _kerf));
            placed.Add((part, place, Leaf(part, place, names)));
            if (part is CutPart cut)
            {
                waiting.Push(cut.SideBySide
                    ? (cut.Second, left + cut.First.Width, top) : (cut.Second, left, top + cut.First.Height));
                waiting.Push((cut.First, left, top));
            }
        }

        var built = new Stack<SheetPart>();
        for (var i = placed.Count - 1; i >= 0; i--)
        {
            var (part, place, leaf) = placed[i];
            built.Push(leaf ?? Cut((CutPart)part, place, built.Pop(), built.Pop()));
        }

        return built.Pop();
    }

    private static SheetPart? Leaf(Part part, Rect place, Queue<PieceDemand>[] names)
    {
        if (part is PiecePart { Leaf.Kind: var kind })
        {
            var piece = names[kind.Index].Dequeue();
            return new SheetPiece(new(piece.Id, place, piece.Size.Width != place.Width));
        }

        return part is LeftoverPart ? new SheetRest(place, IsTrim: false) : null;
    }

    private SheetCut Cut(CutPart part, Rect place, SheetPart first, SheetPart second) =>
        new(place, part.SideBySide, new((part.SideBySide ? part.First.Width : part.First.Height) - _kerf), first, second);
}
