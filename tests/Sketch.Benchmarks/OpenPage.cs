using System.Diagnostics;
using Microsoft.Playwright;
using Sketch.Preview.Server;

namespace Sketch.Benchmarks;

/// <summary>
/// A card on the page in Chromium, its picture shown. The page is served by this process, or by a published program, which has nothing to
/// compile.
/// </summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private const string Chromium = "/usr/bin/chromium";
    private const string Card = "measured.card";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("sketch-page-");
    private PageServer? _server;
    private Process? _program;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    private OpenPage()
    {
    }

    /// <summary>The page.</summary>
    public IPage Page { get; private set; } = null!;

    /// <summary>The file of the card.</summary>
    public string CardFile => Path.Combine(_folder.FullName, Card);

    /// <summary>Opens it.</summary>
    /// <param name="tool">The published program; null to serve the page in this process.</param>
    /// <param name="card">The text of the card.</param>
    public static async Task<OpenPage> Start(string? tool, string card)
    {
        var open = new OpenPage();
        await File.WriteAllTextAsync(open.CardFile, card).ConfigureAwait(false);
        var address = await open.Serve(tool).ConfigureAwait(false);
        open._playwright = await Playwright.CreateAsync().ConfigureAwait(false);
        open._browser = await open._playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = ["--no-sandbox"] })
            .ConfigureAwait(false);
        open.Page = await open._browser.NewPageAsync().ConfigureAwait(false);
        await open.Page.GotoAsync(address.AbsoluteUri).ConfigureAwait(false);
        await open.Page.Locator(".faces .picture svg").First.WaitForAsync().ConfigureAwait(false);
        return open;
    }

    /// <summary>Another page of the same browser, with a content of its own.</summary>
    public async Task<IPage> Bare(string content)
    {
        var page = await _browser!.NewPageAsync().ConfigureAwait(false);
        await page.SetContentAsync(content).ConfigureAwait(false);
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync().ConfigureAwait(false);
        }

        _playwright?.Dispose();
        _program?.Kill();
        _program?.Dispose();
        if (_server is not null)
        {
            await _server.DisposeAsync().ConfigureAwait(false);
        }

        _folder.Delete(recursive: true);
    }

    private async Task<Uri> Serve(string? tool)
    {
        if (tool is null)
        {
            _server = await PageServer.Start(_folder.FullName, Card, 0).ConfigureAwait(false);
            return _server.Address;
        }

        _program = Process.Start(new ProcessStartInfo(tool, ["open", Card, "--no-browser"])
        {
            WorkingDirectory = _folder.FullName,
            RedirectStandardOutput = true,
        })!;
        var line = await _program.StandardOutput.ReadLineAsync().ConfigureAwait(false)
            ?? throw new InvalidOperationException($"{tool} opens no page.");
        return new(line[line.IndexOf("http", StringComparison.Ordinal)..]);
    }
}
