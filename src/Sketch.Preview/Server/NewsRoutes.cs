using System.Net.WebSockets;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Preview.Desk;

namespace Sketch.Preview.Server;

/// <summary>
/// Tells each window, for as long as it is open, which files change: the name of one in each message, or nothing when any may have. It is a
/// socket (RFC 6455) and not a stream of events, of which a browser allows six at a time to a server and so six windows at most.
/// </summary>
internal static class NewsRoutes
{
    private const int MostWindows = 60;

    // The page shows the reason of a socket that is closed so, and asks no more: a browser hides from scripts why a socket is refused.
    private const WebSocketCloseStatus OneTooMany = (WebSocketCloseStatus)4000;

    // At most 123 bytes (RFC 6455, section 5.5).
    private const string TooMany = "The page is open in too many windows. Close one of them, then load this one again.";

    private static readonly TimeSpan Parting = TimeSpan.FromSeconds(5);

    /// <summary>Maps the socket.</summary>
    public static void Map(IEndpointRouteBuilder routes, Workroom room) => routes.MapGet("/news", context =>
    {
        var window = context.Asked("window");
        if (!OpenWindows.IsName(window) || !context.WebSockets.IsWebSocketRequest)
        {
            return Answer.Problem(context, StatusCodes.Status400BadRequest, "The window did not say which it is. Load the page again.");
        }

        return room.Windows.Count < MostWindows
            ? Tell(context, room, window)
            : Refuse(context, room);
    });

    private static async Task Refuse(HttpContext context, Workroom room)
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
            // The window went away by itself, or does not answer.
        }
    }

    private static async Task Tell(HttpContext context, Workroom room, string window)
    {
        using var open = room.Windows.Open(window);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, room.Stopping);
        using var socket = await context.WebSockets.AcceptWebSocketAsync().ConfigureAwait(false);
        var closed = Closed(socket, end);
        try
        {
            await foreach (var name in room.News.Listen(end.Token).ConfigureAwait(false))
            {
                await socket.SendAsync(Encoding.UTF8.GetBytes(name ?? ""), WebSocketMessageType.Text, true, end.Token).ConfigureAwait(false);
            }
        }
        catch (Exception ended) when (ended is OperationCanceledException or WebSocketException)
        {
            // The window is closed, or the program ends.
        }

        await closed.ConfigureAwait(false);
    }

    /// <summary>Waits until the window is closed, or says something, which it has no reason to; then it is told nothing more.</summary>
    private static async Task Closed(WebSocket socket, CancellationTokenSource end)
    {
        try
        {
            await socket.ReceiveAsync(new byte[1], end.Token).ConfigureAwait(false);
        }
        catch (Exception ended) when (ended is OperationCanceledException or WebSocketException)
        {
            // A window that is closed in haste says no more than that.
        }

        await end.CancelAsync().ConfigureAwait(false);
    }
}
