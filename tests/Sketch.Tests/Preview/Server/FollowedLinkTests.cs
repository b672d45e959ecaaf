using System.Net;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>A browser that follows a link to a file that cannot be made shows an explanation.</summary>
public sealed class FollowedLinkTests : OnOpenedPage
{
    // The headers that Chromium and Firefox send when a link is followed.
    private const string Browser = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

    private async Task<HttpResponseMessage> Answer(string address, string accept)
    {
        using var request = Page.Read(address);
        request.Headers.Add("Accept", accept);
        return await Page.Send(request);
    }

    [Theory]
    [InlineData("templates.pdf?file=none.card", HttpStatusCode.NotFound)]
    [InlineData("workbook.pdf?file=lamp.card", HttpStatusCode.NotFound)]
    [InlineData("cuts.csv?file=lamp.card", HttpStatusCode.NotFound)]
    [InlineData("left.stash?file=lamp.card", HttpStatusCode.NotFound)]
    public async Task The_response_is_a_page(string address, HttpStatusCode status)
    {
        using var answer = await Answer(address, Browser);
        Assert.Equal((status, "text/html"), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
        Assert.Matches(@"<p>[^<{]+\.</p>", await answer.Content.ReadAsStringAsync(OpenedPage.Stop));
    }

    [Fact]
    public async Task Its_style_is_allowed_by_the_policy()
    {
        using var answer = await Answer("workbook.pdf?file=lamp.card", Browser);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        var nonce = policy.Split("'nonce-")[1].Split('\'')[0];
        Assert.Contains($"<style nonce=\"{nonce}\">", await answer.Content.ReadAsStringAsync(OpenedPage.Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_from_the_address_is_escaped()
    {
        using var answer = await Answer("templates.pdf?file=%3Cscript%3Ealert(1)%3C/script%3E", Browser);
        Assert.DoesNotContain("<script", await answer.Content.ReadAsStringAsync(OpenedPage.Stop), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_script_gets_JSON_from_the_same_address()
    {
        using var answer = await Answer("workbook.pdf?file=lamp.card", "*/*");
        Assert.Equal("application/json", answer.Content.Headers.ContentType?.MediaType);
    }
}
