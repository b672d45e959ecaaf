using Sketch.Edits;
using Sketch.Tests.Layout;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Edits;

/// <summary>A piece that is moved by hand gets another value in the clause that places it.</summary>
public class MovingTests
{
    [Theory]
    [InlineData("star 1, left 1/4, top 3/8, of gold", "1/16", "1/8", "star 1, left 5/16, top 1/2, of gold")]
    [InlineData("star 1, right 1/4, bottom 3/8, of gold", "1/16", "1/8", "star 1, right 3/16, bottom 1/4, of gold")]
    [InlineData("star 1, left 1/4, of gold # the lamp", "1/16", "0", "star 1, left 5/16, of gold # the lamp")]
    [InlineData("star 1,  LEFT  0.25 ,of gold", "1/16", "0", "star 1,  LEFT  0.3125 ,of gold")]
    [InlineData("star 1, left 2 mm, of gold", "1/16", "0", "star 1, left 3.5875 mm, of gold")]
    [InlineData("star 1, left 1/4\", of gold", "-1/2", "0", "star 1, left -1/4\", of gold")]
    [InlineData("star 1, lower right 3/8, of gold", "1/8", "1/8", "star 1, lower right 1/4, of gold")]
    [InlineData("star 1, lower right 3/8, of gold", "1/8", "0", "star 1, bottom 3/8, right 1/4, of gold")]
    [InlineData("star 1, left 1/4, shift right 1/8, top 0, of gold", "1/8", "0", "star 1, left 1/4, shift right 1/4, top 0, of gold")]
    [InlineData("star 1, left 1/4, shift right 1/8, top 0, of gold", "-1/8", "0", "star 1, left 1/4, top 0, of gold")]
    [InlineData("star 1, left 1/4, shift right 1/8, top 0, of gold", "-1/4", "0", "star 1, left 1/4, shift left 1/8, top 0, of gold")]
    public void A_distance_stays_a_distance(string line, string across, string down, string written) =>
        Assert.Equal(written, Move(line, "front/star", across, down));

    [Theory]
    [InlineData("panel 3 x 1, of navy", "1/4", "0", "panel 3 x 1, right 3/8, of navy")]
    [InlineData("panel 3 x 1, of navy", "0", "-1/4", "panel 3 x 1, top 2, of navy")]
    [InlineData("panel 3 x 1 \"ahoy\", top 1, of navy", "-1/4", "0", "panel 3 x 1 \"ahoy\", top 1, left 3/8, of navy")]
    [InlineData("panel 3 x 1 of navy", "1/4", "0", "panel 3 x 1, right 3/8, of navy")]
    [InlineData("panel 3 x 1, centre, of navy", "1/4", "0", "panel 3 x 1, centre, right 3/8, of navy")]
    [InlineData("panel 3 x 1, top 1, centre, of navy", "1/4", "0", "panel 3 x 1, top 1, right 3/8, of navy")]
    public void What_is_centred_gets_a_distance_from_the_nearer_edge(string line, string across, string down, string written) =>
        Assert.Equal(written, Move(line, "front/panel", across, down));

    [Fact]
    public void What_is_moved_to_the_middle_is_centred() =>
        Assert.Equal("star 1, centre, top 1, of gold", Hands.On("  star 1, left 1, top 1, of gold", "front/star",
            new MoveChange(Measure.Length("1/16"), default) { Centred = (true, false) }).Trim());

    [Theory]
    [InlineData("star 1, left 1, top 1, of gold", Edge.Left, "1/2", "star 1, left 1/2, top 1, of gold")]
    [InlineData("star 1, left 1, top 1, of gold", Edge.Right, "1/2", "star 1, left 2 3/4, top 1, of gold")]
    [InlineData("star 1, top 1, of gold", Edge.Right, "1/2", "star 1, top 1, right 1/2, of gold")]
    public void A_distance_may_be_typed(string line, Edge from, string distance, string written) =>
        Assert.Equal(written, Hands.On("  " + line, "front/star", new PlaceChange(from, Measure.Length(distance))).Trim());

    [Theory]
    [InlineData("star 1, above low by 1/4, of gold", "0", "-1/8", "star 1, above low by 3/8, of gold")]
    [InlineData("star 1, above low, of gold", "0", "-1/8", "star 1, above low by 1/8, of gold")]
    [InlineData("star 1, below low by 1/4, of gold", "0", "-1/8", "star 1, below low by 1/8, of gold")]
    [InlineData("star 1, above low by 1/4, of gold", "1/8", "0", "star 1, above low by 1/4, shift right 1/8, of gold")]
    [InlineData("star 1, over top of low, left 1, of gold", "1/8", "1/8", "star 1, over top of low, left 1 1/8, shift down 1/8, of gold")]
    public void What_is_placed_by_another_piece_stays_so(string line, string across, string down, string written) =>
        Assert.Equal(written, Move("low: panel 2 x 1, bottom 1, of navy\n  " + line, "front/star", across, down).Split("\n  ")[1]);

    [Fact]
    public void A_mat_goes_with_its_piece() =>
        Assert.Equal("  panel 2 x 2, left 1, of navy\n    mat +1/8, of white",
            Hands.On("  panel 2 x 2, left 3/4, of navy\n    mat +1/8, of white", "front/panel/mat",
                new MoveChange(Measure.Length("1/4"), default)));

    [Fact]
    public void A_copy_moves_the_whole_row() =>
        Assert.Equal("  3 gem 1/4, gap 1/8, left 1/2, of red", Hands.On("  3 gem 1/4, gap 1/8, left 1/4, of red", "front/gem[2]",
            new MoveChange(Measure.Length("1/4"), default)));

    [Fact]
    public void In_millimetres_a_distance_is_in_millimetres() =>
        Assert.Equal("  star 20, right 26, top 9.5, of gold", Hands.InMillimetres("  star 20, right 25, top 10.5, of gold", "front/star",
            new MoveChange(Measure.Length("-1 mm"), Measure.Length("-1 mm"))));

    [Theory]
    [InlineData("panel, showing 1/8, of navy", "What shows round it gives its place from left to right.", "panel 4 x 5 1/4, of navy")]
    [InlineData("panel, showing 1/8, showing bottom 1, of navy", "What shows round it gives its place from left to right.",
        "panel 4 x 4 3/8, top 1/8, of navy")]
    [InlineData("panel full x 1, top 1, of navy", "It is as wide as what it lies on, so it cannot be moved from left to right.",
        "panel 4 1/4 x 1, top 1, of navy")]
    public void What_cannot_be_moved_says_why_and_can_let_go(string line, string reason, string written)
    {
        var refusal = Hands.Refused("  " + line, "front/panel", new MoveChange(Measure.Length("1/4"), default));

        Assert.Equal(reason, refusal!.Reason);
        Assert.Equal(written, Hands.On("  " + line, "front/panel", refusal.Offer!.Change).Trim());
    }

    private static string Move(string line, string path, string across, string down) =>
        Hands.On("  " + line, path, new MoveChange(Measure.Length(across), Measure.Length(down)))[2..];
}
