using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Shapes;
using Sketch.Units;
using Xunit;
using static Sketch.Tests.Reports.SampleCard;

namespace Sketch.Tests.Reports;

public class SizeTextTests
{
    private static string Table(LaidOutCard card, LengthFormat? lengths = null) =>
        Written(o => SizeText.Write(o, SizeList.Of(card), lengths ?? card.Units.Format()));

    [Fact]
    public void The_table_reads_like_a_cutting_list() => Assert.Equal(
        """
        Fair winds
        Card A2, 4 1/4 x 5 1/2, folded on the left: cut 8 1/2 x 5 1/2, score 4 1/4 from the left. Sizes are width x height in inches.

        Piece       What   Cut            Finished      Border  Role   Paper       Count
        base        base   8 1/2 x 5 1/2                        white              1
        front
          sky/mat   mat    4 x 5 1/4                    1/16    deep   navy, back  1
          sky       panel  3 7/8 x 5 1/8                        sky    gulls       1
          sky/line  line   4 7/8 x 1/16   3 7/8 x 1/16          white              1
          sky/gem   gem                   1/8 x 1/8             white              3

        """.ReplaceLineEndings("\n"), Table(FairWinds()));

    [Fact]
    public void Sizes_can_be_in_millimetres() => Assert.Contains("101.6 x 133.35", Table(FairWinds(), new(true)));

    [Fact]
    public void Equal_parts_that_differ_by_a_nanometre_are_one_row()
    {
        var card = With([.. Enumerable.Range(0, 3).Select(i =>
            Paper($"front/panel[{i + 1}]", PieceKind.Panel, Box(default, default, Parts.Equal(Length.Inch(4), 3, i), Length.Inch(1))))]);
        Assert.Single(Table(card).Split('\n'), l => l.Contains("panel  1 5/16 + x 1"));
    }

    [Fact]
    public void Copies_of_another_paper_are_a_separate_row()
    {
        var card = With([.. Enumerable.Range(1, 4).Select(i =>
            Paper($"front/tag[{i}]", PieceKind.Tag, Sixteenths(i, 0, 8, 8), i % 2 == 0 ? Sky : Deep))]);
        Assert.Equal(2, Table(card).Split('\n').Count(l => l.TrimStart().StartsWith("tag", StringComparison.Ordinal) && l.EndsWith('2')));
    }

    [Fact]
    public void The_signs_for_sizes_off_the_mark_are_explained()
    {
        var card = With(Paper("front/panel", PieceKind.Panel, Box(default, default, Length.Millimetre(50), Length.Millimetre(50))));
        Assert.EndsWith("+ and - after a size: slightly more or less than the mark at 1/32 inch.\n", Table(card, new(false, 32)));
    }

    [Fact]
    public void An_uneven_border_shows_the_side_that_differs()
    {
        var mat = Paper("front/mat", PieceKind.Mat, Sixteenths(0, 0, 64, 64)) with
        {
            Border = new(Length.Inch(0, 1, 16), Length.Inch(0, 1, 16), Length.Inch(0, 1, 16), Length.Inch(0, 1, 2)),
        };
        Assert.Contains("1/16, bottom 1/2", Table(With(mat)));
    }

    [Fact]
    public void No_line_is_wider_than_110_columns_even_with_long_names()
    {
        var path = "front/" + string.Join('/', Enumerable.Repeat("lighthouse-keepers-lamp", 8));
        var piece = Paper(path, PieceKind.Panel, Sixteenths(1, 1, 61, 61), White with { Role = new('r', 60), Paper = new('p', 90) });
        Assert.All(Table(With(piece)).Split('\n').Skip(2), l => Assert.InRange(l.Length, 0, 110));
    }

    [Fact]
    public void A_long_path_is_shown_in_full()
    {
        var names = Enumerable.Range(0, 12).Select(i => $"keeper{i}").ToArray();
        var table = Table(With(Paper("front/" + string.Join('/', names), PieceKind.Panel, Sixteenths(1, 1, 61, 61))));
        Assert.All(names, n => Assert.Contains(n, table));
    }

    [Fact]
    public void A_narrow_column_does_not_break_fractions()
    {
        var mat = Paper("front/lighthouse/keepers/lamp/mat", PieceKind.Mat, Sixteenths(1, 1, 61, 61),
            White with { Role = "woodgrain", Paper = "harbour-boards" }) with
        {
            Border = new(Length.Inch(0, 1, 8), Length.Inch(0, 3, 8), Length.Inch(0, 1, 16), Length.Inch(0, 7, 16)),
            Words = new("May every light you see lead you home", Sketch.Shapes.Outline.Empty, White, Length.Inch(1),
                true)
            { Room = Sixteenths(1, 1, 8, 8), Height = 25.4 },
            Wrap = Insets.All(Length.Inch(0, 1, 16)),
        };
        var table = Table(With(mat));
        Assert.All(["1/8", "3/8", "1/16", "7/16", "woodgrain"], whole => Assert.Contains(whole, table));
    }

    [Fact]
    public void Words_cannot_send_commands_to_the_terminal()
    {
        var banner = Paper("front/banner", PieceKind.Banner, Sixteenths(1, 1, 8, 8)) with
        {
            Words = new("\u001b[2J", Outline.Empty, White, Length.Inch(1), true) { Room = Sixteenths(1, 1, 8, 8), Height = 25.4 },
        };
        Assert.DoesNotContain('\u001b', Table(With(banner)));
    }
}
