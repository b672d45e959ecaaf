using System.Text.RegularExpressions;
using Sketch.Output.Handbook;
using Xunit;

namespace Sketch.Tests.Output.Handbook;

public sealed partial class HandbookHtmlTests
{
    private static string Html(string markdown) => Html(markdown, (_, _) => []);

    private static string Html(string markdown, Func<HandbookExample, string, IEnumerable<ExampleFigure>> plan)
    {
        var pages = HandbookPage.ReadAll("guide/a.md", new Dictionary<string, string>
        {
            ["guide/a.md"] = $"# A\n\n{markdown}\n",
            ["WORDS.md"] = "# Words\n",
        }.GetValueOrDefault);
        return new HandbookHtml(pages, "cards", new TestWorld(), (e, _, ids) => plan(e, ids)).Of(pages[0]);
    }

    private static int Drawings(string html) => Regex.Count(html, "<svg ");

    [Fact]
    public void A_card_stands_beside_its_drawing() => Assert.Equal(1, Drawings(Html("```card\ncard \"C\"\nbase A2, of white\n```")));

    [Fact]
    public void Pieces_alone_are_drawn_on_a_card() => Assert.Contains(
        "<title>star, 2 in wide, gold</title>", Html("```card pieces\nstar 2, of gold\n```"), StringComparison.Ordinal);

    [Fact]
    public void A_card_with_errors_has_no_drawing() => Assert.Equal(0, Drawings(Html("```card pieces\nstarr 2, of gold\n```")));

    [Fact]
    public void A_comment_is_left_out() =>
        Assert.DoesNotContain("generated", Html("<!-- generated: x > y.md -->\n\nWords."), StringComparison.Ordinal);

    [Fact]
    public void Any_other_block_of_code_is_shown_as_it_is() =>
        Assert.Contains("<span class=\"line\">a &lt; b\n</span>", Html("```text\na < b\n```"), StringComparison.Ordinal);

    [Fact]
    public void Another_face_is_drawn_if_the_example_asks_for_it() =>
        Assert.Equal(2, Drawings(Html(
            "```card inside\ncard \"C\"\nbase A2, of white\nfront\n  star 1, of gold\ninside\n  text \"ahoy\"\n```")));

    [Fact]
    public void A_pencil_sketch_has_the_number_of_the_line_of_each_piece() => Assert.Equal(
        ["1", "2"], Titles().Matches(Html("```card pieces rough\nstar 2, of gold\ncircle 1/2, top 1/4, of red\n```"))
            .Select(m => m.Groups[1].Value).Where(t => int.TryParse(t, out _)).Order());

    [Fact]
    public void Lines_that_the_example_before_does_not_have_are_marked() => Assert.Equal(
        ["circle 1, of red"], Marks().Matches(Html(
            "```card pieces\nstar 2, of gold\n```\nand\n```card pieces next\nstar 2, of gold\ncircle 1, of red\n```"))
            .Select(m => m.Groups[1].Value));

    [Fact]
    public void What_is_said_of_an_example_stands_beside_its_drawing_up_to_the_next_heading() => Assert.Matches(
        "(?s)<div class=\"said\">\n<p>It shines.</p>\n</div>\n</div>\n<h2",
        Html("```card pieces\nstar 2, of gold\n```\nIt shines.\n\n## Next"));

    [Fact]
    public void An_example_can_name_another_by_its_file() => Assert.Equal(2, Drawings(Html(
        "```card one.card\ncard \"One\"\nbase A2, of white\n```\n```card\ncard \"Two\"\nlike \"one.card\"\n```")));

    [Fact]
    public void The_plan_of_a_batch_is_drawn_if_the_example_asks_for_it()
    {
        static IEnumerable<ExampleFigure> Plan(HandbookExample example, string ids) => [new("plan of " + example.File, "")];

        Assert.Contains("plan of day.batch", Html("```batch day.batch plan\nbatch \"Day\"\n```", Plan), StringComparison.Ordinal);
        Assert.DoesNotContain("plan of", Html("```batch day.batch\nbatch \"Day\"\n```", Plan), StringComparison.Ordinal);
    }

    [Fact]
    public void No_two_elements_of_a_page_have_one_id()
    {
        const string Star = "```card pieces rough\nlamp: star 2, of gold\n```\n";

        var ids = Ids().Matches(Html(Star + Star + "## lamp\n")).Select(m => m.Groups[1].Value).ToList();

        Assert.Equal(ids.Distinct(), ids);
    }

    [Theory]
    [InlineData("[w](../WORDS.md#mats)", "<a href=\"../WORDS.html#mats\">w</a>")]
    [InlineData("[w](#mats)", "<a href=\"#mats\">w</a>")]
    [InlineData("[w](https://club.example)", "<a href=\"https://club.example\">w</a>")]
    [InlineData("[*w* x](gone.md)", "<p><em>w</em> x</p>")]
    [InlineData("[w](javascript:alert(1))", "<p>w</p>")]
    [InlineData("<javascript:alert(1)>", "<p>javascript:alert(1)</p>")]
    [InlineData("![boat](https://club.example/boat.png)", "<p>boat</p>")]
    [InlineData("<script>x</script>", "&lt;script&gt;")]
    public void A_link_leads_to_a_page_of_the_handbook_or_the_web_and_nothing_else_loads(string markdown, string html) =>
        Assert.Contains(html, Html(markdown), StringComparison.Ordinal);

    [GeneratedRegex("<title>([^<]*)</title>")]
    private static partial Regex Titles();

    [GeneratedRegex("<mark>([^<]*)</mark>")]
    private static partial Regex Marks();

    [GeneratedRegex(" id=\"([^\"]+)\"")]
    private static partial Regex Ids();
}
