using System.Diagnostics;
using System.IO.Enumeration;

namespace Sketch.Preview.Folder;

/// <summary>
/// Reports which files of the opened folder another program, or the page itself, has changed. It checks their times and lengths as soon as
/// the operating system reports a change, and periodically where it does not.
/// </summary>
public sealed class FolderWatch : IAsyncDisposable
{
    // The pause between two checks without and with a notification: writing a file causes several notifications.
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan ShortRest = TimeSpan.FromMilliseconds(5);

    /// <summary>The most files that are checked; changes of others are noticed when they are opened or saved.</summary>
    public const int LookLimit = 20_000;

    // Checks take at most a twentieth of one processor without notifications, however large the folder, and a fifth with many.
    private const int RestPerLook = 20;
    private const int ShortRestPerLook = 4;

    private readonly OpenedFolder _folder;
    private readonly Action<string> _changed;
    private readonly ChangeAlarm _alarm;
    private readonly CancellationTokenSource _end = new();
    private readonly Task _watching;
    private Dictionary<string, (DateTime Written, long Length)> _seen;

    /// <summary>Starts to watch: every change from now on is reported.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="changed">Called with the name of each file that was changed, created or deleted, on any thread.</param>
    public FolderWatch(OpenedFolder folder, Action<string> changed)
    {
        (_folder, _changed) = (folder, changed);
        _alarm = new(folder.Root);
        _seen = Look();
        _watching = Task.Run(Watch);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync().ConfigureAwait(false);
        await _watching.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        _alarm.Dispose();
        _end.Dispose();
    }

    private async Task Watch()
    {
        var took = TimeSpan.Zero;
        while (true)
        {
            await _alarm.Wait(Longer(took * RestPerLook, Rest), _end.Token).ConfigureAwait(false);
            await Task.Delay(Longer(took * ShortRestPerLook, ShortRest), _end.Token).ConfigureAwait(false);
            var start = Stopwatch.GetTimestamp();
            var now = Look();
            took = Stopwatch.GetElapsedTime(start);
            foreach (var name in now.Where(f => !_seen.TryGetValue(f.Key, out var before) || before != f.Value).Select(f => f.Key)
                .Concat(_seen.Keys.Where(n => !now.ContainsKey(n))))
            {
                _changed(name);
            }

            _seen = now;
        }
    }

    private static TimeSpan Longer(TimeSpan one, TimeSpan other) => one > other ? one : other;

    private Dictionary<string, (DateTime Written, long Length)> Look()
    {
        var found = new Dictionary<string, (DateTime, long)>(StringComparer.Ordinal);
        try
        {
            var files = new FileSystemEnumerable<(string Path, DateTime Written, long Length)>(
                _folder.Root,
                (ref FileSystemEntry entry) => (entry.ToFullPath(), entry.LastWriteTimeUtc.UtcDateTime, entry.Length),
                OpenedFolder.Reach)
            {
                ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.IsDirectory && !OpenedFolder.IsHidden(entry.FileName),
                ShouldRecursePredicate = (ref FileSystemEntry entry) => !OpenedFolder.IsHidden(entry.FileName),
            };
            foreach (var (path, written, length) in files.Take(LookLimit))
            {
                if (_folder.NameOf(path) is { } name)
                {
                    found[name] = (written, length);
                }
            }
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            // The folder is gone, or disappears during the check, and its files with it. They are reported when it comes back.
        }

        return found;
    }
}
