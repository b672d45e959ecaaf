using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;

namespace Sketch.Cutting.PostProcessing;

/// <summary>
/// Chooses among plans with the same number of sheets: fewest layouts and settings, then the largest leftover; and arranges the
/// sheets for the largest leftover.
/// </summary>
internal sealed class Leftovers
{
    private const int MostPoints = 120;
    private const int Attempts = 8;
    private const int FruitlessAttempts = 4;
    private const int SheetsAtOnce = 3;

    private static readonly double[] _moreThanLeast = [0.03, 0.1, 0.25, 0.45];

    private readonly CuttingProblem _problem;
    private readonly Reduced _reduced;
    private readonly Incumbent _incumbent;
    private readonly WorkBudget _work;
    private readonly Dictionary<string, Pattern> _rearranged = [];
    private readonly Dictionary<Pattern, double> _largest = [];
    private readonly StopSettings _settings;
    private static readonly HashSet<long> _noSettings = [];

    private Leftovers(CuttingProblem problem, Reduced reduced, Incumbent incumbent, StopSettings settings, WorkBudget work) =>
        (_problem, _reduced, _incumbent, _settings, _work) = (problem, reduced, incumbent, settings, work);

    /// <summary>The plan to carry out, with exactly the demanded pieces.</summary>
    public static List<(Pattern Pattern, int Times)> KeepWhole(
        CuttingProblem problem, Reduced reduced, Incumbent incumbent, StopSettings settings, WorkBudget work)
    {
        var leftovers = new Leftovers(problem, reduced, incumbent, settings, work);
        List<(Pattern Pattern, int Times)>? best = null;
        var largest = -1.0;
        foreach (var plan in incumbent.Alternatives)
        {
            leftovers.Better(ref best, ref largest, Surplus.Remove(plan.Uses, reduced));
        }

        if (leftovers.OnLessOfTheLastSheet(best!, largest) is { } squeezed)
        {
            leftovers.Better(ref best, ref largest, squeezed);
        }

        var fruitless = 0;
        for (var attempt = 0; attempt < Attempts && fruitless < FruitlessAttempts && !work.IsOver
            && largest < 0.95 * leftovers.FreeInAll(best!); attempt++)
        {
            var before = largest;
            if (leftovers.Refilled(best!, attempt) is { } refilled)
            {
                leftovers.Better(ref best, ref largest, refilled);
            }

            fruitless = largest > before ? 0 : fruitless + 1;
        }

        return [.. best!.Select(u => (leftovers.Rearranged(u.Pattern), u.Times))];
    }

    private void Better(ref List<(Pattern Pattern, int Times)>? best, ref double largest, List<(Pattern Pattern, int Times)> uses)
    {
        var order = best is null ? -1 : Work(uses).CompareTo(Work(best));
        if (order > 0)
        {
            return;
        }

        var here = _work.IsOver ? 0 : Largest(uses, order < 0 ? 0 : largest);
        if (order < 0 || here > largest)
        {
            (best, largest) = (uses, here);
        }
    }

    // Sheets cut alike are one layout. To change to another one is as much work as two settings.
    private int Work(List<(Pattern Pattern, int Times)> uses) =>
        uses.Select(u => u.Pattern).DistinctBy(p => p.Key).Sum(p => 2 + (_work.IsOver ? 0 : _settings.Of(p)));

    // All but one sheet unchanged, and only a strip of the last one: hardly more than the linear program uses of it, if possible, else
    // a wider one.
    private List<(Pattern Pattern, int Times)>? OnLessOfTheLastSheet(List<(Pattern Pattern, int Times)> uses, double largest)
    {
        var sheet = _reduced.Sheet;
        var sheets = uses.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times);
        var least = Math.Max(0, _incumbent.Fractional - (sheets - 1));
        foreach (var used in _moreThanLeast.Select(more => least + more))
        {
            var strip = new Stock(_reduced.Stocks.Length, sheet.Width, (long)(used * sheet.Height), 1);
            // A stopped search would still make plain plans for the strip, which takes as long as all that is left to do.
            if (sheets == 0 || _incumbent.Best!.LeftOut > 0 || _work.Cancellation.IsCancellationRequested
                || (sheet.Height - strip.Height) * (double)sheet.Width <= largest + 0.05 * sheet.Width * sheet.Height)
            {
                return null;
            }

            if (SheetSearch.TryWithin(
                _reduced with { Stocks = [.. _reduced.Stocks, strip] }, sheets - 1, _incumbent.Pool.Patterns, _work) is { } plan)
            {
                return Surplus.Remove([.. plan.Uses.Select(
                    u => (u.Pattern.Stock == strip ? new(sheet, u.Pattern.Tree, _reduced.Kinds.Length) : u.Pattern, u.Times))], _reduced);
            }
        }

        return null;
    }

    // Empties a few sheets, always including the emptiest, and refills them one after the other, so that the free area collects on
    // the last.
    private List<(Pattern Pattern, int Times)>? Refilled(List<(Pattern Pattern, int Times)> uses, int attempt)
    {
        var sheets = uses.Where(u => u.Pattern.Stock.IsSheet).OrderByDescending(u => Free(u.Pattern))
            .ThenBy(u => u.Pattern.Key, StringComparer.Ordinal).ToList();
        var others = sheets.Count - 1;
        var emptied = sheets.Take(1)
            .Concat(Enumerable.Range(0, Math.Min(others, SheetsAtOnce - 1))
            .Select(i => sheets[1 + (i + attempt / 2 * (SheetsAtOnce - 1)) % others])).ToList();
        var wanted = new int[_reduced.Kinds.Length];
        foreach (var (pattern, _) in emptied)
        {
            for (var kind = 0; kind < wanted.Length; kind++)
            {
                wanted[kind] += pattern.Counts[kind];
            }
        }

        int?[] onHand = [.. _reduced.Stocks.Select(
            s => s.IsSheet ? null : s.OnHand - uses.Where(u => u.Pattern.Stock == s).Sum(u => u.Times))];
        var worth = _incumbent.Worth(k => k.Area * (attempt % 2 == 0 ? 1 : 1 + 0.2 * Noise(attempt, k.Index)));
        var filled = new SequentialFill(_reduced).Run(wanted, onHand, worth, emptied.Count, _work);
        if (filled.Sum(u => u.Pattern.Counts.Sum() * u.Times) < wanted.Sum())
        {
            return null;
        }

        return [.. uses.Select(u => (u.Pattern, u.Times - (emptied.Contains(u) ? 1 : 0))).Where(u => u.Item2 > 0).Concat(filled)
            .GroupBy(u => u.Pattern.Key, (_, same) => (same.First().Pattern, same.Sum(u => u.Item2)))];
    }

    // Between 0 and 1, the same in every run.
    private static double Noise(int attempt, int kind) => ((attempt * 2_654_435_761L + kind * 40_503L + 12_345) % 1_000_003) / 1_000_003.0;

    private double FreeInAll(List<(Pattern Pattern, int Times)> uses) =>
        uses.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times * Free(u.Pattern));

    private double Largest(List<(Pattern Pattern, int Times)> uses, double toBeat)
    {
        var largest = 0.0;
        foreach (var (pattern, _) in uses.Where(u => u.Pattern.Stock.IsSheet).OrderByDescending(u => Free(u.Pattern)))
        {
            if (Free(pattern) < Math.Max(largest, toBeat))
            {
                break;
            }

            largest = Math.Max(largest, LargestIn(Rearranged(pattern)));
        }

        return largest;
    }

    private double Free(Pattern pattern) =>
        (double)pattern.Stock.Width * pattern.Stock.Height - _reduced.Kinds.Sum(k => pattern.Counts[k.Index] * k.Area);

    // The same pieces in the layout that leaves the largest part.
    private Pattern Rearranged(Pattern pattern)
    {
        var stock = pattern.Stock;
        if (_work.IsOver || Free(pattern) < 0.1 * stock.Width * stock.Height)
        {
            return pattern;
        }

        if (!_rearranged.TryGetValue(pattern.Key, out var best))
        {
            var worth = _reduced.Kinds.Select(_ => 1).ToArray();
            best = LimitedTable.Smallest(stock.Width, stock.Height, _reduced.Kinds, worth, pattern.Counts, MostPoints, _work)
                .Select(tree => new Pattern(stock, tree, _reduced.Kinds.Length)).Prepend(pattern).MaxBy(LargestIn)!;
            _rearranged[pattern.Key] = best;
        }

        return best;
    }

    private double LargestIn(Pattern pattern)
    {
        if (!_largest.TryGetValue(pattern, out var largest))
        {
            var part = CutOrder.For(pattern.Tree, pattern.Stock.Width, pattern.Stock.Height, _problem.Kerf.Nanometres,
                _problem.SmallestUse.Nanometres, _noSettings);
            largest = _largest[pattern] = Largest(part);
        }

        return largest;
    }

    private double Largest(Part part) => part.InOrder()
        .Where(p => p is LeftoverPart && Math.Min(p.Width, p.Height) - _problem.Kerf.Nanometres >= _problem.SmallestUse.Nanometres)
        .Select(p => (double)p.Width * p.Height).DefaultIfEmpty().Max();
}
