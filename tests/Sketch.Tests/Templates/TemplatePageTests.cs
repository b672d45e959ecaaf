using System.Xml.Linq;
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

    [Fact]
    public void A_window_in_the_base_is_cut_in_its_front_half()
    {
        var flat = Printed.Of("card \"Test\"\nbase 4 x 4, fold left, of white\nfront\n  window circle 2, left 1/2, top 1\n").Pieces[0];
        var hole = new Outline([flat.Outline.Contours[1]]).Bounds;
        Assert.Equal((101.6 + 12.7, 25.4), (Math.Round(hole.Left, 3), Math.Round(hole.Top, 3)));
    }
}
