using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Drawing;
using Sketch.Output.Contact;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Output.Gallery;
using Sketch.Output.Handbook;
using Sketch.Panels;
using Sketch.Planning;
using Sketch.Planning.Diagrams;
using Sketch.Reports;
using Sketch.Stashes;
using Sketch.Units;

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
    private const double PixelsPerInch = 84;
    private const string GuideStart = "guide/index.md";

    private readonly PictureNames _names = new();

    private sealed record Drawn(Compilation File, LaidOutCard Card, ImmutableArray<(FaceKind Face, string Svg, Thumbnail? Small)> Faces,
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
            var guide = WriteGuide(cards.FirstOrDefault(c => File.Exists(Path.Combine(c, GuideStart))), files);
            WriteText(page, GalleryPage.Of(title, PictureFile.TextMark, guide, contents, articles));
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

    /// <summary>Writes the pages of the guide that lies in a folder of cards, and returns their addresses and titles.</summary>
    private ImmutableArray<(string Address, string Title)> WriteGuide(string? cards, FolderFiles world)
    {
        if (cards is null)
        {
            return [];
        }

        var inFolder = Path.Combine(cards, Page);
        var pages = HandbookPage.ReadAll(GuideStart, name => world.ReadText(name, inFolder).ValueOrDefault?.Content);
        var html = new HandbookHtml(pages, cards, world, (example, around, ids) => PlanFigures.Of(example.Source(cards), around, ids)
            .Select(figure => new ExampleFigure(figure.Caption, figure.Svg)));
        var written = 0;
        InOrder.Run(pages.Length, i => html.Of(pages[i], PictureFile.TextMark, [(pages[i].ToTop + Page, title)]),
            text => WriteText(Path.Combine(folder, pages[written++].HtmlName), text), session.Cancellation);
        return [.. pages.Select(p => (p.HtmlName, p.Title))];
    }

    private static void WriteText(string path, string text) =>
        PictureFile.Write(path, output => output.Write(System.Text.Encoding.UTF8.GetBytes(text)));

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
                Stem(drawn.File), drawn.Card, drawn.File.Source, [.. drawn.Faces.Select(f => Write(drawn, f.Face, f.Svg, f.Small))],
                Write(drawn)));
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
        var faces = ImmutableArray.CreateBuilder<(FaceKind, string, Thumbnail?)>();
        foreach (var face in Faces(card))
        {
            var svg = CardDrawing.Draw(card, face);
            faces.Add((face, svg, faces.Count == 0 ? null : Thumbnail.Of(svg)));
        }

        return new(file, card, faces.ToImmutable(), CardTutorial.Of(card, stash, world));
    }

    private GalleryPicture Write(Drawn drawn, FaceKind face, string svg, Thumbnail? small)
    {
        var picture = Picture(drawn.File, face);
        PictureFile.Write(picture, svg, drawn.Card.Title, 0);
        var address = Uri.EscapeDataString(Path.GetFileName(picture));
        if (small is null)
        {
            var size = CardDrawing.SizeOf(drawn.Card, face);
            return new(face, address, address, Pixels(size.Width), Pixels(size.Height));
        }

        var little = $"{PictureNames.Of(drawn.File, face)}.png";
        PictureFile.Write(Path.Combine(folder, SmallFolder, little), output => output.Write(small.Png));
        return new(face, address, $"{SmallFolder}/{Uri.EscapeDataString(little)}", small.Width / 2, small.Height / 2);
    }

    private static int Pixels(Length length) => (int)Math.Round(length.Inches * PixelsPerInch);

    private static void WriteJson(Utf8JsonWriter json, string page, ImmutableArray<Compilation> files)
    {
        json.WriteStartObject();
        json.WriteString("page", page);
        json.WriteCards(files);
        json.WriteEndObject();
    }
}
