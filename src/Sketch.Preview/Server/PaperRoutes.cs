using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Batches;
using Sketch.Edits;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>Requests about papers of a stash: show them, try them in a card, write them into the card or a batch.</summary>
internal static class PaperRoutes
{
    /// <summary>Maps the requests about papers.</summary>
    public static void Map(IEndpointRouteBuilder routes, PageServices room)
    {
        routes.MapGet("/stash", context => Stash(context, room));
        routes.MapGet("/variants", context => PrintRoutes.WithCard(context, room, (reading, card) => reading.Filling.Stash is { } stash
            ? Answer.Json(context, json => VariantsView.Write(json, card, stash))
            : Answer.Problem(context, StatusCodes.Status422UnprocessableEntity, "Choose a stash first.")));
        routes.MapGet("/orders", context => Orders(context, room));
        routes.MapObject("/keep", (context, asked) => Keep(context, room, asked));
    }

    /// <summary>The papers of a stash file, with unsaved edits if the window shows that file.</summary>
    private static Task Stash(HttpContext context, PageServices room)
    {
        var name = context.Asked("stash");
        var typed = context.Asked("file") == name ? room.Readings.Find(context.Asked("window"), name)?.Compilation.Stash : null;
        var stash = typed ?? room.Readings.SavedStash(name);
        return Answer.Json(context, json => StashView.Write(json, stash));
    }

    /// <summary>The lines of all batches that make a card.</summary>
    private static Task Orders(HttpContext context, PageServices room)
    {
        var orders = room.Folder.PathOf(context.Asked("file")) is { } card ? OrdersOf(room, card) : [];
        return Answer.Json(context, json =>
        {
            json.WriteStartArray("orders");
            foreach (var (batch, title, order) in orders)
            {
                json.WriteStartObject();
                json.WriteString("batch", batch);
                json.WriteNumber("line", order.Location.Start.Line);
                json.WriteString("name", $"{title}, line {order.Location.Start.Line}: {Counted.Of(order.Count, "card")}");
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
    }

    private static IEnumerable<(string Batch, string Title, MakeRequest Order)> OrdersOf(PageServices room, string card)
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

    private static Task Keep(HttpContext context, PageServices room, JsonElement asked)
    {
        var (file, window, batch) = (asked.Text("file"), asked.Text("window"), asked.Text("batch"));
        if (room.Readings.Find(window, file) is not { } reading)
        {
            return FileRoutes.NoName(context, file);
        }

        if (reading.Filling.Choices.IsEmpty)
        {
            return Answer.Problem(context, StatusCodes.Status422UnprocessableEntity,
                "No paper is chosen yet: choose a role, then a paper.");
        }

        return batch.Length == 0
            ? Answer.Json(context, json =>
                json.WriteString("text",
                    TextEdit.Apply(reading.Source.Content,
                        KeptPapers.InCard(reading.Source, reading.Filling.Choices, reading.Filling.Stash))))
            : KeepInBatch(context, room, batch, asked.Number("line"), reading);
    }

    private static Task KeepInBatch(HttpContext context, PageServices room, string name, int line, Reading reading)
    {
        if (room.Folder.PathOf(name) is not { } path || OpenedFolder.Read(path).ValueOrDefault is not { } text)
        {
            return FileRoutes.NoName(context, name);
        }

        if (!OrdersOf(room, reading.Source.Path).Any(o => o.Batch == name && o.Order.Location.Start.Line == line))
        {
            return Answer.Problem(context, StatusCodes.Status409Conflict,
                $"{name} was changed, and line {line} now makes other cards. Choose the line again.");
        }

        var kept = TextEdit.Apply(text.Text, KeptFillings.InBatch(new SourceText(path, text.Text), line, reading.Filling.Choices));
        var result = room.Saving.Save(name, path, kept, text.Stamp);
        return result.Problem.Length > 0 ? FileRoutes.NotSaved(context, result)
            : result.Theirs is not null ? Answer.Problem(context, StatusCodes.Status409Conflict, $"{name} has just changed; try again.")
            : Answer.Json(context, json => json.WriteString("stamp", result.Stamp));
    }
}
