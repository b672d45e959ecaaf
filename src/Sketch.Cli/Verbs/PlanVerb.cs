using System.Collections.Immutable;
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
        var file = new Argument<string[]>("BATCH")
        {
            Description = "A batch file, or - for standard input. Several, or those of a folder, are planned together, so that their paper "
                + "is bought and cut at once.",
            Arity = ArgumentArity.OneOrMore,
        };
        var seconds = Options.Number(
            "--time", "Most seconds to look for fewer sheets; more than 10 also allow more work.", "N", UsualSeconds, n =>
                n is >= 1 and <= 3600, "a whole number from 1 to 3600");
        var folder = Options.Out("Also write a workbook (HTML and PDF), the messages at full size, a diagram of every sheet, the cut list "
            + "and the remaining stash into this folder.", isRequired: false);
        var left = new Option<bool>("--left")
        {
            Description = "Plan only what is not cut yet according to the count of the batch, with the stash as it is now.",
        };
        var easy = new Option<bool>("--easy")
        {
            Description = "Use an extra sheet of a paper where that saves a lot of trimming; the plan says how much.",
        };
        var maker = new Option<string?>("--maker") { Description = "Plan only what one of the named makers makes.", HelpName = "NAME" };
        var watch = Watching.Option();
        var json = Options.Json();
        var verb = new VerbCommand(
            "plan",
            "Plans a batch of cards: the fewest sheets and how to cut them, supplies, and what is missing. Ctrl-C gives the best plan "
                + "so far.",
            "sketch plan lamp-day.batch",
            "sketch plan lamp-day.batch --out plan",
            "sketch plan lamp-day.batch --left --out plan",
            "sketch plan lamp-day.batch --easy",
            "sketch plan lamp-day.batch --maker Ann --out plan",
            "sketch plan spring.batch summer.batch")
        {
            file, folder, left, easy, maker, seconds, watch, json,
        };
        verb.SetAction(parsed => Watching.Run(session, parsed.GetValue(watch), parsed.GetRequiredValue(file), () => Run(
            session, parsed.GetRequiredValue(file), new(
                parsed.GetValue(folder), TimeSpan.FromSeconds(parsed.GetValue(seconds)), parsed.GetValue(left), parsed.GetValue(maker),
                parsed.GetValue(easy), parsed.GetValue(json)))));
        return verb;
    }

    /// <summary>How to plan, and where to.</summary>
    private readonly record struct Choices(string? Folder, TimeSpan TimeLimit, bool OnlyLeft, string? Maker, bool IsEasy, bool Json);

    private static int Run(Session session, string[] typed, Choices choices)
    {
        var allOpened = true;
        var names = InputFiles.Expand(session, typed, InputFiles.Batches, ref allOpened);
        if (!allOpened)
        {
            return ExitStatus.Usage;
        }

        var (folder, json) = (choices.Folder, choices.Json);
        var (world, findings) = (session.World(), new FindingBag());
        var sources = new List<SourceText>();
        var batches = ImmutableArray.CreateBuilder<BatchFiles>();
        foreach (var name in names)
        {
            if (ReadFile(session, name, world, findings, choices, sources, batches) is { } problem)
            {
                session.Report(problem);
                return ExitStatus.Usage;
            }
        }

        var files = Together(batches.ToImmutable(), findings);
        if (files.Problem is { } apart && batches.Count > 0)
        {
            session.Report(apart);
            return ExitStatus.Usage;
        }

        var plan = files.ValueOrDefault is { } read
            ? Plan(session, read with { IsEasy = choices.IsEasy }, choices.TimeLimit, findings) : null;
        Report(session, [.. sources], files.ValueOrDefault, plan, findings, json);
        var status = findings.HasErrors ? ExitStatus.Errors : ExitStatus.Done;
        if (folder is not null && plan is not null
            && !Write(session, new(plan, StemOf(names, choices.Maker), folder, session.Cancellation), world, json))
        {
            status = ExitStatus.Usage;
        }

        return session.Cancellation.IsCancellationRequested ? ExitStatus.Stopped : status;
    }

    // The problem of a file that cannot be opened or planned as asked, or null.
    private static string? ReadFile(
        Session session, string name, FolderFiles world, FindingBag findings, Choices choices, List<SourceText> sources,
        ImmutableArray<BatchFiles>.Builder batches)
    {
        var reading = session.Read(name);
        if (reading.Source is not { } source)
        {
            return reading.Problem;
        }

        sources.Add(source);
        if (reading.Finding is { } unreadable)
        {
            findings.Add(unreadable);
            return null;
        }

        var own = new FindingBag();
        var (files, problem) = Read(source, world, own, choices);
        AddNew(own, findings);
        if (files is not null)
        {
            batches.Add(files);
        }

        return problem;
    }

    // The stash and cards of several batches are read for each of them.
    private static void AddNew(FindingBag own, FindingBag findings)
    {
        var known = findings.ToImmutable().Select(Key).ToHashSet();
        foreach (var finding in own.ToImmutable().Where(f => known.Add(Key(f))))
        {
            findings.Add(finding);
        }

        static (string, string, TextSpan, string) Key(Finding finding) =>
            (finding.Code, finding.Location.Source.Path, finding.Location.Span, finding.Message);
    }

    private static Result<BatchFiles> Together(ImmutableArray<BatchFiles> batches, FindingBag findings)
    {
        if (batches.Length > 1)
        {
            foreach (var files in batches)
            {
                BatchCheck.Recipients(files, findings);
            }
        }

        return batches.IsEmpty ? new Failure("there is none.") : JoinedBatches.Of(batches);
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

    private static string StemOf(IReadOnlyList<string> batches, string? maker) => string.Join('-', batches.Select(InputFiles.StemOf))
        + (maker is null ? "" : "-" + string.Concat(maker.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')));

    private static BatchPlan? Plan(Session session, BatchFiles files, TimeSpan timeLimit, FindingBag findings)
    {
        using var progress = PlanProgressLine.On(session);
        return BatchPlanner.Plan(files, timeLimit, findings, progress, "Allow more time with --time.", session.Cancellation);
    }

    private static void Report(
        Session session, SourceText[] sources, BatchFiles? files, BatchPlan? plan, FindingBag findings, bool json)
    {
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => PlanJson.Write(document, files?.Batch, plan, findings.ToImmutable()));
            return;
        }

        session.Report(BatchCheck.Shown(findings, sources));
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
            if (!json && !session.IsQuiet)
            {
                session.Output.Write("\n");
                foreach (var path in written)
                {
                    session.Print(path);
                }

                if (files.Note is { } note)
                {
                    session.Print(note);
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
