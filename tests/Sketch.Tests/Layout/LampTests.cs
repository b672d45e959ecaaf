using Sketch.Panels;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>
/// A star on a star. A five-pointed star of width w has a circumradius of w/1.9021130326 and a height of 1.8090169944 times that
/// (regular pentagram); it is centred by the centre of that circle.
/// </summary>
public class LampTests
{
    private const double WidthOfRadiusOne = 1.9021130326;
    private const double HeightOfRadiusOne = 1.8090169944;

    internal const string Text = """
        card "Fair winds"
        base A2, fold left, of white
        role sky: gulls #9fc9e8
        role deep: navy #16324f
        role accent: rope #e8dcc0

        front
          sky: panel, showing 1/8, of sky            # outermost layer leaves 1/8 of the base showing on every side
            mat +1/8, of deep                        # 1/8 larger in total, so 1/16 on each side; beneath its panel
            rope: strip full x 3/4, bottom 7/8, of accent
              edge: line 1/16, along top, of silver, wrap 1/2
            lamp: star 1 3/4, right 1/4, bottom 3/8, of deep, raised 2 mm
              glow: star 1 1/4, of pearl             # no place given: centred on its parent
            words: banner 2 1/2 x 5/8 "Fair winds", left 1/4, top 1/2, swallowtail right, of kraft, raised 1 mm
              mat +1/8, of deep
            3 gem 1/8, in a row, gap 1/16, right 3/8, top 3/8, of red
        inside
          strip full x 1/2, bottom 1/4, of accent
          words: text "Calm seas ahead", top 1 1/2
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    [Theory]
    [InlineData("front/sky/rope/edge", "3 7/8 x 1/16", "3/16, 3 11/16")]
    [InlineData("front/sky/words/mat", "2 5/8 x 3/4", "7/16, 11/16")] // 3/16 + 1/4, 3/16 + 1/2
    [InlineData("front/sky/words", "2 1/2 x 5/8", "1/2, 3/4")]
    [InlineData("front/sky/gem[1]", "1/8 x 1/8", "3 3/16, 9/16")] // 4 1/16 - 3/8 - 1/2, 3/16 + 3/8
    [InlineData("front/sky/gem[3]", "1/8 x 1/8", "3 9/16, 9/16")]
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Fact]
    public void The_lamp_keeps_its_distance_from_the_right() =>
        Assert.Equal(Measure.Length("3 13/16"), _card.Piece("front/sky/lamp").Box.Right); // 4 1/16 - 1/4

    [Fact]
    public void The_lamp_keeps_its_distance_from_the_bottom() =>
        Assert.Equal(Measure.Length("4 15/16").Millimetres, _card.Piece("front/sky/lamp").Box.Bottom.Millimetres, 0.0001); // 5 5/16 - 3/8

    [Theory]
    [InlineData("front/sky/lamp", 1.75)]
    [InlineData("front/sky/lamp/glow", 1.25)]
    public void A_star_has_the_height_of_a_pentagram(string path, double inches) =>
        Assert.Equal(inches * 25.4 * HeightOfRadiusOne / WidthOfRadiusOne, _card.Piece(path).Box.Height.Millimetres, 0.0001);

    [Fact]
    public void A_star_on_a_star_shares_its_centre()
    {
        var (lamp, glow) = (_card.Piece("front/sky/lamp").Box, _card.Piece("front/sky/lamp/glow").Box);
        Assert.Equal(lamp.Left + Length.Inch(0, 1, 4), glow.Left); // (1 3/4 - 1 1/4)/2
        var radii = (1.75 - 1.25) * 25.4 / WidthOfRadiusOne; // tip to tip
        Assert.Equal(lamp.Top.Millimetres + radii, glow.Top.Millimetres, 0.0001);
    }

    [Theory]
    [InlineData("front/sky/lamp", "2 mm")]
    [InlineData("front/sky/lamp/glow", "2 mm")] // lies on the lamp
    [InlineData("front/sky/words", "1 mm")]
    [InlineData("front/sky/words/mat", "1 mm")]
    public void A_raised_piece_lifts_the_pieces_on_it(string path, string height) => _card.IsRaised(path, height);
}
