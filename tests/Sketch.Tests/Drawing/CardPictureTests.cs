using System.Xml.Linq;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Tests.Layout;
using Xunit;

namespace Sketch.Tests.Drawing;

public class CardPictureTests
{
    private const string Card =
        """
        card "Fair winds"
        base A2, fold left, of white
        front
          panel 3 x 3, of navy
            mat, of cream
            3 gem 1/8, in a row, of red
        inside
          text "ahoy"
        envelope back, flap 2
          tape full x 1/2, over bottom of flap, of blue
        """;

    private const string WithWindow =
        """
        card "Porthole"
        base A2, fold left, of white
        front
          window circle 2
        inside
          text "ahoy"
        """;

    [Fact]
    public void A_picture_reports_each_group_with_its_line_in_drawing_order()
    {
        var pieces = CardDrawing.Picture(CardOf(Card), FaceKind.Front).Pieces;

        Assert.Equal(
            [("front-base", 2), ("front-panel-mat", 5), ("front-panel", 4), ("front-panel-gem-1", 6), ("front-panel-gem-2", 6),
                ("front-panel-gem-3", 6)],
            pieces.Select(p => (p.Id, p.Location.Start.Line)));
    }

    [Fact]
    public void The_flaps_of_an_envelope_are_reported_with_the_line_of_the_envelope() => Assert.Equal(
        [("envelope-back-base", 9), ("envelope-back-lower-flap", 9), ("envelope-back-flap", 9), ("envelope-back-tape", 10)],
        CardDrawing.Picture(CardOf(Card), FaceKind.EnvelopeBack).Pieces.Select(p => (p.Id, p.Location.Start.Line)));

    [Fact]
    public void Pieces_behind_a_window_are_reported_too() => Assert.Equal(
        ["inside-base", "inside-text", "front-base"], CardDrawing.Picture(CardOf(WithWindow), FaceKind.Front).Pieces.Select(p => p.Id));

    [Theory]
    [InlineData(Card)]
    [InlineData(WithWindow)]
    public void Every_reported_piece_is_a_group_with_its_title_in_the_picture(string text)
    {
        var card = CardOf(text);
        foreach (var face in card.Faces)
        {
            var picture = CardDrawing.Picture(card, face.Kind);
            var groups = XElement.Parse(picture.Svg).Elements().Where(e => e.Name.LocalName == "g")
                .Select(g => ((string)g.Attribute("id")!, g.Elements().First(e => e.Name.LocalName == "title").Value));

            Assert.Equal(groups, picture.Pieces.Select(p => (p.Id, p.Title)));
        }
    }

    private static LaidOutCard CardOf(string text) => Laid.Out(text);
}
