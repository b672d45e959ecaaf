using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Offers;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>The caret of a window, for what can be written there.</summary>
/// <param name="Sheet">The text of the window.</param>
/// <param name="Line">The line of the caret, from 1.</param>
/// <param name="Column">Its column, from 1; a place outside the text is the nearest inside.</param>
internal sealed record OffersRequest(SeeRequest? Sheet = null, int Line = 1, int Column = 1);

/// <summary>Requests for what a window shows of its text: sent with every keystroke.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class ViewRoutes(PageServices room)
{
    private static readonly Lazy<LetteringView> Samples = new(LetteringView.Of);

    /// <summary>Maps the requests about texts being edited.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/see", See);
        routes.MapGet("/seeing", Converse);
        // While a text is being compiled, the page does not ask about the next; what is typed in the meantime is kept through this route.
        routes.MapPost("/typed", (SeeRequest asked) => Take(asked, (_, _) => new Done()));
        routes.MapPost("/offers", Offers);
        // Asked for when samples are first shown, so that no font is read before.
        routes.MapGet("/lettering", () => TypedResults.Ok(Samples.Value));
    }

    private Results<Ok<OffersView>, Problem> Offers(OffersRequest asked)
    {
        if (asked.Sheet is not { } sheet || room.Folder.PathOf(sheet.File) is not { } path)
        {
            return FileRoutes.NoName(asked.Sheet?.File ?? "");
        }

        var source = new SourceText(path, sheet.ToText().Text);
        var caret = source.OffsetOf(new(asked.Line, asked.Column));
        return TypedResults.Ok(OffersView.Of(
            source, WordOffers.At(Parser.Parse(source, new FindingBag()), caret, room.Readings.Beside(path))));
    }

    private Results<Ok<TextView>, Problem> See(SeeRequest asked) => Take(asked, (path, sheet) =>
    {
        var reading = room.Readings.Of(path, sheet);
        return TextView.Of(
            reading, room.Readings.Check(reading).Findings, room.Folder, asked.Unfolded, (asked.Known ?? []).ToHashSet());
    });

    private async Task Converse(HttpContext context)
    {
        if (!context.WebSockets.IsWebSocketRequest)
        {
            await Problem.OfRefused(StatusCodes.Status400BadRequest).ExecuteAsync(context).ConfigureAwait(false);
            return;
        }

        using var end = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, room.Stopping);
        using var socket = await context.WebSockets.AcceptWebSocketAsync().ConfigureAwait(false);
        await new SeeingSocket(See).Answer(socket, end.Token).ConfigureAwait(false);
    }

    /// <summary>Stores the text of a window, which keeps it from now on, and answers.</summary>
    private Results<Ok<T>, Problem> Take<T>(SeeRequest asked, Func<string, OpenText, T> answer)
    {
        if (room.Folder.PathOf(asked.File) is not { } path)
        {
            return FileRoutes.NoName(asked.File);
        }

        if (!OpenWindows.IsName(asked.Window))
        {
            return new Problem(StatusCodes.Status400BadRequest, "The request names no window. Reload the page.");
        }

        var sheet = asked.ToText();
        room.Windows.Put(asked.Window, sheet, asked.Saved);
        return TypedResults.Ok(answer(path, sheet));
    }
}
