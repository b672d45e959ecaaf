namespace Sketch.Cli.Commands;

/// <summary>Files and folders that a run has asked for, each as it was then, to notice that one has changed.</summary>
internal sealed class FilesRead
{
    private readonly Dictionary<string, (Func<string, string> Look, string Seen)> _files = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();

    /// <summary>The first of them that is not as it was then, or null.</summary>
    public string? Changed
    {
        get
        {
            lock (_gate)
            {
                return _files.FirstOrDefault(file => file.Value.Look(file.Key) != file.Value.Seen).Key;
            }
        }
    }

    /// <summary>A file is about to be read; it need not exist.</summary>
    public void Add(string file) => Add(file, LookAtFile);

    /// <summary>A folder's files of some kinds are about to be listed.</summary>
    public void AddFolder(string folder, IReadOnlyCollection<string> kinds) =>
        Add(folder, f => string.Join('\n', InputFiles.InFolder(f, kinds)));

    /// <summary>Forgets all, before the next run.</summary>
    public void Clear()
    {
        lock (_gate)
        {
            _files.Clear();
        }
    }

    private void Add(string path, Func<string, string> look)
    {
        lock (_gate)
        {
            if (!_files.ContainsKey(path))
            {
                _files.Add(path, (look, look(path)));
            }
        }
    }

    private static string LookAtFile(string path)
    {
        try
        {
            var file = new FileInfo(path);
            return file.Exists ? $"{file.Length} {file.LastWriteTimeUtc.Ticks}" : "";
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return "";
        }
    }
}
