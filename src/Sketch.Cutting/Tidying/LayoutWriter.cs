using Sketch.Cutting.Sheets;
using Sketch.Units;

namespace Sketch.Cutting.Tidying;

/// <summary>Writes an order of cuts down with places on the whole sheet.</summary>
internal sealed class LayoutWriter(CuttingProblem problem, Stock stock, Queue<PieceDemand>[] names)
{
    private readonly long _kerf = problem.Kerf.Nanometres;
    private readonly List<PlacedPiece> _pieces = [];
    private readonly List<Cut> _cuts = [];
    private readonly List<Rect> _leftovers = [];
    private readonly List<Rect> _trim = [];

    public Layout Write(Part part, int times)
    {
        var (left, top) = (0L, 0L);
        if (stock.IsSheet)
        {
            var usable = problem.Sheet.Usable;
            CutTrim(usable);
            (left, top) = (usable.Left.Nanometres, usable.Top.Nanometres);
        }

        Write(part, left, top);
        var size = stock.IsSheet ? problem.Sheet.Size : new(new(stock.Width - _kerf), new(stock.Height - _kerf));
        return new(size, !stock.IsSheet, times, [.. _pieces], [.. _cuts], [.. Sorted(_leftovers)], [.. _trim]);
    }

    private static IEnumerable<Rect> Sorted(IEnumerable<Rect> leftovers) =>
        leftovers.OrderByDescending(r => (Int128)r.Width.Nanometres * r.Height.Nanometres).ThenBy(r => r.Top).ThenBy(r => r.Left);

    private void CutTrim(Rect usable)
    {
        var (hand, size) = (new Rect(Length.Zero, Length.Zero, problem.Sheet.Size.Width, problem.Sheet.Size.Height), problem.Sheet.Size);
        if (usable.Left > Length.Zero)
        {
            CutOff(new(Length.Zero, Length.Zero, usable.Left, size.Height), new(new(usable.Left, Length.Zero), new(usable.Left, size.Height)));
            hand = new(usable.Left, Length.Zero, size.Width - usable.Left, size.Height);
        }

        if (usable.Right < size.Width)
        {
            CutOff(new(usable.Right, Length.Zero, size.Width - usable.Right, size.Height), new(new(usable.Right, Length.Zero), new(usable.Right, size.Height)));
            hand = hand with { Width = usable.Width };
        }

        if (usable.Top > Length.Zero)
        {
            CutOff(new(hand.Left, Length.Zero, hand.Width, usable.Top), new(new(hand.Left, usable.Top), new(hand.Right, usable.Top)));
        }

        if (usable.Bottom < size.Height)
        {
            CutOff(new(hand.Left, usable.Bottom, hand.Width, size.Height - usable.Bottom), new(new(hand.Left, usable.Bottom), new(hand.Right, usable.Bottom)));
        }
    }

    private void CutOff(Rect trim, Cut cut)
    {
        _trim.Add(trim);
        _cuts.Add(cut);
    }

    private void Write(Part part, long left, long top)
    {
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
                _cuts.Add(new(new(new(x - _kerf), new(top)), new(new(x - _kerf), new(top + height))));
                Write(cut.First, left, top);
                Write(cut.Second, x, top);
                break;
            case CutPart cut:
                var y = top + cut.First.Height;
                _cuts.Add(new(new(new(left), new(y - _kerf)), new(new(left + width), new(y - _kerf))));
                Write(cut.First, left, top);
                Write(cut.Second, left, y);
                break;
        }
    }
}
