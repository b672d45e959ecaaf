using System.Diagnostics;

namespace Sketch.Preview.Folder;

/// <summary>
/// Wakes who waits as soon as the operating system tells of a change beneath a folder. It promises nothing: what systems offer to be told by
/// is limited in number, says nothing of drives on other machines, and may end with the folder.
/// </summary>
internal sealed class ChangeAlarm : IDisposable
{
    // Setting it up goes through all folders, so it is not tried with every wait.
    private static readonly TimeSpan BetweenTries = TimeSpan.FromSeconds(10);

    private readonly string _root;
    private readonly SemaphoreSlim _rung = new(0);
    private FileSystemWatcher? _watcher;
    private long _tried;

    /// <summary>Sets it up, if that can be done.</summary>
    /// <param name="root">The folder.</param>
    public ChangeAlarm(string root)
    {
        _root = root;
        Set();
    }

    /// <summary>Waits until something changed since the last wait, or the time is over.</summary>
    public async Task Wait(TimeSpan most, CancellationToken cancellation)
    {
        if (_watcher is null && Stopwatch.GetElapsedTime(_tried) > BetweenTries)
        {
            Set();
        }

        if (await _rung.WaitAsync(most, cancellation).ConfigureAwait(false))
        {
            while (await _rung.WaitAsync(0, CancellationToken.None).ConfigureAwait(false))
            {
                // Changes that come together are one.
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _watcher?.Dispose();

    private void Set()
    {
        _tried = Stopwatch.GetTimestamp();
        FileSystemWatcher? watcher = null;
        try
        {
            watcher = new(_root) { IncludeSubdirectories = true, NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size };
            watcher.Changed += (_, _) => _rung.Release();
            watcher.Created += (_, _) => _rung.Release();
            watcher.Deleted += (_, _) => _rung.Release();
            watcher.Renamed += (_, _) => _rung.Release();
            watcher.Error += (_, _) => Lose(watcher);
            watcher.EnableRaisingEvents = true;
            _watcher = watcher;
        }
        catch (Exception refused) when (refused is IOException or ArgumentException or UnauthorizedAccessException or PlatformNotSupportedException)
        {
            watcher?.Dispose();
        }
    }

    // Too many changes at once, too many folders for the system, or the folder is gone.
    private void Lose(FileSystemWatcher watcher)
    {
        Interlocked.CompareExchange(ref _watcher, null, watcher);
        watcher.Dispose();
        _rung.Release();
    }
}
