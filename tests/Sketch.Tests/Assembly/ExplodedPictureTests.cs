using Sketch.Assembly;
using Sketch.Panels;
using Sketch.Tests.Templates;
using Xunit;

namespace Sketch.Tests.Assembly;

public sealed class ExplodedPictureTests
{
    private const string Head = "card \"Harbour\"\nbase A2, fold left, of white\nfront\n";

    private static LaidOutCard Card(string lines) => Printed.Lay(Head + lines);

    private static Piece Find(LaidOutCard card, string name) => card.Pieces.Single(p => p.Path.Name == name);

    [Fact]
    public void A_face_without_layers_has_none() => Assert.Null(ExplodedPicture.Of(Card("  text \"ahoy\"\n"), FaceKind.Front));

    [Fact]
    public void A_layer_hovers_over_the_one_that_it_lies_on()
    {
        var card = Card("  sky: square 2, of blue\n    sea: square 1, of navy\n");
        var picture = ExplodedPicture.Of(card, FaceKind.Front)!;
        Assert.True(picture.PointOn(Find(card, "sea")).Y < picture.PointOn(Find(card, "sky")).Y);
    }

    [Fact]
    public void Layers_of_the_same_height_stay_side_by_side()
    {
        var card = Card("  one: square 1, left 0, top 1, of blue\n  two: square 1, right 0, top 1, of navy\n");
        var picture = ExplodedPicture.Of(card, FaceKind.Front)!;
        Assert.Equal(picture.PointOn(Find(card, "one")).Y, picture.PointOn(Find(card, "two")).Y, 9);
    }

    [Fact]
    public void More_layers_make_a_higher_picture()
    {
        var one = ExplodedPicture.Of(Card("  square 2, of blue\n"), FaceKind.Front)!;
        var two = ExplodedPicture.Of(Card("  square 2, of blue\n    square 1, of red\n"), FaceKind.Front)!;
        Assert.True(two.Height > one.Height);
    }
}
