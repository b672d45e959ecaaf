using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language.</summary>
public class FairWindsTests
{
    internal const string Text = """
        # fair-winds.card
        card "Fair winds"
        base A2, fold left, of white
        role sky: gulls #9fc9e8, front
        role deep: navy #16324f
        role scrap: any offcut
        part lantern 1 x 1 3/4
          tag 1 x 1 3/4, of deep
            circle 1/2, top 5/8, of gold
        front
          sky: panel, showing 1/8, of sky               # 3 7/8 x 5 1/8
            mat +1/8, of deep                           # 4 x 5 1/4
            rope: strip full x 3/4, bottom 7/8, of kraft
              line 1/16, along top, of silver, wrap 1/2 # cut 4 7/8, shows 3 7/8
            first: use lantern, left 1/2, top 3/8
            second: use lantern, right 1/2, top 3/8, with deep as red
            words: banner 2 1/2 x 5/8 "Fair winds", over top of rope, left 1/4,
              swallowtail right, of kraft, on foam
              mat +1/8, of deep
            3 gem 1/8, in a row, gap 1/16, right 3/8, bottom 3/8, of red
              item 2: of pearl
        inside
          strip full x 1/2, bottom 1/4, of scrap
          text "Calm seas ahead" "and a good light", top 1 1/2
        """;

    private readonly LaidOutCard _card = Laid.Out(Text);

    // The sky reaches from 3/16 to 4 1/16 across and from 3/16 to 5 5/16 down.
    [Theory]
    [InlineData("front/sky/mat", "4 x 5 1/4", "1/8, 1/8")]
    [InlineData("front/sky", "3 7/8 x 5 1/8", "3/16, 3/16")]
    [InlineData("front/sky/rope", "3 7/8 x 3/4", "3/16, 3 11/16")] // 5 5/16 - 7/8 - 3/4
    [InlineData("front/sky/rope/line", "3 7/8 x 1/16", "3/16, 3 11/16")]
    [InlineData("front/sky/first/tag", "1 x 1 3/4", "11/16, 9/16")] // 3/16 + 1/2, 3/16 + 3/8
    [InlineData("front/sky/first/tag/circle", "1/2 x 1/2", "15/16, 1 3/16")] // 11/16 + (1 - 1/2)/2, 9/16 + 5/8
    [InlineData("front/sky/second/tag", "1 x 1 3/4", "2 9/16, 9/16")] // 4 1/16 - 1/2 - 1
    [InlineData("front/sky/second/tag/circle", "1/2 x 1/2", "2 13/16, 1 3/16")]
    [InlineData("front/sky/words/mat", "2 5/8 x 3/4", "7/16, 3 5/16")] // 3/16 + 1/4; 3 11/16 - 3/8
    [InlineData("front/sky/words", "2 1/2 x 5/8", "1/2, 3 3/8")] // its middle on the top of the rope, 3 11/16
    [InlineData("front/sky/gem[1]", "1/8 x 1/8", "3 3/16, 4 13/16")] // 4 1/16 - 3/8 - (3/8 + 2/16), 5 5/16 - 3/8 - 1/8
    [InlineData("front/sky/gem[2]", "1/8 x 1/8", "3 3/8, 4 13/16")]
    [InlineData("front/sky/gem[3]", "1/8 x 1/8", "3 9/16, 4 13/16")]
    [InlineData("inside/strip", "4 1/4 x 1/2", "0, 4 3/4")] // 5 1/2 - 1/4 - 1/2
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/sky/mat", "4 x 5 1/4")]
    [InlineData("front/sky/rope/line", "4 7/8 x 1/16")] // 3 7/8 + 2 x 1/2
    [InlineData("front/sky/words", "2 1/2 x 5/8")]
    [InlineData("front/sky/gem[2]", null)]
    public void Each_piece_has_its_cut_size(string path, string? size) => _card.IsCut(path, size);

    [Theory]
    [InlineData("front/sky/mat")]
    [InlineData("front/sky/words/mat")] // a swallowtail's mat by the distance between the outlines
    public void A_mat_of_an_eighth_shows_a_sixteenth(string path) => _card.ShowsBorder(path, "1/16");

    [Theory]
    [InlineData("front/sky/words", "2 mm")] // foam is 2 mm by default
    [InlineData("front/sky/words/mat", "2 mm")]
    [InlineData("front/sky/rope", "0")]
    public void Only_the_banner_stands_on_foam(string path, string height) => _card.IsRaised(path, height);

    [Theory]
    [InlineData("front/sky/first/tag", "deep")]
    [InlineData("front/sky/second/tag", "red")] // with deep as red
    [InlineData("front/sky/second/tag/circle", "gold")]
    public void A_part_can_be_used_with_other_papers(string path, string role) => Assert.Equal(role, _card.Piece(path).Paint.Role);

    [Fact]
    public void One_gem_of_the_row_is_changed() => Assert.Equal(["red", "pearl", "red"], _card.RolesOf("front/sky/gem"));

    [Fact]
    public void The_text_starts_where_it_is_placed() => Assert.Equal(Measure.Length("1 1/2"), _card.Piece("inside/text").Box.Top);

    [Fact]
    public void The_text_is_centred()
    {
        var text = _card.Piece("inside/text").Box;
        Assert.InRange((text.Left + text.Right - Measure.Length("4 1/4")).Nanometres, -2, 2);
    }
}
