using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>Only the page itself gets responses. Each request here is one that a hostile page or program can make.</summary>
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
    public async Task The_page_itself_gets_a_response() => Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Read("files")));

    [Theory]
    [InlineData("")]
    [InlineData("files")]
    [InlineData("page.js")]
    [InlineData("/files")]
    public Task A_request_without_the_secret_word_is_rejected(string path) => IsRefused(Page, new(HttpMethod.Get, $"{Page.Origin}/{path}"));

    [Fact]
    public Task A_request_with_another_word_is_rejected() =>
        IsRefused(Page, new(HttpMethod.Get, $"{Page.Origin}/{new string('0', 32)}/files"));

    [Fact]
    public Task A_request_with_part_of_the_word_is_rejected() =>
        IsRefused(Page, new(HttpMethod.Get, $"{Page.Address.AbsoluteUri[..^2]}/files"));

    [Fact]
    public async Task The_address_visible_on_the_command_line_of_a_browser_works_once()
    {
        using var first = await Page.Send(new(HttpMethod.Get, Page.OnceAddress));
        using var second = await Page.Send(new(HttpMethod.Get, Page.OnceAddress));

        Assert.Equal((HttpStatusCode.Redirect, Page.Address.AbsolutePath), (first.StatusCode, first.Headers.Location?.OriginalString));
        Assert.Equal(HttpStatusCode.NotFound, second.StatusCode);
    }

    [Fact]
    public async Task The_word_differs_at_every_start()
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
    public async Task A_foreign_host_name_that_resolves_to_this_machine_is_rejected(string host)
    {
        // DNS rebinding: the browser believes that it talks to that host, so its pages may read the responses.
        var request = Page.Read("files");
        request.Headers.Host = $"{host}:{Page.Address.Port}";
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:80")]
    [InlineData("localhost:1")]
    public async Task A_host_with_another_port_is_rejected(string host)
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
    public async Task A_request_from_another_page_is_rejected(string origin)
    {
        var request = Saving;
        request.Headers.Remove("Origin");
        request.Headers.Add("Origin", origin);
        await IsRefused(Page, request);
    }

    [Fact]
    public async Task Another_page_cannot_even_read()
    {
        var request = Page.Read("files");
        request.Headers.Add("Origin", "https://lighthouse.example");
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public async Task A_request_marked_as_cross_site_is_rejected(string site)
    {
        var request = Saving;
        request.Headers.Remove("Sec-Fetch-Site");
        request.Headers.Add("Sec-Fetch-Site", site);
        await IsRefused(Page, request);
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public async Task A_link_from_another_page_is_rejected(string site)
    {
        var request = Page.Read("");
        request.Headers.Add("Sec-Fetch-Site", site);
        await IsRefused(Page, request);
    }

    [Fact]
    public async Task A_form_of_another_page_without_an_origin_is_rejected()
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
    public async Task Other_methods_are_rejected(string method)
    {
        using var request = new HttpRequestMessage(new(method), new Uri(Page.Address, "save"));
        Assert.InRange((int)await Page.Status(request), 400, 499);
    }

    [Fact]
    public async Task A_rejected_save_writes_nothing()
    {
        var request = Saving;
        request.Headers.Remove("Origin");
        request.Headers.Add("Origin", "https://lighthouse.example");
        await Page.Status(request);
        Assert.Equal(OpenedPage.Card, await File.ReadAllTextAsync(Page.At("lamp.card"), OpenedPage.Stop));
    }

    [Fact]
    public void The_server_does_not_listen_on_other_addresses_of_the_machine()
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
