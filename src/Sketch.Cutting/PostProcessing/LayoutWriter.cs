using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Sketch.Units;

namespace Sketch.Cutting.PostProcessing;

/// <summary>Writes orders of cuts down with places on the whole sheet.</summary>
internal sealed class LayoutWriter
{
    private readonly long _kerf;
    private readonly List<PlacedPiece> _pieces = [];
    private readonly List<Cut> _cuts = [];
    private readonly List<Rect> _leftovers = [];
    private readonly List<Rect> _trim = [];

    private LayoutWriter(Length kerf) => _kerf = kerf.Nanometres;

    /// <summary>A layout of a whole stock, its trim cut first.</summary>
    /// <param name="problem">The problem that the stock belongs to.</param>
    /// <param name="stock">The sheet or an offcut.</param>
    /// <param name="part">What is done with what remains of it without trim.</param>
    /// <param name="times">How many are cut so.</param>
    /// <param name="names">The pieces of each kind, in the order in which they are met.</param>
    public static SheetLayout Whole(CuttingProblem problem, Stock stock, Part part, int times, Queue<PieceDemand>[] names)
    {
        var writer = new LayoutWriter(problem.Kerf);
        var (left, top) = (0L, 0L);
        if (stock.IsSheet)
        {
            var usable = problem.Sheet.Usable;
            writer.CutTrim(problem.Sheet.Size, usable);
            (left, top) = (usable.Left.Nanometres, usable.Top.Nanometres);
        }

        writer.Write(part, left, top, names);
        var size = stock.IsSheet ? problem.Sheet.Size : new(new(stock.Width - writer._kerf), new(stock.Height - writer._kerf));
        return new(size, !stock.IsSheet, times, [.. writer._pieces], [.. writer._cuts], Sorted(writer._leftovers), [.. writer._trim]);
    }

    /// <summary>The same layout with one of its leftovers cut up further.</summary>
    public static SheetLayout Further(SheetLayout layout, Rect leftover, Part part, Length kerf, Queue<PieceDemand>[] names)
    {
        var writer = new LayoutWriter(kerf);
        writer.Write(part, leftover.Left.Nanometres, leftover.Top.Nanometres, names);
        return layout with
        {
            Pieces = [.. layout.Pieces, .. writer._pieces],
            Cuts = [.. layout.Cuts, .. writer._cuts],
            Leftovers = Sorted(layout.Leftovers.Remove(leftover).Concat(writer._leftovers)),
        };
    }

    private static ImmutableArray<Rect> Sorted(IEnumerable<Rect> leftovers) =>
        [.. leftovers.OrderByDescending(r => (Int128)r.Width.Nanometres * r.Height.Nanometres).ThenBy(r => r.Top).ThenBy(r => r.Left)];

    // The blade runs in the trim, not in the part that is used.
    private void CutTrim(Size size, Rect usable)
    {
        var kerf = new Length(_kerf);
        if (usable.Left > Length.Zero)
        {
            CutOff(new(Length.Zero, Length.Zero, usable.Left - kerf, size.Height), Upright(usable.Left - kerf, Length.Zero, size.Height));
        }

        if (usable.Right < size.Width)
        {
            CutOff(new(usable.Right + kerf, Length.Zero, size.Width - usable.Right - kerf, size.Height),
                Upright(usable.Right, Length.Zero, size.Height));
        }

        if (usable.Top > Length.Zero)
        {
            CutOff(new(usable.Left, Length.Zero, usable.Width, usable.Top - kerf), Level(usable.Top - kerf, usable.Left, usable.Right));
        }

        if (usable.Bottom < size.Height)
        {
            CutOff(new(usable.Left, usable.Bottom + kerf, usable.Width, size.Height - usable.Bottom - kerf),
                Level(usable.Bottom, usable.Left, usable.Right));
        }
    }

    private void CutOff(Rect trim, Cut cut)
    {
        _cuts.Add(cut);
        if (trim.Width > Length.Zero && trim.Height > Length.Zero)
        {
            _trim.Add(trim);
        }
    }

    private static Cut Upright(Length left, Length top, Length bottom) => new(new(left, top), new(left, bottom));

    private static Cut Level(Length top, Length left, Length right) => new(new(left, top), new(right, top));

    private void Write(Part whole, long wholeLeft, long wholeTop, Queue<PieceDemand>[] names)
    {
        // On a stack of our own: a row of many pieces is cut many levels deep.
        var waiting = new Stack<(Part Part, long Left, long Top)>([(whole, wholeLeft, wholeTop)]);
        while (waiting.TryPop(out var next))
        {
            var (part, left, top) = next;
            var (width, height) = (part.Width - _kerf, part.Height - _kerf);
            switch (part)
            {
                case PiecePart { Leaf: var leaf }:
                    var piece = names[leaf.Kind.Index].Dequeue();
                    _pieces.Add(new(piece.Id, new(new(left), new(top), new(width), new(height)), piece.Size.Width.Nanometres != width));
                    break;
                case LeftoverPart when width > 0 && height > 0:
                    _leftovers.Add(new(new(left), new(top), new(width), new(height)));
                    break;
                case CutPart { SideBySide: true } cut:
                    var x = left + cut.First.Width;
                    _cuts.Add(Upright(new(x - _kerf), new(top), new(top + height)));
                    waiting.Push((cut.Second, x, top));
                    waiting.Push((cut.First, left, top));
                    break;
                case CutPart cut:
                    var y = top + cut.First.Height;
                    _cuts.Add(Level(new(y - _kerf), new(left), new(left + width)));
                    waiting.Push((cut.Second, left, y));
                    waiting.Push((cut.First, left, top));
                    break;
            }
        }
    }
}
