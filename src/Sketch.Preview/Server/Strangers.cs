using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Http;

namespace Sketch.Preview.Server;

/// <summary>
/// Connections that have not sent the secret word yet. Every program on the machine can open them, so they must not crowd out those of the
/// page: there are at most <see cref="Most"/>, and one more closes the one that has waited longest. The page sends the word with its
/// first request, a moment after it connects.
/// </summary>
internal sealed class Strangers
{
    /// <summary>The most that can be open at once.</summary>
    public const int Most = 100;

    private readonly Lock _gate = new();
    private readonly LinkedList<ConnectionContext> _all = [];

    /// <summary>Treats each new connection as a stranger until it is known or closed.</summary>
    public ConnectionDelegate Around(ConnectionDelegate next) => async connection =>
    {
        var entry = Add(connection);
        try
        {
            connection.Features.Set(new Entry(() => Remove(entry)));
            await next(connection).ConfigureAwait(false);
        }
        finally
        {
            Remove(entry);
        }
    };

    /// <summary>Records that the connection of a request has sent the word.</summary>
    public static void Know(HttpContext context) => context.Features.Get<Entry>()?.Remove();

    private LinkedListNode<ConnectionContext> Add(ConnectionContext connection)
    {
        ConnectionContext? longest = null;
        LinkedListNode<ConnectionContext> entry;
        lock (_gate)
        {
            entry = _all.AddLast(connection);
            if (_all.Count > Most)
            {
                longest = _all.First!.Value;
                _all.RemoveFirst();
            }
        }

        longest?.Abort(new("Too many connections without the secret word are open."));
        return entry;
    }

    private void Remove(LinkedListNode<ConnectionContext> entry)
    {
        lock (_gate)
        {
            if (entry.List is not null)
            {
                _all.Remove(entry);
            }
        }
    }

    /// <summary>The entry of a connection among the strangers, for its requests to find.</summary>
    private sealed record Entry(Action Remove);
}
