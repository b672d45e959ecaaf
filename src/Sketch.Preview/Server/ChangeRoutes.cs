using System.Net.WebSockets;
using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Preview.Sessions;

namespace Sketch.Preview.Server;

/// <summary>A file changed.</summary>
/// <param name="Name">Its name; empty when any may have.</param>
internal sealed record Changed([property: JsonPropertyName("changed")] string Name);

/// <summary>The files of a window whose edits cannot be written to disk.</summary>
/// <param name="Names">Their names.</param>
internal sealed record InMemoryOnly([property: JsonPropertyName("inMemoryOnly")] IReadOnlyList<string> Names);

/// <summary>
/// Notifies each window, while it is open, which files change. Twice a second it lists those of the window that are in memory only: a
/// window that does not get this knows that the program does not respond. It is a socket (RFC 6455) and not an event stream, since a
/// browser allows six of those per server, and so six windows at most.
/// </summary>
/// <param name="room">The services of the page.</param>
internal sealed class ChangeRoutes(PageServices room)
{
    private const int MostWindows = 60;

    // The page shows the reason of a socket closed with this code and does not reconnect: a browser hides from scripts why it is refused.
    private const WebSocketCloseStatus OneTooMany = (WebSocketCloseStatus)4000;

    // At most 123 bytes (RFC 6455, section 5.5).
    private const string TooMany = "The page is open in too many windows. Close one of them, then load this one again.";

    private static readonly TimeSpan Parting = TimeSpan.FromSeconds(5);

    // The page waits for three of them before it reports that the program does not respond.
    private static readonly TimeSpan Pulse = TimeSpan.FromMilliseconds(500);

    /// <summary>Maps the socket, and the request by which the page finds out whether the program is back before it opens one.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/news", Begin);
        routes.MapGet("/answers", () => TypedResults.Ok(new Done()));
    }

    private Task Begin(HttpContext context, string window = "")
    {
        if (!OpenWindows.IsName(window) || !context.WebSockets.IsWebSocketRequest)
        {
            return new Problem(StatusCodes.Status400BadRequest, "The request names no window. Reload the page.").ExecuteAsync(context);
        }

        return room.Windows.Count < MostWindows
            ? Report(context, window)
            : Refuse(context);
    }

    private async Task Refuse(HttpContext context)
    {
        using var end = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, room.Stopping);
        end.CancelAfter(Parting);
        using var socket = await context.WebSockets.AcceptWebSocketAsync().ConfigureAwait(false);
        try
        {
            await socket.CloseAsync(OneTooMany, TooMany, end.Token).ConfigureAwait(false);
        }
        catch (Exception ended) when (ended is OperationCanceledException or WebSocketException)
        {
            // The window closed the connection, or does not respond.
        }
    }

    private async Task Report(HttpContext context, string window)
    {
        using var open = room.Windows.Open(window);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, room.Stopping);
        using var socket = await context.WebSockets.AcceptWebSocketAsync().ConfigureAwait(false);
        using var speaking = new SemaphoreSlim(1);
        var closed = Closed(socket, end);
        try
        {
            await Task.WhenAll(Changes(), Pulses()).ConfigureAwait(false);
        }
        catch (Exception ended) when (ended is OperationCanceledException or WebSocketException)
        {
            // The window is closed, or the program is ending.
        }

        await closed.ConfigureAwait(false);

        async Task Changes()
        {
            await foreach (var name in room.ChangeFeed.Listen(end.Token).ConfigureAwait(false))
            {
                await Say(new Changed(name ?? "")).ConfigureAwait(false);
            }
        }

        async Task Pulses()
        {
            using var pulse = new PeriodicTimer(Pulse);
            do
            {
                await Say(new InMemoryOnly(room.Windows.InMemoryOnly(window))).ConfigureAwait(false);
            }
            while (await pulse.WaitForNextTickAsync(end.Token).ConfigureAwait(false));
        }

        // A socket sends one message at a time.
        async Task Say<T>(T said)
        {
            await speaking.WaitAsync(end.Token).ConfigureAwait(false);
            try
            {
                var message = JsonSerializer.SerializeToUtf8Bytes(said, PageJson.Of<T>());
                await socket.SendAsync(message, WebSocketMessageType.Text, true, end.Token).ConfigureAwait(false);
            }
            finally
            {
                speaking.Release();
            }
        }
    }

    /// <summary>Waits until the window is closed, or sends something, which it has no reason to do, and ends the messages to it.</summary>
    private static async Task Closed(WebSocket socket, CancellationTokenSource end)
    {
        try
        {
            await socket.ReceiveAsync(new byte[1], end.Token).ConfigureAwait(false);
        }
        catch (Exception ended) when (ended is OperationCanceledException or WebSocketException)
        {
            // A window that is closed abruptly skips the closing handshake.
        }

        await end.CancelAsync().ConfigureAwait(false);
    }
}
