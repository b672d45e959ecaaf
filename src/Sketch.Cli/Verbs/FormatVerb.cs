using System.CommandLine;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Reports;
using Sketch.Syntax;

namespace Sketch.Cli.Verbs;

/// <summary>Prints files in their canonical spelling, or rewrites them in it.</summary>
internal static class FormatVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files("Card, stash and batch files");
        var write = new Option<bool>(
            "--write")
        { Description = "Rewrite each file whose spelling changes; a file with errors is not changed." };
        var json = Options.Json();
        var verb = new VerbCommand(
            "format",
            "Prints files in their canonical spelling, with their comments.",
            "sketch format fair-winds.card",
            "sketch format --write cards",
            "sketch format - < fair-winds.card")
        {
            files, write, json,
        };
        verb.CheckTogether(result =>
        {
            if (result.GetValue(write) && result.GetValue(files)?.Contains(Session.Standard) == true)
            {
                result.AddError("--write: standard input cannot be rewritten. Leave out --write, and the text goes to standard output.");
            }
        });
        verb.SetAction(parsed => Run(session, parsed.GetRequiredValue(files), parsed.GetValue(write), parsed.GetValue(json)));
        return verb;
    }

    private static int Run(Session session, string[] files, bool write, bool json)
    {
        var texts = new Dictionary<string, string?>(StringComparer.Ordinal);
        var reading = InputFiles.Of(session, files, InputFiles.AllKinds, source =>
        {
            var findings = new FindingBag();
            texts[source.Path] = Formatter.Format(source, findings);
            return new(source, null, findings.ToImmutable());
        });
        var status = reading.ExitStatus;
        foreach (var file in reading.Files)
        {
            if (!json)
            {
                session.Report(file.Findings);
            }

            if (texts.GetValueOrDefault(file.Source.Path) is not { } text)
            {
                continue;
            }

            if (write)
            {
                status = Math.Max(status, Rewrite(session, file, text, json));
            }
            else if (!json)
            {
                session.Output.Write(text);
            }
        }

        if (json)
        {
            ReportJson.WriteDocument(
                session.Output, d => d.WriteFiles(reading.Files, f => WriteJson(d, f, texts.GetValueOrDefault(f.Source.Path))));
        }

        return status;
    }

    private static int Rewrite(Session session, Compilation file, string text, bool silent)
    {
        session.Cancellation.ThrowIfCancellationRequested();
        var changes = text != file.Source.Content;
        try
        {
            if (changes)
            {
                SafeFile.WriteText(file.Source.Path, text);
            }
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            return ExitStatus.Usage;
        }

        if (!silent)
        {
            session.Print($"{file.Source.Path}: {(changes ? "rewritten" : "unchanged")}");
        }

        return ExitStatus.Done;
    }

    private static void WriteJson(Utf8JsonWriter json, Compilation file, string? text)
    {
        json.WriteStartObject();
        json.WriteString("file", file.Source.Path);
        json.WriteBoolean("changed", text is not null && text != file.Source.Content);
        json.WriteString("text", text);
        FindingsJson.Write(json, file.Findings);
        json.WriteEndObject();
    }
}
