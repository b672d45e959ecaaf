using Sketch.Kinds;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Copies of an outline beneath it, set off to the right and down.</summary>
public class ShadowTests
{
    [Fact]
    public void A_shadow_has_the_size_of_its_piece_and_lies_to_the_right_and_down()
    {
        var card = Laid.OnA2("  panel 2 x 1, top 1, left 1, of red, shadow 1/16 of navy");
        card.HasSizeAndPlace("front/panel/shadow", "2 x 1", "1 1/16, 1 1/16");
    }

    [Fact]
    public void It_lies_beneath_its_piece_and_on_what_the_piece_lies_on()
    {
        var card = Laid.OnA2("  panel 3 x 3, of white\n    star 2, of gold, shadow 1/16 of navy");
        var star = card.Piece("front/panel/star");
        Assert.Equal("front/panel/star/shadow", card.Pieces[star.LiesOn].Path.ToString());
        Assert.Equal("front/panel", card.Pieces[card.Pieces[star.LiesOn].LiesOn].Path.ToString());
    }

    [Fact]
    public void A_mat_casts_a_shadow_of_its_own() =>
        Laid.OnA2("  panel 2 x 1, of red\n    mat border 1/8, of white, shadow 1/16 of navy")
            .IsCut("front/panel/mat/shadow", "2 1/4 x 1 1/4");

    [Fact]
    public void It_falls_to_the_lower_right_of_the_card_however_the_piece_is_turned()
    {
        var card = Laid.OnA2("  star 2, of gold, turn 90, shadow 1/8 of navy");
        var (star, shadow) = (card.Piece("front/star").TurnedOutline.Bounds, card.Piece("front/star/shadow").TurnedOutline.Bounds);
        Assert.Equal(25.4 / 8, shadow.Left - star.Left, 0.001);
        Assert.Equal(25.4 / 8, shadow.Top - star.Top, 0.001);
    }

    [Fact]
    public void Foam_is_beneath_the_shadow()
    {
        var card = Laid.OnA2("  star 2, of gold, raised 2 mm, shadow 1/8 of navy");
        Assert.Equal((Measure.Length("0"), card.Piece("front/star/shadow").Raised),
            (card.Piece("front/star").Foam, card.Piece("front/star").Raised));
        Assert.Equal(PieceKind.Shadow, card.Pieces.Single(p => p.Foam.Millimetres > 0).Kind);
    }

    [Fact]
    public void Words_are_judged_against_what_their_shadow_lies_on()
    {
        var card = Laid.OnA2("  word 2 wide \"ahoy\", of red, shadow 1/16 of navy\n    mat border 1/8, of white");
        Assert.Equal("white", card.GroundOf(card.Piece("front/word")).Role);
    }
}
