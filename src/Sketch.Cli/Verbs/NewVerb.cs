using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Edits;
using Sketch.Output.Files;
using Sketch.Planning.Plans;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>Writes a first card, stash or batch to start from.</summary>
internal static class NewVerb
{
    private static readonly string[] Kinds = [".card", ".stash", ".batch"];
    private const int UsualCount = 12;

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var file = new Argument<string>("FILE") { Description = "The file to write: its name ends in .card, .stash or .batch." };
        var metric = new Option<bool>("--metric") { Description = "Measure in millimetres instead of inches." };
        var verb = new VerbCommand(
            "new", "Writes a first card, stash or batch to start from; a batch makes a card of its "
                + "folder, or comes with one and a stash. Never overwrites a file.",
            "sketch new fair-winds.card", "sketch new museum.stash --metric")
        {
            file, metric,
        };
        verb.SetAction(parsed => Run(session, parsed.GetRequiredValue(file), parsed.GetValue(metric)));
        return verb;
    }

    private static int Run(Session session, string file, bool isMetric)
    {
        var kind = Path.GetExtension(file).ToLowerInvariant();
        var title = StartingText.TitleOf(Path.GetFileNameWithoutExtension(file));
        if (!Kinds.Contains(kind) || title.Length == 0)
        {
            session.Report($"\"{file}\": the name of a new file ends in .card, .stash or .batch, as in sketch new fair-winds.card.");
            return ExitStatus.Usage;
        }

        if (File.Exists(file))
        {
            session.Report(Refusal(file));
            return ExitStatus.Usage;
        }

        return kind switch
        {
            ".card" => Write(session, file, StartingText.Card(title, isMetric)),
            ".stash" => Write(session, file, StartingText.Stash(title, isMetric)),
            _ => Batch(session, file, title, isMetric),
        };
    }

    private static string Refusal(string file) => $"\"{file}\" exists already and is not changed. Choose another name.";

    private static int Write(Session session, string file, string text)
    {
        try
        {
            if (!SafeFile.WriteNewText(file, text))
            {
                session.Report(Refusal(file));
                return ExitStatus.Usage;
            }
        }
        catch (FileWriteException refused)
        {
            session.Report(refused.Message);
            return ExitStatus.Usage;
        }

        session.Print(file);
        return ExitStatus.Done;
    }

    /// <summary>
    /// Writes a batch that uses the first card and stash of its folder that go together without errors. If no such pair exists, a card
    /// and a stash are written beside it, because a batch needs something to make and papers to make it from.
    /// </summary>
    private static int Batch(Session session, string file, string title, bool isMetric)
    {
        var world = session.World();
        var stashes = InFolder(file, ".stash").ToList();
        var text = InFolder(file, ".card")
            .SelectMany(card => stashes.Select(stash => StartingText.Batch(title, isMetric, [(card, UsualCount)], stash)))
            .FirstOrDefault(t => !BatchCheck.Of(Compiler.Compile(new SourceText(file, t), world), world).HasErrors);
        if (text is not null)
        {
            return Write(session, file, text);
        }

        var (card, stash) = (Path.ChangeExtension(file, ".card"), Path.ChangeExtension(file, ".stash"));
        return new[]
        {
            () => Write(session, card, StartingText.Card(title, isMetric)),
            () => Write(session, stash, StartingText.Stash(title, isMetric)),
            () => Write(session, file, StartingText.Batch(
                title, isMetric, [(Path.GetFileName(card), UsualCount)], Path.GetFileName(stash))),
        }.Select(write => write()).FirstOrDefault(status => status != ExitStatus.Done, ExitStatus.Done);
    }

    private static IEnumerable<string> InFolder(string file, string kind)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(file));
        return !Directory.Exists(folder) ? []
            : Directory.EnumerateFiles(folder, "*" + kind).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);
    }
}
