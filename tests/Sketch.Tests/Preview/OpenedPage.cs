using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using Sketch.Preview.Server;
using Sketch.Tests.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview;

/// <summary>
/// A folder with a card, served as by <c>sketch open</c>, and requests to it as made by the window of the page.
/// </summary>
internal sealed class OpenedPage : IAsyncDisposable
{
    public const string Window = "window0000000001";

    public const string Card = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  lamp: panel 2 x 3, of navy\n";

    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false, UseProxy = false });
    private PageServer? _server;
    private TimeSpan? _headersWithin;

    private OpenedPage(TemporaryFolder around)
    {
        Around = around;
        Directory.CreateDirectory(Root);
    }

    /// <summary>The parent of the opened folder, which must stay inaccessible.</summary>
    public TemporaryFolder Around { get; }

    /// <summary>The opened folder.</summary>
    public string Root => Around.At("cards");

    /// <summary>The address of the page with its secret word.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <summary>The one-time address that leads to the page.</summary>
    public Uri OnceAddress => new(_server!.OnceAddress.GetLeftPart(UriPartial.Path));

    public string Origin => $"http://127.0.0.1:{Address.Port}";

    public static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>Serves a folder that contains <c>lamp.card</c>.</summary>
    /// <param name="headersWithin">The time limit for the headers of a request; the server's default if null.</param>
    public static async Task<OpenedPage> Start(TimeSpan? headersWithin = null)
    {
        var page = new OpenedPage(new()) { _headersWithin = headersWithin };
        page.Write("lamp.card", Card);
        await page.Serve();
        return page;
    }

    /// <summary>Stops the server cleanly and serves the folder again at another address.</summary>
    public async Task Serve()
    {
        if (_server is not null)
        {
            await _server.DisposeAsync();
        }

        _server = await PageServer.Start(Root, "lamp.card", 0, Gate.NewWord(), _headersWithin);
        Address = new(_server.Address.GetLeftPart(UriPartial.Path));
    }

    public string At(string name) => Path.Combine(Root, name);

    public string Write(string name, string text) => Around.Write(Path.Combine("cards", name), text);

    public string Write(string name, byte[] content) => Around.Write(Path.Combine("cards", name), content);

    /// <summary>A GET request as made by the page.</summary>
    public HttpRequestMessage Read(string relative) => new(HttpMethod.Get, new Uri(Address, relative));

    /// <summary>A POST request as made by the page.</summary>
    public HttpRequestMessage Say(string relative, HttpContent content)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, new Uri(Address, relative)) { Content = content };
        request.Headers.Add("Origin", Origin);
        request.Headers.Add("Sec-Fetch-Site", "same-origin");
        return request;
    }

    public HttpRequestMessage Say(string relative, object said) =>
        Say(relative, new StringContent(JsonSerializer.Serialize(said), Encoding.UTF8, "application/json"));

    /// <summary>A request for the picture and findings of a text.</summary>
    public HttpRequestMessage See(string text, string file = "lamp.card", string window = Window, string stamp = "known") =>
        Say("see", new { file, window, text, stamp, saved = false });

    public async Task<HttpResponseMessage> Send(HttpRequestMessage request) => await _client.SendAsync(request, Stop);

    public async Task<HttpStatusCode> Status(HttpRequestMessage request)
    {
        using (request)
        {
            using var response = await Send(request);
            return response.StatusCode;
        }
    }

    /// <summary>The JSON object in a response of any status.</summary>
    public async Task<(HttpStatusCode Status, JsonElement Json)> Ask(HttpRequestMessage request)
    {
        using (request)
        {
            using var response = await Send(request);
            using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Stop));
            return (response.StatusCode, json.RootElement.Clone());
        }
    }

    /// <summary>The text and the stamp of a file, as the page gets them.</summary>
    public async Task<(string Text, string Stamp)> Open(string file = "lamp.card")
    {
        var (_, json) = await Ask(Read($"text?file={Uri.EscapeDataString(file)}&window={Window}"));
        return (json.GetProperty("text").GetString()!, json.GetProperty("stamp").GetString()!);
    }

    public Task<(HttpStatusCode Status, JsonElement Json)> Save(string text, string stamp, string file = "lamp.card") =>
        Ask(Say("save", new { file, window = Window, text, stamp }));

    /// <summary>Sends this text over a bare connection and returns the whole response.</summary>
    public async Task<string> Raw(string request)
    {
        using var line = await Connect();
        await line.SendAsync(Encoding.Latin1.GetBytes(request), Stop);
        return await Rest(line);
    }

    /// <summary>Whether the hidden folder contains a file with this ending and content.</summary>
    public bool Keeps(string ending, string text) => Directory.Exists(At(".sketch"))
        && Directory.GetFiles(At(".sketch"), $"*{ending}", SearchOption.AllDirectories)
        .Any(f => File.ReadAllText(f).Contains(JsonEncodedText.Encode(text).ToString(), StringComparison.Ordinal));

    /// <summary>Waits at most a minute for a condition: far longer than any stated limit, for busy machines.</summary>
    public static async Task Until(Func<bool> isSo)
    {
        for (var waited = Stopwatch.StartNew(); !isSo(); await Task.Delay(10, Stop))
        {
            Assert.True(waited.Elapsed < TimeSpan.FromMinutes(1), "The condition was not met within a minute.");
        }
    }

    /// <summary>Opens the socket of changes from a page of an origin, and waits for the first message.</summary>
    public async Task<ClientWebSocket> Listen(string window, string? origin = null)
    {
        var socket = await Socket(window, origin);
        Assert.Equal("", await Reported(socket));
        return socket;
    }

    /// <summary>Opens the socket of changes from a page of an origin.</summary>
    public Task<ClientWebSocket> Socket(string window, string? origin = null) => OpenSocket($"news?window={window}", origin);

    /// <summary>Opens a socket from a page of an origin.</summary>
    public async Task<ClientWebSocket> OpenSocket(string relative, string? origin = null)
    {
        var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Origin", origin ?? Origin);
        await socket.ConnectAsync(new UriBuilder(new Uri(Address, relative)) { Scheme = "ws" }.Uri, Stop);
        return socket;
    }

    /// <summary>The name of the next file that a socket reports as changed.</summary>
    public static async Task<string> Reported(ClientWebSocket socket) => (await Next(socket, "changed")).GetString()!;

    /// <summary>The files that a socket next reports as being only in memory.</summary>
    public static async Task<string[]> InMemoryOnly(ClientWebSocket socket) =>
        [.. (await Next(socket, "inMemoryOnly")).EnumerateArray().Select(f => f.GetString()!)];

    /// <summary>The next message of a kind.</summary>
    private static async Task<JsonElement> Next(ClientWebSocket socket, string kind)
    {
        while (true)
        {
            var part = new byte[1024];
            var received = await socket.ReceiveAsync(part, Stop);
            using var json = JsonDocument.Parse(part.AsMemory(0, received.Count));
            if (json.RootElement.TryGetProperty(kind, out var value))
            {
                return value.Clone();
            }
        }
    }

    public async Task<Socket> Connect()
    {
        var line = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        await line.ConnectAsync(IPAddress.Loopback, Address.Port, Stop);
        return line;
    }

    /// <summary>Reads until the server closes the connection.</summary>
    public static async Task<string> Rest(Socket line)
    {
        var reported = new StringBuilder();
        var part = new byte[8192];
        try
        {
            for (var count = await line.ReceiveAsync(part, Stop); count > 0; count = await line.ReceiveAsync(part, Stop))
            {
                reported.Append(Encoding.UTF8.GetString(part, 0, count));
            }
        }
        catch (SocketException)
        {
            // A connection that is reset is closed too.
        }

        return reported.ToString();
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        if (_server is not null)
        {
            await _server.DisposeAsync();
        }

        Around.Dispose();
    }
}
