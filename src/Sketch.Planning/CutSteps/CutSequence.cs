using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>
/// Puts the cuts of a layout's tree into the order of work at a trimmer: the trim first, then all cuts in one direction, then all cuts in
/// the other on the resulting strips, and so on, with cuts of one setting together. Every cut still runs from edge to edge of the part in
/// hand.
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

        for (var level = new List<SheetPart> { hand }; level.Count > 0;)
        {
            var rows = level.OfType<SheetCut>().Select(Row.Of).ToList();
            AddSteps(steps, rows);
            level = [.. rows.SelectMany(r => r.Parts)];
        }

        return steps.ToImmutable();
    }

    // All rows of a level are cut in the same direction. Of the next settings of the rows, the one that is set already comes first, else
    // the one with the most cuts.
    private static void AddSteps(ImmutableArray<CutStep>.Builder steps, List<Row> rows)
    {
        var next = new int[rows.Count];
        while (true)
        {
            var best = Enumerable.Range(0, rows.Count).Where(r => next[r] < rows[r].Cuts)
                .GroupBy(r => rows[r].Setting(next[r]), r => rows[r].Run(next[r]))
                .OrderByDescending(g => steps.Count > 0 && g.Key == steps[^1].Setting)
                .ThenByDescending(g => g.Sum()).ThenByDescending(g => g.Key).FirstOrDefault();
            if (best is null)
            {
                return;
            }

            var runs = ImmutableArray.CreateBuilder<CutRun>();
            for (var r = 0; r < rows.Count; r++)
            {
                if (next[r] < rows[r].Cuts && rows[r].Setting(next[r]) == best.Key)
                {
                    var (row, from, count) = (rows[r], next[r], rows[r].Run(next[r]));
                    runs.Add(new(row.Rest(from), [.. Enumerable.Range(from, count).Select(row.CutAfter)]));
                    next[r] += count;
                }
            }

            steps.Add(new(steps.Count + 1, runs[0].IsUpright ? Edge.Left : Edge.Top, best.Key, runs.ToImmutable()));
        }
    }

    /// <summary>A part and the parts that all its cuts in one direction make, in order.</summary>
    private sealed record Row(Rect Place, bool IsUpright, List<SheetPart> Parts)
    {
        /// <summary>How many cuts divide it.</summary>
        public int Cuts => Parts.Count - 1;

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
        public Length Setting(int part) => IsUpright ? Parts[part].Place.Width : Parts[part].Place.Height;

        /// <summary>How many cuts in a row have the setting of this one.</summary>
        public int Run(int from) => Enumerable.Range(from, Cuts - from).TakeWhile(i => Setting(i) == Setting(from)).Count();

        /// <summary>What is still in hand when all parts before this one are cut off.</summary>
        public Rect Rest(int from)
        {
            var place = Parts[from].Place;
            return IsUpright
                ? Place with { Left = place.Left, Width = Place.Right - place.Left }
                : Place with { Top = place.Top, Height = Place.Bottom - place.Top };
        }

        /// <summary>The cut at the end of a part.</summary>
        public Cut CutAfter(int part)
        {
            var place = Parts[part].Place;
            return IsUpright
                ? new(new(place.Right, place.Top), new(place.Right, place.Bottom))
                : new(new(place.Left, place.Bottom), new(place.Right, place.Bottom));
        }
    }
}
