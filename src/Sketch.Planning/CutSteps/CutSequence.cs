using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>
/// Puts the cuts of a layout's tree into the order of work at a trimmer: the trim first, then setting after setting, each for all parts in
/// hand that it divides, so that the stop moves seldom. Every cut runs from edge to edge of the part in hand.
/// </summary>
internal static class CutSequence
{
    /// <summary>The steps of a layout.</summary>
    public static ImmutableArray<CutStep> Of(SheetLayout layout)
    {
        var steps = ImmutableArray.CreateBuilder<CutStep>();
        var hand = layout.Tree;
        while (hand is SheetCut { WithoutTrim: { } kept } cut)
        {
            // The kept part lies against the stop, so the trim that falls off never determines its size.
            var isFirst = ReferenceEquals(kept, cut.First);
            var against = cut.IsUpright ? isFirst ? Edge.Left : Edge.Right : isFirst ? Edge.Top : Edge.Bottom;
            var setting = cut.IsUpright ? kept.Place.Width : kept.Place.Height;
            steps.Add(new(steps.Count + 1, against, setting, [new(cut.Place, [cut.Cut])]) { IsTrim = true });
            hand = kept;
        }

        AddSteps(steps, hand);
        return steps.ToImmutable();
    }

    // A setting whose cuts can all be made now comes first, since it never returns; else the one with the most cuts. What it cuts off is
    // cut on at the same setting, whichever way it has to be turned.
    private static void AddSteps(ImmutableArray<CutStep>.Builder steps, SheetPart hand)
    {
        var open = RowsIn([hand]);
        var still = Settings(open);
        while (open.Count > 0)
        {
            var last = steps.Count > 0 ? steps[^1] : null;
            var best = open.GroupBy(r => r.Setting(r.Done)).Select(g => (Setting: g.Key, Rows: g.ToList(), Cuts: g.Sum(r => r.Run(r.Done))))
                .OrderByDescending(g => g.Setting == last?.Setting).ThenByDescending(g => g.Cuts == still[g.Setting])
                .ThenByDescending(g => g.Cuts).ThenByDescending(g => g.Setting).First();
            var isUpright = best.Rows.Exists(r => r.IsUpright == last?.IsUpright) ? last!.IsUpright : best.Rows[0].IsUpright;
            var runs = ImmutableArray.CreateBuilder<CutRun>();
            var freed = new List<SheetPart>();
            foreach (var row in best.Rows.Where(r => r.IsUpright == isUpright))
            {
                runs.Add(row.Cut(freed));
            }

            still[best.Setting] -= runs.Sum(r => r.Cuts.Length);
            open.RemoveAll(r => r.Done == r.Cuts);
            open.AddRange(RowsIn(freed));
            steps.Add(new(steps.Count + 1, isUpright ? Edge.Left : Edge.Top, best.Setting, runs.ToImmutable())
            {
                IsWhole = runs[0].Part == hand.Place,
            });
        }
    }

    private static List<Row> RowsIn(IEnumerable<SheetPart> parts) => [.. parts.OfType<SheetCut>().Select(Row.Of)];

    // How many cuts each setting has in these rows and in all that come off them.
    private static Dictionary<Length, int> Settings(List<Row> rows)
    {
        var counts = new Dictionary<Length, int>();
        for (var level = rows; level.Count > 0; level = RowsIn(level.SelectMany(r => r.Parts)))
        {
            foreach (var row in level)
            {
                for (var i = 0; i < row.Cuts; i++)
                {
                    counts[row.Setting(i)] = counts.GetValueOrDefault(row.Setting(i)) + 1;
                }
            }
        }

        return counts;
    }

    /// <summary>A part and the parts that all its cuts in one direction make, in order; and how far it is cut up.</summary>
    private sealed class Row(Rect place, bool isUpright, List<SheetPart> parts)
    {
        /// <summary>Whether its cuts run down the sheet.</summary>
        public bool IsUpright => isUpright;

        /// <summary>The parts, from the edge against the stop.</summary>
        public List<SheetPart> Parts => parts;

        /// <summary>How many cuts divide it.</summary>
        public int Cuts => parts.Count - 1;

        /// <summary>How many of its cuts are made.</summary>
        public int Done { get; private set; }

        /// <summary>Makes the next cuts that have the same setting.</summary>
        /// <param name="freed">Receives the parts that come off.</param>
        public CutRun Cut(List<SheetPart> freed)
        {
            var (from, count) = (Done, Run(Done));
            Done += count;
            freed.AddRange(parts[from..Done]);
            if (Done == Cuts)
            {
                freed.Add(parts[^1]);
            }

            return new(Rest(from), [.. Enumerable.Range(from, count).Select(CutAfter)]);
        }

        public static Row Of(SheetCut whole)
        {
            // On an explicit stack: a row of many pieces is cut many levels deep.
            var parts = new List<SheetPart>();
            var waiting = new Stack<SheetPart>([whole]);
            while (waiting.TryPop(out var part))
            {
                if (part is SheetCut cut && cut.IsUpright == whole.IsUpright)
                {
                    waiting.Push(cut.Second);
                    waiting.Push(cut.First);
                }
                else
                {
                    parts.Add(part);
                }
            }

            return new(whole.Place, whole.IsUpright, parts);
        }

        /// <summary>How far the cut at the end of a part is from its beginning.</summary>
        public Length Setting(int part) => isUpright ? parts[part].Place.Width : parts[part].Place.Height;

        /// <summary>How many cuts in a row have the setting of this one.</summary>
        public int Run(int from) => Enumerable.Range(from, Cuts - from).TakeWhile(i => Setting(i) == Setting(from)).Count();

        /// <summary>What is still in hand when all parts before this one are cut off.</summary>
        private Rect Rest(int from)
        {
            var (whole, part) = (place, parts[from].Place);
            return isUpright
                ? whole with { Left = part.Left, Width = whole.Right - part.Left }
                : whole with { Top = part.Top, Height = whole.Bottom - part.Top };
        }

        /// <summary>The cut at the end of a part.</summary>
        private Cut CutAfter(int part)
        {
            var end = parts[part].Place;
            return isUpright
                ? new(new(end.Right, end.Top), new(end.Right, end.Bottom))
                : new(new(end.Left, end.Bottom), new(end.Right, end.Bottom));
        }
    }
}
