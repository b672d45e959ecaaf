using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;

namespace Sketch.Preview.Server;

/// <summary>An entry to add to the count of a batch.</summary>
/// <param name="File">The batch.</param>
/// <param name="Window">The window that shows it.</param>
/// <param name="Card">The title of the card.</param>
/// <param name="Stage">The word for the stage.</param>
/// <param name="Number">How many; negative to take back.</param>
/// <param name="To">The recipient of cards that are given; empty for none.</param>
/// <param name="Note">A note; empty for none.</param>
/// <param name="Id">The id of the entry, chosen by the page, so that an entry that it sends again counts once.</param>
internal sealed record CountRequest(
    string File = "", string Window = "", string Card = "", string Stage = "", int Number = 0, string To = "", string Note = "",
    string Id = "");

/// <summary>Requests about what is made of the batch that a window shows.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class CountRoutes(PageServices room)
{
    /// <summary>Maps the requests about the count.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/count", Show);
        routes.MapPost("/count", Add);
    }

    private IResult Show(string file = "", string window = "") => WithCount(window, file, View);

    private IResult Add(CountRequest asked) => WithCount(asked.Window, asked.File, (reading, count) =>
    {
        if (CountStages.Of(asked.Stage) is not { } stage || !CountEntry.IsId(asked.Id)
            || asked.Number is 0 or < -CountEntry.MostCards or > CountEntry.MostCards || count.Cards.All(c => c.Title != asked.Card))
        {
            return Refused("The page sent an invalid request. Reload it.");
        }

        if (CountEntry.ProblemOf(asked.Note) is { } wrong)
        {
            return Refused($"The note cannot be kept: {wrong}");
        }

        var recipient = stage != CountStage.Given ? null
            : reading.Compilation.Batch!.For.FirstOrDefault(f => f.Whom.Equals(asked.To, StringComparison.OrdinalIgnoreCase))?.Whom;
        var entry = new CountEntry(room.Clock.GetLocalNow().DateTime, stage, asked.Number, asked.Card)
        {
            Id = asked.Id,
            Recipient = recipient,
            Note = asked.Note.Length == 0 ? null : asked.Note,
        };
        return count.Add(entry) is { } failure ? Refused(failure.Problem) : View(reading, count);
    });

    private IResult View(Reading reading, CountFile file)
    {
        var findings = new FindingBag();
        return file.Read(findings) switch
        {
            { Problem: { } problem } => Refused(problem),
            var count => TypedResults.Ok(CountView.Of(count.Value, DateOnly.FromDateTime(room.Clock.GetLocalNow().DateTime),
                findings.ToImmutable(), reading.Source, room.Folder)),
        };
    }

    private IResult WithCount(string window, string file, Func<Reading, CountFile, IResult> answer) =>
        room.Readings.Find(window, file) is not { } reading || !OpenedFolder.Holds(room.Folder.Root, CountLog.PathOf(file))
            ? FileRoutes.NoName(file)
            : reading.Compilation.Batch is not { } batch ? Refused("Only a batch has a count.")
            : answer(reading, new(batch, reading.Source.Path, room.Readings.Files));

    private static Problem Refused(string sentence) => new(StatusCodes.Status422UnprocessableEntity, sentence);
}
