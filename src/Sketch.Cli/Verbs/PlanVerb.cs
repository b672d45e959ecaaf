using System.CommandLine;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Planning;
using Sketch.Reports;

namespace Sketch.Cli.Verbs;

/// <summary>Plans a batch: sheets, cuts, supplies and shortages.</summary>
internal static class PlanVerb
{
    private const int UsualSeconds = 10;

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var file = new Argument<string>("BATCH") { Description = "A batch file." };
        var seconds = Options.Number(
            "--time", "Seconds to look for fewer sheets; the best plan so far counts then.", "N", UsualSeconds, n => n is >= 1 and <= 3600, "a whole number from 1 to 3600");
        var json = Options.Json();
        var verb = new VerbCommand("plan", "Plans a batch of cards: the fewest sheets and how to cut them, supplies, and what is missing.", "sketch plan lamp-day.batch")
        {
            file, seconds, json,
        };
        verb.SetAction(parsed => Run(session, parsed.GetRequiredValue(file), TimeSpan.FromSeconds(parsed.GetValue(seconds)), parsed.GetValue(json)));
        return verb;
    }

    private static int Run(Session session, string name, TimeSpan timeLimit, bool json)
    {
        var reading = FolderFiles.ReadFile(name);
        if (reading.Source is not { } source)
        {
            session.Tell(reading.Problem);
            return ExitStatus.Usage;
        }

        var findings = new FindingBag();
        BatchPlan? plan = null;
        if (reading.Finding is { } unreadable)
        {
            findings.Add(unreadable);
        }
        else if (BatchFiles.Read(source, new FolderFiles(), findings) is { } files)
        {
            plan = BatchPlanner.Plan(files, timeLimit, findings, null, session.Cancellation);
        }

        var told = findings.ToImmutable();
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => PlanJson.Write(document, plan, told));
        }
        else
        {
            session.Tell(told);
            if (plan is not null)
            {
                PlanText.Write(session.Output, plan);
            }
        }

        return session.Cancellation.IsCancellationRequested ? ExitStatus.Stopped : findings.HasErrors ? ExitStatus.Errors : ExitStatus.Done;
    }
}
