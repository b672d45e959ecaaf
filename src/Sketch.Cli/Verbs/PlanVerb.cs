using System.CommandLine;
using Sketch.Batches;
using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Reports;
using Sketch.Reports;
using Sketch.Text;

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
            "--time", "Most seconds to look for fewer sheets; more than 10 also allow more work.", "N", UsualSeconds, n =>
                n is >= 1 and <= 3600, "a whole number from 1 to 3600");
        var folder = new Option<string>("--out")
        {
            Description = "Also write a workbook (HTML and PDF), the messages at full size, a diagram of every sheet, the cut list and the "
                + "remaining stash into this folder.",
            HelpName = "DIR",
        };
        var left = new Option<bool>("--left")
        {
            Description = "Plan only what is not cut yet according to the count of the batch, with the stash as it is now.",
        };
        var maker = new Option<string?>("--maker") { Description = "Plan only what one of the named makers makes.", HelpName = "NAME" };
        var json = Options.Json();
        var verb = new VerbCommand(
            "plan",
            "Plans a batch of cards: the fewest sheets and how to cut them, supplies, and what is missing. Ctrl-C gives the best plan "
                + "so far.",
            "sketch plan lamp-day.batch",
            "sketch plan lamp-day.batch --out plan",
            "sketch plan lamp-day.batch --left --out plan",
            "sketch plan lamp-day.batch --maker Ann --out plan")
        {
            file, folder, left, maker, seconds, json,
        };
        verb.SetAction(parsed => Run(session, parsed.GetRequiredValue(file), new(
            parsed.GetValue(folder), TimeSpan.FromSeconds(parsed.GetValue(seconds)), parsed.GetValue(left), parsed.GetValue(maker),
            parsed.GetValue(json))));
        return verb;
    }

    /// <summary>How to plan, and where to.</summary>
    private readonly record struct Choices(string? Folder, TimeSpan TimeLimit, bool OnlyLeft, string? Maker, bool Json);

    private static int Run(Session session, string name, Choices choices)
    {
        var (folder, json) = (choices.Folder, choices.Json);
        var reading = FolderFiles.ReadFile(name);
        if (reading.Source is not { } source)
        {
            session.Report(reading.Problem);
            return ExitStatus.Usage;
        }

        var findings = new FindingBag();
        if (reading.Finding is { } unreadable)
        {
            findings.Add(unreadable);
        }

        var world = new FolderFiles();
        var (files, problem) = findings.HasErrors ? (null, null) : Read(source, world, findings, choices);
        if (problem is not null)
        {
            session.Report(problem);
            return ExitStatus.Usage;
        }

        var plan = files is null ? null : Plan(session, files, choices.TimeLimit, findings);
        Report(session, source, files, plan, findings, json);
        var status = findings.HasErrors ? ExitStatus.Errors : ExitStatus.Done;
        if (folder is not null && plan is not null
            && !Write(session, new(plan, StemOf(name, choices.Maker), folder, session.Cancellation), world, json))
        {
            status = ExitStatus.Usage;
        }

        return session.Cancellation.IsCancellationRequested ? ExitStatus.Stopped : status;
    }

    // The batch, or the part of it that the choices ask for; or why there is no such part.
    private static (BatchFiles? Files, string? Problem) Read(SourceText source, FolderFiles world, FindingBag findings, Choices choices)
    {
        var compiled = Compiler.Compile(source, world);
        if (choices.Maker is { } maker && compiled.Batch is { } batch)
        {
            if (choices.OnlyLeft)
            {
                return (null, "The count does not say who made a card: use --left or --maker, not both.");
            }

            if (batch.MakerNames.FirstOrDefault(n => n.Equals(maker, StringComparison.OrdinalIgnoreCase)) is not { } name)
            {
                return (null, batch.MakerNames.IsEmpty
                    ? "The batch names no makers. Name them in a line such as makers \"Ann\" \"Beth\"."
                    : $"There is no maker \"{maker}\". Choose {string.Join(", ", batch.MakerNames)}.");
            }

            compiled = compiled with { Batch = NamedMakers.Of(batch, name) };
        }

        var files = BatchFiles.Read(compiled, world, findings, s => Compiler.Compile(s, world));
        if (!choices.OnlyLeft || files is null)
        {
            return (files, null);
        }

        var count = new CountFile(files.Batch, source.Path, world).Read(findings);
        return count.Problem is { } broken ? (null, broken) : (LeftToMake.Of(files, count.Value), null);
    }

    private static string StemOf(string batch, string? maker) => Path.GetFileNameWithoutExtension(batch)
        + (maker is null ? "" : "-" + string.Concat(maker.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')));

    private static BatchPlan? Plan(Session session, BatchFiles files, TimeSpan timeLimit, FindingBag findings)
    {
        using var progress = PlanProgressLine.On(session);
        return BatchPlanner.Plan(files, timeLimit, findings, progress, "Allow more time with --time.", session.Cancellation);
    }

    private static void Report(Session session, SourceText source, BatchFiles? files, BatchPlan? plan, FindingBag findings, bool json)
    {
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => PlanJson.Write(document, files?.Batch, plan, findings.ToImmutable()));
            return;
        }

        session.Report(BatchCheck.Shown(findings, source));
        if (plan is not null)
        {
            PlanText.Write(session.Output, plan);
        }
    }

    private static bool Write(Session session, PlanFiles files, FolderFiles world, bool json)
    {
        try
        {
            var written = files.Write(world);
            if (!json)
            {
                session.Output.Write("\n");
                foreach (var path in written)
                {
                    session.Print(path);
                }
            }

            return true;
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            return false;
        }
    }
}
