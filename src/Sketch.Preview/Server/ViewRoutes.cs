using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Papers;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Stashes;
using Sketch.Syntax;

namespace Sketch.Preview.Server;

/// <summary>Requests for what a window shows of its text: sent with every keystroke.</summary>
internal static class ViewRoutes
{
    /// <summary>Maps the requests about texts being edited.</summary>
    public static void Map(IEndpointRouteBuilder routes, PageServices room)
    {
        routes.MapObject("/see", (context, asked) => See(context, room, asked));
        // While a text is being compiled, the page does not ask about the next; what is typed in the meantime is kept through this route.
        routes.MapObject("/typed", (context, asked) => Take(context, room, asked, (_, _) => Answer.Json(context, _ => { })));
        routes.MapGet("/words", Words);
    }

    /// <summary>The words of the language, for completion in the editor.</summary>
    private static Task Words(HttpContext context) => Answer.Json(context, json =>
    {
        json.WriteStartObject("starts");
        List("card", Vocabulary.CardLines);
        List("stash", Vocabulary.StashLines);
        List("batch", Vocabulary.BatchLines);
        json.WriteEndObject();
        List("clauses", Vocabulary.ClauseWords);
        List("papers", ColourWords.All.Concat(BuiltIn.PatternWords));

        void List(string name, IEnumerable<string> words)
        {
            json.WriteStartArray(name);
            foreach (var word in words.Distinct().Order(StringComparer.Ordinal))
            {
                json.WriteStringValue(word);
            }

            json.WriteEndArray();
        }
    });

    private static Task See(HttpContext context, PageServices room, JsonElement asked) => Take(context, room, asked, (path, sheet) =>
    {
        var reading = room.Readings.Of(path, sheet);
        return Answer.Json(context, json =>
        {
            json.WriteString("kind", reading.Kind);
            if (reading.Title is { } title)
            {
                json.WriteString("title", title);
            }

            CardView.Write(json, reading, asked.Says("unfolded"), asked.Texts("known").ToHashSet());
            FindingsView.Write(json, room.Readings.Check(reading).Findings, reading.Source, room.Folder);
        });
    });

    /// <summary>Stores the text of a window, which keeps it from now on, and answers.</summary>
    private static Task Take(HttpContext context, PageServices room, JsonElement asked, Func<string, OpenText, Task> answer)
    {
        var (file, window) = (asked.Text("file"), asked.Text("window"));
        if (room.Folder.PathOf(file) is not { } path)
        {
            return FileRoutes.NoName(context, file);
        }

        if (!OpenWindows.IsName(window))
        {
            return Answer.Problem(context, StatusCodes.Status400BadRequest, "The request names no window. Reload the page.");
        }

        var stash = asked.Text("stash");
        var choices = asked.Texts("choices").Select(t => PaperChoice.TryParse(t, out var choice) ? choice : null).OfType<PaperChoice>()
            .ToImmutableArray();
        var sheet = new OpenText(file, TextForm.Plain(asked.Text("text")), asked.Text("stamp"), stash.Length > 0 ? stash : null, choices);
        room.Windows.Put(window, sheet, asked.Says("saved"));
        return answer(path, sheet);
    }
}
