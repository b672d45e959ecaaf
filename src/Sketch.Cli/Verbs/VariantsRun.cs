using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Output.Contact;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Variants;

namespace Sketch.Cli.Verbs;

/// <summary>One run of the verb variants.</summary>
/// <param name="session">The run, which receives the messages.</param>
/// <param name="folder">The folder for the contact sheets.</param>
/// <param name="forms">File name extensions, such as svg.</param>
/// <param name="dpi">Resolution of a PNG in pixels per inch.</param>
/// <param name="face">The face to show.</param>
internal sealed class VariantsRun(Session session, string folder, ImmutableArray<string> forms, int dpi, FaceKind face)
{
    /// <summary>Draws the sheets and returns the exit status.</summary>
    public int Run(string name, bool mayLeaveFolder, RoleFilling filling, VariantWish wish, bool json)
    {
        var files = session.World(mayLeaveFolder);
        var reading = InputFiles.Of(session, [name], InputFiles.Cards, s => Compiler.Compile(s, files, filling));
        if (reading.Files is not [{ } file])
        {
            return reading.ExitStatus;
        }

        var status = reading.ExitStatusForCards;
        if (!json)
        {
            session.Report(file.Findings);
        }

        if (file.Card is not { } card || file.HasErrors)
        {
            session.Report($"{file.Source.Path}: {(file.HasErrors ? "has errors" : "there is no card in it")}, so it is not drawn.");
            return Math.Max(status, ExitStatus.Errors);
        }

        if (ReportWrong(card, filling, wish) is not ExitStatus.Done and var wrong)
        {
            return wrong;
        }

        var variants = VariantSearch.Find(card, filling.Stash!, wish);
        var sheets = variants.Best.IsEmpty ? [] : Write(file.Source.Path, card, filling, variants, files, out status);
        if (variants.Best.IsEmpty)
        {
            session.Report($"{file.Source.Path}: {variants.WhyNone(card)}");
            status = ExitStatus.Errors;
        }

        if (json)
        {
            ReportJson.WriteDocument(session.Output, d => WriteJson(d, file, variants, sheets));
            return status;
        }

        foreach (var sheet in sheets)
        {
            session.Print(sheet);
        }

        if (!variants.Best.IsEmpty && !session.IsQuiet)
        {
            session.Report($"{Counted.Of(variants.Best.Length, "variant")} of {variants.Found} good ones among {variants.Tried} tried.");
            foreach (var note in variants.Notes)
            {
                session.Report(note);
            }
        }

        return status;
    }

    private int ReportWrong(LaidOutCard card, RoleFilling filling, VariantWish wish)
    {
        var roles = card.Roles.Select(r => r.Name).ToList();
        var papers = filling.Stash!.Papers.Select(p => p.Name).ToList();
        var status = StashOptions.ReportUnknownRoles(session, filling, [card]);
        if (!DrawRun.Has(card, face))
        {
            session.Report($"The card has no {Face.NameOf(face).Replace('-', ' ')}.");
            status = ExitStatus.Usage;
        }

        ReportUnknown("role", "in the card", wish.Roles, roles);
        ReportUnknown("paper", "in the stash",
            wish.Papers.Select(p => p.EndsWith("/front", StringComparison.OrdinalIgnoreCase)
                || p.EndsWith("/back", StringComparison.OrdinalIgnoreCase) ? p[..p.LastIndexOf('/')] : p), papers);
        return status;

        void ReportUnknown(string what, string where, IEnumerable<string> named, List<string> known)
        {
            foreach (var unknown in named.Where(n => !known.Contains(n, StringComparer.OrdinalIgnoreCase)))
            {
                var near = Nearest.Find(unknown, known);
                session.Report($"There is no {what} \"{unknown}\" {where}. "
                    + $"{(near is not null ? $"Did you mean \"{near}\"?" : $"There are {string.Join(", ", known)}.")}");
                status = ExitStatus.Usage;
            }
        }
    }

    private List<string> Write(
        string source, LaidOutCard card, RoleFilling filling, VariantList variants, FolderFiles files, out int status)
    {
        var written = new List<string>();
        var sheet = new ContactSheet(card, face, filling, variants, files);
        status = ExitStatus.Done;
        try
        {
            foreach (var form in forms)
            {
                var path = Path.Combine(folder, $"{InputFiles.StemOf(source)}-variants.{form}");
                using var progress = new Progress(session, path, form == "html" ? variants.Best.Length : sheet.Rows);
                PictureFile.Write(path, output => Write(output, form, sheet, progress.Report));
                written.Add(path);
            }
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            status = ExitStatus.Usage;
        }

        return written;
    }

    private void Write(Stream output, string form, ContactSheet sheet, Action<int> progress)
    {
        var file = new ContactSheetFile(sheet, progress, session.Cancellation);
        switch (form)
        {
            case "png":
                file.WritePng(output, dpi);
                break;
            case "pdf":
                file.WritePdf(output);
                break;
            case "html":
                new ContactPage(sheet, progress, session.Cancellation).Write(output, PictureFile.TextMark);
                break;
            default:
                file.WriteSvg(output, PictureFile.TextMark);
                break;
        }
    }

    private static void WriteJson(Utf8JsonWriter json, Compilation file, VariantList variants, List<string> sheets)
    {
        json.WriteStartObject();
        json.WriteString("file", file.Source.Path);
        json.WriteString("card", file.Card?.Title);
        json.WriteStartArray("variants");
        foreach (var variant in variants.Best)
        {
            json.WriteStartObject();
            json.WriteString("id", variant.Id);
            json.WriteNumber("score", Math.Round(variant.Score, 3));
            json.WriteStartArray("papers");
            foreach (var choice in variant.Choices)
            {
                json.WriteStartObject();
                json.WriteString("role", choice.Role);
                json.WriteString("paper", choice.Paper);
                json.WriteString("side", choice.Side == PaperSide.Back ? "back" : "front");
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("tried", variants.Tried);
        json.WriteStartArray("notes");
        foreach (var note in variants.Notes)
        {
            json.WriteStringValue(note);
        }

        json.WriteEndArray();
        json.WriteNumber("found", variants.Found);
        json.WriteNumber("lacking", variants.Lacking);
        json.WriteStartArray("sheets");
        sheets.ForEach(json.WriteStringValue);
        json.WriteEndArray();
        FindingsJson.Write(json, file.Findings);
        json.WriteEndObject();
    }
}
