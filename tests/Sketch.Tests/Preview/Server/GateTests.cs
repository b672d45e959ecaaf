using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>Nobody but the page itself is answered. Each request here is one that a hostile page or program can make.</summary>
public sealed class GateTests : OnOpenedPage
{
    private HttpRequestMessage Saving =>
        Page.Say("save", new { file = "lamp.card", window = OpenedPage.Window, text = "changed", stamp = "" });

    private static async Task IsRefused(OpenedPage page, HttpRequestMessage request)
    {
        using (request)
        {
            using var response = await page.Send(request);
            var reported = await response.Content.ReadAsStringAsync(OpenedPage.Stop);
            Assert.True((int)response.StatusCode is >= 400 and < 500, $"{response.StatusCode}: {reported}");
            Assert.DoesNotContain("lamp", reported, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public async Task The_page_itself_is_answered() => Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Read("files")));

    [Theory]
    [InlineData("")]
    [InlineData("files")]
    [InlineData("page.js")]
    [InlineData("/files")]
    public Task A_request_without_the_word_is_refused(string path) => IsRefused(Page, new(HttpMethod.Get, $"{Page.Origin}/{path}"));

    [Fact]
    public Task A_request_with_another_word_is_refused() =>
        IsRefused(Page, new(HttpMethod.Get, $"{Page.Origin}/{new string('0', 32)}/files"));

    [Fact]
    public Task A_request_with_a_part_of_the_word_is_refused() =>
        IsRefused(Page, new(HttpMethod.Get, $"{Page.Address.AbsoluteUri[..^2]}/files"));

    [Fact]
    public async Task What_the_command_line_of_a_browser_shows_to_others_leads_in_once()
    {
        using var first = await Page.Send(new(HttpMethod.Get, Page.OnceAddress));
        using var second = await Page.Send(new(HttpMethod.Get, Page.OnceAddress));

        Assert.Equal((HttpStatusCode.Redirect, Page.Address.AbsolutePath), (first.StatusCode, first.Headers.Location?.OriginalString));
        Assert.Equal(HttpStatusCode.NotFound, second.StatusCode);
    }

    [Fact]
    public async Task The_word_is_another_at_every_start()
    {
        var before = Page.Address.Segments[1];
        await Page.Serve();
        Assert.NotEqual(before, Page.Address.Segments[1]);
    }

    [Fact]
    public void The_word_has_at_least_128_bits() => Assert.True(Page.Address.Segments[1].TrimEnd('/').Length * 4 >= 128);

    [Theory]
    [InlineData("lighthouse.example")]
    [InlineData("127.0.0.1.lighthouse.example")]
    [InlineData("localhost.lighthouse.example")]
    [InlineData("192.168.1.20")]
    [InlineData("0.0.0.0")]
    public async Task A_foreign_name_that_points_to_this_machine_is_refused(string host)
    {
        // DNS rebinding: the browser believes to speak with that name, and so gives its pages the answers.
        var request = Page.Read("files");
        request.Headers.Host = $"{host}:{Page.Address.Port}";
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:80")]
    [InlineData("localhost:1")]
    public async Task A_name_with_another_port_is_refused(string host)
    {
        var request = Page.Read("files");
        request.Headers.Host = host;
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("https://lighthouse.example")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://localhost")]
    [InlineData("null")]
    public async Task A_request_from_another_page_is_refused(string origin)
    {
        var request = Saving;
        request.Headers.Remove("Origin");
        request.Headers.Add("Origin", origin);
        await IsRefused(Page, request);
    }

    [Fact]
    public async Task Another_page_may_not_even_read()
    {
        var request = Page.Read("files");
        request.Headers.Add("Origin", "https://lighthouse.example");
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public async Task A_request_that_the_browser_marks_as_foreign_is_refused(string site)
    {
        var request = Saving;
        request.Headers.Remove("Sec-Fetch-Site");
        request.Headers.Add("Sec-Fetch-Site", site);
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public async Task A_link_from_another_page_is_refused(string site)
    {
        var request = Page.Read("");
        request.Headers.Add("Sec-Fetch-Site", site);
        await IsRefused(Page, request);
    }

    [Fact]
    public async Task A_form_of_another_page_that_says_no_origin_is_refused()
    {
        var request = Saving;
        request.Headers.Remove("Origin");
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    public async Task Other_methods_are_refused(string method)
    {
        using var request = new HttpRequestMessage(new(method), new Uri(Page.Address, "save"));
        Assert.InRange((int)await Page.Status(request), 400, 499);
    }

    [Fact]
    public async Task A_refused_saving_writes_nothing()
    {
        var request = Saving;
        request.Headers.Remove("Origin");
        request.Headers.Add("Origin", "https://lighthouse.example");
        await Page.Status(request);
        Assert.Equal(OpenedPage.Card, await File.ReadAllTextAsync(Page.At("lamp.card"), OpenedPage.Stop));
    }

    [Fact]
    public void Another_address_of_the_machine_is_not_listened_on()
    {
        var others = NetworkInterface.GetAllNetworkInterfaces().SelectMany(i => i.GetIPProperties().UnicastAddresses).Select(a => a.Address)
            .Where(a => !a.Equals(IPAddress.Loopback)).Append(IPAddress.IPv6Loopback);
        Assert.All(others, address =>
        {
            using var line = new Socket(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
            Assert.ThrowsAny<SocketException>(() => line.Connect(address, Page.Address.Port));
        });
    }
}
