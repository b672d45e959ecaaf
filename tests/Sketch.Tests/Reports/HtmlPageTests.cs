using Sketch.Reports;
using Xunit;

namespace Sketch.Tests.Reports;

public sealed class HtmlPageTests
{
    [Fact]
    public void The_title_is_plain_text() =>
        Assert.Contains("<title>Lamp &lt;script&gt;</title>", HtmlPage.Begin("Lamp <script>", ""), StringComparison.Ordinal);

    // HTML 4.2.5.4: the character set must be in the first 1024 bytes.
    [Fact]
    public void The_character_set_comes_before_the_title() =>
        Assert.Matches(
            "(?s)^<!DOCTYPE html>.*<!-- mark -->.*<meta charset=\"utf-8\">.*<title>", HtmlPage.Begin("Lamp", "", "<!-- mark -->"));

    [Fact]
    public void A_style_carries_its_nonce() =>
        Assert.StartsWith("<style nonce=\"word\">", HtmlPage.Style("h1 { margin: 0 }", "word"), StringComparison.Ordinal);
}
