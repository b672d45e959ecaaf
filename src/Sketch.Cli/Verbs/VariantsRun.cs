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
    private static readonly VariantList None = new([], 0, 0);

    private readonly PictureNames _names = new();
    private int _status;
    private bool _isBrokenOff;

    private sealed record DrawnFile(Compilation File, VariantList Variants, ImmutableArray<string> Sheets);

    /// <summary>Draws the sheets of every card that can be drawn and returns the exit status.</summary>
    /// <param name="names">The names of the files.</param>
    /// <param name="mayLeaveFolder">Whether files may name files outside their own folder.</param>
    /// <param name="filling">The stash and the papers chosen.</param>
    /// <param name="options">Which variants to find; each card varies those of the roles that it has.</param>
    /// <param name="json">Whether JSON is printed instead of text.</param>
    public int Run(string[] names, bool mayLeaveFolder, RoleFilling filling, VariantOptions options, bool json)
    {
        if (StashOptions.ReadCards(session, names, mayLeaveFolder, filling, out _status) is not { } reading)
        {
            return _status;
        }

        if (ReportUnknown(reading, filling.Stash!, options))
        {
            return ExitStatus.Usage;
        }

        var world = session.World(mayLeaveFolder);
        var drawn = reading.Files.Select(file => Draw(file, filling, options, world, json)).ToImmutableArray();
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => document.WriteFiles(drawn, file => WriteJson(document, file)));
        }

        return _status;
    }

    /// <summary>Reports roles that none of the cards has, and papers that the stash has not; returns whether there are any.</summary>
    private bool ReportUnknown(InputFiles reading, Stash stash, VariantOptions options)
    {
        var cards = reading.Files.Select(f => f.Card).OfType<LaidOutCard>().ToList();
        var isWrong = false;
        if (cards.Count > 0)
        {
            Report("role", cards.Count == 1 ? "in the card" : "in the cards", options.Roles,
                [.. cards.SelectMany(c => c.Roles).Select(r => r.Name).Distinct(StringComparer.OrdinalIgnoreCase)]);
        }

        Report("paper", "in the stash",
            options.Papers.Select(p => p.EndsWith("/front", StringComparison.OrdinalIgnoreCase)
                || p.EndsWith("/back", StringComparison.OrdinalIgnoreCase) ? p[..p.LastIndexOf('/')] : p),
            [.. stash.Papers.Select(p => p.Name)]);
        return isWrong;

        void Report(string what, string where, IEnumerable<string> named, List<string> known)
        {
            foreach (var unknown in named.Where(n => !known.Contains(n, StringComparer.OrdinalIgnoreCase)))
            {
                var near = Nearest.Find(unknown, known);
                session.Report($"There is no {what} \"{unknown}\" {where}. "
                    + $"{(near is not null ? $"Did you mean \"{near}\"?"
                        : known.Count == 0 ? "There are none." : $"There are {string.Join(", ", known)}.")}");
                isWrong = true;
            }
        }
    }

    private DrawnFile Draw(Compilation file, RoleFilling filling, VariantOptions options, FolderFiles world, bool json)
    {
        session.Cancellation.ThrowIfCancellationRequested();
        var (reason, status) = WhyNotDrawn(file, options);
        var variants = None;
        if (reason is null)
        {
            variants = VariantSearch.Find(file.Card!, filling.Stash!, options);
            (reason, status) = variants.Best.IsEmpty ? (variants.WhyNone(file.Card!), ExitStatus.Errors) : (null, ExitStatus.Done);
        }

        var paths = reason is null ? Claim(ref file) : [];
        _status = Math.Max(_status, status);
        if (!json)
        {
            session.Report(file.Findings);
        }

        if (reason is not null)
        {
            session.Report($"{file.Source.Path}: {reason}");
        }

        ImmutableArray<string> sheets = paths.IsEmpty ? [] : Write(paths, new(file.Card!, face, filling, variants, world));
        if (!json && !paths.IsEmpty)
        {
            Report(file, variants, sheets);
        }

        return new(file, variants, sheets);
    }

    private (string? Reason, int Status) WhyNotDrawn(Compilation file, VariantOptions options)
    {
        if (DrawRun.WhyNotDrawn(file) is { } reason)
        {
            return (reason, _status);
        }

        if (!DrawRun.Has(file.Card!, face))
        {
            return (DrawRun.HasNo(face), ExitStatus.Usage);
        }

        return options.Roles.IsEmpty || file.Card!.Roles.Any(r => options.Roles.Contains(r.Name, StringComparer.OrdinalIgnoreCase))
            ? (null, ExitStatus.Done) : ($"the card has no role {string.Join(" or ", options.Roles)}.", ExitStatus.Usage);
    }

    /// <summary>The paths of the sheets of a card; none, and a finding, where an earlier card has one of them.</summary>
    private ImmutableArray<string> Claim(ref Compilation file)
    {
        var stem = Path.Combine(folder, $"{InputFiles.StemOf(file.Source.Path)}-variants");
        var paths = forms.Select(form => $"{stem}.{form}").ToImmutableArray();
        if (_names.Take(file, paths) is not { } taken)
        {
            return paths;
        }

        _status = Math.Max(_status, ExitStatus.Errors);
        file = file with { Findings = file.Findings.Add(taken) };
        return [];
    }

    private void Report(Compilation file, VariantList variants, ImmutableArray<string> sheets)
    {
        foreach (var sheet in sheets)
        {
            session.Print(sheet);
        }

        if (session.IsQuiet || sheets.IsEmpty)
        {
            return;
        }

        session.Report($"{file.Source.Path}: {Counted.Of(variants.Best.Length, "variant")} of {variants.Found} good ones among "
            + $"{variants.Tried} tried.");
        foreach (var note in variants.Notes)
        {
            session.Report(note);
        }
    }

    /// <summary>Writes the sheets of one card; after a failed write, nothing more is written, since it would fail again.</summary>
    private ImmutableArray<string> Write(ImmutableArray<string> paths, ContactSheet sheet)
    {
        var written = ImmutableArray.CreateBuilder<string>();
        try
        {
            foreach (var path in _isBrokenOff ? [] : paths)
            {
                var form = Path.GetExtension(path);
                using var progress = new Progress(session, path, form == ".html" ? sheet.Variants.Best.Length : sheet.Rows);
                PictureFile.Write(path, output => Write(output, form, sheet, progress.Report));
                written.Add(path);
            }
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            (_isBrokenOff, _status) = (true, ExitStatus.Usage);
        }

        return written.ToImmutable();
    }

    private void Write(Stream output, string form, ContactSheet sheet, Action<int> progress)
    {
        var file = new ContactSheetFile(sheet, progress, session.Cancellation);
        switch (form)
        {
            case ".png":
                file.WritePng(output, dpi);
                break;
            case ".pdf":
                file.WritePdf(output);
                break;
            case ".html":
                new ContactPage(sheet, progress, session.Cancellation).Write(output, PictureFile.TextMark);
                break;
            default:
                file.WriteSvg(output, PictureFile.TextMark);
                break;
        }
    }

    private static void WriteJson(Utf8JsonWriter json, DrawnFile drawn)
    {
        var (file, variants, sheets) = drawn;
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
        foreach (var sheet in sheets)
        {
            json.WriteStringValue(sheet);
        }

        json.WriteEndArray();
        FindingsJson.Write(json, file.Findings);
        json.WriteEndObject();
    }
}
