using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>Fills one stock after the other, offcuts first, each with the most valuable layout of the pieces still wanted.</summary>
internal sealed class SequentialFill(Reduced problem)
{
    private const int MostPoints = 200;

    private readonly FirstFit _firstFit = new(problem);

    /// <summary>
    /// Fills until nothing is wanted, nothing fits any more, or <paramref name="most"/> sheets are used. When the budget is used up, the
    /// rest is placed by first fit.
    /// </summary>
    public List<(Pattern Pattern, int Times)> Run(int[] demand, IReadOnlyList<int?> onHand, int[] worth, int most, WorkBudget work)
    {
        var wanted = demand.ToArray();
        var uses = new List<(Pattern Pattern, int Times)>();
        int?[] stocks = [.. onHand];
        var sheets = 0;
        foreach (var stock in problem.Stocks.Where(s => !s.IsSheet).Append(problem.Sheet))
        {
            var left = onHand[stock.Index] ?? int.MaxValue;
            while (left > 0 && wanted.Any(w => w > 0) && sheets < most && !work.IsOver)
            {
                if (LimitedTable.Best(stock.Width, stock.Height, problem.Kinds, worth, wanted, MostPoints, work) is not { } tree)
                {
                    break;
                }

                var pattern = new Pattern(stock, tree, problem.Kinds.Length);
                var times = Math.Min(left, Enumerable.Range(0, wanted.Length).Where(k => pattern.Counts[k] > 0)
                    .Min(k => wanted[k] / pattern.Counts[k]));
                times = stock.IsSheet ? Math.Min(times, most - sheets) : times;
                uses.Add((pattern, times));
                left -= times;
                stocks[stock.Index] -= times;
                sheets += stock.IsSheet ? times : 0;
                for (var kind = 0; kind < wanted.Length; kind++)
                {
                    wanted[kind] -= times * pattern.Counts[kind];
                }
            }
        }

        if (work.IsOver && wanted.Any(w => w > 0) && sheets < most)
        {
            uses.AddRange(_firstFit.OnShelves(wanted, stocks));
        }

        return uses;
    }
}
