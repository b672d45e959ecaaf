using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Planning.Plans;
using Sketch.Reports;

namespace Sketch.Cli.Verbs;

/// <summary>Reads and lays out files, and reports the findings.</summary>
internal static class CheckVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files("Card, stash and batch files");
        var watch = Watching.Option();
        var json = Options.Json();
        var outside = StashOptions.CreateOutside();
        var verb = new VerbCommand(
            "check", "Reads files, checks that everything fits, and reports what it finds; for a batch also in the cards and the stash "
                + "that it names.",
            "sketch check fair-winds.card", "sketch check lamp-day.batch", "sketch check cards --watch", "sketch check - < fair-winds.card")
        {
            files, watch, json, outside,
        };
        verb.SetAction(parsed => Watching.Run(session, parsed.GetValue(watch), parsed.GetRequiredValue(files), () =>
            Run(session, parsed.GetRequiredValue(files), parsed.GetValue(json), parsed.GetValue(outside))));
        return verb;
    }

    private static int Run(Session session, string[] files, bool json, bool outside)
    {
        var world = session.World(outside);
        var reading = InputFiles.Of(session, files, InputFiles.AllKinds, s => BatchCheck.Of(Compiler.Compile(s, world), world));
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => document.WriteFiles(reading.Files, file =>
            {
                document.WriteStartObject();
                document.WriteString("file", file.Source.Path);
                FindingsJson.Write(document, file.Findings);
                document.WriteEndObject();
            }));
            return reading.ExitStatus;
        }

        foreach (var file in reading.Files)
        {
            session.Report(file.Findings, session.Output);
            session.Print($"{file.Source.Path}: {FindingsText.Summary(file.Findings)}");
        }

        return reading.ExitStatus;
    }
}
