using Sketch.Diagnostics;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class TilesTests
{
    // 18 x 12 in flat, so larger than a page in both directions.
    private const string Poster = "card \"Poster\"\nbase 9 x 12, fold left, of white\nfront\n  sun: circle 8 1/2, of mustard\n";

    private static List<TemplateBlock> Tiles(string of) =>
        [.. Printed.Of(Poster).Sheets.SelectMany(s => s.Blocks).Select(b => b.Block)
            .Where(b => b.Texts.Any(t => t.Words.StartsWith(of, StringComparison.Ordinal)
            && t.Words.Contains("tile ", StringComparison.Ordinal)))];

    private static List<Point> Crosses(TemplateBlock tile) =>
        [.. tile.Lines.Where(l => l.Name == "joining cross").Select(l => l.Bounds.Centre)];

    [Fact]
    public void A_piece_larger_than_a_page_is_split() => Assert.Equal(6, Tiles("base").Count);

    [Fact]
    public void Neighbours_share_their_crosses_at_the_same_distances()
    {
        var (left, right) = (Crosses(Tiles("base")[0]), Crosses(Tiles("base")[1]));
        var shared = left.SelectMany(a => right, (a, b) => (a, b)).Where(p => Math.Abs(p.a.Y - p.b.Y) < 1e-6)
            .GroupBy(p => Math.Round(p.a.X - p.b.X, 6));
        Assert.Contains(shared, group => group.Count() > 1);
    }

    [Fact]
    public void Tiles_joined_at_their_crosses_give_the_whole_width()
    {
        // The first row: from the left edge of the outline to the shared crosses, between them, and from there to the right edge.
        var row = Tiles("base").Take(3).ToList();
        var firstCross = Crosses(row[0]).Max(p => p.X);
        var (from, to) = (Crosses(row[1]).Min(p => p.X), Crosses(row[1]).Max(p => p.X));
        var lastCross = Crosses(row[2]).Min(p => p.X);
        Assert.Equal(18 * 25.4, firstCross + (to - from)
            + (row[2].Lines.Where(l => l.Kind == LineKind.Cut).Max(l => l.Bounds.Right) - lastCross), 4);
    }

    [Fact]
    public void Curves_end_at_the_edge_of_the_tile() => Assert.All(Tiles("sun"), tile => Assert.All(
        tile.Lines.Where(l => l.Kind == LineKind.Cut), l =>
            Assert.True(new Bounds(0, 0, tile.Width, tile.Height).Grow(1e-6).Covers(l.Bounds))));

    [Fact]
    public void Too_many_tiles_to_join_are_an_error_without_pages()
    {
        var findings = new FindingBag();
        var card = Laid.Out("card \"Banner\"\nbase 9 x 120, fold left, of white\nfront\n  strip 8 x 119, of red\n");
        Assert.Null(CardTemplates.Make([card], Printed.OnLetter, new TestWorld(), findings));
        Assert.Contains(findings.ToImmutable(), f => f.Code == "SK511");
    }
}
