using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Threading.Channels;

namespace Sketch.Preview.Server;

/// <summary>Passes the names of changed files to every window that listens.</summary>
public sealed class ChangeFeed
{
    private const int MostWaiting = 100;

    private readonly ConcurrentDictionary<Listener, byte> _listeners = new();

    /// <summary>Notifies every listener that a file changed; null for any file.</summary>
    public void Report(string? name)
    {
        foreach (var listener in _listeners.Keys)
        {
            listener.Report(name);
        }
    }

    /// <summary>Listens until cancelled. A listener that is new, or does not keep up, is notified that any file may have changed.</summary>
    public async IAsyncEnumerable<string?> Listen([EnumeratorCancellation] CancellationToken cancellation)
    {
        var listener = new Listener();
        _listeners.TryAdd(listener, 0);
        listener.Report(null);
        try
        {
            while (await listener.Waiting.WaitToReadAsync(cancellation).ConfigureAwait(false))
            {
                while (listener.Waiting.TryRead(out var name))
                {
                    yield return name;
                }

                if (listener.HasMissed())
                {
                    yield return null;
                }
            }
        }
        finally
        {
            _listeners.TryRemove(listener, out _);
        }
    }

    private sealed class Listener
    {
        private readonly Channel<string?> _names = Channel.CreateBounded<string?>(MostWaiting);
        private int _missed;

        /// <summary>The notifications that it has not received yet.</summary>
        public ChannelReader<string?> Waiting => _names.Reader;

        public void Report(string? name)
        {
            if (!_names.Writer.TryWrite(name))
            {
                Interlocked.Exchange(ref _missed, 1);
                // It may have emptied the queue and asked just before that; this wakes it then.
                _names.Writer.TryWrite(null);
            }
        }

        /// <summary>Whether a notification was dropped since the last call.</summary>
        public bool HasMissed() => Interlocked.Exchange(ref _missed, 0) != 0;
    }
}
