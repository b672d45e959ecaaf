using System.Diagnostics;

namespace Sketch.Preview.Folder;

/// <summary>
/// Wakes a waiter as soon as the operating system reports a change in a folder tree. Best effort: the notifications that systems offer
/// are limited in number, do not cover network drives, and may end with the folder.
/// </summary>
internal sealed class ChangeAlarm : IDisposable
{
    // Setting it up visits all folders, so it is not retried at every wait.
    private static readonly TimeSpan BetweenTries = TimeSpan.FromSeconds(10);

    private readonly string _root;
    private readonly SemaphoreSlim _rung = new(0);
    private FileSystemWatcher? _watcher;
    private long _tried;

    /// <summary>Sets it up, if possible.</summary>
    /// <param name="root">The folder.</param>
    public ChangeAlarm(string root)
    {
        _root = root;
        Set();
    }

    /// <summary>Waits until something has changed since the last wait, or the time is up.</summary>
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
                // Changes that come together count as one.
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
            watcher = new(_root)
            {
                IncludeSubdirectories = true,
                NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size
            };
            watcher.Changed += (_, change) => Ring(change.Name);
            watcher.Created += (_, change) => Ring(change.Name);
            watcher.Deleted += (_, change) => Ring(change.Name);
            watcher.Renamed += (_, change) =>
            {
                Ring(change.OldName);
                Ring(change.Name);
            };
            watcher.Error += (_, _) =>
            {
                // Too many changes at once, too many folders for the system, or the folder is gone.
                Drop(watcher);
                _rung.Release();
            };
            // It may fail while it is being started, so it is stored before.
            _watcher = watcher;
            watcher.EnableRaisingEvents = true;
        }
        catch (Exception refused)
            when (refused is IOException or ArgumentException or UnauthorizedAccessException or PlatformNotSupportedException)
        {
            Drop(watcher);
        }
    }

    // Hidden folders are not watched: each draft that is saved changes something there.
    private void Ring(string? name)
    {
        if (name is null || !OpenedFolder.IsHidden(name))
        {
            _rung.Release();
        }
    }

    private void Drop(FileSystemWatcher? watcher)
    {
        Interlocked.CompareExchange(ref _watcher, null, watcher);
        watcher?.Dispose();
    }
}
