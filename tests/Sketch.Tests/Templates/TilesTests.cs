using System.Xml.Linq;
using Sketch.Diagnostics;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using SkiaSharp;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class TilesTests
{
    // 18 x 12 in flat, so larger than a page in both directions.
    private const string Poster = "card \"Poster\"\nbase 9 x 12, fold left, of white\nfront\n  sun: circle 8 1/2, of mustard\n";

    private static List<TemplateBlock> Tiles(string of) => TilesOf(Printed.Of(Poster), of);

    private static List<TemplateBlock> TilesOf(CardTemplates templates, string of) =>
        [.. templates.Sheets.SelectMany(s => s.Blocks).Select(b => b.Block)
            .Where(b => b.Texts.Any(t => t.Words.StartsWith(of, StringComparison.Ordinal)
            && t.Words.Contains("tile ", StringComparison.Ordinal)))];

    private static List<Point> Crosses(TemplateBlock tile) =>
        [.. tile.Lines.Where(l => l.Name == "joining cross").Select(l => l.Bounds.Centre)];

    [Fact]
    public void A_piece_larger_than_a_page_is_split() => Assert.Equal(6, Tiles("base").Count);

    [Fact]
    public void A_piece_is_turned_where_that_takes_fewer_tiles() => Assert.Equal(4, TilesOf(
        Printed.Of(
            "card \"Wide\"\nunits mm\nbase 210 x 297, fold left, of white\nfront\n  star 60, of red\n",
            new TemplateOptions(PageFormat.A4, PrinterScale.True)),
        "base").Count);

    [Fact]
    public void Every_tile_says_how_to_join_it() => Assert.All(Tiles("base"), tile => Assert.Contains(
        tile.Texts, t => t.Words.Replace(" / ", " ", StringComparison.Ordinal)
            .Contains("lay each cross on the same cross", StringComparison.Ordinal)));

    [Fact]
    public void Words_on_the_edge_of_a_tile_move_into_one()
    {
        var words = Tiles("base").SelectMany(t => t.Texts).Select(t => t.Words).ToList();
        Assert.Contains("grain", words);
        Assert.Contains("front, score this side", words);
    }

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
    public void A_window_that_lies_within_a_tile_keeps_all_its_sides()
    {
        var pages = Printed.Of("card \"Wide\"\nbase 9 x 12, fold left, of white\nfront\n  window 2 x 2, top 3, left 1/2\n");
        AssertDrawnWhole(pages);
        Assert.Contains(
            pages.Sheets.SelectMany(s => s.Blocks).SelectMany(b => b.Block.Lines).Where(l => l.IsClosed).SelectMany(l => l.Contours),
            c => new Outline([c]).Bounds is { Width: > 50.7 and < 50.9, Height: > 50.7 and < 50.9 });
    }

    [Fact]
    public void Every_line_of_every_sample_is_drawn_whole() => Assert.All(Printed.HollowSampleTemplates(), AssertDrawnWhole);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Tiles_put_together_draw_every_line_of_the_whole(int seed)
    {
        var templates = Printed.Of(WideCard(seed));
        AssertDrawnWhole(templates);
        var tiles = TilesOf(templates, "base");
        Assert.Equal(6, tiles.Count);
        var lefts = new double[3];
        for (var i = 1; i < 3; i++)
        {
            lefts[i] = lefts[i - 1] + Crosses(tiles[i - 1]).Max(c => c.X) - Crosses(tiles[i]).Min(c => c.X);
        }

        double[] tops = [0, Crosses(tiles[0]).Max(c => c.Y) - Crosses(tiles[3]).Min(c => c.Y)];
        var drawn = tiles.SelectMany((t, i) => t.Shift(lefts[i % 3], tops[i / 3]).Lines.Where(l => l.Kind == LineKind.Cut))
            .SelectMany(Stretch.Of).ToList();
        var whole = TemplateLine.Around(LineKind.Cut, "whole", templates.Pieces[0].Outline);
        Assert.DoesNotContain(Stretch.Of(whole), s => !drawn.Exists(d => d.DistanceTo(s.Middle) < 0.1));
    }

    private static string WideCard(int seed)
    {
        var random = new Random(seed);
        return "card \"Wide\"\nbase 11 x 13, fold left, of white\nfront\n" + string.Concat(Enumerable.Range(0, 6).Select(i =>
            $"  window {(random.Next(2) == 0 ? "circle 1 3/4" : $"{random.Next(1, 9)}/4 x 2")}, "
                + $"left {i % 2 * 5 + random.Next(1, 8) / 4.0}, top {i / 2 * 4 + random.Next(1, 7) / 4.0}\n"));
    }

    /// <summary>Each page draws as much of each kind of line as its sheet holds, closing edges included.</summary>
    private static void AssertDrawnWhole(CardTemplates templates)
    {
        foreach (var (page, sheet) in templates.Pages.Zip(templates.Sheets))
        {
            var groups = XDocument.Parse(page.Shapes).Root!.Elements().ToDictionary(g => (string?)g.Attribute("id") ?? "");
            foreach (var kind in new[] { LineKind.Cut, LineKind.Place })
            {
                var lines = sheet.Blocks.SelectMany(b => b.Block.Lines).Where(l => l.Kind == kind).ToList();
                var paths = lines.Count == 0 ? [] : groups[kind.ToString().ToLowerInvariant()].Elements();
                var drawn = paths.Select(p => (string)p.Attribute("d")!);
                var length = lines.SelectMany(Stretch.Of).Sum(s => s.Length);
                // Chords are a little shorter than their curve.
                Assert.Equal(length, drawn.Sum(PathLength), 0.5 + length * 0.004);
            }
        }
    }

    private static double PathLength(string data)
    {
        using var path = SKPath.ParseSvgPathData(data);
        using var contours = new SKPathMeasure(path);
        var length = 0.0;
        do
        {
            length += contours.Length;
        }
        while (contours.NextContour());
        return length;
    }

    [Fact]
    public void Too_many_tiles_to_join_are_an_error_without_pages()
    {
        var findings = new FindingBag();
        var card = Laid.Out("card \"Banner\"\nbase 9 x 120, fold left, of white\nfront\n  strip 8 x 119, of red\n");
        Assert.Null(CardTemplates.Make([card], Printed.OnLetter, new TestWorld(), findings));
        Assert.Contains(findings.ToImmutable(), f => f.Code == "SK511");
    }
}
