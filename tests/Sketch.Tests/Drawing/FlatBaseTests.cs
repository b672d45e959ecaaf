using System.Globalization;
using System.Xml.Linq;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Tests.Layout;
using Xunit;

namespace Sketch.Tests.Drawing;

public class FlatBaseTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Theory]
    [InlineData("A2, fold left", "8.5in", "5.5in")]
    [InlineData("A2, landscape", "5.5in", "8.5in")]
    public void The_picture_has_the_size_of_the_sheet(string size, string width, string height)
    {
        var root = XElement.Parse(CardDrawing.Flat(Card(size), outside: true).Svg);

        Assert.Equal((width, height), ((string?)root.Attribute("width"), (string?)root.Attribute("height")));
    }

    [Theory]
    [InlineData("A2, fold left", "score 4 1/4 in from the left")]
    [InlineData("A2, landscape, fold top", "score 4 1/4 in from the top")]
    [InlineData("105 mm x 148 mm, fold left", "score about 4 1/8 in from the left")]
    public void The_title_of_the_score_line_gives_its_distance_from_the_edge(string size, string title) =>
        Assert.Equal(title, CardDrawing.Flat(Card(size), outside: true).Pieces[^1].Title);

    [Fact]
    public void In_a_metric_file_the_distance_is_in_millimetres() => Assert.Equal(
        "score 105 mm from the left",
            CardDrawing.Flat(Laid.Out("card \"Flat\"\nunits mm\nbase 105 x 148, fold left, of white\n"), outside: false).Pieces[^1].Title);

    // The back of a tent card lies upside down above the front, so what is near its upper left corner comes to the lower right of its half.
    [Theory]
    [InlineData("A2, fold left", true, "back-mark", 0.5, 0.5)]
    [InlineData("A2, fold left", true, "front-mark", 4.75, 0.5)]
    [InlineData("A2, fold left", false, "inside-left-mark", 0.5, 0.5)]
    [InlineData("A2, fold left", false, "inside-mark", 4.75, 0.5)]
    [InlineData("A2, landscape, fold top", true, "back-mark", 5, 3.75)]
    [InlineData("A2, landscape, fold top", true, "front-mark", 0.5, 4.75)]
    [InlineData("A2, landscape, fold top", false, "inside-top-mark", 0.5, 0.5)]
    [InlineData("A2, landscape, fold top", false, "inside-mark", 0.5, 4.75)]
    public void Each_half_is_drawn_where_it_lies_on_the_sheet(string size, bool outside, string id, double middle, double down)
    {
        var root = XElement.Parse(CardDrawing.Flat(Card(size), outside).Svg);
        var numbers = Numbers((string)root.Elements(Svg + "g").Single(g => (string?)g.Attribute("id") == id).Attribute("transform")!);
        var (a, d, e, f) = numbers is [var x, var y] ? (1, 1, x, y) : (numbers[0], numbers[3], numbers[4], numbers[5]);

        Assert.Equal((middle * 25.4, down * 25.4), (e + a * 6.35, f + d * 6.35), (want, is_) => Math.Abs(want.Item1 - is_.Item1) < 0.01
            && Math.Abs(want.Item2 - is_.Item2) < 0.01);
    }

    [Fact]
    public void A_window_is_a_hole_in_the_front_half_seen_from_either_side()
    {
        var card = Card("A2, fold left", "  window 1 x 1, left 1/4, top 1\n");
        Assert.Contains("M114.3 50.8", Base(card, outside: true), StringComparison.Ordinal);
        Assert.Matches("M(76.2|101.6) (25.4|50.8)", Base(card, outside: false));
    }

    [Fact]
    public void Each_reported_piece_is_a_group_with_its_title()
    {
        var picture = CardDrawing.Flat(Card("A2, fold left"), outside: true);
        var groups = XElement.Parse(picture.Svg).Elements(Svg + "g")
            .Select(g => ((string)g.Attribute("id")!, g.Element(Svg + "title")!.Value));

        Assert.Equal(groups, picture.Pieces.Select(p => (p.Id, p.Title)));
        Assert.Equal(["outside-base", "back-mark", "front-mark", "outside-score"], picture.Pieces.Select(p => p.Id));
    }

    /// <summary>A card with a square of half an inch on each face, its middle half an inch from the left and from the top.</summary>
    private static LaidOutCard Card(string size, string onFront = "")
    {
        const string Mark = "  mark: square 1/2, upper left 1/4, of red\n";
        var other = size.Contains("landscape", StringComparison.Ordinal) ? "inside top" : "inside left";
        return Laid.Out($"card \"Flat\"\nbase {size}, of white\nfront\n{Mark}{onFront}inside\n{Mark}{other}\n{Mark}back\n{Mark}");
    }

    private static string Base(LaidOutCard card, bool outside) =>
        (string)XElement.Parse(CardDrawing.Flat(card, outside).Svg).Descendants(Svg + "path")
            .First(p => (string?)p.Attribute("id") == (outside ? "outside" : "inside") + "-base-cut").Attribute("d")!;

    private static double[] Numbers(string transform) =>
        [.. transform.Split('(', ')')[1].Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
}
