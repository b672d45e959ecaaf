using System.Net.WebSockets;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Preview.Sessions;

namespace Sketch.Preview.Server;

/// <summary>
/// Notifies each window, while it is open, which files change: <c>{"changed":"lamp.card"}</c>, with an empty name when any may have.
/// Twice a second it lists the files of the window whose edits cannot be written to disk, <c>{"inMemoryOnly":[]}</c>: a window that does
/// not get this knows that the program does not respond. It is a socket (RFC 6455) and not an event stream, since a browser allows six of
/// those per server, and so six windows at most.
/// </summary>
internal static class ChangeRoutes
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
    public static void Map(IEndpointRouteBuilder routes, PageServices room)
    {
        routes.MapGet("/news", context => Begin(context, room));
        routes.MapGet("/answers", context => Answer.Json(context, _ => { }));
    }

    private static Task Begin(HttpContext context, PageServices room)
    {
        var window = context.Asked("window");
        if (!OpenWindows.IsName(window) || !context.WebSockets.IsWebSocketRequest)
        {
            return Answer.Problem(context, StatusCodes.Status400BadRequest, "The request names no window. Reload the page.");
        }

        return room.Windows.Count < MostWindows
            ? Report(context, room, window)
            : Refuse(context, room);
    }

    private static async Task Refuse(HttpContext context, PageServices room)
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

    private static async Task Report(HttpContext context, PageServices room, string window)
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
                await Say(json => json.WriteString("changed", name ?? "")).ConfigureAwait(false);
            }
        }

        async Task Pulses()
        {
            using var pulse = new PeriodicTimer(Pulse);
            do
            {
                await Say(json =>
                {
                    json.WriteStartArray("inMemoryOnly");
                    foreach (var file in room.Windows.InMemoryOnly(window))
                    {
                        json.WriteStringValue(file);
                    }

                    json.WriteEndArray();
                }).ConfigureAwait(false);
            }
            while (await pulse.WaitForNextTickAsync(end.Token).ConfigureAwait(false));
        }

        // A socket sends one message at a time.
        async Task Say(Action<Utf8JsonWriter> write)
        {
            await speaking.WaitAsync(end.Token).ConfigureAwait(false);
            try
            {
                await socket.SendAsync(Answer.Object(write), WebSocketMessageType.Text, true, end.Token).ConfigureAwait(false);
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
