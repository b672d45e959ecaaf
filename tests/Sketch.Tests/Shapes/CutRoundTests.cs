using CsCheck;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Shapes;

public class CutRoundTests
{
    private static readonly Gen<(double Width, double Height, double Border)> Boxes =
        Gen.Select(Gen.Double[1, 60], Gen.Double[1, 20], Gen.Double[1, 6]);

    /// <summary>
    /// Steiner's formula for parallel bodies: growing a convex figure of area A and perimeter P by d gives A + P d + π d².
    /// A convex figure has no bays.
    /// </summary>
    [Fact]
    public void A_round_letter_keeps_to_Steiners_formula() => Boxes.Sample(box =>
    {
        var letter = Outline.Circle(new(0, 0), box.Height);
        var (area, perimeter) = (Math.PI * box.Height * box.Height, 2 * Math.PI * box.Height);
        var expected = area + perimeter * box.Border + Math.PI * box.Border * box.Border;
        Assert.Equal(expected, letter.CutRound(box.Border, 2 * box.Border).Area, expected / 500);
    }, iter: 20);

    [Fact]
    public void Letters_that_stand_apart_come_in_one_piece_that_hangs_together() => Boxes.Sample(box =>
    {
        var letters = Box(0, box.Width, box.Height).Union(Box(box.Width + 4 * box.Border, box.Width, box.Height));
        var cut = letters.CutRound(box.Border, 2 * box.Border);
        Assert.True(cut.HangsTogether(Outline.LeastBridge - 0.02));
    }, iter: 20);

    [Fact]
    public void No_paper_within_the_border_is_cut_away() => Boxes.Sample(box =>
    {
        var letters = Box(0, box.Width, box.Height).Union(Box(box.Width + 3 * box.Border, box.Width, box.Height));
        var cut = letters.CutRound(box.Border, 2 * box.Border);
        Assert.Equal(0, letters.Grow(box.Border).Subtract(cut).Area, 0.05);
    }, iter: 20);

    [Fact]
    public void Filling_bays_does_not_widen_the_box() => Boxes.Sample(box =>
    {
        var letters = Box(0, box.Width, box.Height).Union(Box(box.Width + 5 * box.Border, box.Width, box.Height / 2));
        var (ink, cut) = (letters.Bounds, letters.CutRound(box.Border, 2 * box.Border).Bounds);
        Assert.Equal(ink.Width + 2 * box.Border, cut.Width, 0.05);
        Assert.Equal(ink.Height + 2 * box.Border, cut.Height, 0.05);
    }, iter: 20);

    [Fact]
    public void The_middle_of_a_ring_is_filled() =>
        Assert.Single(Outline.Circle(new(0, 0), 20).Ring(2).CutRound(2, 4).Contours);

    [Fact]
    public void A_part_held_by_a_thread_does_not_hang_together()
    {
        var thread = Box(0, 10, 10).Union(Box(9, 6, 0.5)).Union(Box(14, 10, 10));
        Assert.False(thread.HangsTogether(1));
        Assert.True(thread.HangsTogether(0.3));
    }

    private static Outline Box(double left, double width, double height) =>
        Drawn.Rectangle(left, 0, width, height);
}
