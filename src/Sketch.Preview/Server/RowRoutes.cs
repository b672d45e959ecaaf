using System.Collections.Immutable;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Rows;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>Something to do to a row of a stash or batch.</summary>
/// <param name="Sheet">The text of the window.</param>
/// <param name="Action">change, add or delete.</param>
/// <param name="Line">The line of the row.</param>
/// <param name="Kind">The kind of a row that is added.</param>
/// <param name="Values">The value that is changed, or those of a row that is added, in the order of its fields.</param>
internal sealed record RowRequest(
    SeeRequest? Sheet = null, string Action = "", int Line = 0, string Kind = "", IReadOnlyList<FieldValue>? Values = null);

/// <summary>What somebody types into a field.</summary>
internal sealed record FieldValue(string Field = "", string Value = "");

/// <summary>
/// Requests for the tables of a stash or batch. What is changed answers with a text; the window takes it as an edit of its own.
/// </summary>
/// <param name="room">The services of the page.</param>
internal sealed class RowRoutes(PageServices room)
{
    /// <summary>Maps the requests about rows.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/rows", Rows);
        routes.MapPost("/row", Change);
    }

    private Results<Ok<RowsView>, Problem> Rows(string file = "", string window = "")
    {
        if (room.Readings.Find(window, file) is not { } reading)
        {
            return FileRoutes.NoName(file);
        }

        var own = reading.Compilation.Stash;
        return TypedResults.Ok(RowsView.Of(reading.Source, own, own ?? StashOf(reading, file), Beside(file)));
    }

    private Results<Ok<RowDone>, Problem> Change(RowRequest asked)
    {
        if (asked.Sheet is not { } sheet || room.Folder.PathOf(sheet.File) is not { } path)
        {
            return FileRoutes.NoName(asked.Sheet?.File ?? "");
        }

        var before = room.Readings.Of(path, sheet.ToText());
        return TypedResults.Ok(Done(before, sheet, asked));
    }

    private RowDone Done(Reading before, SeeRequest sheet, RowRequest asked)
    {
        var text = before.Source.Content;
        var edit = EditsOf(before.Source, asked);
        if (edit.ValueOrDefault is not { IsDefault: false } edits)
        {
            return new(text, "", edit.Problem!);
        }

        if (edits.IsEmpty)
        {
            return new(text, "", "");
        }

        // The page asks for the findings of this text next, so it is compiled once.
        var changed = TextEdit.Apply(text, edits);
        var after = room.Readings.Of(before.Source.Path, sheet.ToText() with { Text = changed });
        var (known, found) = (Checked(before), Checked(after));
        return found.ErrorSince(known) is { } error ? new(text, "", error)
            : new(changed, $"{Said(before.Source, asked)} {found.WarningSince(known)}".TrimEnd(), "");
    }

    /// <summary>The reading with all findings for its kind of file.</summary>
    private Reading Checked(Reading reading) => reading with { Compilation = room.Readings.Check(reading) };

    private static Result<ImmutableArray<TextEdit>> EditsOf(SourceText text, RowRequest asked)
    {
        return asked.Action switch
        {
            "add" => RowEditing.Add(text, asked.Kind, ByField(asked.Values ?? [])).Map(added => ImmutableArray.Create(added.Edit)),
            "delete" => RowEditing.Delete(text, asked.Line),
            "change" when asked.Values is [var typed] => RowEditing.Change(text, asked.Line, typed.Field, typed.Value),
            _ => new Failure("The page asks for something that Sketch cannot do. Reload the page."),
        };
    }

    private static Dictionary<string, string> ByField(IEnumerable<FieldValue> values) =>
        values.GroupBy(v => v.Field).ToDictionary(g => g.Key, g => g.Last().Value);

    private static string Said(SourceText before, RowRequest asked)
    {
        if (asked is { Action: "add", Values: [var named, ..] })
        {
            return $"{named.Value.Trim()} is added.";
        }

        var row = RowEditing.Tables(before).SelectMany(t => t.Rows).First(r => r.Line == asked.Line);
        return asked.Action == "delete" ? $"{row.Cells[0]} is deleted." : $"{row.Cells[0]} is changed.";
    }

    /// <summary>The stash that a batch names, for what it lists.</summary>
    private Stash? StashOf(Reading reading, string file) => reading.Compilation.Batch?.Stash is { } named
        ? room.Readings.SavedStash(FolderOf(file) + named.Path) : null;

    /// <summary>The files that a file can name: those in its folder and below, as it names them.</summary>
    private List<string> Beside(string file) =>
        [.. room.Folder.List().Where(f => f.StartsWith(FolderOf(file), StringComparison.Ordinal)).Select(f => f[FolderOf(file).Length..])];

    private static string FolderOf(string file) => file[..(file.LastIndexOf('/') + 1)];
}
