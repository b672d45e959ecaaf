using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// Finds the patterns worth using: solves the linear program over the known ones, prices the pieces by it, finds the most valuable layout
/// on every stock, and repeats until none improves it. Each round also gives an exact lower bound on the sheets, in whole numbers.
/// </summary>
internal sealed class ColumnGeneration(Reduced problem, LayoutTable table, PatternPool pool)
{
    private readonly SheetBound _bound = SheetBound.For(problem, table);
    private int[] _prices = new int[problem.Kinds.Length];

    /// <summary>The prices of the last round as whole numbers, for which the bound was computed.</summary>
    public int[] Prices => _prices;

    /// <summary>Runs until no pattern has a negative reduced cost or the budget is used up.</summary>
    /// <returns>The bound, and how often the program uses each pattern, as fractions.</returns>
    public (int LowerBound, List<(Pattern Pattern, double Times)> Use) Run(int[] demand, IReadOnlyList<int?> onHand, WorkBudget work)
    {
        using var program = new PatternProgram(demand, onHand);
        foreach (var pattern in pool.Patterns)
        {
            program.Add(pattern);
        }

        var bound = 0;
        while (program.Solve(work) && !work.IsOver)
        {
            var (prices, stockPrices) = (program.Prices(), program.StockPrices());
            var scale = Scale(prices);
            _prices = [.. prices.Select(p => (int)Math.Floor(p * scale))];
            table.Fill(_prices);
            work.Spend(table.Effort);
            var found = false;
            foreach (var stock in problem.Stocks.Where(s => onHand[s.Index] is not 0))
            {
                if (table.Best(stock.Width, stock.Height) > (stockPrices[stock.Index] + 1e-7) * scale
                    && table.Tree(stock.Width, stock.Height) is { } tree
                    && new Pattern(stock, tree, problem.Kinds.Length) is var pattern
                    && pool.Add(pattern))
                {
                    program.Add(pattern);
                    found = true;
                }
            }

            if (_bound.IsShared || !found)
            {
                work.Spend(_bound.IsShared ? 0 : table.Effort);
                bound = Math.Max(bound, _bound.By(_prices, demand, onHand));
            }

            if (!found)
            {
                break;
            }
        }

        return (bound, [.. program.Use()]);
    }

    // Whole prices as fine as the table allows: no layout is worth more than its area at the highest price per area.
    private double Scale(double[] prices)
    {
        var dearest = problem.Kinds.Max(k => prices[k.Index] / k.Area);
        var area = (double)problem.Stocks.Max(s => s.Width) * problem.Stocks.Max(s => s.Height); // the rectangle that the table spans
        return dearest <= 0 ? 1 : LayoutTable.MostValue / (dearest * area);
    }
}
