using System.Collections.Concurrent;
using System.Diagnostics;
using Microsoft.Playwright;
using Sketch.Preview.Server;
using Xunit;

namespace Sketch.Browser.Tests;

/// <summary>
/// Tests that each have a folder, a server and a browser profile of their own. Every test fails if the page sends a request
/// to any host but its server, or if the browser logs an error, such as a violation of the content security policy.
/// </summary>
public abstract class OnPage(Browsers browsers) : IAsyncLifetime
{
    protected const string Card = """
        card "Keepers' watch"
        base A2, fold left, of white
        role sky: gulls #9fc9e8
        role deep: navy

        front
          sky: panel 3 x 4, top 1/2, of sky
            mat +1/8, of deep
            lamp: star 1 1/2, of cream, raised 2 mm
          words: strip 3 1/2 x 1/2 "Keep the light", bottom 1/4, of cream
        inside
          text "The lamp is lit for you", top 1 1/2

        """;

    private const string Stash = """
        stash "Museum shelf"
        paper gulls: 12 x 12, 3 sheets, front waves #cfe3ea #6f9fb3, back stripes #f7f0df #7fa6b8
        paper night: 12 x 12, 2 sheets, front stars #1d2c4a #f0d998, back plain #33466b
        paper picnic: 12 x 12, 3 sheets, front gingham #fdfaf3 #b7463c, back dots #b7463c #fdfaf3
        cardstock white: letter, any sheets
        cardstock navy: letter, 4 sheets
        cardstock brick: letter, 10 sheets, front #a8402f
        cardstock cream: A4, 1 sheet

        """;

    private const string Batch = """
        batch "Lamp day"
        stash "museum.stash"
        for "Cliff ward", 12 cards
        make 12 of "watch.card"

        """;

    private readonly ConcurrentQueue<string> _complaints = [];
    private readonly ConcurrentQueue<string> _strangers = [];
    private PageServer? _server;

    protected string Folder { get; } = Directory.CreateTempSubdirectory("sketch-page-").FullName;

    /// <summary>The address of the page.</summary>
    protected Uri Address { get; private set; } = new("http://127.0.0.1");

    protected IBrowserContext Profile { get; private set; } = null!;

    /// <summary>The window, with <c>watch.card</c> open and its picture drawn.</summary>
    protected IPage Page { get; set; } = null!;

    protected static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>The settings of the browser.</summary>
    protected virtual BrowserNewContextOptions Setup => new() { ViewportSize = new() { Width = 1280, Height = 900 } };

    protected ILocator Text => Page.GetByRole(AriaRole.Textbox, new() { Name = "Text of the file" });

    protected ILocator Picture => PictureOf(Page);

    protected ILocator Findings => Page.Locator("#findings li");

    protected ILocator State => Page.Locator("#state");

    public async ValueTask InitializeAsync()
    {
        var browser = browsers.Browser;
        foreach (var (name, text) in new[] { ("watch.card", Card), ("museum.stash", Stash), ("lamp-day.batch", Batch) })
        {
            Write(name, text);
        }

        _server = await PageServer.Start(Folder, "watch.card", 0);
        Address = _server.Address;
        Profile = await browser.NewContextAsync(Setup);
        Profile.Request += (_, request) =>
        {
            string[] own = [Address.GetLeftPart(UriPartial.Authority), "data:"];
            if (!own.Any(o => request.Url.StartsWith(o, StringComparison.Ordinal)))
            {
                _strangers.Enqueue(request.Url);
            }
        };
        Profile.Console += (_, reported) =>
        {
            // The browser logs each rejection by the server, and a socket that is being opened when the server ends; the page shows a
            // message of its own.
            if (reported.Type is "error" or "warning" && !reported.Text.StartsWith("Failed to load resource", StringComparison.Ordinal)
                && !(reported.Text.StartsWith("WebSocket connection to", StringComparison.Ordinal)
                    && reported.Text.Contains("net::ERR_CONNECTION_", StringComparison.Ordinal)))
            {
                _complaints.Enqueue(reported.Text);
            }
        };
        Profile.WebError += (_, error) => _complaints.Enqueue(error.Error);
        Page = await Window();
    }

    public async ValueTask DisposeAsync()
    {
        if (Profile is not null)
        {
            await Profile.DisposeAsync();
            await EndServer();
            Assert.Empty(_strangers);
            Assert.Empty(_complaints);
        }

        Directory.Delete(Folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Another window of the same browser.</summary>
    /// <param name="file">The file to open, or null for the one with which the program was started.</param>
    protected async Task<IPage> Window(string? file = null)
    {
        var page = await Profile.NewPageAsync();
        await page.GotoAsync(file is null ? Address.AbsoluteUri : $"{Address.GetLeftPart(UriPartial.Path)}#{Uri.EscapeDataString(file)}");
        if (file is null || file.EndsWith(".card", StringComparison.Ordinal))
        {
            await Assertions.Expect(PictureOf(page).First).ToBeVisibleAsync();
        }

        return page;
    }

    /// <summary>Loads the page again without its socket for questions: each goes as a request, which a test can hold back.</summary>
    protected async Task LoadWithoutSocket()
    {
        await Profile.RouteWebSocketAsync("**/seeing", socket => socket.CloseAsync());
        await Page.ReloadAsync();
        await Assertions.Expect(Picture.First).ToBeVisibleAsync();
    }

    /// <summary>Stops the server, which looks to the page like a killed program.</summary>
    protected async Task EndServer()
    {
        if (_server is not null)
        {
            await _server.DisposeAsync();
            _server = null;
        }
    }

    /// <summary>Starts a server at the address of the previous one.</summary>
    protected async Task StartServerAgain() =>
        _server = await PageServer.Start(Folder, "watch.card", Address.Port, Address.Segments[1].TrimEnd('/'));

    /// <summary>Whether the browser asks before it closes the window.</summary>
    protected Task<bool> LeavingAsks() => Page.EvaluateAsync<bool>("() => !dispatchEvent(new Event('beforeunload', { cancelable: true }))");

    /// <summary>The drafts on the disk.</summary>
    protected string[] Drafts()
    {
        var drafts = Path.Combine(Folder, ".sketch", "drafts");
        return Directory.Exists(drafts) ? [.. Directory.GetFiles(drafts, "*.json").Select(File.ReadAllText)] : [];
    }

    /// <summary>Waits at most a minute for a condition.</summary>
    protected static async Task Until(Func<bool> isSo)
    {
        for (var waited = Stopwatch.StartNew(); !isSo(); await Task.Delay(20, Stop))
        {
            Assert.True(waited.Elapsed < TimeSpan.FromMinutes(1), "The condition was not met within a minute.");
        }
    }

    protected static ILocator PictureOf(IPage page) => page.Locator(".picture svg");

    protected string Read(string name) => File.ReadAllText(Path.Combine(Folder, name));

    protected void Write(string name, string text) => File.WriteAllText(Path.Combine(Folder, name), text);

    /// <summary>The text in the editor of a window.</summary>
    protected static async Task<string> TextOf(IPage page) =>
        string.Join('\n', await page.Locator(".cm-line").AllTextContentsAsync());

    /// <summary>Moves the caret to the end of a line.</summary>
    protected async Task GoToLine(int line)
    {
        await Page.Locator(".cm-line").Nth(line - 1).ClickAsync();
        // Twice: first to the end of the visual line, then to the end of the wrapped line.
        await Page.Keyboard.PressAsync("End");
        await Page.Keyboard.PressAsync("End");
    }

    /// <summary>Types at the end of a line.</summary>
    protected async Task TypeAt(int line, string text)
    {
        await GoToLine(line);
        await Page.Keyboard.TypeAsync(text);
    }

    /// <summary>Replaces the whole text.</summary>
    protected async Task TypeAll(string text)
    {
        await Text.FocusAsync();
        await Page.Keyboard.PressAsync("Control+A");
        await Page.Keyboard.PressAsync("Delete");
        await Page.Keyboard.InsertTextAsync(text);
    }

    protected ILocator Button(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>A field with exactly this label.</summary>
    protected ILocator Field(string label) => Page.GetByLabel(label, new() { Exact = true });

    protected Task OpenTab(string name) => Page.GetByRole(AriaRole.Tab, new() { Name = name, Exact = true }).ClickAsync();
}
