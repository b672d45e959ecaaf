using Sketch.Output.Folders;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>The boxes of words that are not set in plain straight lines.</summary>
public class LetteringLayoutTests
{
    [Fact]
    public void Words_on_a_circle_take_its_room_with_letters_all_round() =>
        Laid.OnA2("  text \"ahoy\", on circle 2, letters 1/4").HasSize("front/text", "2 5/8 x 2 5/8");

    [Fact]
    public void A_size_beside_a_circle_has_no_effect() => Assert.Contains(Found("text 3 wide \"ahoy\", on circle 2"),
        f => f.Contains("has no effect", StringComparison.Ordinal));

    [Fact]
    public void Words_longer_than_the_circle_are_answered_with_one_that_is_large_enough() =>
        // Thirty characters of 0.8 capitals of 1/4 in are 6 in long; 6 / pi is 1.91 in.
        Assert.Contains(Found("text \"abcdefghijklmnopqrstuvwxyzabcd\", on circle 1, letters 1/4"),
            f => f.Contains("on circle 1 15/16 in", StringComparison.Ordinal));

    [Fact]
    public void Several_lines_are_not_bent() => Assert.Contains(Found("text \"ahoy\" \"there\", arched 60"),
        f => f.Contains("cannot be bent together", StringComparison.Ordinal));

    [Theory]
    [InlineData("ranged left", 0)]
    [InlineData("ranged right", 1)]
    public void Ranged_lines_share_an_edge(string clause, int side)
    {
        var lines = Laid.OnA2($"  text \"ahoy\" \"there keeper\", letters 1/4, {clause}").Piece("front/text").Outline.Contours;
        var edges = lines.Select(c => side == 0 ? c.Bounds.Left : c.Bounds.Right).ToList();
        var extreme = side == 0 ? edges.Min() : edges.Max();
        Assert.Equal(2, edges.Count(e => Math.Abs(e - extreme) < 0.001));
    }

    [Theory]
    [InlineData("base A2", "1/2", 0.8 * 4 * 12.7 + 2 * 3.175, 12.7 + 2 * 3.175)]
    [InlineData("units mm\nbase ISO A6", "10", 0.8 * 4 * 10 + 2 * 3, 10 + 2 * 3)]
    public void A_sentiment_has_an_eighth_of_an_inch_or_three_millimetres_of_paper_around(
        string lines, string letters, double width, double height)
    {
        var card = Laid.Out($"card \"Test\"\n{lines}, of white\nfront\n  sentiment \"ahoy\", letters {letters}, of red\n");
        var box = card.Piece("front/sentiment").Box;
        Assert.Equal(width, box.Width.Millimetres, 0.0001);
        Assert.Equal(height, box.Height.Millimetres, 0.0001);
    }

    /// <summary>The ink is that of the tool's own font, in which y and p have descenders and the capitals end at the baseline.</summary>
    [Theory]
    [InlineData("HIT", false)]
    [InlineData("typ", true)]
    public void A_frame_around_text_lies_outside_the_descenders(string words, bool hasDescenders)
    {
        var card = Laid.Out($"card \"x\"\nbase A2, fold left, of white\nfront\n  wish: text \"{words}\", letters 1/2, of navy\n"
            + "  frame 1/8, around wish, of red\n", new MemoryFiles());
        var (frame, wish) = (card.Piece("front/frame").Box, card.Piece("front/wish"));
        var ink = wish.Outline.Bounds;
        var middle = (wish.Box.Top.Millimetres + wish.Box.Bottom.Millimetres) / 2;
        var reach = Math.Max(ink.Bottom - middle, middle - ink.Top);
        Assert.Equal(hasDescenders, reach > wish.Box.Height.Millimetres / 2 + 1);
        Assert.Equal((Math.Max(reach, wish.Box.Height.Millimetres / 2) + 3.175) * 2, frame.Height.Millimetres, 0.001);
    }

    [Fact]
    public void A_frame_around_text_takes_the_width_of_its_ink() =>
        // Four characters of 0.8 capitals of 1/2 in, and 1/8 on each side.
        Laid.OnA2("  wish: text \"ahoy\", letters 1/2, of navy\n  frame 1/8, around wish, of red").HasSize("front/frame", "1 17/20 x 3/4");

    [Theory]
    [InlineData("", "ahoy")]
    [InlineData(", spaced 20 percent", "a\u200ch\u200co\u200cy")]
    [InlineData(", capitals", "AHOY")]
    public void Letters_that_are_set_apart_are_shaped_without_ligatures(string clause, string shaped)
    {
        var world = new TestWorld();
        Laid.Out($"card \"x\"\nbase A2, fold left, of white\nfront\n  text \"ahoy\", letters 1/2, of navy{clause}\n", world);
        Assert.Contains(shaped, world.Shaped);
    }

    [Fact]
    public void Each_baseline_is_one_and_three_quarters_of_a_capital_below_the_one_before()
    {
        var text = Laid.OnA2("  text \"ahoy\" \"there\" \"keeper\", letters 1/4").Piece("front/text");
        var tops = text.Outline.Contours.Select(c => c.Bounds.Top).ToArray();
        Assert.Equal(6.35 * 1.75, tops[1] - tops[0], 0.001);
        Assert.Equal(6.35 * 1.75, tops[2] - tops[1], 0.001);
        Assert.Equal(6.35 * 4.5, text.Box.Height.Millimetres, 0.001);
    }

    [Theory]
    [InlineData("strip 3 x 1 \"ahoy\"", "1/2")] // half the height
    [InlineData("strip 3 x 1 7/8 \"ahoy\" \"there\"", "1/2")] // 2 3/4 capitals and half a capital above and below
    [InlineData("strip 3 x 2 3/4 \"ahoy\" \"there\" \"keeper\"", "1/2")] // 4 1/2 capitals and the same
    [InlineData("pennant fit x 1 \"ahoy\"", "1/4")] // a quarter of the height
    public void Letters_without_a_height_follow_from_the_height_of_their_piece(string piece, string letters) =>
        Assert.Equal(Measure.Length(letters), Assert.Single(Laid.OnA2($"  {piece}, of red").Pieces).Words!.LetterHeight);

    // A pennant of 3 x 1 has room for a rectangle of W x H in proportion that is 3/(W/H + 3) high.
    [Theory]
    [InlineData("\"ahoy\"", 3 / 6.2)] // 3.2 x 1 capitals
    [InlineData("\"ahoy\" \"there\"", 3 / 12.25)] // 4 x 2.75
    public void Letters_on_a_pennant_take_three_fifths_of_the_room_between_its_sides(string words, double inches) => Assert.Equal(
        25.4 * 0.6 * inches, Laid.OnA2($"  pennant 3 x 1 {words}, of red").Piece("front/pennant").Words!.LetterHeight.Millimetres, 0.001);

    [Fact]
    public void Letters_as_high_as_their_pennant_leave_it_no_length() => Assert.Contains(
        Found("pennant fit x 1 \"ahoy\", letters 1, of red"), f => f.StartsWith("The letters are as high as ", StringComparison.Ordinal));

    [Theory]
    [InlineData("pennant 3 x 1 \"ahoy\"")]
    [InlineData("pennant 1 x 3 \"ahoy\" \"there\"")]
    [InlineData("banner 3 x 1 \"ahoy\", swallowtail right, letters 1/4")]
    [InlineData("banner 3 x 1 \"ahoy\", swallowtail left, letters 1/4")]
    public void Words_lie_on_the_paper_of_their_piece(string piece)
    {
        var laid = Assert.Single(Laid.OnA2($"  {piece}, of red").Pieces);
        Assert.True(laid.Outline.Covers(laid.Words!.Ink));
    }

    [Fact]
    public void Words_of_a_banner_are_centred_between_its_notches()
    {
        var laid = Assert.Single(Laid.OnA2("  banner 3 x 1 \"ahoy\", swallowtail right, letters 1/4, of red").Pieces);
        var (left, right) = laid.Notches;
        Assert.Equal(Length.Zero, left);
        Assert.Equal(laid.Box.Left.Millimetres + (laid.Box.Width - right).Millimetres / 2, laid.Words!.Ink.Bounds.Centre.X, 0.001);
    }

    private static IEnumerable<string> Found(string line) =>
        Compiler.Compile(new SourceText("card.card", $"card \"Test\"\nbase A2, fold left, of white\nfront\n  {line}\n"), new TestWorld())
            .Findings.Select(f => f.Message + " " + f.Hint);
}
