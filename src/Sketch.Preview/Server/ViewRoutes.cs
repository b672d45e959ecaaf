using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Lettering;
using Sketch.Papers;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Syntax;

namespace Sketch.Preview.Server;

/// <summary>The words of the language, for completion in the editor, each list in order.</summary>
/// <param name="Starts">The words that begin a line.</param>
/// <param name="Clauses">The words that begin a clause.</param>
/// <param name="Papers">Colours and patterns.</param>
/// <param name="Lettering">The kinds of lettering.</param>
internal sealed record WordsView(
    LineStarts Starts, IEnumerable<string> Clauses, IEnumerable<string> Papers, IEnumerable<string> Lettering);

/// <summary>The words that begin a line of each kind of file.</summary>
internal sealed record LineStarts(IEnumerable<string> Card, IEnumerable<string> Stash, IEnumerable<string> Batch);

/// <summary>Requests for what a window shows of its text: sent with every keystroke.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class ViewRoutes(PageServices room)
{
    private static readonly Lazy<LetteringView> Samples = new(LetteringView.Of);

    /// <summary>Maps the requests about texts being edited.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/see", See);
        // While a text is being compiled, the page does not ask about the next; what is typed in the meantime is kept through this route.
        routes.MapPost("/typed", (SeeRequest asked) => Take(asked, (_, _) => new Done()));
        routes.MapGet("/words", Words);
        // Asked for when samples are first shown, so that no font is read before.
        routes.MapGet("/lettering", () => TypedResults.Ok(Samples.Value));
    }

    private static Ok<WordsView> Words()
    {
        return TypedResults.Ok(new WordsView(
            new(Listed(Vocabulary.CardLines), Listed(Vocabulary.StashLines), Listed(Vocabulary.BatchLines)),
            Listed(Vocabulary.ClauseWords),
            Listed(ColourWords.All.Concat(BuiltIn.PatternWords)),
            LetteringKinds.All.Select(k => k.Word)));

        static IEnumerable<string> Listed(IEnumerable<string> words) => words.Distinct().Order(StringComparer.Ordinal);
    }

    private Results<Ok<TextView>, Problem> See(SeeRequest asked) => Take(asked, (path, sheet) =>
    {
        var reading = room.Readings.Of(path, sheet);
        return TextView.Of(
            reading, room.Readings.Check(reading).Findings, room.Folder, asked.Unfolded, (asked.Known ?? []).ToHashSet());
    });

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
