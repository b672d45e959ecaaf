using System.Globalization;
using System.Text;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Supplies;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Remainder;

/// <summary>
/// Writes the stash that is left after a batch is cut: the stash file with reduced counts and updated offcuts,
/// everything else as it was written. Sheets still to buy leave nothing.
/// </summary>
public static class StashAfter
{
    /// <summary>The text of the stash; it belongs in the folder of the original, since picture names are relative to it.</summary>
    public static string Write(BatchPlan plan)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"# Written by Sketch: what is left after \"{OneLine(plan.Files.Batch.Title)}\". Save it under another name before you "
                + $"change it.\n");
        if (plan.Files.Stash is { } stash)
        {
            text.Append(new Edits(plan, stash.Location.Source).Apply());
        }
        else
        {
            text.Append(CultureInfo.InvariantCulture,
                $"stash \"After {OneLine(plan.Files.Batch.Title).Replace("\"", "\"\"", StringComparison.Ordinal)}\"\n");
        }

        if (text[^1] != '\n')
        {
            text.Append('\n');
        }

        var lengths = LengthsOf(plan);
        foreach (var paper in plan.Papers.Where(p => IsName(p.Order.Paper)))
        {
            foreach (var (size, count) in Leftovers(paper, lengths))
            {
                text.Append(CultureInfo.InvariantCulture,
                    $"offcut {paper.Order.Paper}: {Text(size.Width, lengths)} x {Text(size.Height, lengths)}, {count}\n");
            }
        }

        foreach (var need in plan.Supplies.Where(s => s.Cutting is not null))
        {
            WriteRemnants(text, need, need.Cutting!, lengths);
        }

        return text.ToString();
    }

    /// <summary>The ends of strips that are worth keeping; strips still to be bought leave none.</summary>
    private static void WriteRemnants(StringBuilder text, SupplyNeed need, StripPlan cutting, LengthFormat lengths)
    {
        var onHand = cutting.OnHand;
        var remnants = new SortedDictionary<Length, int>();
        foreach (var layout in cutting.Plan.Layouts)
        {
            var times = layout.IsOffcut ? layout.Times : Math.Min(layout.Times, onHand);
            onHand -= layout.IsOffcut ? 0 : times;
            var left = lengths.Down(cutting.Left(layout));
            if (times > 0 && left >= BatchPlan.SmallestUse)
            {
                remnants[left] = remnants.GetValueOrDefault(left) + times;
            }
        }

        foreach (var (left, times) in remnants.Reverse())
        {
            text.Append(CultureInfo.InvariantCulture,
                $"{need.Kind.Traits.Word} {need.Name}: {lengths.WithUnit(need.Measure!.Value)}, {Counted.Of(times, "strip")}, "
                    + $"{lengths.WithUnit(left)} long\n");
        }
    }

    private static LengthFormat LengthsOf(BatchPlan plan) => new(plan.Files.Batch.Units != UnitSystem.Inches);

    // Rounded down, so that what is left is never overstated; with units, whatever the units of the stash are.
    private static string Text(Length length, LengthFormat lengths) => lengths.WithUnit(lengths.Down(length));

    /// <summary>
    /// New leftovers of a paper that are worth keeping, with what its pieces free, largest first, in the sizes to be written.
    /// </summary>
    private static IEnumerable<(Size Size, int Count)> Leftovers(PaperPlan paper, LengthFormat lengths) =>
        from left in LeftOfSheets(paper).Concat(paper.Freed.Select(f => (f.Size, FreedOnHand(paper, f) - paper.Used(f))))
        where left.Item2 > 0 && Length.Min(left.Size.Width, left.Size.Height) >= BatchPlan.SmallestUse
        group left.Item2 by lengths.Down(left.Size) into same
        orderby (Int128)same.Key.Width.Nanometres * same.Key.Height.Nanometres descending, same.Key.Width.Nanometres
        select (same.Key, same.Sum());

    private static IEnumerable<(Size Size, int Count)> LeftOfSheets(PaperPlan paper) =>
        OnHand(paper).SelectMany(cut => cut.Layout.Leftovers, (cut, leftover) => (leftover.Size, cut.Times));

    /// <summary>How many rectangles come out of pieces that are cut from what is on hand.</summary>
    private static int FreedOnHand(PaperPlan paper, FreedStock freed) =>
        freed.Each * OnHand(paper).Sum(c => c.Times * c.Layout.Pieces.Count(p => p.Id == freed.From.Id));

    /// <summary>
    /// What is cut from the sheets and offcuts on hand: the last layouts of a plan are for the sheets still to be bought. Where some are,
    /// freed paper that is cut up may come from them.
    /// </summary>
    private static IEnumerable<(SheetLayout Layout, int Times)> OnHand(PaperPlan paper)
    {
        var sheets = paper.Order.Sheet.OnHand ?? int.MaxValue;
        foreach (var layout in paper.Plan.Layouts)
        {
            var times = layout.FreedBy is not null && paper.Short > 0 ? 0
                : layout.IsOffcut ? layout.Times : Math.Min(layout.Times, sheets);
            sheets -= layout.IsOffcut ? 0 : times;
            if (times > 0)
            {
                yield return (layout, times);
            }
        }
    }

    private static string OneLine(string words) => words.ReplaceLineEndings(" ");

    private static bool IsName(string paper) => paper.All(c => char.IsLetterOrDigit(c) || c is '-' or '_');

    /// <summary>Changes to the text of a stash file.</summary>
    private sealed class Edits(BatchPlan plan, SourceText source)
    {
        private readonly List<TextEdit> _edits = [];

        public string Apply()
        {
            var file = Parser.Parse(source, new FindingBag());
            var used = plan.Papers
                .SelectMany(p => p.Plan.Layouts.Where(l => l is { IsOffcut: true, FreedBy: null }),
                    (p, l) => (p.Order.Paper, l.Stock, l.Times))
                .GroupBy(o => (o.Paper, o.Stock)).ToDictionary(g => g.Key, g => g.Sum(o => o.Times));
            foreach (var line in file.Lines.SelectMany(l => l.Children.Prepend(l)).OfType<StockLine>())
            {
                if (plan.Files.Stash!.Offcuts.FirstOrDefault(o => o.Location.Span == line.Span) is { } offcut)
                {
                    Lessen(line, offcut, used);
                }
                else if (plan.Papers.FirstOrDefault(
                    p => p.Order.Stock?.Location.Span == line.Span) is { Order.Stock.Sheets: { } sheets } paper)
                {
                    Lessen(line, Counted.Of(Math.Max(0, sheets - paper.Plan.Sheets), "sheet"));
                }
                else if (plan.Supplies.FirstOrDefault(s => s.Stock.Any(x => x.Location.Span == line.Span)) is { } need)
                {
                    Lessen(line, need);
                }
            }

            return TextEdit.Apply(source.Content, _edits);
        }

        private void Lessen(StockLine line, Offcut offcut, Dictionary<(string, Size), int> used)
        {
            var key = (plan.Files.Stash!.Find(offcut.Paper)?.Name ?? offcut.Paper, offcut.Size);
            var taken = Math.Min(offcut.Count, used.GetValueOrDefault(key));
            if (taken == 0)
            {
                return;
            }

            used[key] -= taken;
            if (taken == offcut.Count)
            {
                // With its comment, up to the next line.
                var end = source.Content.IndexOf('\n', line.Span.End);
                _edits.Add(new(new(line.Span.Start, end < 0 ? source.Content.Length : end + 1), ""));
            }
            else
            {
                Lessen(line, (offcut.Count - taken).ToString(CultureInfo.InvariantCulture));
            }
        }

        private void Lessen(StockLine line, SupplyNeed need)
        {
            if (need.Kind.Traits.Count == SupplyCount.Tool)
            {
                return;
            }

            if (need.Cutting is { } cutting)
            {
                var supply = need.Stock.First(s => s.Location.Span == line.Span);
                Lessen(line, Counted.Of(StripsLeft(need, cutting, supply), supply.IsOnRolls ? "roll" : "strip"));
                return;
            }

            // If several lines list one thing, the first is used up first.
            var before = need.Stock.TakeWhile(s => s.Location.Span != line.Span).Sum(s => Amount(s, need.ByLength));
            var own = Amount(need.Stock.First(s => s.Location.Span == line.Span), need.ByLength);
            var left = own - Math.Clamp(need.Needed - before, 0, own);
            if (need.ByLength && line.Clauses.OfType<LongClause>().FirstOrDefault() is { } length)
            {
                _edits.Add(new(length.Span, Text(new Length(left), LengthsOf(plan)) + " long"));
            }
            else if (!need.ByLength)
            {
                Lessen(line, Counted.Of(left, "piece"));
            }
        }

        /// <summary>Of several lines with strips of one length the first is used up first.</summary>
        private static int StripsLeft(SupplyNeed need, StripPlan cutting, Supply supply)
        {
            var used = cutting.Plan.Layouts.Where(l => l.Stock.Width == supply.StripLength).Sum(l => l.Times);
            var before = need.Stock.TakeWhile(s => s != supply).Where(s => s.StripLength == supply.StripLength).Sum(s => s.Strips ?? 0);
            return supply.Strips!.Value - Math.Clamp(used - before, 0, supply.Strips.Value);
        }

        private static long Amount(Supply supply, bool byLength) => byLength ? supply.Long?.Nanometres ?? 0 : supply.Pieces ?? 0;

        private void Lessen(StockLine line, string count)
        {
            if (line.Clauses.OfType<QuantityClause>().FirstOrDefault() is { } quantity)
            {
                _edits.Add(new(quantity.Span, count));
            }
        }
    }
}
