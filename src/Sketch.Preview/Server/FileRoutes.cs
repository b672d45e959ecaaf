using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Preview.Samples;
using Sketch.Preview.Sessions;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>The files of the folder.</summary>
/// <param name="Files">Their names.</param>
/// <param name="All">Whether these are all.</param>
internal sealed record FileList(IEnumerable<string> Files, bool All);

/// <summary>A text as it is on the disk, and its unsaved edits.</summary>
/// <param name="Text">The text.</param>
/// <param name="Stamp">The stamp of the content of the file.</param>
/// <param name="Problem">Why the file cannot be read; null when it can.</param>
/// <param name="Unsaved">The unsaved edits; null when there are none.</param>
internal sealed record OpenedText(
    string Text,
    string Stamp,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Problem,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] UnsavedEdits? Unsaved);

/// <summary>Unsaved edits of a file.</summary>
/// <param name="Text">The text with the edits.</param>
/// <param name="Stamp">The stamp of the content of the file when they began.</param>
/// <param name="Own">Whether they are of the window that asks.</param>
/// <param name="Window">The window in which they were typed.</param>
/// <param name="Time">When they were kept, in UTC.</param>
internal sealed record UnsavedEdits(string Text, string Stamp, bool Own, string Window, DateTime Time);

/// <summary>What another program wrote to a file in the meantime.</summary>
internal sealed record StampedText(string Text, string Stamp);

/// <summary>The stamp of the content that was saved.</summary>
internal sealed record SavedStamp(string Stamp);

/// <summary>A text.</summary>
internal sealed record OneText(string Text);

/// <summary>The earlier texts of a file, latest first.</summary>
internal sealed record EarlierList(IEnumerable<EarlierText> Earlier);

/// <summary>An earlier text.</summary>
/// <param name="Name">The name under which it is kept.</param>
/// <param name="Time">When it was overwritten, in UTC.</param>
internal sealed record EarlierText(string Name, DateTime Time);

/// <summary>Requests about files of the opened folder: list, open, save, restore.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class FileRoutes(PageServices room)
{
    /// <summary>Maps the requests about files.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/files", List);
        routes.MapGet("/text", Open);
        routes.MapGet("/earlier", Earlier);
        routes.MapGet("/earlier-text", EarlierText);
        routes.MapPost("/save", Save);
        routes.MapPost("/begin", Begin);
        routes.MapPost("/forget", Forget);
        routes.MapPost("/tidy", Tidy);
    }

    private Results<Ok<FileList>, Problem> List()
    {
        if (!room.Folder.IsThere)
        {
            return new Problem(StatusCodes.Status503ServiceUnavailable, $"Nothing can be listed: {room.Folder.Gone}");
        }

        var there = room.Folder.List();
        // A file that another program deleted is listed as long as unsaved edits of it are kept.
        var files = there.Union(room.Windows.UnsavedFiles().Where(f => room.Folder.PathOf(f) is not null))
            .Order(StringComparer.OrdinalIgnoreCase);
        return TypedResults.Ok(new FileList(files, there.Count < OpenedFolder.ListLimit));
    }

    private Results<Ok<OpenedText>, Problem> Open(string file = "", string window = "")
    {
        if (room.Folder.PathOf(file) is not { } path)
        {
            return NoName(file);
        }

        // A file that cannot be reached is not necessarily deleted.
        if (!room.Folder.IsThere)
        {
            return new Problem(StatusCodes.Status503ServiceUnavailable, $"\"{file}\" cannot be read: {room.Folder.Gone}");
        }

        var unsaved = room.Windows.Unsaved(window, file);
        string? unread = null;
        var read = OpenedFolder.Read(path);
        if (read.ValueOrDefault is not { } text)
        {
            var isThere = Path.Exists(path);
            var problem = $"\"{file}\" cannot be read: {read.Problem}";
            if (unsaved is null)
            {
                return new Problem(isThere ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status404NotFound, problem);
            }

            unread = isThere ? problem : null;
            text = new("", isThere ? Saving.Unreadable : Saving.NoFile, default);
        }

        return TypedResults.Ok(new OpenedText(text.Text, text.Stamp, unread, unsaved is null || unsaved.Sheet.Text == text.Text
            ? null
            : new(
                unsaved.Sheet.Text,
                // Whether an unreadable file has changed since is unknown; a save will find out.
                unread is null ? unsaved.Sheet.Base : text.Stamp,
                unsaved.Window == window,
                unsaved.Window,
                unsaved.Written)));
    }

    private Results<Ok<SavedStamp>, Conflict<StampedText>, Problem> Save(SaveRequest asked)
    {
        var (file, text) = (asked.File, TextForm.Plain(asked.Text));
        if (room.Folder.PathOf(file) is not { } path)
        {
            return NoName(file);
        }

        var result = room.Saving.Save(file, path, text, asked.Stamp);
        if (result.Problem.Length > 0)
        {
            return NotSaved(result);
        }

        if (result.Theirs is { } theirs)
        {
            return TypedResults.Conflict(new StampedText(theirs.Text, theirs.Stamp));
        }

        if (OpenWindows.IsName(asked.Window))
        {
            room.Windows.Saved(asked.Window, file, text, result.Stamp);
        }

        return TypedResults.Ok(new SavedStamp(result.Stamp));
    }

    private Results<Ok<SavedStamp>, Problem> Begin(BeginRequest asked)
    {
        var file = asked.File;
        // A new file may be in an existing folder; its name never creates a folder.
        var name = file[(room.Folder.HoldsFolderOf(file) ? file.LastIndexOf('/') + 1 : 0)..];
        if (CarriedName.Problem(name) is { Length: > 0 } problem)
        {
            return new Problem(StatusCodes.Status422UnprocessableEntity, problem);
        }

        if (room.Folder.PathOf(file) is not { } path)
        {
            return NoName(file);
        }

        var result = room.Saving.Save(file, path, FirstTextOf(asked), Saving.NoFile);
        return result.Problem.Length > 0 ? NotSaved(result)
            : result.Theirs is not null
            ? new Problem(StatusCodes.Status409Conflict, $"There is a file \"{file}\" already. Give the new one another name.")
            : TypedResults.Ok(new SavedStamp(result.Stamp));
    }

    private string FirstTextOf(BeginRequest asked)
    {
        var isStash = asked.File.EndsWith(".stash", StringComparison.OrdinalIgnoreCase);
        return isStash && asked.From == "samples" ? SampleFiles.Read(SampleFiles.Shelf).Content
            : isStash && asked.From == "empty" ? FirstText.EmptyStash(asked.File, asked.IsMetric)
            : asked.Makes is { } makes ? FirstText.Batch(asked.File, makes, asked.Stash)
            : FirstText.For(asked.File, room.Folder.List(), asked.IsMetric);
    }

    private Results<Ok<Done>, Problem> Forget(ForgetRequest asked)
    {
        if (room.Folder.PathOf(asked.File) is null)
        {
            return NoName(asked.File);
        }

        return room.Windows.Forget(asked.Window, asked.File, asked.Keep ? room.Folder.Own : null) is { Length: > 0 } problem
            ? new Problem(StatusCodes.Status500InternalServerError, problem)
            : TypedResults.Ok(new Done());
    }

    private Ok<EarlierList> Earlier(string file = "") => TypedResults.Ok(new EarlierList(
        room.Folder.Own.Earlier(file).Select(name => new EarlierText(name, OwnFiles.TimeOf(name)!.Value))));

    private Results<Ok<OneText>, Problem> EarlierText(string file = "", string name = "") =>
        room.Folder.Own.ReadEarlier(file, name) is { } text
            ? TypedResults.Ok(new OneText(text.Text))
            : new Problem(StatusCodes.Status404NotFound, "That earlier text is no longer there.");

    private Results<Ok<OneText>, Problem> Tidy(TidyRequest asked)
    {
        if (room.Folder.PathOf(asked.File) is not { } path)
        {
            return NoName(asked.File);
        }

        return Formatter.Format(new SourceText(path, asked.Text), new FindingBag()) is { } tidy
            ? TypedResults.Ok(new OneText(tidy))
            : new Problem(StatusCodes.Status422UnprocessableEntity,
                "The text has errors, so it cannot be formatted yet. Fix the problems listed below the text first.");
    }

    /// <summary>The problem of a failed save.</summary>
    internal static Problem NotSaved(SaveResult result) => new(
        result.IsNameRefused ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status500InternalServerError,
        result.Problem);

    /// <summary>A name that is not that of a file in the opened folder.</summary>
    internal static Problem NoName(string file) => new(
        StatusCodes.Status404NotFound,
        $"\"{file}\" is not a file of this folder. Names end in .card, .stash or .batch and stay within the folder.");
}
