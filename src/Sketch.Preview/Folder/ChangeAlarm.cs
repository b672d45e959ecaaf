using System.Diagnostics;

namespace Sketch.Preview.Folder;

/// <summary>
/// Wakes who waits as soon as the operating system tells of a change beneath a folder. It promises nothing: what systems offer to be told
/// by is limited in number, says nothing of drives on other machines, and may end with the folder.
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
            // It may be lost while it is being started, so it is known before.
            _watcher = watcher;
            watcher.EnableRaisingEvents = true;
        }
        catch (Exception refused)
            when (refused is IOException or ArgumentException or UnauthorizedAccessException or PlatformNotSupportedException)
        {
            Drop(watcher);
        }
    }

    // What is hidden is not looked at, and each draft that is kept changes something there.
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
