using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Threading.Channels;

namespace Sketch.Preview.Server;

/// <summary>Passes the names of changed files on to every window that listens.</summary>
public sealed class News
{
    private const int MostWaiting = 100;

    private readonly ConcurrentDictionary<Channel<string?>, byte> _listeners = new();

    /// <summary>Tells every listener that a file changed; null for any file.</summary>
    public void Tell(string? name)
    {
        foreach (var listener in _listeners.Keys)
        {
            listener.Writer.TryWrite(name);
        }
    }

    /// <summary>Listens until cancelled. A listener that is new, or does not keep up, is told that any file may have changed.</summary>
    public async IAsyncEnumerable<string?> Listen([EnumeratorCancellation] CancellationToken cancellation)
    {
        var channel = Channel.CreateBounded<string?>(MostWaiting);
        _listeners.TryAdd(channel, 0);
        channel.Writer.TryWrite(null);
        try
        {
            while (await channel.Reader.WaitToReadAsync(cancellation).ConfigureAwait(false))
            {
                var isFull = channel.Reader.Count >= MostWaiting;
                while (channel.Reader.TryRead(out var name))
                {
                    yield return name;
                }

                if (isFull)
                {
                    yield return null;
                }
            }
        }
        finally
        {
            _listeners.TryRemove(channel, out _);
        }
    }
}
