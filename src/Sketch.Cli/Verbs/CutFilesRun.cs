using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.CutFiles;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Output.Files;
using Sketch.Reports;
using Sketch.Stashes;

namespace Sketch.Cli.Verbs;

/// <summary>One run of the verb templates that makes files for a cutting machine.</summary>
/// <param name="session">The run, which receives the messages.</param>
/// <param name="folder">Where the files go.</param>
/// <param name="forms">File name extensions: svg, dxf.</param>
/// <param name="options">How the sheets are made.</param>
internal sealed class CutFilesRun(Session session, string folder, ImmutableArray<string> forms, CutFileOptions options)
{
    /// <summary>Makes the files of all cards that have no errors, together, and returns the exit status.</summary>
    /// <param name="names">The names of the files.</param>
    /// <param name="mayLeaveFolder">Whether files may name files outside their own folder.</param>
    /// <param name="filling">The stash and the papers chosen.</param>
    /// <param name="json">Whether JSON is printed instead of text.</param>
    public int Run(string[] names, bool mayLeaveFolder, RoleFilling filling, bool json)
    {
        if (StashOptions.ReadCards(session, names, mayLeaveFolder, filling, out var status) is not { } reading)
        {
            return status;
        }

        var sound = reading.Files.Where(f => f.Card is not null && !f.HasErrors).ToImmutableArray();
        var findings = new FindingBag();
        session.Cancellation.ThrowIfCancellationRequested();
        var sheets = sound.Length == 0 ? null : CutSheets.Make([.. sound.Select(f => f.Card!)], options, findings);
        if (findings.HasErrors)
        {
            status = Math.Max(status, ExitStatus.Errors);
        }

        if (!json)
        {
            session.Report([.. reading.Files.SelectMany(f => f.Findings), .. findings.ToImmutable()]);
        }

        foreach (var file in reading.Files.Except(sound))
        {
            session.Report($"{file.Source.Path}: "
                + $"{(file.HasErrors ? "has errors, so nothing is cut for it." : "there is no card in it, so there is nothing to cut.")}");
        }

        if (sheets is { IsEmpty: true })
        {
            session.Report("All pieces are plain rectangles, so there is no shape to cut: leave out --shapes to cut them too.");
        }

        var written = sheets is { } made ? Write(made, Stem(sound), ref status) : [];
        if (json)
        {
            ReportJson.WriteDocument(session.Output, d => WriteJson(d, sheets ?? [], written, reading.Files, findings.ToImmutable()));
        }
        else
        {
            foreach (var (path, sheet) in written)
            {
                session.Print(string.Create(CultureInfo.InvariantCulture,
                    $"{path}: {sheet.Title}, {sheet.Pieces} {(sheet.Pieces == 1 ? "piece" : "pieces")}"));
            }
        }

        return status;
    }

    private string Stem(ImmutableArray<Compilation> cards) =>
        Path.Combine(folder, cards.Length == 1 ? $"{InputFiles.StemOf(cards[0].Source.Path)}-machine" : "machine");

    private ImmutableArray<(string Path, CutSheet Sheet)> Write(ImmutableArray<CutSheet> sheets, string stem, ref int status)
    {
        var ids = new SvgIds();
        var papers = sheets.Select(s => s.Material).Distinct().ToDictionary(m => m, ids.Claim);
        var written = ImmutableArray.CreateBuilder<(string, CutSheet)>();
        try
        {
            foreach (var sheet in sheets)
            {
                session.Cancellation.ThrowIfCancellationRequested();
                foreach (var form in forms)
                {
                    var path = PathOf(sheet.Material, sheet.Number, form);
                    if (form == "dxf")
                    {
                        PictureFile.Write(path, file => file.Write(Encoding.ASCII.GetBytes(CutDxf.Of(sheet))));
                    }
                    else
                    {
                        PictureFile.Write(path, CutSvg.Of(sheet), sheet.Title, 0);
                    }

                    written.Add((path, sheet));
                }
            }

            // Further sheets of an earlier run could be cut by mistake.
            foreach (var form in forms)
            {
                foreach (var last in sheets.Where(s => s.Number == s.Sheets))
                {
                    PictureFile.RemoveFrom(last.Number + 1, number => PathOf(last.Material, number, form));
                }
            }
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            status = ExitStatus.Usage;
        }

        return written.ToImmutable();

        string PathOf(string material, int number, string form) =>
            string.Create(CultureInfo.InvariantCulture, $"{stem}-{papers[material]}-{number}.{form}");
    }

    private void WriteJson(
        Utf8JsonWriter json, ImmutableArray<CutSheet> sheets, ImmutableArray<(string Path, CutSheet Sheet)> written,
        ImmutableArray<Compilation> files, ImmutableArray<Finding> findings)
    {
        json.WriteStartObject();
        json.WriteString("page", options.Page.Name);
        json.WriteNumber("copies", options.Copies);
        json.WriteStartArray("sheets");
        foreach (var sheet in sheets)
        {
            json.WriteStartObject();
            json.WriteString("material", sheet.Material);
            json.WriteNumber("number", sheet.Number);
            json.WriteSize("size", sheet.Page);
            json.WriteNumber("pieces", sheet.Pieces);
            json.WriteStartArray("written");
            foreach (var (path, _) in written.Where(w => w.Sheet == sheet))
            {
                json.WriteStringValue(path);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteCards(files, findings);
        json.WriteEndObject();
    }
}
