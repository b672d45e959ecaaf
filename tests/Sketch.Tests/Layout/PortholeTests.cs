using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language. The boat's outline is 20 mm wide and 30 mm high.</summary>
public class PortholeTests
{
    internal const string Text = """
        card "03 Porthole"
        base 5 x 5, fold left, of white
        front
          porthole: window circle 2 1/2
          frame 1/8, around porthole, of gold
        inside
          boat: outline 1 7/8 wide, file "boat.svg", measured from front/porthole, of navy
        """;

    private readonly LaidOutCard _card = Laid.Out(Text, new TestWorld().WithTriangle("boat.svg", 20, 30));

    [Theory]
    [InlineData("front/porthole", "2 1/2 x 2 1/2", "1 1/4, 1 1/4")] // (5 - 2 1/2)/2
    [InlineData("front/frame", "2 3/4 x 2 3/4", "1 1/8, 1 1/8")] // its inner edge is the porthole: 2 1/2 + 2/8
    [InlineData("inside/boat", "1 7/8 x 2 13/16", "1 9/16, 1 3/32")] // 1 7/8 x 30/20; its centre is the porthole's, 2 1/2
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/porthole", null)] // a window is a hole
    [InlineData("front/frame", "2 3/4 x 2 3/4")]
    [InlineData("inside/boat", "1 7/8 x 2 13/16")]
    public void Each_piece_has_its_cut_size(string path, string? size) => _card.IsCut(path, size);

    [Fact]
    public void A_window_directly_on_the_front_cuts_the_base() => Assert.Equal(2, _card.Base.Outline.Contours.Length);

    [Fact]
    public void A_frame_is_a_ring() => Assert.Equal(2, _card.Piece("front/frame").Outline.Contours.Length);

    [Fact]
    public void A_base_of_5_by_5_is_cut_10_by_5() => Assert.Equal(Measure.Size("10 x 5"), _card.Base.Flat);
}
