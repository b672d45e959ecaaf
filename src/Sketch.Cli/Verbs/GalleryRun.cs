using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Drawing;
using Sketch.Output.Contact;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Output.Gallery;
using Sketch.Panels;
using Sketch.Planning.Diagrams;
using Sketch.Reports;
using Sketch.Stashes;

namespace Sketch.Cli.Verbs;

/// <summary>One run of the verb gallery.</summary>
/// <param name="session">The run, which receives the messages.</param>
/// <param name="folder">The folder for the page and pictures.</param>
/// <param name="title">The page's title.</param>
/// <param name="filling">The stash.</param>
/// <param name="mayLeaveFolder">Whether files may refer to files outside their own folder.</param>
internal sealed class GalleryRun(Session session, string folder, string title, RoleFilling filling, bool mayLeaveFolder)
{
    private const string Page = "index.html";
    private const string SmallFolder = "small";

    private readonly PictureNames _names = new();

    private sealed record Drawn(Compilation File, LaidOutCard Card, ImmutableArray<(FaceKind Face, string Svg, Thumbnail Small)> Faces,
        CardTutorial Tutorial);

    /// <summary>Draws every card that has no errors, then the page; returns the exit status.</summary>
    public int Run(string[] cards, bool json)
    {
        var files = session.World(mayLeaveFolder);
        var reading = InputFiles.Of(session, cards, InputFiles.Cards, s => Compiler.Compile(s, files, filling));
        if (reading.Files.IsEmpty)
        {
            return reading.ExitStatus;
        }

        reading = reading with { Files = [.. reading.Files.Select(Named)] };
        var status = reading.ExitStatusForCards;
        var sound = reading.Files.Where(f => f is { Card: not null, HasErrors: false }).ToList();
        foreach (var file in reading.Files.Where(f => f.HasErrors))
        {
            session.Report(json ? [] : file.Findings);
            session.Report($"{file.Source.Path}: has errors, so it is not in the gallery.");
        }

        var page = Path.Combine(folder, Page);
        try
        {
            var articles = Draw(sound, files);
            var contents = sound.Select(f => (Stem(f), f.Card!.Title)).ToList();
            PictureFile.Write(page, output =>
                output.Write(System.Text.Encoding.UTF8.GetBytes(GalleryPage.Of(title, PictureFile.TextMark, contents, articles))));
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            return ExitStatus.Usage;
        }

        if (json)
        {
            ReportJson.WriteDocument(session.Output, d => WriteJson(d, page, reading.Files));
        }
        else
        {
            session.Print(page);
        }

        return status;
    }

    /// <summary>A card whose picture names are reserved; with an error where another card has one of them.</summary>
    private Compilation Named(Compilation file)
    {
        var taken = file is { Card: { } card, HasErrors: false } ? _names.Take(file, [.. Faces(card).Select(f => Picture(file, f))]) : null;
        return taken is null ? file : file with { Findings = file.Findings.Add(taken) };
    }

    private static IEnumerable<FaceKind> Faces(LaidOutCard card) => card.Faces.Select(f => f.Kind).DefaultIfEmpty(FaceKind.Front);

    private string Picture(Compilation file, FaceKind face) => Path.Combine(folder, $"{PictureNames.Of(file, face)}.svg");

    private static string Stem(Compilation file) => Path.GetFileNameWithoutExtension(file.Source.Path);

    private List<string> Draw(List<Compilation> files, FolderFiles world)
    {
        var articles = new List<string>();
        using var progress = new Progress(session, folder, files.Count);
        InOrder.Run(files.Count, i => Draw(files[i], files[i].Card!, filling.Stash, world), drawn =>
        {
            articles.Add(GalleryPage.Article(
                Stem(drawn.File), drawn.Card, [.. drawn.Faces.Select(f => Write(drawn, f.Face, f.Svg, f.Small))], Write(drawn)));
            progress.Report(articles.Count);
        }, session.Cancellation);
        return articles;
    }

    private GalleryTutorial Write(Drawn drawn)
    {
        var name = $"{Stem(drawn.File)}-steps.svg";
        PictureFile.Write(Path.Combine(folder, name), drawn.Tutorial.Picture, drawn.Card.Title, 0);
        return new(drawn.Tutorial.Supplies, drawn.Tutorial.Introduction, drawn.Tutorial.Steps, Uri.EscapeDataString(name));
    }

    private static Drawn Draw(Compilation file, LaidOutCard card, Stash? stash, FolderFiles world)
    {
        var faces = ImmutableArray.CreateBuilder<(FaceKind, string, Thumbnail)>();
        foreach (var face in Faces(card))
        {
            var svg = CardDrawing.Draw(card, face);
            faces.Add((face, svg, Thumbnail.Of(svg)));
        }

        return new(file, card, faces.ToImmutable(), CardTutorial.Of(card, stash, world));
    }

    private GalleryPicture Write(Drawn drawn, FaceKind face, string svg, Thumbnail small)
    {
        var picture = Picture(drawn.File, face);
        var little = $"{PictureNames.Of(drawn.File, face)}.png";
        PictureFile.Write(picture, svg, drawn.Card.Title, 0);
        PictureFile.Write(Path.Combine(folder, SmallFolder, little), output => output.Write(small.Png));
        return new(face, Uri.EscapeDataString(Path.GetFileName(picture)), $"{SmallFolder}/{Uri.EscapeDataString(little)}", small.Width,
            small.Height);
    }

    private static void WriteJson(Utf8JsonWriter json, string page, ImmutableArray<Compilation> files)
    {
        json.WriteStartObject();
        json.WriteString("page", page);
        json.WriteCards(files);
        json.WriteEndObject();
    }
}
