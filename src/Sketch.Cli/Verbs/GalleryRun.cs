using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Drawing;
using Sketch.Output.Contact;
using Sketch.Output.Files;
using Sketch.Output.Gallery;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Shelf;

namespace Sketch.Cli.Verbs;

/// <summary>One run of the verb gallery.</summary>
/// <param name="session">Where to tell.</param>
/// <param name="folder">The folder for the page and pictures.</param>
/// <param name="title">The page's title.</param>
/// <param name="filling">The shelf.</param>
/// <param name="mayLeaveFolder">Whether files may name files outside their own folder.</param>
internal sealed class GalleryRun(Session session, string folder, string title, RoleFilling filling, bool mayLeaveFolder)
{
    private const string Page = "index.html";
    private const string SmallFolder = "small";

    private sealed record Drawn(string Stem, LaidOutCard Card, ImmutableArray<(FaceKind Face, string Svg, Thumbnail Small)> Faces);

    /// <summary>Draws every card that has no errors, then the page; returns the exit status.</summary>
    public int Run(string cards, bool json)
    {
        if (!Directory.Exists(cards))
        {
            session.Tell($"\"{cards}\" is no folder.");
            return ExitStatus.Usage;
        }

        var names = Directory.GetFiles(cards, "*.card").Select(f => Path.Combine(cards, Path.GetFileName(f))).Order(StringComparer.Ordinal).ToArray();
        if (names.Length == 0)
        {
            session.Tell($"There are no card files in \"{cards}\".");
            return ExitStatus.Usage;
        }

        var files = new FolderFiles(mayLeaveFolder);
        var reading = Reading.Of(session, names, s => Compiler.Compile(s, files, filling));
        var status = reading.ExitStatusForCards;
        var sound = reading.Files.Where(f => f is { Card: not null, HasErrors: false }).ToList();
        foreach (var file in reading.Files.Where(f => f.HasErrors))
        {
            session.Tell(json ? [] : file.Findings);
            session.Tell($"{file.Source.Path}: has errors, so it is not in the gallery.");
        }

        var page = Path.Combine(folder, Page);
        try
        {
            var articles = Draw(sound);
            var contents = sound.Select(f => (Stem(f), f.Card!.Title)).ToList();
            PictureFile.Write(page, output => output.Write(System.Text.Encoding.UTF8.GetBytes(GalleryPage.Of(title, PictureFile.TextMark, contents, articles))));
        }
        catch (FileWriteException refused)
        {
            session.Tell(refused.Message);
            return ExitStatus.Usage;
        }

        if (json)
        {
            ReportJson.WriteDocument(session.Output, d => WriteJson(d, page, reading.Files));
        }
        else
        {
            session.Output.Write($"{Printable.Line(page)}\n");
        }

        return status;
    }

    private static string Stem(Compilation file) => Path.GetFileNameWithoutExtension(file.Source.Path);

    private List<string> Draw(List<Compilation> files)
    {
        var articles = new List<string>();
        using var progress = new Progress(session, folder, files.Count);
        InOrder.Run(files.Count, i => Draw(Stem(files[i]), files[i].Card!), drawn =>
        {
            articles.Add(GalleryPage.Article(drawn.Stem, drawn.Card, [.. drawn.Faces.Select(f => Write(drawn, f.Face, f.Svg, f.Small))]));
            progress.Tell(articles.Count);
        }, session.Cancellation);
        return articles;
    }

    private static Drawn Draw(string stem, LaidOutCard card)
    {
        var faces = ImmutableArray.CreateBuilder<(FaceKind, string, Thumbnail)>();
        foreach (var face in card.Faces.Select(f => f.Kind).DefaultIfEmpty(FaceKind.Front))
        {
            var svg = CardDrawing.Draw(card, face);
            faces.Add((face, svg, Thumbnail.Of(svg)));
        }

        return new(stem, card, faces.ToImmutable());
    }

    private GalleryPicture Write(Drawn drawn, FaceKind face, string svg, Thumbnail small)
    {
        var (picture, little) = ($"{drawn.Stem}-{Face.NameOf(face)}.svg", $"{drawn.Stem}-{Face.NameOf(face)}.png");
        PictureFile.Write(Path.Combine(folder, picture), svg, drawn.Card.Title, 0, out _);
        PictureFile.Write(Path.Combine(folder, SmallFolder, little), output => output.Write(small.Png));
        return new(face, Uri.EscapeDataString(picture), $"{SmallFolder}/{Uri.EscapeDataString(little)}", small.Width, small.Height);
    }

    private static void WriteJson(Utf8JsonWriter json, string page, ImmutableArray<Compilation> files)
    {
        json.WriteStartObject();
        json.WriteString("page", page);
        json.WriteStartArray("files");
        foreach (var file in files)
        {
            json.WriteStartObject();
            json.WriteString("file", file.Source.Path);
            json.WriteString("card", file.Card?.Title);
            FindingsJson.Write(json, file.Findings);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
