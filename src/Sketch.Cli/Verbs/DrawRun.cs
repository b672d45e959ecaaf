using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Drawing;
using Sketch.Output.Files;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Stashes;

namespace Sketch.Cli.Verbs;

/// <summary>One run of the verb draw.</summary>
/// <param name="session">The run, which receives the messages.</param>
/// <param name="folder">The folder for the pictures, or - for standard output.</param>
/// <param name="forms">File name extensions, such as svg.</param>
/// <param name="dpi">Resolution of a PNG in pixels per inch.</param>
/// <param name="faces">The faces to draw; empty for those that a file mentions.</param>
internal sealed class DrawRun(Session session, string folder, ImmutableArray<string> forms, int dpi, ImmutableArray<FaceKind> faces)
{
    private const double PrintDotsPerInch = 300;

    private readonly PictureNames _names = new();
    private int _status;
    private bool _isBrokenOff;

    private sealed record Picture(FaceKind Face, string Path);

    private sealed record DrawnFile(Compilation File, ImmutableArray<Picture> Pictures);

    /// <summary>Draws every card that can be drawn and returns the exit status.</summary>
    /// <param name="names">The names of the files.</param>
    /// <param name="mayLeaveFolder">Whether files may name files outside their own folder.</param>
    /// <param name="filling">The stash and the papers chosen.</param>
    /// <param name="json">Whether JSON is printed instead of text.</param>
    public int Run(string[] names, bool mayLeaveFolder, RoleFilling filling, bool json)
    {
        if (StashOptions.ReadCards(session, names, mayLeaveFolder, filling, out _status) is not { } reading)
        {
            return _status;
        }

        if (folder == Session.Standard)
        {
            return Stream(reading);
        }

        var drawn = reading.Files.Select(file => Draw(file, json)).ToImmutableArray();
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => document.WriteFiles(drawn, file => WriteJson(document, file)));
        }

        return _status;
    }

    // One picture as bytes, and nothing else on standard output.
    private int Stream(InputFiles reading)
    {
        session.Report([.. reading.Files.SelectMany(f => f.Findings)]);
        if (reading.Files is not [{ Card: { } card, HasErrors: false } file])
        {
            session.Report("Nothing is drawn: standard output takes the picture of one card without errors.");
            return Math.Max(_status, ExitStatus.Usage);
        }

        if (FacesOf(file.Source.Path, card) is not [var face])
        {
            session.Report($"Standard output takes one picture: choose a face with --face, out of "
                + $"{string.Join(", ", FacesOf(file.Source.Path, card).Select(Face.NameOf))}.");
            return ExitStatus.Usage;
        }

        var path = $"{InputFiles.StemOf(file.Source.Path)}.{forms[0]}";
        if (PictureFile.Send(path, CardDrawing.Draw(card, face, DotsPerInch(path)), $"{card.Title}: {Face.NameOf(face)}", dpi, session)
            is not { } failure)
        {
            return _status;
        }

        session.Report($"The picture is not drawn. {failure.Problem}");
        return ExitStatus.Usage;
    }

    private DrawnFile Draw(Compilation file, bool json)
    {
        var reason = WhyNotDrawn(file);
        var pictures = reason is null ? Claim(ref file, file.Card!) : [];
        if (!json)
        {
            session.Report(file.Findings);
        }

        if (reason is not null)
        {
            session.Report($"{file.Source.Path}: {reason}");
        }

        var written = pictures.GroupBy(p => p.Face).SelectMany(face => Write(file.Card!, face)).ToImmutableArray();
        if (!json)
        {
            foreach (var picture in written)
            {
                session.Print(picture.Path);
            }
        }

        return new(file, written);
    }

    /// <summary>The pictures of a card; none, and a finding, where an earlier card has one of their names.</summary>
    private ImmutableArray<Picture> Claim(ref Compilation file, LaidOutCard card)
    {
        var source = file;
        var pictures = FacesOf(file.Source.Path, card)
            .SelectMany(face => forms.Select(form => new Picture(face, Path.Combine(folder, $"{PictureNames.Of(source, face)}.{form}"))))
            .ToImmutableArray();
        if (_names.Take(file, [.. pictures.Select(p => p.Path)]) is not { } taken)
        {
            return pictures;
        }

        _status = Math.Max(_status, ExitStatus.Errors);
        file = file with { Findings = file.Findings.Add(taken) };
        return [];
    }

    private ImmutableArray<FaceKind> FacesOf(string file, LaidOutCard card)
    {
        if (faces.Length == 0)
        {
            return card.Faces.Length == 0 ? [FaceKind.Front] : [.. card.Faces.Select(f => f.Kind)];
        }

        foreach (var missing in faces.Where(f => !Has(card, f)))
        {
            session.Report($"{file}: {HasNo(missing)}");
            _status = ExitStatus.Usage;
        }

        return [.. faces.Where(f => Has(card, f))];
    }

    /// <summary>Why a file cannot be drawn, as a sentence that follows its name and a colon; null where it can.</summary>
    internal static string? WhyNotDrawn(Compilation file) => file.HasErrors ? "has errors, so it is not drawn."
        : file.Card is null ? "there is no card in it, so nothing is drawn." : null;

    /// <summary>That a card has not a face, as a sentence that begins in lower case.</summary>
    internal static string HasNo(FaceKind face) => $"the card has no {Face.NameOf(face).Replace('-', ' ')}.";

    /// <summary>Whether a card has a face, mentioned or bare.</summary>
    internal static bool Has(LaidOutCard card, FaceKind face) => face switch
    {
        FaceKind.Envelope or FaceKind.EnvelopeBack => card.Faces.Any(f => f.Kind is FaceKind.Envelope or FaceKind.EnvelopeBack),
        _ => card.Base.Has(face),
    };

    private IEnumerable<Picture> Write(LaidOutCard card, IGrouping<FaceKind, Picture> face)
    {
        if (_isBrokenOff)
        {
            yield break;
        }

        // The forms differ only in the resolution of pictures of papers.
        foreach (var alike in face.GroupBy(p => DotsPerInch(p.Path)))
        {
            var svg = CardDrawing.Draw(card, face.Key, alike.Key);
            foreach (var picture in alike)
            {
                session.Cancellation.ThrowIfCancellationRequested();
                if (Write(card, picture, svg))
                {
                    yield return picture;
                }
            }
        }
    }

    private double DotsPerInch(string path) => Path.GetExtension(path) switch
    {
        ".png" => dpi,
        ".pdf" => PrintDotsPerInch,
        _ => CardDrawing.UsualDotsPerInch,
    };

    /// <summary>Writes one picture; after a failed write, nothing more is written, since it would fail again.</summary>
    private bool Write(LaidOutCard card, Picture picture, string svg)
    {
        if (_isBrokenOff)
        {
            return false;
        }

        string problem;
        try
        {
            var failure = PictureFile.Write(picture.Path, svg, $"{card.Title}: {Face.NameOf(picture.Face)}", dpi);
            if (failure is null)
            {
                return true;
            }

            problem = $"\"{picture.Path}\" is not drawn. {failure.Problem}";
        }
        catch (FileWriteException refused)
        {
            problem = refused.Message;
            _isBrokenOff = true;
        }

        session.Report(problem);
        _status = ExitStatus.Usage;
        return false;
    }

    private static void WriteJson(Utf8JsonWriter json, DrawnFile drawn)
    {
        json.WriteStartObject();
        json.WriteString("file", drawn.File.Source.Path);
        json.WriteString("card", drawn.File.Card?.Title);
        json.WriteStartArray("pictures");
        foreach (var picture in drawn.Pictures)
        {
            json.WriteStartObject();
            json.WriteString("face", Face.NameOf(picture.Face));
            json.WriteString("path", picture.Path);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FindingsJson.Write(json, drawn.File.Findings);
        json.WriteEndObject();
    }
}
