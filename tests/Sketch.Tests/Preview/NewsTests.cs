using System.Net;
using System.Net.WebSockets;
using Xunit;

namespace Sketch.Tests.Preview;

public sealed class NewsTests : OnOpenedPage
{
    [Fact]
    public async Task A_window_is_told_which_file_another_program_saved()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
        Assert.Equal("lamp.card", await OpenedPage.Told(window));
    }

    [Fact]
    public async Task Many_windows_are_told_and_can_ask()
    {
        // A browser keeps six plain connections to a server.
        var windows = await Task.WhenAll(Enumerable.Range(10, 20).Select(n => Page.Listen($"window00000000{n}")));
        Page.Write("lamp.card", OpenedPage.Card + "# by another hand\n");
        Assert.All(await Task.WhenAll(windows.Select(OpenedPage.Told)), told => Assert.Equal("lamp.card", told));
        foreach (var window in windows)
        {
            window.Dispose();
        }
    }

    [Fact]
    public async Task A_page_of_another_origin_is_told_nothing()
    {
        // RFC 6455, section 10.2: a server that is meant for one page checks the origin of the handshake.
        var refused = await Assert.ThrowsAsync<WebSocketException>(() => Page.Listen(OpenedPage.Window, "http://example.org"));
        Assert.Contains("403", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_window_that_speaks_is_told_nothing_more()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        await window.SendAsync(new byte[10_000], WebSocketMessageType.Binary, true, OpenedPage.Stop);
        await Assert.ThrowsAsync<WebSocketException>(() => OpenedPage.Told(window));
    }

    [Fact]
    public async Task Without_a_socket_there_is_no_news() => Assert.Equal(HttpStatusCode.BadRequest, await Page.Status(Page.Read($"news?window={OpenedPage.Window}")));
}
