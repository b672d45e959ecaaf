using Sketch.Messages;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Messages;

/// <summary>Where the message goes inside a card.</summary>
public sealed class MessagePlaceTests
{
    private static MessagePlace? PlaceIn(string inside) => MessagePlace.Of(
        Compiler.Compile(new SourceText("a.card", "card \"A\"\nbase A2, of white\n" + inside), new TestWorld()).Card!);

    [Fact]
    public void A_piece_called_message_is_the_place()
    {
        var place = PlaceIn("inside\n  ruled 2 x 2, top 0\n  message: panel 3 x 1, bottom 1/2, of cream\n")!;
        Assert.Equal(new Size(Length.Inch(3), Length.Inch(1)), place.Box.Size);
        Assert.Null(place.Lines);
    }

    [Fact]
    public void Else_writing_lines_are_the_place() =>
        Assert.Equal(Length.Inch(0, 3, 8), PlaceIn("inside\n  ruled 3 x 2, lines 3/8 apart\n")!.Lines);

    [Fact]
    public void Else_the_highest_free_band_less_half_an_inch_on_every_side()
    {
        var place = PlaceIn("inside\n  strip full x 1/2, top 1, of navy\n")!;
        Assert.Equal(new(Length.Inch(0, 1, 2), Length.Inch(2), Length.Inch(3, 1, 4), Length.Inch(3)), place.Box);
    }

    [Fact]
    public void A_card_without_pieces_inside_has_all_of_it() => Assert.Equal(Length.Inch(4, 1, 2), PlaceIn("front\n")!.Box.Height);

    [Fact]
    public void An_inside_that_is_full_has_no_place() => Assert.Null(PlaceIn("inside\n  panel, showing 1/8, of navy\n"));

    [Fact]
    public void A_place_behind_the_front_is_on_that_face() =>
        Assert.Equal(FaceKind.InsideLeft, PlaceIn("inside left\n  message: group 3 x 2\n")!.Face);
}
