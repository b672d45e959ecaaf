namespace Sketch.Cutting.Sheets;

/// <summary>A plan in whole patterns, which together hold at least the demand, except what is left out.</summary>
internal sealed record WholePlan(IReadOnlyList<(Pattern Pattern, int Times)> Uses, int Sheets, int LeftOut)
{
    public static WholePlan From(IEnumerable<(Pattern Pattern, int Times)> uses, int[] demand)
    {
        var merged = uses.Where(u => u.Times > 0).GroupBy(u => u.Pattern.Key, (_, same) => same.ToList())
            .Select(same => (same[0].Pattern, Times: same.Sum(u => u.Times))).ToList();
        var leftOut = demand.Select((wanted, kind) => Math.Max(0, wanted - merged.Sum(u => (long)u.Times * u.Pattern.Counts[kind]))).Sum();
        return new(merged, merged.Where(u => u.Pattern.Stock.IsSheet).Sum(u => u.Times), (int)leftOut);
    }

    public bool IsBetterThan(WholePlan? other) => other is null || (LeftOut, Sheets).CompareTo((other.LeftOut, other.Sheets)) < 0;
}
