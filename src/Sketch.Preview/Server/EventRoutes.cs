using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Preview.Desk;

namespace Sketch.Preview.Server;

/// <summary>Tells each window, for as long as it is open, which files change (Server-Sent Events, WHATWG HTML, section 9.2).</summary>
internal static class EventRoutes
{
    private const int MostListening = 4;

    /// <summary>Maps the stream of events.</summary>
    public static void Map(IEndpointRouteBuilder routes, Workroom room) => routes.MapGet("/events", async context =>
    {
        var window = context.Asked("window");
        if (!OpenWindows.IsName(window))
        {
            await Answer.Problem(context, StatusCodes.Status400BadRequest, "The window did not say which it is. Load the page again.").ConfigureAwait(false);
            return;
        }

        // A browser keeps six connections to a server: more windows that listen would leave none to ask by.
        if (room.Windows.Count >= MostListening)
        {
            await Answer.Problem(context, StatusCodes.Status409Conflict, "The page is open in too many windows. Close one of them.").ConfigureAwait(false);
            return;
        }

        using var open = room.Windows.Open(window);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, room.Stopping);
        context.Response.ContentType = "text/event-stream";
        try
        {
            await context.Response.WriteAsync(": open\n\n", end.Token).ConfigureAwait(false);
            await context.Response.Body.FlushAsync(end.Token).ConfigureAwait(false);
            await foreach (var name in room.News.Listen(end.Token).ConfigureAwait(false))
            {
                // An event ends with its line.
                await context.Response.WriteAsync($"event: changed\ndata: {name?.ReplaceLineEndings(" ")}\n\n", end.Token).ConfigureAwait(false);
                await context.Response.Body.FlushAsync(end.Token).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException)
        {
        }
    });
}
