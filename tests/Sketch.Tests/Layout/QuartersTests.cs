using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language.</summary>
public class QuartersTests
{
    internal const string Text = """
        card "06 Quarters"
        base A2, fold left, of white
        front
          4 panel, showing 1/8, in a grid 2 across, gap 1/16, of blue and cream, alternating
          scallop 2 "peace", of white
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    // The block is 4 x 5 1/4; each part (4 - 1/16)/2 = 1 31/32 wide and (5 1/4 - 1/16)/2 = 2 19/32 high.
    [Theory]
    [InlineData("front/panel[1]", "1 31/32 x 2 19/32", "1/8, 1/8")]
    [InlineData("front/panel[2]", "1 31/32 x 2 19/32", "2 5/32, 1/8")] // 1/8 + 1 31/32 + 1/16
    [InlineData("front/panel[3]", "1 31/32 x 2 19/32", "1/8, 2 25/32")] // 1/8 + 2 19/32 + 1/16
    [InlineData("front/panel[4]", "1 31/32 x 2 19/32", "2 5/32, 2 25/32")]
    [InlineData("front/scallop", "2 x 2", "1 1/8, 1 3/4")] // over the tips; (4 1/4 - 2)/2, (5 1/2 - 2)/2
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Fact]
    public void Alternating_colours_make_a_checkerboard() => Assert.Equal(["blue", "cream", "cream", "blue"], _card.RolesOf("front/panel"));
}
