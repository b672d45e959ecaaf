using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Drawing;

public sealed class CardDrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_picture_of_a_file_in_inches_has_the_size_of_the_face_in_inches()
    {
        var root = Front(new CardFixture(107.95, 139.7));

        Assert.Equal(("4.25in", "5.5in", "0 0 107.95 139.7"), SizeOf(root));
    }

    [Theory]
    [InlineData(UnitSystem.Millimetres)]
    [InlineData(UnitSystem.Centimetres)]
    public void The_picture_of_a_metric_file_has_the_size_of_the_face_in_millimetres(UnitSystem units)
    {
        var root = Front(new CardFixture(105, 148.5) { Units = units });

        Assert.Equal(("105mm", "148.5mm", "0 0 105 148.5"), SizeOf(root));
    }

    [Fact]
    public void Pieces_are_drawn_in_the_order_of_the_card()
    {
        var card = ThreePieces().Card();

        var ids = Groups(Front(card)).Select(g => (string?)g.Attribute("id"));

        Assert.Equal(["front-base", "front-sky-mat", "front-sky", "front-sky-lamp"], ids);
    }

    [Fact]
    public void Every_piece_has_a_title()
    {
        var titles = Groups(Front(ThreePieces().Card())).Select(g => g.Element(Svg + "title")?.Value);

        Assert.Equal(
            [
                "base, 4 1/4 x 5 1/2 in closed, white",
                "mat behind sky, 4 x 5 1/4 in, navy",
                "sky: panel, 3 7/8 x 5 1/8 in, dots",
                "lamp: star, 1 3/4 in wide, gold, turned 5° to the left, raised 2 mm",
            ],
            titles);
    }

    [Fact]
    public void Ids_are_unique_and_every_reference_resolves()
    {
        var root = Front(ThreePieces().Add("front/sky-mat", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(1, 1, 9, 9), "kraft").Card());

        var ids = root.Descendants().Attributes("id").Select(a => a.Value).ToList();
        var wanted = root.Descendants().Attributes().Select(a => Reference(a.Value)).OfType<string>().ToList();

        Assert.Equal(ids.Distinct().Count(), ids.Count);
        Assert.Subset(ids.ToHashSet(), wanted.ToHashSet());
    }

    [Fact]
    public void Drawing_the_same_card_twice_gives_the_same_text()
    {
        Assert.Equal(
            CardDrawing.Draw(ThreePieces().Card(), FaceKind.Front), CardDrawing.Draw(ThreePieces().Card(), FaceKind.Front));
    }

    [Fact]
    public void A_culture_with_decimal_commas_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        var expected = CardDrawing.Draw(ThreePieces().Card(), FaceKind.Front);
        try
        {
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(expected, CardDrawing.Draw(ThreePieces().Card(), FaceKind.Front));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_card_with_any_title_gives_well_formed_SVG()
    {
        Gen.String.Sample(title => Front(new CardFixture { Title = title }.Card()).Name == Svg + "svg");
    }

    [Fact]
    public void Groups_and_windows_are_not_drawn()
    {
        var card = new CardFixture()
            .Add("front/group", PieceKind.Group, Shape.Rectangle, CardFixture.Box(0, 0, 9, 9), "white")
            .Add("front/window", PieceKind.Window, Shape.Circle, CardFixture.Box(0, 0, 9, 9), "white");

        Assert.Single(Groups(Front(card.Card())));
    }

    [Fact]
    public void Pieces_of_other_faces_are_not_drawn()
    {
        var card = new CardFixture().Add("inside/low", PieceKind.Strip, Shape.Rectangle, CardFixture.Box(0, 100, 107.95, 12.7), "navy");

        Assert.Single(Groups(Front(card.Card())));
    }

    [Fact]
    public void A_face_that_the_file_does_not_mention_is_drawn_bare()
    {
        var root = XElement.Parse(CardDrawing.Draw(ThreePieces().Card(), FaceKind.Back));

        Assert.Single(Groups(root));
    }

    [Fact]
    public void A_window_in_the_base_shows_the_inside_behind_it()
    {
        var whole = Outline.Rectangle(CardFixture.Box(0, 0, 107.95, 139.7));
        var card = new CardFixture()
            .BaseOf("kraft", whole.Subtract(Outline.Circle(new(54, 70), 20)))
            .Add("inside/boat", PieceKind.Heart, Shape.Heart, CardFixture.Box(44, 60, 20, 19), "red");

        var ids = Groups(Front(card.Card())).Select(g => (string?)g.Attribute("id"));

        Assert.Equal(["inside-base", "inside-boat", "front-base"], ids);
    }

    [Fact]
    public void A_window_is_mirrored_on_the_back_of_the_front()
    {
        var whole = Outline.Rectangle(CardFixture.Box(0, 0, 100, 140));
        var card = new CardFixture(100, 140).BaseOf("white", whole.Subtract(Outline.Rectangle(CardFixture.Box(10, 20, 30, 40))));

        var root = XElement.Parse(CardDrawing.Draw(card.Card(), FaceKind.InsideLeft));

        Assert.Contains("M90 60L60 60L60 20L90 20Z", root.Descendants(Svg + "path").First()
            .Attribute("d")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void An_envelope_is_drawn_at_its_own_size_with_its_flap()
    {
        var card = new CardFixture().Envelope(FaceKind.Envelope, 146.05, 111.125, "kraft", 50.8).Card();

        var root = XElement.Parse(CardDrawing.Draw(card, FaceKind.EnvelopeBack));

        Assert.Equal(("5.75in", "4.375in", "0 0 146.05 111.125"), SizeOf(root));
        Assert.Contains(Groups(root), g => (string?)g.Attribute("id") == "envelope-back-flap");
    }

    [Fact]
    public void A_card_without_an_envelope_has_no_envelope_picture()
    {
        Assert.Throws<ArgumentException>(() => CardDrawing.Draw(new CardFixture().Card(), FaceKind.Envelope));
    }

    [Fact]
    public void A_piece_on_foam_casts_a_longer_shadow_than_a_flat_one()
    {
        Assert.True(Fall(Lone(foam: 2)).X > 2 * Fall(Lone(foam: 0)).X);
    }

    [Fact]
    public void The_shadow_of_a_turned_piece_still_falls_to_the_lower_right()
    {
        var straight = Fall(Lone(foam: 2));
        var turned = Fall(Lone(foam: 2, turn: 90));

        // A quarter turn to the right makes the piece's own "up" point to the right of the face.
        Assert.Equal((straight.Y, -straight.X), (turned.X, turned.Y));
    }

    [Fact]
    public void Identical_pieces_share_one_definition()
    {
        var one = CardDrawing.Draw(Gems(2), FaceKind.Front).Length;
        var many = CardDrawing.Draw(Gems(102), FaceKind.Front).Length;

        Assert.True((many - one) / 100 < 220, $"{(many - one) / 100} characters per piece");
    }

    [Fact]
    public void The_size_of_a_picture_is_linear_in_its_pieces()
    {
        double Length(int pieces) => CardDrawing.Draw(Gems(pieces), FaceKind.Front).Length;

        Assert.InRange((Length(4_000) - Length(2_000)) / (Length(2_000) - Length(1_000)), 1.9, 2.1);
    }

    [Fact]
    public void Words_are_drawn_on_top_of_the_paper_in_their_own_ink()
    {
        var piece = CardFixture.Make("front/words", PieceKind.Strip, Shape.Rectangle, CardFixture.Box(10, 10, 60, 12), "kraft") with
        {
            Words = new("Fair winds", Outline.Rectangle(CardFixture.Box(14, 13, 50, 6)), CardFixture.Of("navy"), CardFixture.Mm(6),
                true)
            { Room = CardFixture.Box(10, 10, 60, 12), Height = 6 },
        };

        var ink = Groups(Front(new CardFixture().Add(piece).Card()))[^1].Elements().Last();

        Assert.True(ColourWords.TryGet("navy", out var navy));
        Assert.Equal((navy.Ground.Hex, "M4 3L54 3L54 9L4 9Z"), ((string?)ink.Attribute("fill"), (string?)ink.Attribute("d")));
    }

    [Fact]
    public void A_picture_with_hundreds_of_large_scattered_prints_stays_small_enough_to_open()
    {
        var card = new CardFixture();
        for (var i = 0; i < 600; i++)
        {
            card.Add($"front/panel[{i}]", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(0, 0, 300 - i * 0.01, 300), "stars navy");
        }

        Assert.InRange(CardDrawing.Draw(card.Card(), FaceKind.Front).Length, 0, 26_000_000);
    }

    private static CardFixture ThreePieces() => new CardFixture()
        .Add("front/sky/mat", PieceKind.Mat, Shape.Rectangle, CardFixture.Box(3.175, 3.175, 101.6, 133.35), "navy")
        .Add("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(4.7625, 4.7625, 98.425, 130.175), "dots navy cream")
        .Add("front/sky/lamp", PieceKind.Star, Shape.Star, CardFixture.Box(50, 40, 44.45, 42.3), "gold", foam: 2, turn: -5);

    private static XElement Lone(double foam, double turn = 0) => Front(
        new CardFixture().Add("front/card", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(20, 20, 60, 60), "navy", foam, turn).Card());

    private static LaidOutCard Gems(int count)
    {
        var card = new CardFixture();
        for (var i = 0; i < count; i++)
        {
            card.Add($"front/gem[{i + 1}]", PieceKind.Gem, Shape.Circle, CardFixture.Box(i % 30 * 3.5, i / 30 * 3.5, 3.175, 3.175), "red");
        }

        return card.Card();
    }

    private static Point Fall(XElement root)
    {
        var transform = root.Descendants().First(e => (string?)e.Attribute("class") == "shadow").Attribute("transform")!.Value;
        var numbers = transform["translate(".Length..^1].Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        return new(numbers[0], numbers[1]);
    }

    private static XElement Front(CardFixture card) => Front(card.Card());

    private static XElement Front(LaidOutCard card) => XElement.Parse(CardDrawing.Draw(card, FaceKind.Front));

    private static List<XElement> Groups(XElement root) => [.. root.Elements(Svg + "g")];

    private static (string?, string?, string?) SizeOf(XElement root) =>
        ((string?)root.Attribute("width"), (string?)root.Attribute("height"), (string?)root.Attribute("viewBox"));

    private static string? Reference(string value) =>
        value.StartsWith('#') && value.Contains('-', StringComparison.Ordinal) ? value[1..]
        : value.StartsWith("url(#", StringComparison.Ordinal) ? value[5..^1]
        : null;
}
