using CsCheck;
using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Xunit;

namespace Sketch.Tests.Cutting.Sheets;

/// <summary>Problems on a sheet of 12 x 12 in, and plans for them that are written down by hand.</summary>
internal static class GivenSheets
{
    public static Reduced On12(params (double Width, double Height, int Count)[] pieces) => On12(pieces, []);

    public static Reduced On12(
        (double Width, double Height, int Count)[] pieces, params (double Width, double Height, int Count)[] offcuts) =>
        Reduced.From(Given.Problem(Given.Sheet(12, 12), [.. pieces.Select(p => (Given.Inches(p.Width, p.Height), p.Count, true))])
            .With([.. offcuts.Select(o => (Given.Inches(o.Width, o.Height), o.Count))]));

    /// <summary>Random problems small enough for brute force: a few pieces and offcuts, in nanometres.</summary>
    /// <param name="sheet">The longest side of a sheet; the shortest is 4.</param>
    /// <param name="piece">The longest side of a piece.</param>
    /// <param name="offcut">The longest side of an offcut.</param>
    public static Gen<CuttingProblem> Random(int sheet, int piece, int offcut) =>
        from width in Gen.Int[4, sheet]
        from height in Gen.Int[4, sheet]
        from pieces in Gen.Select(Gen.Int[1, piece], Gen.Int[1, piece], Gen.Int[1, 2], Gen.Bool).Array[1, 3]
        from offcuts in Gen.Select(Gen.Int[1, offcut], Gen.Int[1, offcut], Gen.Int[1, 2]).Array[0, 2]
        select new CuttingProblem(
            new(new(new(width), new(height)), default), [.. offcuts.Select(o => new OffcutStock(new(new(o.Item1), new(o.Item2)), o.Item3))],
            [.. pieces.Select((p, i) => new PieceDemand($"p{i}", new(new(p.Item1), new(p.Item2)), p.Item3, p.Item4))]);

    /// <summary>A layout with pieces side by side, as their kinds.</summary>
    public static Pattern Row(this Reduced problem, Stock stock, params int[] kinds) => new(stock, kinds
        .Select(k => (CutTree)new PieceLeaf(problem.Kinds[k], problem.Kinds[k].Width, problem.Kinds[k].Height))
        .Aggregate((left, right) => new Join(SideBySide: true, left, right)), problem.Kinds.Length);

    /// <summary>The plan that cuts each piece from a sheet of its own.</summary>
    public static (Pattern Pattern, int Times)[] OneOnEach(this Reduced problem) =>
        [.. problem.Kinds.Select(k => (problem.Row(problem.Sheet, k.Index), k.Demand))];

    /// <summary>How many offcuts there are of each stock; null for sheets.</summary>
    public static int?[] OnHand(this Reduced problem) => [.. problem.Stocks.Select(s => s.OnHand)];

    /// <summary>Checks that all pieces are cut, no more offcuts are used than there are, and every layout is inside its stock.</summary>
    public static void CanBeCut(this Reduced problem, IReadOnlyList<(Pattern Pattern, int Times)> uses)
    {
        Assert.All(problem.Kinds, kind => Assert.True(uses.Sum(u => u.Times * u.Pattern.Counts[kind.Index]) >= kind.Demand));
        Assert.All(problem.Stocks.Where(s => !s.IsSheet),
            stock => Assert.True(uses.Where(u => u.Pattern.Stock == stock).Sum(u => u.Times) <= stock.OnHand));
        Assert.All(uses.Select(u => u.Pattern),
            p => Assert.True(p.Tree.Width <= p.Stock.Width && p.Tree.Height <= p.Stock.Height));
    }
}
