using Sketch.Edits;
using Sketch.Tests.Layout;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Edits;

/// <summary>A piece that is resized by hand gets another number where its size is written.</summary>
public class ResizingTests
{
    [Theory]
    [InlineData("panel 2 x 3, of navy", "2 1/4", null, "panel 2 1/4 x 3, of navy")]
    [InlineData("panel 2 x 3, of navy", "2 1/4", "1", "panel 2 1/4 x 1, of navy")]
    [InlineData("panel 50 x 30 mm, of navy", "1", null, "panel 25.4 x 30 mm, of navy")]
    [InlineData("panel full x 3/4, top 1, of navy", null, "1/2", "panel full x 1/2, top 1, of navy")]
    public void A_size_gets_other_numbers(string line, string? width, string? height, string written) =>
        Assert.Equal(written, Size(line, "front/panel", width, height));

    [Theory]
    [InlineData("star 1, of gold", "2", null, "star 2, of gold")]
    [InlineData("star 1 high, of gold", null, "2", "star 2 high, of gold")]
    [InlineData("star 1, of gold", null, "2", "star 2 1/8, of gold")]
    public void A_shape_with_proportions_keeps_its_one_number(string line, string? width, string? height, string written) =>
        Assert.Equal(written, Size(line, "front/star", width, height));

    [Theory]
    [InlineData("panel 2 x 3, left 1, of navy", Edge.Right, "panel 2 1/4 x 3, left 3/4, of navy")]
    [InlineData("panel 2 x 3, left 1, of navy", Edge.Left, "panel 2 1/4 x 3, left 1, of navy")]
    [InlineData("panel 2 x 3, right 1, of navy", Edge.Left, "panel 2 1/4 x 3, right 3/4, of navy")]
    [InlineData("panel 2 x 3, of navy", Edge.Left, "panel 2 1/4 x 3, of navy")]
    public void The_edge_that_is_not_pulled_stays(string line, Edge held, string written) => Assert.Equal(written,
        Hands.On("  " + line, "front/panel", new SizeChange(Measure.Length("2 1/4"), null) { Held = (held, null) }).Trim());

    [Theory]
    [InlineData("panel full x 1, top 0, of red", "It is as wide as what it lies on.", "panel 2 x 1, top 0, of red")]
    [InlineData("panel share 1/2 x 1, top 0, of red", "It takes 1/2 of the width of what it lies on.", "panel 2 x 1, top 0, of red")]
    [InlineData("panel, showing 1/4, of red", "Its size follows from what shows round it.", "panel 2 x 5, of red")]
    [InlineData("panel, same size as low, top 0, of red", "It has the same size as low.", "panel 2 x 1, top 0, of red")]
    public void What_follows_from_something_else_says_so_and_can_let_go(string line, string reason, string written)
    {
        var pieces = "  low: strip 3 x 1, bottom 0, of navy\n  " + line;
        var refusal = Hands.Refused(pieces, "front/panel", new SizeChange(Measure.Length("2"), null));

        Assert.Equal(reason, refusal!.Reason);
        Assert.Equal(written, Hands.On(pieces, "front/panel", refusal.Offer!.Change).Split("\n  ")[1]);
    }

    [Fact]
    public void A_size_that_follows_from_a_mat_is_changed_on_the_mat()
    {
        const string Pieces = "  panel, of red\n    mat 3 x 4, of navy";
        var refusal = Hands.Refused(Pieces, "front/panel", new SizeChange(Measure.Length("2 7/8") + Measure.Length("1/4"), null));

        Assert.Equal("Its size follows from its mat.", refusal!.Reason);
        Assert.Equal("  panel, of red\n    mat 3 1/4 x 4, of navy", Hands.On(Pieces, refusal.Offer!.Of.ToString(), refusal.Offer.Change));
    }

    private static string Size(string line, string path, string? width, string? height) => Hands.On("  " + line, path,
        new SizeChange(width is null ? null : Measure.Length(width), height is null ? null : Measure.Length(height))).Trim();
}
