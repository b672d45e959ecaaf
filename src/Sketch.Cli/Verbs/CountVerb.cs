using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Sketch.Cli.Commands;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Planning.Demand;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>Shows what is made of a batch, and adds to it.</summary>
internal sealed class CountVerb
{
    private readonly Argument<string> _batch = new("BATCH")
    {
        Description = "A batch file. The count is kept beside it, in a file "
        + "of the same name that ends in .count."
    };

    private readonly Argument<string?> _stage = new("STAGE")
    {
        Description = "What to count: cut, glued, inside (the inside is done), enveloped or given; or spoilt, for cut pieces that have to "
            + "be cut again.",
        HelpName = "STAGE",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Argument<string?> _number = new("N")
    {
        Description = "How many cards; a negative number takes back.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Argument<string?> _card = new("CARD")
    {
        Description = "The title of the card, or its file.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> _recipient = new("--to") { Description = "The recipient of cards that are given.", HelpName = "NAME" };

    private readonly Option<string?> _note = new("--note") { Description = "A note for the entry.", HelpName = "WORDS" };

    private readonly Option<bool> _json = Options.Json();

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var parts = new CountVerb();
        var verb = new VerbCommand(
            "count",
            "Shows how many cards of a batch are at which stage and how many are left to make, or adds to the count. A card is made "
                + "once it is in its envelope or given away.",
            "sketch count lamp-day.batch",
            "sketch count lamp-day.batch cut 12 \"Fair winds\" --note \"the last of the gulls paper\"",
            "sketch count lamp-day.batch glued -2 \"Fair winds\"",
            "sketch count lamp-day.batch given 6 \"Fair winds\" --to \"Cliff ward\"")
        {
            parts._batch, parts._stage, parts._number, parts._card, parts._recipient, parts._note, parts._json,
        };
        parts._stage.CompletionSources.Add(CountStages.Words.ToArray());
        verb.SetAction(parsed => parts.Run(session, parsed));
        return verb;
    }

    private int Run(Session session, ParseResult parsed)
    {
        var name = parsed.GetRequiredValue(_batch);
        if (name == Session.Standard)
        {
            session.Report("Name the file of the batch: its count is kept beside it.");
            return ExitStatus.Usage;
        }

        var reading = session.Read(name);
        if (reading.Source is not { } source)
        {
            session.Report(reading.Problem);
            return ExitStatus.Usage;
        }

        var world = session.World();
        var findings = new FindingBag();
        var compiled = reading.Finding is { } unreadable ? new(source, null, [unreadable]) : Compiler.Compile(source, world);
        foreach (var finding in compiled.Findings)
        {
            findings.Add(finding);
        }

        if (compiled.Batch is not { } batch)
        {
            if (!findings.HasErrors)
            {
                findings.Add(BatchFiles.NotABatch(source));
            }

            return Show(session, parsed, null, findings);
        }

        var file = new CountFile(batch, source.Path, world);
        var added = parsed.GetValue(_stage) is null ? null : Add(session, parsed, file, batch);
        if (added is { } problem)
        {
            session.Report(problem);
            return ExitStatus.Usage;
        }

        var count = file.Read(findings);
        if (count.Problem is { } broken)
        {
            session.Report(broken);
            return ExitStatus.Usage;
        }

        return Show(session, parsed, count.Value, findings);
    }

    // The problem, or null if the entry is on the disk.
    private string? Add(Session session, ParseResult parsed, CountFile file, Batches.Batch batch)
    {
        var (word, written, name) = (parsed.GetValue(_stage)!.ToLowerInvariant(), parsed.GetValue(_number), parsed.GetValue(_card));
        if (CountStages.Of(word) is not { } stage)
        {
            return Unknown("stage", word, CountStages.Words);
        }

        if (written is null || name is null)
        {
            return "Give the number and the card, as in sketch count BATCH cut 12 \"Fair winds\".";
        }

        if (!int.TryParse(written, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            || number is 0 or < -CountEntry.MostCards or > CountEntry.MostCards)
        {
            return $"\"{written}\" is not a number of cards: write a whole number such as 12, or -2 to take back two.";
        }

        if (file.Cards.FirstOrDefault(c => c.IsCalled(name)) is not { } card)
        {
            return Unknown("card", name, file.Cards.Select(c => c.Title));
        }

        var (to, note) = (parsed.GetValue(_recipient), parsed.GetValue(_note));
        var recipient = batch.For.FirstOrDefault(f => f.Whom.Equals(to, StringComparison.OrdinalIgnoreCase));
        if (to is not null && (stage != CountStage.Given || recipient is null))
        {
            return stage == CountStage.Given ? Unknown("recipient", to, batch.For.Select(f => f.Whom))
                : "Only cards that are given have a recipient: sketch count BATCH given 6 \"Fair winds\" --to \"Cliff ward\".";
        }

        if (note is not null && CountEntry.ProblemOf(note) is { } wrong)
        {
            return $"The note cannot be kept: {wrong}";
        }

        return file.Add(new(session.Clock.GetLocalNow().DateTime, stage, number, card.Title)
        {
            Id = CountEntry.NewId(),
            Recipient = recipient?.Whom,
            Note = note,
        })?.Problem;
    }

    private int Show(Session session, ParseResult parsed, BatchCount? count, FindingBag findings)
    {
        var today = DateOnly.FromDateTime(session.Clock.GetLocalNow().DateTime);
        if (parsed.GetValue(_json))
        {
            ReportJson.WriteDocument(session.Output, json => JsonSerializer.Serialize(
                json, CountRecord.Of(count, today, findings.ToImmutable()), CountRecords.Default.CountRecord));
        }
        else
        {
            session.Report(findings.ToImmutable());
            if (count is not null)
            {
                CountText.Write(session.Output, count, today);
            }
        }

        return findings.HasErrors ? ExitStatus.Errors : ExitStatus.Done;
    }

    private static string Unknown(string what, string name, IEnumerable<string> known)
    {
        var all = known.ToList();
        return $"There is no {what} \"{name}\". {(Nearest.Find(name, all) is { } near ? $"Did you mean \"{near}\"?"
            : all.Count == 0 ? $"The batch names no {what}." : $"Choose {string.Join(", ", all)}.")}";
    }
}
