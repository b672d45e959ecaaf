using Sketch.Shapes;
using Sketch.Tests.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Rows that interlock, so that all neighbours are equally far apart (hexagonal packing, standard geometry).</summary>
public sealed class HoneycombTests
{
    private static Point[] Middles(string pieces, string path) =>
        [.. Laid.OnA2(pieces).Pieces.Where(p => p.Path.WithoutCopies.ToString() == path).Select(p => p.Outline.Bounds.Centre)];

    [Fact]
    public void All_neighbours_are_as_far_apart_as_those_in_a_row()
    {
        // Three tiles of 1/2 in and a gap of 1/16 in: their middles are 9/16 in apart, in a row and from row to row.
        var middles = Middles("  6 tile 1/2, in a honeycomb 3 across, gap 1/16, of gold\n", "front/tile");
        const double apart = 25.4 * 9 / 16;
        (int, int)[] neighbours = [(0, 1), (1, 2), (3, 4), (4, 5), (0, 3), (1, 3), (1, 4), (2, 4), (2, 5)];
        Assert.All(neighbours, n => Assert.Equal(apart, Drawn.Distance(middles[n.Item1], middles[n.Item2]), 1e-5));
    }

    [Fact]
    public void Tiles_of_two_rows_have_the_same_gap_between_them_as_tiles_of_one_row()
    {
        var tiles = Laid.OnA2("  4 tile 1/2, in a honeycomb 2 across, gap 1/16, of gold\n").Pieces.Select(p => p.Outline).ToList();
        Assert.Equal(4, Outline.Union(tiles).Contours.Length);
        // Grown by a little less than half of the gap they stay apart, by a little more they all join.
        Assert.Equal(4, Outline.Union([.. tiles.Select(t => t.Grow(25.4 / 32 - 0.02))]).Contours.Count(c => c.SignedArea > 0));
        Assert.Equal(1, Outline.Union([.. tiles.Select(t => t.Grow(25.4 / 32 + 0.02))]).Contours.Count(c => c.SignedArea > 0));
    }

    [Fact]
    public void The_number_of_rows_may_be_written()
    {
        var card = Laid.OnA2("  circle 1, in a honeycomb 2 x 2, of gold\n");
        // The block is 2 1/2 in wide and 1 + sqrt(3)/2 in high, in the middle of 4 1/4 x 5 1/2.
        Assert.Equal(25.4 * (5.5 - 1 - Math.Sqrt(0.75)) / 2, card.Piece("front/circle[1]").Box.Top.Millimetres, 1e-5);
        Assert.Equal(25.4 * (7.0 / 8 + 0.5), card.Piece("front/circle[3]").Box.Left.Millimetres, 1e-5);
        Assert.Equal(25.4 * Math.Sqrt(0.75), (card.Piece("front/circle[3]").Box.Top - card.Piece("front/circle[1]").Box.Top).Millimetres,
            1e-5);
    }

    [Fact]
    public void A_single_row_is_a_row() =>
        Assert.Equal(Middles("  3 tile 1/2, in a row, gap 1/8, of gold\n", "front/tile"),
            Middles("  3 tile 1/2, in a honeycomb 5 across, gap 1/8, of gold\n", "front/tile"));

    [Fact]
    public void Copies_without_a_size_share_the_room()
    {
        var card = Laid.OnA2("  4 panel, in a honeycomb 2 across, gap 1/4, of gold\n");
        Assert.Equal(Length.Zero, card.Piece("front/panel[1]").Box.Left);
        Assert.Equal(Length.Inch(4, 1, 4).Millimetres, card.Piece("front/panel[4]").Box.Right.Millimetres, 1e-5);
        Assert.Equal(Length.Inch(5, 1, 2).Millimetres, card.Piece("front/panel[4]").Box.Bottom.Millimetres, 1e-5);
    }

    [Theory]
    [InlineData("spread", "write gap 1/16")]
    [InlineData("step right 1/8", "write gap 1/16")]
    [InlineData("gap 1/8 x 1/4", "has one gap all round")]
    public void Clauses_that_a_honeycomb_cannot_keep_are_reported(string clause, string hint)
    {
        var compilation = Compiler.Compile(
            new("card.card", $"card \"Test\"\nbase A2, of white\nfront\n  6 tile 1/2, in a honeycomb 3 across, {clause}, of gold\n"),
            new TestWorld());
        Assert.Contains(compilation.Findings, f => f.Code == "SK116" && f.Hint!.Contains(hint, StringComparison.Ordinal));
    }

    [Fact]
    public void A_honeycomb_that_is_too_small_says_so() =>
        Assert.Contains(Compiler.Compile(new("card.card",
            "card \"Test\"\nbase A2, of white\nfront\n  6 tile 1/2, in a honeycomb 2 x 2, of gold\n"), new TestWorld()).Findings,
            f => f.Code == "SK310" && f.Message == "A honeycomb of 2 x 2 does not hold 6 copies.");
}
