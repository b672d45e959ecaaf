using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Reports;
using Sketch.Stashes;
using Sketch.Templates;

namespace Sketch.Cli.Verbs;

/// <summary>One run of the verb templates.</summary>
/// <param name="session">The run, which receives the messages.</param>
/// <param name="target">A file with the extension .pdf, a folder, or - for standard output.</param>
/// <param name="forms">File name extensions, such as pdf.</param>
/// <param name="options">How the templates are made.</param>
internal sealed class TemplatesRun(Session session, string target, ImmutableArray<string> forms, TemplateOptions options)
{
    /// <summary>Makes the templates of all cards that have no errors, together, and returns the exit status.</summary>
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
        var templates = sound.Length == 0
            ? null : CardTemplates.Make([.. sound.Select(f => f.Card!)], options, session.World(), findings);
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
                + $"{(file.HasErrors ? "has errors, so it has no templates." : "there is no card in it, so there are no templates.")}");
        }

        if (target == Session.Standard)
        {
            return templates is null ? status : Send(templates, sound, status);
        }

        ImmutableArray<string> written = templates is null ? [] : Write(templates, sound, ref status);
        if (json)
        {
            ReportJson.WriteDocument(session.Output, d => WriteJson(d, templates, written, reading.Files, findings.ToImmutable()));
        }
        else
        {
            Report(templates, written);
        }

        return status;
    }

    private int Send(CardTemplates templates, ImmutableArray<Compilation> cards, int status)
    {
        if (PictureFile.SendPages(templates.Pages, $"Templates for {TitleOf(cards)}", session) is not { } failure)
        {
            return status;
        }

        session.Report(failure.Problem);
        return ExitStatus.Usage;
    }

    private static string TitleOf(ImmutableArray<Compilation> cards) => string.Join(", ", cards.Select(c => c.Card!.Title).Distinct());

    private ImmutableArray<string> Write(CardTemplates templates, ImmutableArray<Compilation> cards, ref int status)
    {
        var isFile = target.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase);
        var stem = isFile ? target[..^4]
            : Path.Combine(target, cards.Length == 1 ? $"{InputFiles.StemOf(cards[0].Source.Path)}-templates" : "templates");
        var title = TitleOf(cards);
        var written = ImmutableArray.CreateBuilder<string>();
        Failure? failure = null;
        try
        {
            if (forms.Contains("pdf"))
            {
                var path = isFile ? target : stem + ".pdf";
                failure = PictureFile.WritePages(path, templates.Pages, $"Templates for {title}");
                if (failure is null)
                {
                    written.Add(path);
                }
            }

            for (var page = 1; forms.Contains("svg") && page <= templates.Pages.Length && failure is null; page++)
            {
                session.Cancellation.ThrowIfCancellationRequested();
                failure = PictureFile.Write(SvgPath(page), templates.Pages[page - 1], title, 0);
                if (failure is null)
                {
                    written.Add(SvgPath(page));
                }
            }
        }
        catch (FileWriteException refused)
        {
            failure = new(refused.Message);
        }

        if (failure is not null)
        {
            session.Report(failure.Problem);
            status = ExitStatus.Usage;
        }
        else if (forms.Contains("svg"))
        {
            // Extra pages of an earlier run could be cut by mistake.
            PictureFile.RemoveFrom(templates.Pages.Length + 1, SvgPath);
        }

        return written.ToImmutable();

        string SvgPath(int page) => string.Create(CultureInfo.InvariantCulture, $"{stem}-{page}.svg");
    }

    private void Report(CardTemplates? templates, ImmutableArray<string> written)
    {
        foreach (var path in written)
        {
            session.Print(path);
        }

        foreach (var piece in written.Length == 0 ? [] : templates!.Pieces)
        {
            foreach (var parts in piece.Freed.GroupBy(p => p.Words(piece.IsMetric)))
            {
                var times = parts.Count() * piece.Count;
                var each = times > 1 ? string.Create(CultureInfo.InvariantCulture, $", {times} times") : "";
                session.Print($"The middle of {piece.Name} is left for a smaller layer: {parts.Key}, {piece.Material}{each}.");
            }
        }
    }

    private void WriteJson(
        Utf8JsonWriter json, CardTemplates? templates, ImmutableArray<string> written, ImmutableArray<Compilation> files,
            ImmutableArray<Finding> findings)
    {
        json.WriteStartObject();
        json.WriteString("page", options.Page.Name);
        json.WriteNumber("printerScale", options.Scale.Value);
        json.WriteNumber("pages", templates?.Pages.Length ?? 0);
        json.WriteStartArray("written");
        foreach (var path in written)
        {
            json.WriteStringValue(path);
        }

        json.WriteEndArray();
        json.WriteStartArray("pieces");
        foreach (var piece in templates?.Pieces ?? [])
        {
            json.WriteStartObject();
            json.WriteString("name", piece.Name);
            json.WriteString("material", piece.Material);
            json.WriteNumber("count", piece.Count);
            json.WriteSize("cut", piece.Cut);
            json.WriteStartArray("freed");
            foreach (var part in piece.Freed)
            {
                json.WriteStartObject();
                json.WriteSize("size", part.Size);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteCards(files, findings);
        json.WriteEndObject();
    }
}
