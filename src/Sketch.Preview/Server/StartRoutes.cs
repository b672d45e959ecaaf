using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Output.Files;
using Sketch.Preview.Folder;
using Sketch.Preview.Samples;
using Sketch.Preview.Views;
using Sketch.Starts;
using Sketch.Stashes;

namespace Sketch.Preview.Server;

/// <summary>A card to begin from a layout.</summary>
/// <param name="Layout">The name of the layout.</param>
/// <param name="Title">The title of the card; its file is named after it.</param>
/// <param name="Size">One of the sizes of the layout, as written.</param>
/// <param name="Fold">One of the folds of the layout.</param>
/// <param name="Stash">The stash in whose papers it is made; empty for the colours of the layout.</param>
/// <param name="Shelf">Whether the sample stash is put into the folder and used.</param>
/// <param name="Beside">The name of a file in whose folder it begins; empty for the opened folder.</param>
internal sealed record StartRequest(
    string Layout = "", string Title = "", string Size = "", string Fold = "", string Stash = "", bool Shelf = false, string Beside = "");

/// <summary>A sample to copy into the folder.</summary>
internal sealed record CopyRequest(string Sample = "");

/// <summary>The name of a file that was written.</summary>
internal sealed record WrittenFile(string File);

/// <summary>Requests for what a card can begin from: layouts, samples, the sample stash.</summary>
/// <param name="room">The services of the page.</param>
internal sealed partial class StartRoutes(PageServices room)
{
    private const string ShelfName = "shelf.stash";
    private const int MostNames = 1000;
    private const int MostLetters = 40;

    /// <summary>Maps the requests about beginning.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/layouts", (string stash = "", bool shelf = false) =>
            TypedResults.Ok(LayoutsView.Of(PapersOf(stash, shelf), room.Readings.Files)));
        routes.MapPost("/start", Start);
        routes.MapGet("/samples", () => TypedResults.Ok(SamplesView.Of(room.Readings.Files)));
        routes.MapGet("/sample", Sample);
        routes.MapPost("/copy", Copy);
    }

    private Results<Ok<WrittenFile>, Problem> Start(StartRequest asked)
    {
        var title = asked.Title.Trim();
        if (StartingLayouts.Find(asked.Layout) is not { } layout
            || layout.Sizes.FirstOrDefault(s => s.Written == asked.Size) is not { } size
            || !Enum.TryParse<Stationery.Fold>(asked.Fold, ignoreCase: true, out var fold) || !layout.Folds.Contains(fold))
        {
            return new Problem(StatusCodes.Status422UnprocessableEntity, "There is no such layout. Reload the page and choose again.");
        }

        if (title.Length == 0)
        {
            return new Problem(StatusCodes.Status422UnprocessableEntity, "The card needs a title. Type one, such as Fair winds.");
        }

        var stash = PapersOf(asked.Stash, asked.Shelf);
        if (asked.Shelf && Write(ShelfName, SampleFiles.Read(SampleFiles.Shelf).Content).Problem is { } refused)
        {
            return refused;
        }

        var folder = asked.Beside[..(asked.Beside.LastIndexOf('/') + 1)];
        var written = Write($"{folder}{StemOf(title)}.card", BegunText.Of(layout, title, size, fold, stash, room.Readings.Files));
        return written.Problem is { } problem ? problem : TypedResults.Ok(new WrittenFile(written.File));
    }

    private static Results<Ok<OneText>, Problem> Sample(string name = "") => SampleFiles.Names.Contains(name)
        ? TypedResults.Ok(new OneText(SampleFiles.Read(name).Content))
        : NoSample(name);

    private Results<Ok<WrittenFile>, Problem> Copy(CopyRequest asked)
    {
        if (!SampleFiles.Names.Contains(asked.Sample))
        {
            return NoSample(asked.Sample);
        }

        var text = SampleFiles.Read(asked.Sample).Content;
        foreach (var other in SampleFiles.Names.Where(n => n != asked.Sample && text.Contains($"\"{n}\"", StringComparison.Ordinal)))
        {
            try
            {
                // One that is there already may be her own.
                SafeFile.WriteNewText(Path.Combine(room.Folder.Root, other), SampleFiles.Read(other).Content);
            }
            catch (FileWriteException refused)
            {
                return new Problem(StatusCodes.Status500InternalServerError, $"\"{other}\" is not saved, since {refused.Message}");
            }
        }

        var written = Write(asked.Sample, text);
        return written.Problem is { } problem ? problem : TypedResults.Ok(new WrittenFile(written.File));
    }

    private Stash? PapersOf(string stash, bool isSample) => isSample
        ? Compiler.Compile(SampleFiles.Read(SampleFiles.Shelf), new SampleFiles(room.Readings.Files)).Stash
        : room.Readings.SavedStash(stash);

    /// <summary>Writes a new file; where the name is taken, a number is added to it.</summary>
    private (string File, Problem? Problem) Write(string name, string text)
    {
        var ending = Path.GetExtension(name);
        var stem = name[..^ending.Length];
        for (var number = 1; number <= MostNames; number++)
        {
            var file = number == 1 ? name : $"{stem}-{number}{ending}";
            if (room.Folder.PathOf(file) is not { } path)
            {
                return ("", FileRoutes.NoName(file));
            }

            var result = room.Saving.Save(file, path, text, Saving.NoFile);
            if (result.Theirs is null)
            {
                return (file, result.Problem.Length > 0 ? FileRoutes.NotSaved(result) : null);
            }
        }

        return ("", new Problem(StatusCodes.Status409Conflict, $"There are many files named like \"{name}\". Type another title."));
    }

    private static string StemOf(string title)
    {
        var stem = Apart().Replace(title.ToLowerInvariant(), m => m.Groups[1].Success ? "-" : "").Trim('-');
        stem = stem.Length > MostLetters ? stem[..MostLetters].TrimEnd('-') : stem;
        return stem.Length == 0 || CarriedName.Problem(stem + ".card").Length > 0 ? "card" : stem;
    }

    [GeneratedRegex(@"['’]|([^\p{L}\p{N}'’]+)")]
    private static partial Regex Apart();

    private static Problem NoSample(string name) =>
        new(StatusCodes.Status404NotFound, $"\"{name}\" is not one of the samples. Choose another.");
}
