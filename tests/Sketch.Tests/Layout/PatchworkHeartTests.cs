using Sketch.Panels;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language, in millimetres.</summary>
public class PatchworkHeartTests
{
    internal const string Text = """
        card "04 Patchwork heart"
        units mm
        base 105 x 148, fold left, of white
        front
          6 square 35, in a grid 2 across, gap 5, of blue and cream, alternating
          heart 45, of red
            mat, border 2, of white
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    // The block is 2 x 35 + 5 = 75 wide and 3 x 35 + 2 x 5 = 115 high: left (105 - 75)/2 = 15, top (148 - 115)/2 = 16.5.
    [Theory]
    [InlineData(1, "15 mm, 16.5 mm")]
    [InlineData(2, "55 mm, 16.5 mm")] // 15 + 35 + 5
    [InlineData(3, "15 mm, 56.5 mm")] // 16.5 + 35 + 5
    [InlineData(4, "55 mm, 56.5 mm")]
    [InlineData(5, "15 mm, 96.5 mm")]
    [InlineData(6, "55 mm, 96.5 mm")]
    public void Six_squares_lie_two_across_in_reading_order(int number, string place) =>
        _card.HasSizeAndPlace($"front/square[{number}]", "35 mm x 35 mm", place);

    [Fact]
    public void Alternating_colours_make_a_checkerboard() =>
        Assert.Equal(["blue", "cream", "cream", "blue", "blue", "cream"], _card.RolesOf("front/square"));

    [Fact]
    public void The_heart_is_as_wide_as_written() => Assert.Equal(Length.Millimetre(45), _card.Piece("front/heart").Box.Width);

    [Fact]
    public void The_heart_is_centred()
    {
        var heart = _card.Piece("front/heart").Box;
        Assert.Equal(Length.Millimetre(30), heart.Left); // (105 - 45)/2
        Assert.InRange((heart.Top + heart.Bottom).Nanometres, 148_000_000 - 2, 148_000_000 + 2);
    }

    [Fact]
    public void Its_mat_shows_two_millimetres_on_all_sides() => _card.ShowsBorder("front/heart/mat", "2 mm");

    [Fact]
    public void The_bounding_box_of_its_mat_is_two_millimetres_larger_on_each_side() =>
        Assert.Equal(_card.Piece("front/heart").Box.Grow(Insets.All(Length.Millimetre(2))), _card.Piece("front/heart/mat").Box);

    [Fact]
    public void A_bare_number_is_in_millimetres() => Assert.Equal(Measure.Size("210 mm x 148 mm"), _card.Base.Flat);
}
