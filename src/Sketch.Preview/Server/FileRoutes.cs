using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>Requests about files of the opened folder: list, open, save, restore.</summary>
internal static class FileRoutes
{
    /// <summary>Maps the requests about files.</summary>
    public static void Map(IEndpointRouteBuilder routes, PageServices room)
    {
        routes.MapGet("/files", context => List(context, room));
        routes.MapGet("/text", context => Open(context, room));
        routes.MapGet("/earlier", context => Earlier(context, room));
        routes.MapGet("/earlier-text", context => EarlierText(context, room));
        routes.MapObject("/save", (context, asked) => Save(context, room, asked));
        routes.MapObject("/begin", (context, asked) => Begin(context, room, asked));
        routes.MapObject("/forget", (context, asked) => Forget(context, room, asked));
        routes.MapObject("/tidy", (context, asked) => Tidy(context, room, asked));
    }

    private static Task List(HttpContext context, PageServices room)
    {
        if (!room.Folder.IsThere)
        {
            return Answer.Problem(context, StatusCodes.Status503ServiceUnavailable, $"Nothing can be listed: {room.Folder.Gone}");
        }

        var there = room.Folder.List();
        // A file that another program deleted is listed as long as unsaved edits of it are kept.
        var files = there.Union(room.Windows.UnsavedFiles().Where(f => room.Folder.PathOf(f) is not null))
            .Order(StringComparer.OrdinalIgnoreCase);
        return Answer.Json(context, json =>
        {
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                json.WriteStringValue(file);
            }

            json.WriteEndArray();
            json.WriteBoolean("all", there.Count < OpenedFolder.ListLimit);
        });
    }

    private static Task Open(HttpContext context, PageServices room)
    {
        var (file, window) = (context.Asked("file"), context.Asked("window"));
        if (room.Folder.PathOf(file) is not { } path)
        {
            return NoName(context, file);
        }

        // A file that cannot be reached is not necessarily deleted.
        if (!room.Folder.IsThere)
        {
            return Answer.Problem(context, StatusCodes.Status503ServiceUnavailable, $"\"{file}\" cannot be read: {room.Folder.Gone}");
        }

        var unsaved = room.Windows.Unsaved(window, file);
        var unread = "";
        var read = OpenedFolder.Read(path);
        if (read.ValueOrDefault is not { } text)
        {
            var isThere = Path.Exists(path);
            var problem = $"\"{file}\" cannot be read: {read.Problem}";
            if (unsaved is null)
            {
                return Answer.Problem(context, isThere ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status404NotFound, problem);
            }

            unread = isThere ? problem : "";
            text = new("", isThere ? Saving.Unreadable : Saving.NoFile, default);
        }

        return Answer.Json(context, json =>
        {
            json.WriteString("text", text.Text);
            json.WriteString("stamp", text.Stamp);
            if (unread.Length > 0)
            {
                json.WriteString("problem", unread);
            }

            if (unsaved is not null && unsaved.Sheet.Text != text.Text)
            {
                json.WriteStartObject("unsaved");
                json.WriteString("text", unsaved.Sheet.Text);
                // Whether an unreadable file has changed since is unknown; a save will find out.
                json.WriteString("stamp", unread.Length > 0 ? text.Stamp : unsaved.Sheet.Base);
                json.WriteBoolean("own", unsaved.Window == window);
                json.WriteString("window", unsaved.Window);
                json.WriteString("time", unsaved.Written.ToString("O", CultureInfo.InvariantCulture));
                json.WriteEndObject();
            }
        });
    }

    private static Task Save(HttpContext context, PageServices room, JsonElement asked)
    {
        var (file, window, text) = (asked.Text("file"), asked.Text("window"), TextForm.Plain(asked.Text("text")));
        if (room.Folder.PathOf(file) is not { } path)
        {
            return NoName(context, file);
        }

        var result = room.Saving.Save(file, path, text, asked.Text("stamp"));
        if (result.Problem.Length > 0)
        {
            return NotSaved(context, result);
        }

        if (result.Theirs is { } theirs)
        {
            return Answer.Json(context, json =>
            {
                json.WriteString("text", theirs.Text);
                json.WriteString("stamp", theirs.Stamp);
            }, StatusCodes.Status409Conflict);
        }

        if (OpenWindows.IsName(window))
        {
            room.Windows.Saved(window, file, text, result.Stamp);
        }

        return Answer.Json(context, json => json.WriteString("stamp", result.Stamp));
    }

    private static Task Begin(HttpContext context, PageServices room, JsonElement asked)
    {
        var file = asked.Text("file");
        // A new file may be in an existing folder; its name never creates a folder.
        var name = file[(room.Folder.HoldsFolderOf(file) ? file.LastIndexOf('/') + 1 : 0)..];
        if (CarriedName.Problem(name) is { Length: > 0 } problem)
        {
            return Answer.Problem(context, StatusCodes.Status422UnprocessableEntity, problem);
        }

        if (room.Folder.PathOf(file) is not { } path)
        {
            return NoName(context, file);
        }

        var result = room.Saving.Save(file, path, FirstText.For(file, room.Folder.List()), Saving.NoFile);
        return result.Problem.Length > 0 ? NotSaved(context, result)
            : result.Theirs is not null
            ? Answer.Problem(context, StatusCodes.Status409Conflict, $"There is a file \"{file}\" already. Give the new one another name.")
            : Answer.Json(context, json => json.WriteString("stamp", result.Stamp));
    }

    private static Task Forget(HttpContext context, PageServices room, JsonElement asked)
    {
        var (file, window) = (asked.Text("file"), asked.Text("window"));
        if (room.Folder.PathOf(file) is null)
        {
            return NoName(context, file);
        }

        return room.Windows.Forget(window, file, asked.Says("keep") ? room.Folder.Own : null) is { Length: > 0 } problem
            ? Answer.Problem(context, StatusCodes.Status500InternalServerError, problem)
            : Answer.Json(context, _ => { });
    }

    private static Task Earlier(HttpContext context, PageServices room)
    {
        var kept = room.Folder.Own.Earlier(context.Asked("file"));
        return Answer.Json(context, json =>
        {
            json.WriteStartArray("earlier");
            foreach (var name in kept)
            {
                json.WriteStartObject();
                json.WriteString("name", name);
                json.WriteString("time", OwnFiles.TimeOf(name)!.Value.ToString("O", CultureInfo.InvariantCulture));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
    }

    private static Task EarlierText(HttpContext context, PageServices room) =>
        room.Folder.Own.ReadEarlier(context.Asked("file"), context.Asked("name")) is { } text
        ? Answer.Json(context, json => json.WriteString("text", text.Text))
        : Answer.Problem(context, StatusCodes.Status404NotFound, "That earlier version no longer exists.");

    private static Task Tidy(HttpContext context, PageServices room, JsonElement asked)
    {
        if (room.Folder.PathOf(asked.Text("file")) is not { } path)
        {
            return NoName(context, asked.Text("file"));
        }

        var tidy = Formatter.Format(new SourceText(path, asked.Text("text")), new FindingBag());
        return tidy is null
            ? Answer.Problem(context, StatusCodes.Status422UnprocessableEntity,
                "The text has errors, so it cannot be formatted yet. Fix the problems listed below the text first.")
            : Answer.Json(context, json => json.WriteString("text", tidy));
    }

    /// <summary>Answers with the problem of a failed save.</summary>
    internal static Task NotSaved(HttpContext context, SaveResult result) => Answer.Problem(
        context,
        result.IsNameRefused ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status500InternalServerError,
        result.Problem);

    /// <summary>Answers that a name is not that of a file in the opened folder.</summary>
    internal static Task NoName(HttpContext context, string file) => Answer.Problem(
        context,
        StatusCodes.Status404NotFound,
        $"\"{file}\" is not a file of this folder. Names end in .card, .stash or .batch and stay within the folder.");
}
