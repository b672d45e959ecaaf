using Sketch.Shapes;
using Sketch.Templates;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class PlacementGuideTests
{
    private const string Harbour =
        "card \"Harbour\"\nbase A2, fold left, of white\nfront\n  sky: panel 3 x 4, left 1/2, top 1/2, of blue\n    mat +1/8, of "
            + "navy\n    lamp: star 1 1/2, left 1/4, top 1/4, of red\n"
        + "    3 gem 1/8, in a row, gap 1/16, right 1/4, bottom 1/4, of red\ninside\n  strip full x 1/2, bottom 1/4, of cream\n";

    private static List<TemplateBlock> Guides(TemplateOptions? options = null, string text = Harbour) =>
        [.. Printed.Of(text, options).Sheets.SelectMany(s => s.Blocks).Select(b => b.Block)
            .Where(b => b.Lines.Any(l => l.Kind == LineKind.Edge))];

    /// <summary>The list of the front of <see cref="Harbour"/>: the number and the words of each of its four steps.</summary>
    private static IEnumerable<string> List() => Guides()[0].Texts.TakeLast(8)
        .Select(t => t.Words.Replace(" / ", " ", StringComparison.Ordinal));

    /// <summary>Boxes of the pieces, relative to the upper left corner of the face.</summary>
    private static List<Bounds> Places(TemplateBlock guide)
    {
        var edge = guide.Lines.Single(l => l.Kind == LineKind.Edge).Bounds;
        return [.. guide.Lines.Where(l => l.Kind == LineKind.Place).Select(l => l.Bounds)
            .Select(b => new Bounds(b.Left - edge.Left, b.Top - edge.Top, b.Right - edge.Left, b.Bottom - edge.Top))];
    }

    [Fact]
    public void Every_face_with_pieces_has_a_guide() =>
        Assert.Equal(["Harbour, front: where each piece goes", "Harbour, inside: where each piece goes"],
            Guides().Select(g => g.Texts[0].Words.Replace(" / ", " ", StringComparison.Ordinal)));

    [Fact]
    public void Guides_share_pages_with_pieces_where_there_is_room()
    {
        // Two pages hold all pieces, and the front is drawn under the panel and its mat.
        var sheets = Printed.Of(Harbour).Sheets;
        Assert.Equal(3, sheets.Length);
        Assert.Contains(sheets[1].Blocks, b => b.Block.Lines.Any(l => l.Kind == LineKind.Cut));
        Assert.Contains(sheets[1].Blocks, b => b.Block.Lines.Any(l => l.Kind == LineKind.Edge));
    }

    [Fact]
    public void A_page_with_guides_only_is_titled_by_them() => Assert.All(
        Printed.SampleTemplates().SelectMany(t => t.Sheets).Where(s => s.Blocks.All(b => b.Block.Lines.Any(l => l.Kind == LineKind.Edge))),
        s => Assert.Contains("where each piece goes", s.Title, StringComparison.Ordinal));

    [Fact]
    public void A_guide_that_takes_whole_pages_comes_before_pages_with_guides_only()
    {
        // The front takes pages of its own, because its list is long; the inside finds no room beside the pieces.
        var everything = Printed.SampleTemplates()[Printed.Samples().ToList().FindIndex(c => c.Title == "Everything at once")];
        var titles = everything.Sheets.Select(s => s.Title).ToList();
        Assert.True(titles.FindIndex(t => t.Contains("front", StringComparison.Ordinal))
            < titles.FindIndex(t => t.Contains("inside", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_face_has_the_size_of_the_card()
    {
        var edge = Guides()[0].Lines.Single(l => l.Kind == LineKind.Edge).Bounds;
        Assert.Equal((107.95, 139.7), (Math.Round(edge.Width, 6), Math.Round(edge.Height, 6)));
    }

    [Fact]
    public void Pieces_have_the_places_of_the_card()
    {
        // From the file: the edge of the mat is half an inch from both sides, and the panel is a sixteenth further in.
        var places = Places(Guides()[0]);
        Assert.Equal(12.7, places[0].Left, 6);
        Assert.Equal(12.7, places[0].Top, 6);
        Assert.Equal(12.7 + 1.5875, places[1].Left, 6);
    }

    /// <summary>
    /// A banner of 3 x 1/2 in with a notch of 1/4 in at its left end: the middle of the remaining part lies 1/8 in right of the banner's.
    /// </summary>
    [Fact]
    public void Words_on_paper_are_marked_at_their_place()
    {
        const string banner = "card \"Harbour\"\nbase A2, fold left, of white\nfront\n  banner 3 x 1/2 \"ahoy\", left 0, swallowtail "
            + "left, letters 3/16, of cream\n";
        var line = Assert.Single(Guides(text: banner)[0].Lines, l => l.Name == "words on 2");
        var edge = Guides(text: banner)[0].Lines.Single(l => l.Kind == LineKind.Edge).Bounds;
        Assert.Equal(LineKind.Place, line.Kind);
        Assert.Equal(1.625 * 25.4, line.Bounds.Centre.X - edge.Left, 6);
    }

    [Fact]
    public void The_mirrored_page_shows_the_face_from_the_back()
    {
        var guides = Guides(Printed.OnLetter with { Mirror = true });
        var (plain, mirrored) = (Places(guides[0]), Places(guides[1]));
        Assert.All(plain.Zip(mirrored), p =>
        {
            Assert.Equal(107.95 - p.First.Right, p.Second.Left, 6);
            Assert.Equal(p.First.Top, p.Second.Top, 6);
        });
    }

    [Fact]
    public void Steps_have_the_numbers_of_the_assembly_and_copies_share_a_number()
    {
        var list = List().Select(words => words.Split(", on ")[0]);
        Assert.Equal(["2", "lamp: star", "3", "sky: panel", "4", "mat behind sky", "5", "gem, 3 times"], list);
    }

    [Fact]
    public void Each_step_says_how_far_from_two_edges_it_goes() =>
        Assert.Contains("lamp: star, on sky, 1/4 in from the left edge and 1/4 in from the top edge", List());

    [Fact]
    public void Each_number_is_on_the_picture()
    {
        var numbers = Guides()[0].Texts.Skip(1).SkipLast(8).Select(t => t.Words).Distinct().Order(StringComparer.Ordinal);
        Assert.Equal(["2", "3", "4", "5"], numbers);
    }

    [Fact]
    public void A_number_inside_a_piece_touches_no_line()
    {
        foreach (var picture in Printed.SampleTemplates().SelectMany(t => t.Sheets).SelectMany(s => s.Blocks).Select(b => b.Block)
            .Where(b => b.Lines.Any(l => l.Kind == LineKind.Place)))
        {
            var stretches = picture.Lines.Where(l => l.Kind == LineKind.Place).SelectMany(Stretch.Of).ToList();
            foreach (var box in picture.Texts.Select(t => t.Letters.Bounds))
            {
                Assert.DoesNotContain(stretches, s => s.Crosses(box));
            }
        }
    }

    [Fact]
    public void A_long_list_continues_on_pages_of_its_own()
    {
        var lines = string.Concat(
            Enumerable.Range(1, 70).Select(i => $"  p{i}: square 1/4, left {i % 8 / 2.0 + 0.1:0.00}, top {i / 16.0 + 0.1:0.00}, of red\n"));
        var sheets = Printed.Of($"card \"Many\"\nbase A2, fold left, of white\nfront\n{lines}");
        Assert.Equal(70, sheets.Sheets.SelectMany(s => s.Blocks).SelectMany(b => b.Block.Texts)
            .Count(t => t.Words.Contains(": square, on the front", StringComparison.Ordinal)));
    }
}
