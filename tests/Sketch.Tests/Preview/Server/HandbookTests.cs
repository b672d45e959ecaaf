using System.Net;
using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>The guide that comes with the page.</summary>
public sealed class HandbookTests : OnOpenedPage
{
    [Fact]
    public async Task The_guide_begins_with_a_list_of_its_pages() =>
        Assert.Contains("<h1 id=\"learn-sketch\">Learn Sketch</h1>", await Text("guide/index.html"), StringComparison.Ordinal);

    [Fact]
    public async Task Each_page_that_the_guide_names_is_there()
    {
        var named = Regex.Matches(await Text("guide/index.html"), "<li><a href=\"\\.\\./([^\"#]+)\"")
            .Select(m => m.Groups[1].Value).ToList();

        Assert.Contains("LANGUAGE.html", named);
        foreach (var page in named)
        {
            Assert.Contains("<h1 ", await Text(page), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Examples_are_drawn() =>
        Assert.Contains("<title>Lamp night: front</title>", await Text("guide/cheat-sheet.html"), StringComparison.Ordinal);

    [Theory]
    [InlineData("guide/none.html")]
    [InlineData("../page.js")]
    public async Task Any_other_page_is_not_there(string name) =>
        Assert.Equal(HttpStatusCode.NotFound, await Page.Status(Page.Read("handbook/" + Uri.EscapeDataString(name))));

    [Fact]
    public async Task The_style_of_a_page_is_allowed_by_its_policy()
    {
        using var answer = await Page.Send(Page.Read("handbook/guide/index.html"));
        var html = await answer.Content.ReadAsStringAsync(OpenedPage.Stop);

        var nonce = Regex.Match(html, "<style nonce=\"([0-9a-f]+)\">").Groups[1].Value;
        Assert.Contains($"'nonce-{nonce}'", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }

    private async Task<string> Text(string name)
    {
        using var answer = await Page.Send(Page.Read("handbook/" + name));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(OpenedPage.Stop);
    }
}
