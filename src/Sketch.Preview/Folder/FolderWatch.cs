namespace Sketch.Preview.Folder;

/// <summary>Tells which files of the opened folder another program, or the page itself, has changed.</summary>
public sealed class FolderWatch : IDisposable
{
    private readonly OpenedFolder _folder;
    private readonly Action<string?> _changed;
    private FileSystemWatcher? _watcher;

    /// <summary>Begins to watch.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="changed">Told the name of each file that changed, from any thread; null when any may have changed.</param>
    public FolderWatch(OpenedFolder folder, Action<string?> changed)
    {
        (_folder, _changed) = (folder, changed);
        Watch();
    }

    /// <inheritdoc/>
    public void Dispose() => _watcher?.Dispose();

    private void Watch()
    {
        _watcher?.Dispose();
        _watcher = new(_folder.Root) { IncludeSubdirectories = true, NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size };
        _watcher.Changed += (_, e) => Tell(e.FullPath);
        _watcher.Created += (_, e) => Tell(e.FullPath);
        _watcher.Deleted += (_, e) => Tell(e.FullPath);
        _watcher.Renamed += (_, e) =>
        {
            Tell(e.OldFullPath);
            Tell(e.FullPath);
        };
        _watcher.Error += (_, _) => Lost();
        _watcher.EnableRaisingEvents = true;
    }

    private void Tell(string path)
    {
        if (_folder.NameOf(path) is { } name && !name.Split('/').Any(step => step.StartsWith('.')))
        {
            _changed(name);
        }
    }

    // Too many changes at once, or the folder went away and may come back.
    private void Lost()
    {
        _changed(null);
        if (Directory.Exists(_folder.Root))
        {
            Watch();
        }
    }
}
