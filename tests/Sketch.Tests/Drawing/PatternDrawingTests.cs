using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Sketch.Colours;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Drawing;

public sealed partial class PatternDrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Patterned =>
        [.. BuiltIn.PatternWords.Where(w => w is not ("plain" or "cardstock" or "foil" or "pearl"))];

    public static TheoryData<string> All => [.. BuiltIn.PatternWords];

    [Theory]
    [MemberData(nameof(Patterned))]
    public void Figures_are_clipped_at_the_outline_of_the_piece(string pattern)
    {
        var piece = Star(pattern);
        var figures = piece.Elements(Svg + "g").Single(g => g.Attribute("clip-path") is not null);
        var clip = piece.Elements(Svg + "clipPath").Single();
        var cut = piece.Element(Svg + "defs")!.Element(Svg + "path")!;

        Assert.Equal($"url(#{(string?)clip.Attribute("id")})", (string?)figures.Attribute("clip-path"));
        Assert.Equal("#" + (string?)cut.Attribute("id"), (string?)clip.Element(Svg + "use")!.Attribute("href"));
        Assert.NotEmpty(figures.Elements());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_element_is_used_that_a_PDF_would_rasterise(string pattern)
    {
        var names = Star(pattern).DescendantsAndSelf().Select(e => e.Name.LocalName).ToHashSet();

        Assert.Empty(names.Intersect(["pattern", "mask", "filter", "image"]));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_whole_front_stays_under_60_KB(string pattern)
    {
        var card = new CardFixture()
            .Add("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(0, 0, 107.95, 139.7), pattern).Card();

        Assert.InRange(CardDrawing.Draw(card, FaceKind.Front).Length, 0, 60_000);
    }

    [Fact]
    public void Dots_are_an_eighth_wide_at_a_spacing_of_three_eighths()
    {
        var rows = Strokes("dots navy cream")[0];

        Assert.Equal("3.175", (string?)rows.Attribute("stroke-width"));
        Assert.Equal("0 9.525", (string?)rows.Attribute("stroke-dasharray"));
    }

    [Fact]
    public void Rows_of_dots_have_a_spacing_of_three_sixteenths()
    {
        var ys = Strokes("dots navy cream").SelectMany(p => Numbers(p, "M[-.0-9]+ ([-.0-9]+)")).Order().ToList();

        Assert.All(ys.Zip(ys.Skip(1)), pair => Assert.Equal(4.7625, pair.Second - pair.First, 2));
    }

    [Fact]
    public void Stripes_are_a_quarter_wide_at_a_spacing_of_half_an_inch()
    {
        var stripes = Strokes("stripes navy cream")[0];
        var xs = Numbers(stripes, "M([-.0-9]+) 0V");

        Assert.Equal("6.35", (string?)stripes.Attribute("stroke-width"));
        Assert.All(xs.Zip(xs.Skip(1)), pair => Assert.Equal(12.7, pair.Second - pair.First, 2));
    }

    [Fact]
    public void A_plaid_repeats_every_inch()
    {
        var xs = Numbers(Strokes("plaid")[0], "M([-.0-9]+) 0V");

        Assert.All(xs.Zip(xs.Skip(1)), pair => Assert.Equal(25.4, pair.Second - pair.First, 2));
    }

    [Fact]
    public void Boards_are_three_quarters_wide()
    {
        var gaps = Numbers(Strokes("woodgrain")[^1], "M0 ([-.0-9]+)H");

        Assert.All(gaps.Zip(gaps.Skip(1)), pair => Assert.Equal(19.05, pair.Second - pair.First, 2));
    }

    [Fact]
    public void Regular_prints_lie_symmetrically_on_their_piece()
    {
        var xs = Numbers(Strokes("stripes navy cream")[0], "M([-.0-9]+) 0V");

        // The piece is 100 mm wide.
        Assert.Equal(100, xs[0] + xs[^1], 2);
    }

    [Fact]
    public void Scattered_stars_do_not_touch()
    {
        var stars = Strokes("stars navy cream").SelectMany(p => StarsOf((string)p.Attribute("d")!)).ToList();

        Assert.All(stars.SelectMany((a, i) => stars.Skip(i + 1).Select(b => (a, b))), pair =>
            Assert.True(Distance(pair.a.Centre, pair.b.Centre) >= pair.a.Radius + pair.b.Radius - 0.05));
    }

    [Fact]
    public void Copies_of_a_scattered_print_are_cut_from_different_parts_of_the_sheet()
    {
        var card = new CardFixture();
        for (var i = 0; i < 2; i++)
        {
            card.Add($"front/square[{i}]", PieceKind.Square, Shape.Square, CardFixture.Box(5 + i * 40, 5, 35, 35), "stars navy cream");
        }

        var prints = XElement.Parse(CardDrawing.Draw(card.Card(), FaceKind.Front)).Descendants(Svg + "g")
            .Where(g => g.Attribute("clip-path") is not null).Select(g => g.Element(Svg + "path")!.Attribute("d")!.Value);

        Assert.Equal(2, prints.Distinct().Count());
    }

    [Fact]
    public void A_piece_larger_than_any_sheet_shows_only_its_ground_colour()
    {
        var card = new CardFixture(2_000, 2_000)
            .Add("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(0, 0, 2_000, 2_000), "stars").Card();

        Assert.DoesNotContain("clip-path", CardDrawing.Draw(card, FaceKind.Front), StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_paper_is_hatched()
    {
        var piece = CardFixture.Make("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(0, 0, 50, 50), "white");
        var hatched = piece with { Paint = piece.Paint with { Look = new(PaperPattern.Hatched, piece.Paint.Look.Ground, []) } };

        Assert.Contains("clip-path", CardDrawing.Draw(new CardFixture().Add(hatched).Card(), FaceKind.Front), StringComparison.Ordinal);
    }

    private static XElement Star(string paper) => XElement.Parse(CardDrawing.Draw(
        new CardFixture().Add("front/lamp", PieceKind.Star, Shape.Star, CardFixture.Box(10, 10, 60, 57), paper).Card(), FaceKind.Front))
        .Elements(Svg + "g").Last();

    /// <summary>The figures on a panel of 100 x 120 mm.</summary>
    private static List<XElement> Strokes(string paper) =>
    [
        .. XElement.Parse(CardDrawing.Draw(
            new CardFixture().Add("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(2, 2, 100, 120), paper).Card(),
            FaceKind.Front))
            .Elements(Svg + "g").Last().Elements(Svg + "g").Single(g => g.Attribute("clip-path") is not null).Elements(),
    ];

    private static List<double> Numbers(XElement path, string pattern) =>
        [.. Regex.Matches((string)path.Attribute("d")!, pattern)
            .Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];

    /// <summary>Centre and radius of each star in a path; the even corners of a star are its five tips.</summary>
    private static IEnumerable<(Point Centre, double Radius)> StarsOf(string path)
    {
        foreach (var star in path.Split('Z', StringSplitOptions.RemoveEmptyEntries))
        {
            var numbers = NumberForm().Matches(star).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray();
            var corners = new List<Point> { new(numbers[0], numbers[1]) };
            for (var i = 2; i < numbers.Length; i += 2)
            {
                corners.Add(new(corners[^1].X + numbers[i], corners[^1].Y + numbers[i + 1]));
            }

            var tips = corners.Where((_, i) => i % 2 == 0).ToList();
            var centre = new Point(tips.Average(t => t.X), tips.Average(t => t.Y));
            yield return (centre, Distance(centre, tips[0]));
        }
    }

    private static double Distance(Point a, Point b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));

    [GeneratedRegex(@"-?[0-9]*\.?[0-9]+")]
    private static partial Regex NumberForm();

    [Fact]
    public void Any_offcut_is_drawn_in_patches_that_differ_from_one_another_and_from_white()
    {
        Rgb[] tints = [BuiltIn.AnyOffcut.Ground, .. BuiltIn.AnyOffcut.Figures];

        Assert.All(tints, t => Assert.InRange(ColourDifference.Between(t, new(255, 255, 255)), 8, 100));
        Assert.All(tints.SelectMany((a, i) => tints.Skip(i + 1).Select(b => (a, b))), pair =>
            Assert.InRange(ColourDifference.Between(pair.a, pair.b), 5, 100));
    }

    [Fact]
    public void Any_offcut_has_a_visible_edge()
    {
        var piece = CardFixture.Make("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(0, 0, 50, 50), "white");
        var patched = piece with { Paint = piece.Paint with { Look = BuiltIn.AnyOffcut } };
        var drawn = XElement.Parse(CardDrawing.Draw(new CardFixture().Add(patched).Card(), FaceKind.Front)).Elements(Svg + "g").Last();

        Assert.Contains(drawn.Descendants(Svg + "use"), u => (string?)u.Attribute("stroke") == "#8a8479");
    }
}
