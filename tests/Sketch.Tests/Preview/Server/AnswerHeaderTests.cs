using System.Net;
using System.Text;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>The headers of every response, so that only this page can use it.</summary>
public sealed class AnswerHeaderTests : OnOpenedPage
{
    public static TheoryData<string> Answers() =>
        ["page", "script", "style", "files", "see", "no such address", "no such file", "no word", "foreign name", "foreign page",
            "no JSON", "too large"];

    private HttpRequestMessage Request(string answer)
    {
        var request = answer switch
        {
            "page" => Page.Read(""),
            "script" => Page.Read("page.js"),
            "style" => Page.Read("page.css"),
            "files" or "foreign name" => Page.Read("files"),
            "see" => Page.See(OpenedPage.Card),
            "no such address" => Page.Read("secret"),
            "no such file" => Page.Read("text?file=none.card"),
            "no word" => new(HttpMethod.Get, $"{Page.Origin}/"),
            "foreign page" => Page.See(OpenedPage.Card),
            "no JSON" => Page.Say("see", new StringContent("{", Encoding.UTF8, "application/json")),
            _ => Page.Say("see", new ByteArrayContent(new byte[30_000_000]) { Headers = { ContentType = new("application/json") } }),
        };
        if (answer == "foreign name")
        {
            request.Headers.Host = $"lighthouse.example:{Page.Address.Port}";
        }
        else if (answer == "foreign page")
        {
            request.Headers.Remove("Origin");
            request.Headers.Add("Origin", "https://lighthouse.example");
        }

        return request;
    }

    private async Task<string> Header(string answer, string name)
    {
        using var request = Request(answer);
        // A rejected body is not read, so the response comes before it is sent completely.
        request.Headers.ExpectContinue = answer == "too large";
        using var response = await Page.Send(request);
        return string.Join(", ", response.Headers.Concat(response.Content.Headers)
            .Where(h => h.Key.Equals(name, StringComparison.OrdinalIgnoreCase)).SelectMany(h => h.Value));
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task The_page_may_load_nothing_from_other_hosts(string answer)
    {
        var policy = (await Header(answer, "Content-Security-Policy")).Split("; ").Select(d => d.Split(' ', 2))
            .ToDictionary(d => d[0], d => d[1]);
        Assert.Equal(
            ("'none'", "'self'", "'self'", "'none'", "'none'", "'none'"),
            (policy["default-src"], policy["script-src"], policy["connect-src"], policy["frame-ancestors"], policy["form-action"],
                policy["base-uri"]));
        Assert.DoesNotContain("unsafe", string.Join(' ', policy.Values), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task Content_types_are_not_guessed(string answer) =>
        Assert.Equal("nosniff", await Header(answer, "X-Content-Type-Options"));

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task The_secret_word_is_sent_to_no_other_host(string answer) =>
        Assert.Equal("no-referrer", await Header(answer, "Referrer-Policy"));

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task The_browser_caches_nothing(string answer) => Assert.Equal("no-store", await Header(answer, "Cache-Control"));

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task No_other_page_may_embed_it(string answer) =>
        Assert.Equal("same-origin", await Header(answer, "Cross-Origin-Resource-Policy"));

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task No_other_page_may_read_the_response(string answer) =>
        Assert.Equal("", await Header(answer, "Access-Control-Allow-Origin"));

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task The_server_does_not_identify_itself(string answer) => Assert.Equal("", await Header(answer, "Server"));

    [Fact]
    public async Task The_style_nonce_differs_each_time() =>
        Assert.NotEqual(await Header("page", "Content-Security-Policy"), await Header("page", "Content-Security-Policy"));

    [Fact]
    public async Task A_request_rejected_for_load_has_these_headers_too()
    {
        for (var i = 0; i < 5000; i++)
        {
            using var request = Page.Read("none");
            using var response = await Page.Send(request);
            if (response.StatusCode == HttpStatusCode.TooManyRequests)
            {
                Assert.True(response.Headers.Contains("Content-Security-Policy"));
                return;
            }
        }

        Assert.Fail("5000 requests were accepted.");
    }
}
