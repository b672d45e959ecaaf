using System.Net;
using System.Net.WebSockets;
using Sketch.Preview.Server;
using Xunit;

namespace Sketch.Tests.Preview.Server;

public sealed class ChangeFeedTests : OnOpenedPage
{
    [Fact]
    public async Task A_window_is_notified_of_a_file_that_another_program_saved()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
        Assert.Equal("lamp.card", await OpenedPage.Reported(window));
    }

    [Fact]
    public async Task Many_windows_are_notified_and_can_send_requests()
    {
        // A browser opens at most six HTTP connections to a server.
        var windows = await Task.WhenAll(Enumerable.Range(10, 20).Select(n => Page.Listen($"window00000000{n}")));
        Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
        Assert.All(await Task.WhenAll(windows.Select(OpenedPage.Reported)), reported => Assert.Equal("lamp.card", reported));
        foreach (var window in windows)
        {
            window.Dispose();
        }
    }

    [Fact]
    public async Task A_page_of_another_origin_is_not_notified()
    {
        // RFC 6455, section 10.2: a server for one page checks the origin of the handshake.
        var refused = await Assert.ThrowsAsync<WebSocketException>(() => Page.Listen(OpenedPage.Window, "http://example.org"));
        Assert.Contains("403", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_window_that_sends_a_message_is_disconnected()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        await window.SendAsync(new byte[10_000], WebSocketMessageType.Binary, true, OpenedPage.Stop);
        await Assert.ThrowsAsync<WebSocketException>(() => OpenedPage.Reported(window));
    }

    [Fact]
    public async Task One_window_too_many_gets_a_reason_that_its_page_can_show()
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
    public async Task A_listener_that_misses_names_while_busy_is_notified_that_any_file_may_have_changed()
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
            // All names are pending already, so this never waits.
            var next = reported.MoveNextAsync();
            Assert.True(next.IsCompletedSuccessfully, "No further name was sent.");
            Assert.True(await next);
            return reported.Current;
        }
    }

    [Fact]
    public async Task Without_a_socket_there_are_no_notifications() =>
        Assert.Equal(HttpStatusCode.BadRequest, await Page.Status(Page.Read($"news?window={OpenedPage.Window}")));
}
