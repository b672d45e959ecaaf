using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Papers;
using Sketch.Preview.Desk;
using Sketch.Preview.Folder;
using Sketch.Preview.Views;
using Sketch.Shelf;
using Sketch.Syntax;

namespace Sketch.Preview.Server;

/// <summary>What a window shows of its text: asked again with every keystroke.</summary>
internal static class ViewRoutes
{
    /// <summary>Maps the requests about texts as typed.</summary>
    public static void Map(IEndpointRouteBuilder routes, Workroom room)
    {
        routes.MapObject("/see", (context, asked) => See(context, room, asked));
        routes.MapGet("/words", Words);
    }

    /// <summary>The words of the language, for the editor to offer.</summary>
    private static Task Words(HttpContext context) => Answer.Json(context, json =>
    {
        List("starts", Vocabulary.Openers.Concat(Vocabulary.Faces).Concat(Vocabulary.Kinds));
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

    private static Task See(HttpContext context, Workroom room, JsonElement asked)
    {
        var (file, window) = (asked.Text("file"), asked.Text("window"));
        if (room.Folder.PathOf(file) is not { } path)
        {
            return FileRoutes.NoName(context, file);
        }

        if (!OpenWindows.IsName(window))
        {
            return Answer.Problem(context, StatusCodes.Status400BadRequest, "The window did not say which it is. Load the page again.");
        }

        var stash = asked.Text("stash");
        var choices = asked.Texts("choices").Select(t => PaperChoice.TryParse(t, out var choice) ? choice : null).OfType<PaperChoice>().ToImmutableArray();
        var sheet = new DeskSheet(file, TextForm.Plain(asked.Text("text")), asked.Text("stamp"), stash.Length > 0 ? stash : null, choices);
        room.Windows.Put(window, sheet, asked.Says("saved"));
        var reading = Reading.Of(room.Folder, path, sheet, room.Files);
        return Answer.Json(context, json =>
        {
            json.WriteString("kind", reading.Kind);
            CardView.Write(json, reading, asked.Says("unfolded"), asked.Texts("known").ToHashSet());
            FindingsView.Write(json, BatchView.FindingsOf(reading, room.Files), reading.Source, room.Folder);
        });
    }
}
