using System.Diagnostics;
using Sketch.Preview.Server;

namespace Sketch.Benchmarks;

/// <summary>The page for a card in a folder: served in this process, or by a published program, which has nothing to compile.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private readonly PageServer? _server;
    private readonly Process? _program;

    private OpenPage(PageServer? server, Process? program, Uri address) => (_server, _program, Address) = (server, program, address);

    /// <summary>Where a browser finds it.</summary>
    public Uri Address { get; }

    /// <summary>Starts it.</summary>
    /// <param name="tool">The published program; null to serve it in this process.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="card">The name of the card.</param>
    public static async Task<OpenPage> Start(string? tool, string folder, string card)
    {
        if (tool is null)
        {
            var server = await PageServer.Start(folder, card, 0).ConfigureAwait(false);
            return new(server, null, server.Address);
        }

        var program = Process.Start(new ProcessStartInfo(tool, ["open", card, "--no-browser"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
        })!;
        var line = await program.StandardOutput.ReadLineAsync().ConfigureAwait(false)
            ?? throw new InvalidOperationException($"{tool} opens no page.");
        return new(null, program, new(line[line.IndexOf("http", StringComparison.Ordinal)..]));
    }

    public async ValueTask DisposeAsync()
    {
        _program?.Kill();
        _program?.Dispose();
        if (_server is not null)
        {
            await _server.DisposeAsync().ConfigureAwait(false);
        }
    }
}
