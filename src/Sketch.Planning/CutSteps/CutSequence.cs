using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>
/// Puts the cuts of a layout into the order of work at a trimmer: the trim first, then all cuts one way, then all cuts the other way on the
/// strips that these made, and so on, cuts of one setting together. Every cut still runs from edge to edge of the part in hand.
/// </summary>
internal static class CutSequence
{
    /// <summary>The steps of a layout.</summary>
    public static ImmutableArray<CutStep> Of(SheetLayout layout)
    {
        var whole = Node.Tree(layout);
        var steps = ImmutableArray.CreateBuilder<CutStep>();
        var hand = whole;
        for (var i = 0; i < layout.Trim.Length; i++)
        {
            var (first, second) = (hand.First!, hand.Second!);
            var isFirstWaste = layout.Trim.Contains(first.Place);
            var kept = isFirstWaste ? second : first;
            steps.Add(new(steps.Count + 1, hand.Cut!.Value.IsUpright, hand.Cut.Value.IsUpright
                ? kept.Place.Width : kept.Place.Height, [hand.Cut.Value])
            { IsTrim = true });
            hand = kept;
        }

        for (var level = new List<Node> { hand }; level.Count > 0;)
        {
            var rows = level.Where(n => n.Cut is not null).Select(n => n.Row()).ToList();
            AddSteps(steps, rows);
            level = [.. rows.SelectMany(r => r)];
        }

        return steps.ToImmutable();
    }

    /// <summary>The cuts in the order of the steps.</summary>
    public static IEnumerable<Cut> InOrder(SheetLayout layout) => Of(layout).SelectMany(s => s.Cuts);

    // All rows of a level are cut the same way; of the settings that come next the one with most cuts is made first.
    private static void AddSteps(ImmutableArray<CutStep>.Builder steps, List<List<Node>> rows)
    {
        var next = new int[rows.Count];
        while (true)
        {
            var best = Enumerable.Range(0, rows.Count).Where(r => next[r] < rows[r].Count - 1)
                .GroupBy(r => rows[r][next[r]].Along, r => Run(rows[r], next[r]))
                .OrderByDescending(g => g.Sum()).ThenByDescending(g => g.Key).FirstOrDefault();
            if (best is null)
            {
                return;
            }

            var cuts = ImmutableArray.CreateBuilder<Cut>();
            for (var r = 0; r < rows.Count; r++)
            {
                for (; next[r] < rows[r].Count - 1 && rows[r][next[r]].Along == best.Key; next[r]++)
                {
                    cuts.Add(rows[r][next[r]].EndCut);
                }
            }

            steps.Add(new(steps.Count + 1, cuts[0].IsUpright, best.Key, cuts.ToImmutable()));
        }
    }

    private static int Run(List<Node> row, int from) =>
        row.Skip(from).Take(row.Count - 1 - from).TakeWhile(n => n.Along == row[from].Along).Count();

    /// <summary>A part in hand and the cut that parts it.</summary>
    private sealed class Node(Rect place)
    {
        private bool _upright;

        public Rect Place { get; } = place;

        public Cut? Cut { get; private set; }

        public Node? First { get; private set; }

        public Node? Second { get; private set; }

        /// <summary>Its side along the row in which it lies.</summary>
        public Length Along => _upright ? Place.Width : Place.Height;

        /// <summary>The cut at its end in the row.</summary>
        public Cut EndCut => _upright
            ? new(new(Place.Right, Place.Top), new(Place.Right, Place.Bottom))
            : new(new(Place.Left, Place.Bottom), new(Place.Right, Place.Bottom));

        /// <summary>Carries out all cuts of a layout.</summary>
        public static Node Tree(SheetLayout layout)
        {
            var whole = new Node(new(Length.Zero, Length.Zero, layout.Stock.Width, layout.Stock.Height));
            var ends = new Ends([.. layout.Pieces.Select(p => p.Place).Concat(layout.Leftovers).Concat(layout.Trim)]);
            // Cuts mostly come in the order of the parts that they make, so the part to cut is among the last ones made.
            var last = new Stack<Node>([whole]);
            foreach (var cut in layout.Cuts)
            {
                Node? part;
                while (last.TryPop(out part) && !part.Crosses(cut))
                {
                }

                part ??= whole.Find(cut);
                if (part.Crosses(cut))
                {
                    part.Part(cut, ends);
                    last.Push(part.Second!);
                    last.Push(part.First!);
                }
            }

            return whole;
        }

        /// <summary>The parts that all cuts of its own direction make of it, in order.</summary>
        public List<Node> Row()
        {
            var parts = new List<Node>();
            Collect(this, Cut!.Value.IsUpright, parts);
            return parts;
        }

        // On a stack of our own: a row of many pieces is cut many levels deep.
        private static void Collect(Node whole, bool upright, List<Node> parts)
        {
            var waiting = new Stack<Node>([whole]);
            while (waiting.TryPop(out var node))
            {
                if (node.Cut is { } cut && cut.IsUpright == upright)
                {
                    waiting.Push(node.Second!);
                    waiting.Push(node.First!);
                }
                else
                {
                    node._upright = upright;
                    parts.Add(node);
                }
            }
        }

        // The part, not cut yet, in which a cut lies.
        private Node Find(Cut cut)
        {
            var node = this;
            while (node.Cut is not null)
            {
                node = node.First!.Holds(cut) ? node.First : node.Second!;
            }

            return node;
        }

        private void Part(Cut cut, Ends ends)
        {
            Cut = cut;
            var at = cut.IsUpright ? cut.From.Left : cut.From.Top;
            // The blade's dust lies between the cut and the nearest part after it.
            var next = ends.NextStart(cut.IsUpright, at, IsWithin) ?? (cut.IsUpright ? Place.Right : Place.Bottom);
            First = new(cut.IsUpright ? Place with { Width = at - Place.Left } : Place with { Height = at - Place.Top });
            Second = new(cut.IsUpright
                ? new(next, Place.Top, Place.Right - next, Place.Height)
                : new(Place.Left, next, Place.Width, Place.Bottom - next));
        }

        private bool Holds(Cut cut) =>
            cut.From.Left >= Place.Left && cut.To.Left <= Place.Right && cut.From.Top >= Place.Top && cut.To.Top <= Place.Bottom;

        private bool IsWithin(Rect end) =>
            end.Left >= Place.Left && end.Right <= Place.Right && end.Top >= Place.Top && end.Bottom <= Place.Bottom;

        private bool Crosses(Cut cut) => cut.IsUpright
            ? cut.From.Top == Place.Top && cut.To.Top == Place.Bottom && cut.From.Left > Place.Left && cut.From.Left < Place.Right
            : cut.From.Left == Place.Left && cut.To.Left == Place.Right && cut.From.Top > Place.Top && cut.From.Top < Place.Bottom;
    }

    /// <summary>What remains at the end: pieces, leftovers and trim, to find the next one along.</summary>
    private sealed class Ends(Rect[] places)
    {
        private readonly Rect[] _across = [.. places.OrderBy(p => p.Left)];
        private readonly Rect[] _down = [.. places.OrderBy(p => p.Top)];

        /// <summary>Where the first part among some begins at or after a place; null when there is none.</summary>
        public Length? NextStart(bool across, Length from, Predicate<Rect> among)
        {
            var sorted = across ? _across : _down;
            var (low, high) = (0, sorted.Length);
            while (low < high)
            {
                var middle = (low + high) / 2;
                (low, high) = StartOf(sorted[middle]) < from ? (middle + 1, high) : (low, middle);
            }

            var found = Array.FindIndex(sorted, low, among);
            return found < 0 ? null : StartOf(sorted[found]);

            Length StartOf(Rect place) => across ? place.Left : place.Top;
        }
    }
}
