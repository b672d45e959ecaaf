using Sketch.Output.Gallery;
using Xunit;

namespace Sketch.Tests.Output.Gallery;

public class MarkdownHtmlTests
{
    [Theory]
    [InlineData("<script>alert(1)</script>", "<script")]
    [InlineData("a <img src=x onerror=alert(1)> b", "<img")]
    [InlineData("[here](javascript:alert(1))", "javascript:")]
    [InlineData("[here](JaVaScRiPt:alert(1))", "JaVaScRiPt:")]
    [InlineData("<javascript:alert(1)>", "href=\"javascript")]
    [InlineData("[here](data:text/html;base64,xx)", "data:")]
    [InlineData("[here](//elsewhere.example/boat.png)", "elsewhere")]
    [InlineData("[here](/\\elsewhere.example/boat.png)", "elsewhere")]
    [InlineData("[here](\\\\\\\\elsewhere.example/boat.png)", "elsewhere")]
    [InlineData("[here](&#1;//elsewhere.example/boat.png)", "elsewhere")]
    [InlineData("[here][there]\n\n[there]: //elsewhere.example/boat.png", "elsewhere")]
    [InlineData("![boat](https://elsewhere.example/boat.png)", "<img")]
    public void Nothing_in_notes_runs_or_loads(string markdown, string never) =>
        Assert.DoesNotContain(never, MarkdownHtml.Of(markdown, 0), StringComparison.Ordinal);

    [Theory]
    [InlineData("**bold**", "<strong>bold</strong>")]
    [InlineData("[list](list.html)", "href=\"list.html\"")]
    [InlineData("[list](lists/a//b.html)", "href=\"lists/a//b.html\"")]
    [InlineData("[club](https://club.example/a?b=c:d)", "href=\"https://club.example/a?b=c:d\"")]
    [InlineData("- one\n- two", "<li>two</li>")]
    public void Notes_are_rendered_from_Markdown(string markdown, string html) =>
        Assert.Contains(html, MarkdownHtml.Of(markdown, 0), StringComparison.Ordinal);

    [Fact]
    public void Headings_of_notes_are_one_level_below_those_of_the_page() =>
        Assert.Contains("<h4>Cut</h4>", MarkdownHtml.Of("# Cut", 3), StringComparison.Ordinal);

    [Fact]
    public void A_link_without_text_has_an_accessible_name() =>
        Assert.Contains(">a.html</a>", MarkdownHtml.Of("[](a.html)", 0), StringComparison.Ordinal);
}
