using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

public class PublishedOptimaTests
{
    public static TheoryData<string, bool> UnlimitedNames =>
        [.. PublishedSheet.Unlimited1985.SelectMany(s => new TheoryDataRow<string, bool>[] { new(s.Name, false), new(s.Name, true) })];

    public static TheoryData<string> LimitedNames => [.. PublishedSheet.Limited1977.Concat(PublishedSheet.Limited1985).Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(UnlimitedNames))]
    public void The_most_valuable_layout_with_unlimited_copies_is_the_published_one(string name, bool mayTurn)
    {
        var sheet = PublishedSheet.Unlimited1985.Single(s => s.Name == name);
        var kinds = Kinds(sheet, mayTurn);
        var table = new LayoutTable(
            CutPoints.For(kinds.SelectMany(k => k.Ways().Select(w => (w.Width, k.Demand))), sheet.Width, int.MaxValue),
            CutPoints.For(kinds.SelectMany(k => k.Ways().Select(w => (w.Height, k.Demand))), sheet.Height, int.MaxValue),
            kinds);
        table.Fill([.. sheet.Pieces.Select(p => p.Worth)]);
        Assert.Equal(mayTurn ? sheet.BestTurned : sheet.Best, table.Best(sheet.Width, sheet.Height));
    }

    [Fact]
    public void A_layout_read_from_the_table_has_the_value_in_the_table()
    {
        var sheet = PublishedSheet.Unlimited1985[7];
        var kinds = Kinds(sheet, mayTurn: true);
        var points = CutPoints.For(kinds.SelectMany(k => k.Ways().Select(w => (w.Width, k.Demand))), sheet.Width, int.MaxValue);
        var table = new LayoutTable(points, points, kinds);
        table.Fill([.. sheet.Pieces.Select(p => p.Worth)]);
        var counts = new int[kinds.Length];
        var tree = table.Tree(sheet.Width, sheet.Height)!;
        tree.Count(counts);
        Assert.Equal((sheet.BestTurned, true),
            (counts.Zip(sheet.Pieces, (c, p) => c * p.Worth).Sum(), tree.Width <= sheet.Width && tree.Height <= sheet.Height));
    }

    [Theory]
    [MemberData(nameof(LimitedNames))]
    public void The_most_valuable_layout_with_limited_copies_is_the_published_one(string name)
    {
        var sheet = PublishedSheet.Limited1977.Concat(PublishedSheet.Limited1985).Single(s => s.Name == name);
        Assert.Equal((sheet.Best, sheet.Best), BestLimited(sheet, mayTurn: false));
    }

    [Fact]
    public void With_turns_cgcut1_is_worth_260()
    {
        var sheet = PublishedSheet.Limited1977[0];
        Assert.Equal((sheet.BestTurned!.Value, sheet.BestTurned.Value), BestLimited(sheet, mayTurn: true));
    }

    private static (long Worth, long Most) BestLimited(PublishedSheet sheet, bool mayTurn)
    {
        var (_, worth, most) = LimitedLayout.Best(
            sheet.Width, sheet.Height, Kinds(sheet, mayTurn), [.. sheet.Pieces.Select(p => p.Worth)], 200_000_000,
                TestContext.Current.CancellationToken);
        return (worth, most);
    }

    private static Kind[] Kinds(PublishedSheet sheet, bool mayTurn) =>
        [.. sheet.Pieces.Select((p, i) => new Kind(i, p.Width, p.Height, mayTurn, p.Copies))];
}
