using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language.</summary>
public class PhotoTests
{
    internal const string Text = """
        card "05 Photo"
        base A2, landscape, fold top, of white
        front
          upper: panel full x share 2/3, top 0, of blue
          panel full x share 1/3, bottom 0, of navy
          strip full x 1/4, over bottom of upper, of silver
          photo: panel 3 x 2 1/4, turn left 5, of white
            mat +1/8, of navy
            mat +1/4, of cream
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    [Theory]
    [InlineData("front/upper", "5 1/2 x 2 5/6", "0, 0")] // 2/3 of 4 1/4
    [InlineData("front/panel", "5 1/2 x 1 5/12", "0, 2 5/6")] // 1/3 of 4 1/4; 4 1/4 - 1 5/12
    [InlineData("front/strip", "5 1/2 x 1/4", "0, 2 17/24")] // 2 5/6 - 1/8
    [InlineData("front/photo/mat2", "3 3/8 x 2 5/8", "1 1/16, 13/16")] // 3 1/8 + 1/4, 2 3/8 + 1/4; 1 3/16 - 1/8
    [InlineData("front/photo/mat", "3 1/8 x 2 3/8", "1 3/16, 15/16")] // 1 1/4 - 1/16, 1 - 1/16
    [InlineData("front/photo", "3 x 2 1/4", "1 1/4, 1")] // (5 1/2 - 3)/2, (4 1/4 - 2 1/4)/2
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/photo/mat", "1/16")]
    [InlineData("front/photo/mat2", "1/8")] // beyond the mat that lies on it
    public void Each_border_is_measured_from_the_layer_on_the_mat(string path, string border) => _card.ShowsBorder(path, border);

    [Theory]
    [InlineData("front/photo")]
    [InlineData("front/photo/mat")]
    [InlineData("front/photo/mat2")]
    public void The_whole_stack_is_turned_to_the_left(string path) => Assert.Equal(-5, _card.Piece(path).Turn);

    [Fact]
    public void Two_thirds_and_one_third_fill_the_front() =>
        Assert.Equal(_card.Base.Closed.Height, _card.Piece("front/upper").Box.Height + _card.Piece("front/panel").Box.Height);

    [Fact]
    public void The_outer_mat_is_drawn_first() => Assert.Equal(
        ["front/upper", "front/panel", "front/strip", "front/photo/mat2", "front/photo/mat", "front/photo"], _card.Order());
}
