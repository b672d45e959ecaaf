using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Units;

namespace Sketch.Cli.Verbs;

/// <summary>Lists the cut size of every piece.</summary>
internal static class SizesVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files();
        var watch = Watching.Option();
        var json = Options.Json();
        var csv = new Option<bool>("--csv") { Description = "Write comma-separated values for a spreadsheet, lengths as decimal numbers." };
        var markdown = new Option<bool>("--markdown") { Description = "Write a Markdown table." };
        var ruler = Options.Number(
            "--ruler", "Marks per inch on your ruler.", "16|32|64", 16, n => n is 16 or 32 or 64, "--ruler 16, 32 or 64");
        var metric = new Option<bool>("--mm") { Description = "Write millimetres, also for a card in inches." };
        var verb = new VerbCommand(
            "sizes",
            "Lists the cut size of every piece, with the border of every mat.",
            "sketch sizes fair-winds.card",
            "sketch sizes --ruler 32 --markdown fair-winds.card")
        {
            files, watch, json, csv, markdown, ruler, metric,
        };
        verb.CheckTogether(result =>
        {
            if (new[] { json, csv, markdown }.Count(form => result.GetValue(form)) > 1)
            {
                result.AddError("Choose one of --json, --csv and --markdown.");
            }
        });
        verb.SetAction(parsed => Watching.Run(session, parsed.GetValue(watch), parsed.GetRequiredValue(files), () => Run(
            session,
            parsed.GetRequiredValue(files),
            parsed.GetValue(json) ? Form.Json : parsed.GetValue(csv) ? Form.Csv : parsed.GetValue(markdown) ? Form.Markdown : Form.Text,
            parsed.GetValue(ruler),
            parsed.GetValue(metric))));
        return verb;
    }

    private enum Form
    {
        Text,
        Json,
        Csv,
        Markdown,
    }

    private static int Run(Session session, string[] files, Form form, int marks, bool metric)
    {
        var reading = InputFiles.Of(session, files);
        if (form == Form.Json)
        {
            ReportJson.WriteDocument(
                session.Output, document => document.WriteFiles(reading.Files,
                    file => SizeJson.Write(document, file.Source.Path, file.Card, file.Findings, marks)));
            return reading.ExitStatusForCards;
        }

        if (form == Form.Csv)
        {
            SizeCsv.WriteHeader(session.Output);
        }

        var first = true;
        foreach (var file in reading.Files)
        {
            session.Report(file.Findings);
            if (file.Card is not { } card)
            {
                session.Report($"{file.Source.Path}: there is no card in it, so there are no sizes.");
                continue;
            }

            if (file.HasErrors)
            {
                session.Report($"{file.Source.Path}: has errors, so its list may lack pieces.");
            }

            var lengths = metric ? new LengthFormat(true) : card.Units.Format(marks);
            var list = SizeList.Of(card);
            session.Output.Write(first || form == Form.Csv ? "" : "\n");
            first = false;
            Write(session.Output, list, file.Source.Path, form, lengths);
        }

        return reading.ExitStatusForCards;
    }

    private static void Write(TextWriter output, SizeList list, string file, Form form, LengthFormat lengths)
    {
        switch (form)
        {
            case Form.Csv:
                SizeCsv.Write(output, list, file, lengths);
                break;
            case Form.Markdown:
                SizeMarkdown.Write(output, list, lengths);
                break;
            default:
                SizeText.Write(output, list, lengths);
                break;
        }
    }
}
