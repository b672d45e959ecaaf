using System.Net;
using System.Net.Sockets;
using System.Text;
using Sketch.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>Oversized and malformed requests are rejected, and the page is still served.</summary>
public sealed class RequestLimitTests : OnOpenedPage
{
    private static readonly string[] SenselessChoices = ["", "=", "a=", "=b", "a=b/c/d"];

    private string Head(string method, string path, string headers = "") =>
        $"{method} {Page.Address.AbsolutePath}{path} HTTP/1.1\r\nHost: 127.0.0.1:{Page.Address.Port}\r\nOrigin: "
            + $"{Page.Origin}\r\nConnection: close\r\n{headers}\r\n";

    private static int StatusOf(string answer) =>
        answer.Length == 0 ? 0 : int.Parse(answer.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);

    [Theory]
    [InlineData("see")]
    [InlineData("save")]
    [InlineData("begin")]
    [InlineData("tidy")]
    [InlineData("forget")]
    [InlineData("plan")]
    [InlineData("keep")]
    public async Task A_body_with_a_huge_declared_length_is_rejected_before_it_is_sent(string path) =>
        Assert.Equal(413, StatusOf(
            await Page.Raw(Head("POST", path, "Content-Type: application/json\r\nContent-Length: 10000000000\r\n"))));

    [Fact]
    public async Task A_body_without_a_length_is_rejected_at_the_limit()
    {
        using var line = await Page.Connect();
        await line.SendAsync(Encoding.ASCII.GetBytes(
            Head("POST", "see", "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n")), OpenedPage.Stop);
        var part = Encoding.ASCII.GetBytes($"100000\r\n\"{new string(' ', 0x100000 - 1)}\r\n");
        var sent = 0L;
        try
        {
            // A gigabyte would be sent if it were accepted.
            for (; sent < 1L << 30; sent += part.Length)
            {
                for (var at = 0; at < part.Length;)
                {
                    at += await line.SendAsync(part.AsMemory(at), OpenedPage.Stop);
                }
            }
        }
        catch (SocketException)
        {
        }

        Assert.True(sent < 100_000_000, $"{sent} bytes were accepted.");
    }

    [Fact]
    public async Task A_text_too_large_to_read_back_is_not_saved()
    {
        var (_, stamp) = await Page.Open();
        var (status, json) = await Page.Save($"# {new string('a', TextContent.Limit)}", stamp);
        Assert.InRange((int)status, 400, 599);
        Assert.Contains("MB", json.GetProperty("problem").GetString(), StringComparison.Ordinal);
        Assert.Equal(OpenedPage.Card, (await Page.Open()).Text);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"text\"")]
    [InlineData("{\"file\":\"lamp.card\",}")]
    [InlineData("file=lamp.card")]
    public async Task A_body_that_is_not_JSON_is_rejected(string body) =>
        Assert.InRange((int)await Page.Status(Page.Say("see", new StringContent(body, Encoding.UTF8, "application/json"))), 400, 499);

    [Theory]
    [InlineData("{\"file\":\"lamp.card\",\"window\":\"window0000000001\",\"text\":\"\u00ff\"}")]
    [InlineData("{\"file\":\"lamp.card\",\"window\":\"window0000000001\",\"text\":\"\u00ff\\ud800\"}")]
    [InlineData("{\"\\ud800\":1,\"file\":\"lamp.card\",\"window\":\"window0000000001\",\"text\":\"\"}")]
    public async Task A_body_that_is_not_text_is_rejected(string body) =>
        Assert.Equal(HttpStatusCode.BadRequest, await Page.Status(Page.Say("see", new ByteArrayContent(Encoding.Latin1.GetBytes(body))
        {
            Headers = { ContentType = new("application/json") },
        })));

    // A page of another site can send these types without asking the server first.
    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data")]
    public async Task A_body_of_another_type_is_rejected(string type) =>
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, await Page.Status(Page.Say("see", new StringContent(
            "{\"file\":\"lamp.card\",\"window\":\"window0000000001\",\"text\":\"\"}", Encoding.UTF8, type))));

    [Theory]
    [InlineData("see", "{", HttpStatusCode.BadRequest, "The page sent an invalid request. Reload it.")]
    [InlineData("save", "{\"file\":null}", HttpStatusCode.BadRequest, "The page sent an invalid request. Reload it.")]
    [InlineData("see", "{\"choices\":[null]}", HttpStatusCode.BadRequest, "The page sent an invalid request. Reload it.")]
    [InlineData("nothing", "{}", HttpStatusCode.NotFound, "There is nothing at this address.")]
    public async Task The_page_gets_a_problem_for_what_no_route_answers(string path, string body, HttpStatusCode expected, string problem)
    {
        var (status, json) = await Page.Ask(Page.Say(path, new StringContent(body, Encoding.UTF8, "application/json")));
        Assert.Equal((expected, problem), (status, json.GetProperty("problem").GetString()));
    }

    [Fact]
    public async Task JSON_of_a_hundred_thousand_levels_is_rejected() =>
        Assert.Equal(HttpStatusCode.BadRequest,
            await Page.Status(Page.Say(
                "see", new StringContent($"{{\"file\":{new string('[', 100_000)}", Encoding.UTF8, "application/json"))));

    [Theory]
    [InlineData("{\"file\":7,\"window\":[],\"text\":{},\"choices\":\"a\",\"known\":7}")]
    [InlineData("{\"file\":\"lamp.card\",\"window\":\"../../x\",\"text\":\"card\"}")]
    [InlineData("{\"file\":\"lamp.card\",\"text\":\"card\"}")]
    [InlineData("{}")]
    public async Task JSON_of_another_form_is_rejected(string body) =>
        Assert.InRange((int)await Page.Status(Page.Say("see", new StringContent(body, Encoding.UTF8, "application/json"))), 400, 499);

    [Fact]
    public async Task Nonsensical_choices_do_no_harm() => Assert.Equal(
        HttpStatusCode.OK,
        await Page.Status(Page.Say(
            "see", new
            {
                file = "lamp.card",
                window = OpenedPage.Window,
                text = OpenedPage.Card,
                stamp = "",
                stash = "../../etc/passwd",
                choices = SenselessChoices
            })));

    [Fact]
    public async Task Headers_beyond_the_limit_are_rejected() =>
        Assert.Equal(431, StatusOf(await Page.Raw(Head("GET", "files", $"X-Long: {new string('a', 40_000)}\r\n"))));

    [Fact]
    public async Task An_address_beyond_the_limit_is_rejected() =>
        Assert.InRange(StatusOf(await Page.Raw(Head("GET", new string('a', 40_000)))), 400, 499);

    [Theory]
    [InlineData("GET / HTTP/1.1\r\n\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n")]
    [InlineData("\0\0\0\0\r\n\r\n")]
    [InlineData("\u0016\u0003\u0001\u0002\r\n\r\n")]
    public async Task A_request_that_is_not_HTTP_is_rejected(string request) => Assert.InRange(StatusOf(await Page.Raw(request)), 400, 499);

    [Fact]
    public async Task Parent_steps_in_the_address_lead_nowhere() =>
        Assert.InRange(StatusOf(await Page.Raw(Head("GET", "../../../../etc/passwd"))), 400, 499);

    [Fact]
    public async Task Too_many_requests_at_once_are_rejected_and_later_the_page_is_served_again()
    {
        var sent = 0;
        while (await Page.Status(Page.Read("none")) != HttpStatusCode.TooManyRequests)
        {
            Assert.True(++sent < 5000, "5000 requests were accepted.");
        }

        HttpStatusCode status;
        do
        {
            status = await Page.Status(Page.Read("files"));
        }
        while (status == HttpStatusCode.TooManyRequests);
        Assert.Equal(HttpStatusCode.OK, status);
    }

    [Fact]
    public async Task The_oldest_of_too_many_open_connections_is_closed()
    {
        var lines = new List<Socket>();
        try
        {
            var isClosed = false;
            while (!isClosed && lines.Count < 2000)
            {
                var line = await Page.Connect();
                lines.Add(line);
                // An open connection stays silent.
                isClosed = lines[0].Poll(TimeSpan.FromMilliseconds(20), SelectMode.SelectRead);
            }

            Assert.True(isClosed, $"{lines.Count} connections are open.");
        }
        finally
        {
            lines.ForEach(l => l.Dispose());
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("GET / HTTP/1.1\r\nHost: ")]
    [InlineData("GET /0123456789abcdef0123456789abcdef/files HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n\r\n")]
    public async Task The_page_is_served_while_many_connections_without_the_word_are_open(string said)
    {
        // A listener of the page itself stays connected as well.
        using var window = await Page.Listen(OpenedPage.Window);
        var lines = new List<Socket>();
        try
        {
            var words = Encoding.ASCII.GetBytes(said.Replace("PORT", $"{Page.Address.Port}", StringComparison.Ordinal));
            for (var i = 0; i < 400; i++)
            {
                var line = await Page.Connect();
                lines.Add(line);
                await line.SendAsync(words, OpenedPage.Stop);
            }

            for (var i = 0; i < 20; i++)
            {
                var answer = await Page.Raw(Head("GET", "files"));
                Assert.Equal(200, StatusOf(answer));
            }

            Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
            Assert.Equal("lamp.card", await OpenedPage.Reported(window));
        }
        finally
        {
            lines.ForEach(l => l.Dispose());
        }
    }
}
