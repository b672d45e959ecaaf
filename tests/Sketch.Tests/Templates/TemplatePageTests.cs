using System.Xml.Linq;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class TemplatePageTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static XElement FirstPage(string text, TemplateOptions? options = null) =>
        XDocument.Parse(Printed.Of(text, options).Pages[0].Svg).Root!;

    private static XElement Group(XElement page, string id) => page.Elements(Svg + "g").Single(g => (string)g.Attribute("id")! == id);

    [Fact]
    public void Kinds_of_line_are_groups_with_plain_ids()
    {
        var ids = FirstPage(Printed.Shapes).Elements(Svg + "g").Select(g => (string)g.Attribute("id")!);
        Assert.Equal(["cut", "fold", "marks", "words", "foot"], ids);
    }

    [Fact]
    public void Kinds_of_line_differ_by_more_than_colour()
    {
        var page = FirstPage(Printed.Shapes);
        Assert.NotEqual((string?)Group(page, "cut").Attribute("stroke-dasharray"), (string?)Group(page, "fold")
            .Attribute("stroke-dasharray"));
    }

    [Fact]
    public void Every_outline_has_an_id_derived_from_its_name()
    {
        var ids = Group(FirstPage(Printed.Shapes), "cut").Elements().Select(p => (string)p.Attribute("id")!).Order(StringComparer.Ordinal);
        Assert.Equal(["band-strip", "base", "disc-circle", "field-panel"], ids);
    }

    [Fact]
    public void Pages_have_no_transforms_or_clips_or_filters_for_cutting_machines() =>
        Assert.DoesNotMatch("transform|clip|filter|<use|<style", string.Concat(Printed.Of(Printed.Shapes).Pages.Select(p => p.Svg)));

    [Fact]
    public void The_first_page_has_the_safety_advice()
    {
        var words = Group(FirstPage(Printed.Shapes), "words").ToString();
        Assert.All(["cutting mat", "metal ruler", "fingers", "Guillotines and trimmers"], w =>
            Assert.Contains(w, words, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_page_says_how_to_print_it_to_scale() =>
        Assert.All(
            Printed.Of(Printed.Shapes).Pages, p => Assert.Contains("Print at 100 %, no fit to page", p.Svg, StringComparison.Ordinal));

    [Fact]
    public void A_label_gives_name_and_material_and_both_sizes_and_count()
    {
        var words = Group(FirstPage(Printed.Shapes), "words").Elements().Select(e => e.Value);
        Assert.Contains("field: panel / blue / 2 x 3 in / 50.8 x 76.2 mm / cut 1", words);
    }

    [Fact]
    public void Copies_are_drawn_once_with_their_count()
    {
        var templates = Printed.Of("card \"Test\"\nbase A2, fold left, of white\nfront\n  5 star 3/4, in a row, spread, of red\n");
        Assert.Equal([1, 5], templates.Pieces.Select(p => p.Count));
    }

    [Fact]
    public void The_same_piece_of_two_cards_is_drawn_once()
    {
        var card = Laid.Out(Printed.Shapes);
        Assert.All(Printed.Of([card, card]).Pieces, p => Assert.Equal(2, p.Count));
    }

    [Fact]
    public void The_same_outline_in_another_paper_is_drawn_separately()
    {
        var templates = Printed.Of(
            "card \"Test\"\nbase A2, fold left, of white\nfront\n  a: star 1, left 0, of red\n  b: star 1, right 0, of blue\n");
        Assert.Equal(3, templates.Pieces.Length);
    }

    [Fact]
    public void A_wrap_is_cut_with_the_piece_and_folded_at_its_end()
    {
        var band = Printed.Of(Printed.Shapes).Pieces.Single(p => p.Name == "band: strip");
        Assert.Equal((76.2, 6.35), (Math.Round(band.Outline.Bounds.Width, 6), Math.Round(band.Outline.Bounds.Height, 6)));
        Assert.Equal([6.35, 69.85], band.Folds.Select(f => Math.Round(f.From.X, 6)));
    }

    [Fact]
    public void The_base_is_flat_with_its_score_in_the_middle_and_its_grain_along_it()
    {
        var flat = Printed.Of(Printed.Shapes).Pieces[0];
        Assert.Equal((new Point(76.2, 0), new Point(76.2, 101.6)), Assert.Single(flat.Folds));
        Assert.Equal(0, flat.Grain!.Value.Half.X);
    }

    [Theory]
    [InlineData("left", "front, score this side")]
    [InlineData("top", "front, score this side")]
    [InlineData("z", "front")]
    public void The_base_says_which_part_is_the_front_and_which_side_to_score(string fold, string words)
    {
        var templates = Printed.Of($"card \"Test\"\nbase 3 x 3, fold {fold}, of white\nfront\n  panel 2 x 2, of red\n");
        var (_, block, line) = templates.Line("base");
        var text = Assert.Single(block.Block.Texts, t => t.Words.StartsWith("front", StringComparison.Ordinal));
        Assert.Equal(words, text.Words.Replace(" / ", " ", StringComparison.Ordinal));

        // The arrow along the grain is in the first panel: the back of a card folded once, the front of a z.
        var lines = block.Block.Lines;
        var (score, arrow) = (lines.First(l => l.Kind == LineKind.Fold).Bounds, lines.First(l => l.Name == "grain").Bounds);
        var isSame = score.Width < score.Height
            ? text.Box.Centre.X < score.Left == arrow.Centre.X < score.Left : text.Box.Centre.Y < score.Top == arrow.Centre.Y < score.Top;
        Assert.Equal(fold == "z", isSame);
        Assert.True(line.Bounds.Covers(text.Box));
    }

    [Fact]
    public void The_legend_shows_the_kinds_of_line_on_the_page_and_no_others()
    {
        var pages = Printed.Of(Printed.Shapes).Pages;
        Assert.Equal(["cut", "fold", "grain"], Legend(pages[0].Svg));
        Assert.Equal(["place", "edge"], Legend(pages[1].Svg));

        static IEnumerable<string> Legend(string svg) => XDocument.Parse(svg).Descendants(Svg + "path")
            .Select(p => (string?)p.Attribute("id") ?? "").Where(id => id.StartsWith("sample-", StringComparison.Ordinal))
            .Select(id => id["sample-".Length..]);
    }

    [Fact]
    public void Plain_rectangles_can_be_left_out()
    {
        var templates = Printed.Of(Printed.Shapes, Printed.OnLetter with { OnlyShapes = true });
        Assert.Equal(["disc: circle", "band: strip"], templates.Pieces.Select(p => p.Name));
        Assert.Contains("Plain rectangles are left out", Group(XDocument.Parse(templates.Pages[0].Svg).Root!, "words").ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_mixed_number_is_never_broken_between_two_lines()
    {
        var lettering = new TemplateLettering(new FolderFiles(fonts: new FontLibrary([])));
        Assert.All(Enumerable.Range(10, 60), width => Assert.DoesNotContain(
            lettering.Wrap("about 1 3/4 x 11 1/16 in and 2 times", width), line => line.EndsWith(" 1", StringComparison.Ordinal)
                || line is "1" or "11" || line.EndsWith(" 11", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_window_in_the_base_is_cut_in_its_front_half()
    {
        var flat = Printed.Of("card \"Test\"\nbase 4 x 4, fold left, of white\nfront\n  window circle 2, left 1/2, top 1\n").Pieces[0];
        var hole = new Outline([flat.Outline.Contours[1]]).Bounds;
        Assert.Equal((101.6 + 12.7, 25.4), (Math.Round(hole.Left, 3), Math.Round(hole.Top, 3)));
    }
}
