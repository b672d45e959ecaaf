using Sketch.Cutting.Sheets;

namespace Sketch.Cutting.PostProcessing;

/// <summary>Removes from a plan what exceeds the demand.</summary>
internal static class Surplus
{
    /// <summary>
    /// The same sheets with exactly the demanded pieces. As much as possible is removed from the same sheets, the emptiest first, so that
    /// the freed area lies together; a sheet or offcut without pieces is not used.
    /// </summary>
    public static List<(Pattern Pattern, int Times)> Remove(IReadOnlyList<(Pattern Pattern, int Times)> uses, Reduced problem)
    {
        var surplus = problem.Kinds.Select(k => Math.Max(0, uses.Sum(u => (long)u.Times * u.Pattern.Counts[k.Index]) - k.Demand)).ToArray();
        var result = new List<(Pattern Pattern, int Times)>();
        foreach (var (pattern, times) in uses.OrderByDescending(u => u.Pattern.Stock.IsSheet).ThenBy(u => Filled(u.Pattern, problem))
            .ThenBy(u => u.Pattern.Key, StringComparer.Ordinal))
        {
            var left = times;
            while (left > 0)
            {
                var drop = pattern.Counts.Select((count, kind) => (int)Math.Min(count, surplus[kind])).ToArray();
                var dropped = Enumerable.Range(0, drop.Length).Where(k => drop[k] > 0).ToList();
                var alike = dropped.Count == 0 ? left : (int)Math.Min(left, dropped.Min(k => surplus[k] / drop[k]));
                foreach (var kind in dropped)
                {
                    surplus[kind] -= (long)alike * drop[kind];
                }

                if (dropped.Count == 0)
                {
                    result.Add((pattern, alike));
                }
                else if (pattern.Tree.Without(drop) is { } tree)
                {
                    result.Add((new(pattern.Stock, tree, problem.Kinds.Length), alike));
                }

                left -= alike;
            }
        }

        return result;
    }

    private static double Filled(Pattern pattern, Reduced problem) =>
        problem.Kinds.Sum(k => pattern.Counts[k.Index] * k.Area) / ((double)pattern.Stock.Width * pattern.Stock.Height);
}
