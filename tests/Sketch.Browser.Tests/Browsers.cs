using Microsoft.Playwright;
using Sketch.Browser.Tests;
using Xunit;

[assembly: AssemblyFixture(typeof(Browsers))]

namespace Sketch.Browser.Tests;

/// <summary>Debian's Chromium, started once for all tests.</summary>
public sealed class Browsers : IAsyncLifetime
{
    /// <summary>
    /// The same engine twice: the headless shell draws no windows, so a visit takes a third of the processor time.
    /// </summary>
    private static readonly string[] Programs = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium"];

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>The browser; a test that needs it is skipped if there is none.</summary>
    public IBrowser Browser
    {
        get
        {
            Assert.SkipWhen(_browser is null,
                $"There is no {string.Join(" or ", Programs)}, so nothing in a browser is tested. Debian: apt-get install chromium.");
            return _browser!;
        }
    }

    public async ValueTask InitializeAsync()
    {
        if (Programs.FirstOrDefault(File.Exists) is { } program)
        {
            // A slow or busy machine is no reason to fail.
            Assertions.SetDefaultExpectTimeout(20_000);
            _playwright = await Playwright.CreateAsync();
            _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Args = ["--no-sandbox"] });
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}
