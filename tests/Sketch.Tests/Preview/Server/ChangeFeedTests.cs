using System.Net;
using System.Net.WebSockets;
using Sketch.Preview.Server;
using Xunit;

namespace Sketch.Tests.Preview.Server;

public sealed class NewsTests : OnOpenedPage
{
    [Fact]
    public async Task A_window_is_reported_which_file_another_program_saved()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
        Assert.Equal("lamp.card", await OpenedPage.Reported(window));
    }

    [Fact]
    public async Task Many_windows_are_reported_and_can_ask()
    {
        // A browser keeps six plain connections to a server.
        var windows = await Task.WhenAll(Enumerable.Range(10, 20).Select(n => Page.Listen($"window00000000{n}")));
        Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
        Assert.All(await Task.WhenAll(windows.Select(OpenedPage.Reported)), reported => Assert.Equal("lamp.card", reported));
        foreach (var window in windows)
        {
            window.Dispose();
        }
    }

    [Fact]
    public async Task A_page_of_another_origin_is_reported_nothing()
    {
        // RFC 6455, section 10.2: a server that is meant for one page checks the origin of the handshake.
        var refused = await Assert.ThrowsAsync<WebSocketException>(() => Page.Listen(OpenedPage.Window, "http://example.org"));
        Assert.Contains("403", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_window_that_speaks_is_reported_nothing_more()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        await window.SendAsync(new byte[10_000], WebSocketMessageType.Binary, true, OpenedPage.Stop);
        await Assert.ThrowsAsync<WebSocketException>(() => OpenedPage.Reported(window));
    }

    [Fact]
    public async Task A_window_too_many_is_reported_so_in_words_that_its_page_can_read()
    {
        var windows = await Task.WhenAll(Enumerable.Range(100, 60).Select(n => Page.Listen($"window0000000{n}")));
        using var tooMany = await Page.Socket(OpenedPage.Window);
        await tooMany.ReceiveAsync(new byte[1], OpenedPage.Stop);
        // Codes from 4000 are for private use (RFC 6455, section 7.4.2).
        Assert.Equal(4000, (int?)tooMany.CloseStatus);
        Assert.Matches("too many windows. Close one of them.*\\.$", tooMany.CloseStatusDescription);
        foreach (var window in windows)
        {
            window.Dispose();
        }
    }

    [Fact]
    public async Task A_listener_that_misses_names_while_it_is_busy_with_one_is_reported_that_any_may_have_changed()
    {
        var news = new ChangeFeed();
        await using var reported = news.Listen(OpenedPage.Stop).GetAsyncEnumerator(OpenedPage.Stop);
        Assert.Null(await Next());
        for (var i = 0; i < 1000; i++)
        {
            news.Report($"{i}.card");
        }

        var last = await Next();
        for (var i = 0; i < 1000 && last is not null; i++)
        {
            last = await Next();
        }

        Assert.Null(last);

        async Task<string?> Next()
        {
            // All is told already, so it never has to wait.
            var next = reported.MoveNextAsync();
            Assert.True(next.IsCompletedSuccessfully, "Nothing more is reported.");
            Assert.True(await next);
            return reported.Current;
        }
    }

    [Fact]
    public async Task Without_a_socket_there_is_no_news() =>
        Assert.Equal(HttpStatusCode.BadRequest, await Page.Status(Page.Read($"news?window={OpenedPage.Window}")));
}
