using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Panels;

namespace Sketch.Cli.Verbs;

/// <summary>Draws the faces of cards.</summary>
internal static class DrawVerb
{
    private static readonly string[] FaceNames = [.. Enum.GetValues<FaceKind>().Select(Face.NameOf)];

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files();
        var folder = Options.Out(
            "The folder for the pictures, which are named FILE-FACE.svg; created if needed. Write - to send one picture to "
                + "standard output.",
            takesStandard: true);
        var forms = Options.Choice("--as", "Kinds of pictures, separated by commas. [default: svg]", "svg,png,pdf", PictureFile.Forms);
        var dpi = Options.Number(
            "--dpi", "Resolution of a PNG in pixels per inch.", "N", 150, n => n is >= 10 and <= 2400, "a whole number from 10 to 2400");
        var faces = Options.Choice(
            "--face", $"Faces, separated by commas, out of {string.Join(", ", FaceNames)}. [default: those that the file speaks of]",
                "FACES", FaceNames);
        var watch = Watching.Option();
        var json = Options.Json();
        var stash = new StashOptions();
        var verb = new VerbCommand(
            "draw",
            "Draws each face of a card at its true size. A card with errors is not drawn.",
            "sketch draw fair-winds.card --out pictures",
            "sketch draw fair-winds.card --out pictures --as png,pdf --dpi 300 --face front,inside",
            "sketch draw fair-winds.card --out pictures --stash museum.stash --paper sky=gulls/back",
            "sketch draw - -o - --face front < fair-winds.card > front.svg")
        {
            files, folder, forms, dpi, faces, stash.Stash, stash.Papers, stash.Outside, watch, json,
        };
        verb.CheckTogether(result =>
        {
            if (result.GetValue(folder) == Session.Standard && (result.GetValue(json) || result.GetValue(forms) is { Length: > 1 }))
            {
                result.AddError("--out -: standard output takes one picture: choose one kind with --as, and leave out --json.");
            }
        });
        verb.SetAction(parsed => Watching.Run(session, parsed.GetValue(watch), parsed.GetRequiredValue(files), () => Run(parsed)));
        return verb;

        int Run(ParseResult parsed) => stash.Read(session, parsed, out var status) is { } filling
            ? new DrawRun(
                session,
                parsed.GetRequiredValue(folder),
                parsed.GetValue(forms) is { Length: > 0 } chosen ? [.. chosen.Distinct()] : ["svg"],
                parsed.GetValue(dpi),
                [.. (parsed.GetValue(faces) ?? []).Distinct().Select(f => (FaceKind)Array.IndexOf(FaceNames, f)).Order()])
                .Run(parsed.GetRequiredValue(files), parsed.GetValue(stash.Outside), filling, parsed.GetValue(json))
            : status;
    }
}
