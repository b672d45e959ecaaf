using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Makes whole plans from the fractions of the linear program: whole parts are kept, and the remaining demand is filled again and
/// again with higher values for pieces that lay on wasteful sheets (sequential value correction: Mukhacheva and Zalgaller 1993).
/// </summary>
internal sealed class Rounding(Reduced problem, Incumbent incumbent, WorkBudget work)
{
    private readonly SequentialFill _fill = new(problem);
    private readonly FirstFit _firstFit = new(problem);

    /// <summary>
    /// Offers a plan at once, even if the budget is used up: the whole parts, then those next to being whole as long as they hold no more
    /// than is wanted, and the rest by first fit.
    /// </summary>
    public void RunAtOnce(IReadOnlyList<(Pattern Pattern, double Times)> use)
    {
        var kept = use.Select(u => (u.Pattern, Times: (int)Math.Floor(u.Times + 1e-6))).Where(u => u.Times > 0).ToList();
        var (wanted, onHand) = Remaining(kept);
        foreach (var (pattern, _) in use.OrderByDescending(u => u.Times - Math.Floor(u.Times + 1e-6)))
        {
            if (onHand[pattern.Stock.Index] is not <= 0 && pattern.Counts.Zip(wanted).All(c => c.First <= c.Second))
            {
                kept.Add((pattern, 1));
                (wanted, onHand) = Remaining(kept);
            }
        }

        incumbent.Offer([.. kept, .. _firstFit.OnShelves(wanted, onHand)]);
        if (!work.IsOver && _firstFit.InParts(wanted, onHand, work) is { } rest)
        {
            incumbent.Offer([.. kept, .. rest]);
        }
    }

    /// <summary>Offers plans, keeping ever fewer of the whole parts.</summary>
    /// <param name="use">The program's solution.</param>
    /// <param name="prices">Its prices of the pieces.</param>
    /// <param name="back">How many copies of each pattern to give back, at most.</param>
    /// <param name="rounds">How often to correct the values of pieces.</param>
    public void Run(IReadOnlyList<(Pattern Pattern, double Times)> use, int[] prices, int back, int rounds)
    {
        for (var giveBack = 0; giveBack <= back && !incumbent.IsSettled && !work.IsOver; giveBack++)
        {
            var kept = use.Select(u => (u.Pattern, Times: Math.Max(0, (int)Math.Floor(u.Times + 1e-6) - giveBack))).Where(u => u.Times > 0)
                .ToList();
            var (wanted, onHand) = Remaining(kept);
            if (wanted.All(w => w == 0))
            {
                incumbent.Offer(kept);
            }
            else
            {
                FillUp(kept, wanted, onHand, prices, rounds);
            }
        }
    }

    /// <summary>
    /// Keeps whole parts, or the pattern nearest to being whole, and solves the linear program for the remaining demand with new patterns,
    /// until nothing remains or the bound shows that no better plan can follow (diving).
    /// </summary>
    public void Dive(ColumnGeneration generation, IReadOnlyList<(Pattern Pattern, double Times)> use, int back)
    {
        var kept = use.Select(u => (u.Pattern, Times: Math.Max(0, (int)Math.Floor(u.Times + 1e-6) - back))).Where(u => u.Times > 0)
            .ToList();
        while (!incumbent.IsSettled && !work.IsOver)
        {
            var (wanted, onHand) = Remaining(kept);
            if (wanted.All(w => w == 0))
            {
                incumbent.Offer(kept);
                return;
            }

            var (bound, part) = generation.Run(wanted, onHand, work);
            if (part.Count == 0 || (incumbent.Best!.LeftOut == 0
                && bound + kept.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times) >= incumbent.Best.Sheets))
            {
                return;
            }

            FillUp(kept, wanted, onHand, generation.Prices, 1);
            var whole = part.Select(u => (u.Pattern, Times: (int)Math.Floor(u.Times + 1e-6))).Where(u => u.Times > 0).ToList();
            kept.AddRange(whole.Count > 0 ? whole : [(part.MaxBy(u => u.Times).Pattern, 1)]);
        }
    }

    private (int[] Wanted, int?[] OnHand) Remaining(List<(Pattern Pattern, int Times)> kept)
    {
        var wanted = problem.Demand;
        int?[] onHand = [.. problem.Stocks.Select(s => s.OnHand)];
        foreach (var (pattern, times) in kept)
        {
            onHand[pattern.Stock.Index] -= times;
            for (var kind = 0; kind < wanted.Length; kind++)
            {
                wanted[kind] = Math.Max(0, wanted[kind] - times * pattern.Counts[kind]);
            }
        }

        return (wanted, onHand);
    }

    private void FillUp(List<(Pattern Pattern, int Times)> kept, int[] wanted, int?[] onHand, int[] prices, int rounds)
    {
        var keptSheets = kept.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times);
        var worth = problem.Kinds.Select(k => k.Area).ToArray();
        for (var round = 0; round < rounds && !incumbent.IsSettled && !work.IsOver; round++)
        {
            var most = incumbent.Best!.LeftOut > 0 ? int.MaxValue : incumbent.Best.Sheets - keptSheets;
            var uses = _fill.Run(wanted, onHand, incumbent.Worth(k => worth[k.Index]), most, work);
            incumbent.Offer([.. kept, .. uses]);
            if (round == 0)
            {
                var dearest = Math.Max(1, prices.Max());
                worth = [.. problem.Kinds.Select(k => prices[k.Index] + 0.01 * dearest * k.Area / problem.Kinds[0].Area)];
            }
            else
            {
                worth = round == 1 ? [.. problem.Kinds.Select(k => k.Area)] : worth;
                Correct(worth, uses);
            }
        }
    }

    // The area that a piece really uses: its own, and its share of the waste on its sheets.
    private void Correct(double[] worth, List<(Pattern Pattern, int Times)> uses)
    {
        var (taken, count) = (new double[worth.Length], new long[worth.Length]);
        foreach (var (pattern, times) in uses)
        {
            var filled = problem.Kinds.Sum(k => pattern.Counts[k.Index] * k.Area);
            var share = (double)pattern.Stock.Width * pattern.Stock.Height / filled;
            foreach (var kind in problem.Kinds)
            {
                taken[kind.Index] += (double)times * pattern.Counts[kind.Index] * kind.Area * share;
                count[kind.Index] += (long)times * pattern.Counts[kind.Index];
            }
        }

        for (var kind = 0; kind < worth.Length; kind++)
        {
            worth[kind] = count[kind] == 0 ? worth[kind] * 1.1 : (worth[kind] + taken[kind] / count[kind]) / 2;
        }
    }
}
