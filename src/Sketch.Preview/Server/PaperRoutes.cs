using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Batches;
using Sketch.Edits;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>The lines of all batches that make a card.</summary>
internal sealed record OrderList(IEnumerable<OrderView> Orders);

/// <summary>A line of a batch that makes a card.</summary>
/// <param name="Batch">The name of the batch.</param>
/// <param name="Line">The line.</param>
/// <param name="Name">The batch, the line and how many cards it makes, in words.</param>
internal sealed record OrderView(string Batch, int Line, string Name);

/// <summary>Requests about papers of a stash: show them, try them in a card, write them into the card or a batch.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class PaperRoutes(PageServices room)
{
    /// <summary>Maps the requests about papers.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/stash", Stash);
        routes.MapGet("/variants", Variants);
        routes.MapGet("/orders", Orders);
        routes.MapPost("/keep", Keep);
    }

    /// <summary>The papers of a stash file, with unsaved edits if the window shows that file.</summary>
    private Ok<StashView> Stash(string stash = "", string file = "", string window = "")
    {
        var typed = file == stash ? room.Readings.Find(window, stash)?.Compilation.Stash : null;
        return TypedResults.Ok(StashView.Of(typed ?? room.Readings.SavedStash(stash)));
    }

    private IResult Variants(string file = "", string window = "") =>
        PrintRoutes.WithCard(room, window, file, (reading, card) => reading.Filling.Stash is { } stash
            ? TypedResults.Ok(VariantsView.Of(card, stash))
            : new Problem(StatusCodes.Status422UnprocessableEntity, "Choose a stash first."));

    private Ok<OrderList> Orders(string file = "")
    {
        var orders = room.Folder.PathOf(file) is { } card ? OrdersOf(card) : [];
        return TypedResults.Ok(new OrderList(orders.Select(o =>
        {
            var line = o.Order.Location.Start.Line;
            return new OrderView(o.Batch, line, $"{o.Title}, line {line}: {Counted.Of(o.Order.Count, "card")}");
        })));
    }

    private IEnumerable<(string Batch, string Title, MakeRequest Order)> OrdersOf(string card)
    {
        foreach (var name in room.Folder.List().Where(n => n.EndsWith(".batch", StringComparison.OrdinalIgnoreCase)))
        {
            if (room.Readings.Saved(name) is { Batch: { } batch, Source.Path: var path })
            {
                foreach (var order in batch.Makes.Where(
                    m => Path.GetFullPath(m.Card.Path.Replace('\\', '/'), Path.GetDirectoryName(path)!) == card))
                {
                    yield return (name, batch.Title, order);
                }
            }
        }
    }

    private IResult Keep(KeepRequest asked)
    {
        if (room.Readings.Find(asked.Window, asked.File) is not { } reading)
        {
            return FileRoutes.NoName(asked.File);
        }

        if (reading.Filling.Choices.IsEmpty)
        {
            return new Problem(StatusCodes.Status422UnprocessableEntity, "No paper is chosen yet: choose a role, then a paper.");
        }

        return asked.Batch.Length > 0
            ? KeepInBatch(asked.Batch, asked.Line, reading)
            : TypedResults.Ok(new OneText(TextEdit.Apply(
                reading.Source.Content, KeptPapers.InCard(reading.Source, reading.Filling.Choices, reading.Filling.Stash))));
    }

    private Results<Ok<SavedStamp>, Problem> KeepInBatch(string name, int line, Reading reading)
    {
        if (room.Folder.PathOf(name) is not { } path || OpenedFolder.Read(path).ValueOrDefault is not { } text)
        {
            return FileRoutes.NoName(name);
        }

        if (!OrdersOf(reading.Source.Path).Any(o => o.Batch == name && o.Order.Location.Start.Line == line))
        {
            return new Problem(StatusCodes.Status409Conflict,
                $"{name} was changed, and line {line} now makes other cards. Choose the line again.");
        }

        var kept = TextEdit.Apply(text.Text, KeptFillings.InBatch(new SourceText(path, text.Text), line, reading.Filling.Choices));
        var result = room.Saving.Save(name, path, kept, text.Stamp);
        return result.Problem.Length > 0 ? FileRoutes.NotSaved(result)
            : result.Theirs is not null ? new Problem(StatusCodes.Status409Conflict, $"{name} has just changed; try again.")
            : TypedResults.Ok(new SavedStamp(result.Stamp));
    }
}
