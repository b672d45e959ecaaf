using System.Diagnostics;
using System.Globalization;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Text;

namespace Sketch.Benchmarks;

/// <summary>
/// Kills programs that append to a count, two at a time, at random moments, and checks that each entry that a program said was done is
/// there once, and no entry is there twice.
/// </summary>
internal static class CountingKills
{
    private const string Batch = "batch \"Lamp day\"\nmake 12 of \"lamp.card\"\n";
    private const int LongestLife = 60;
    private const int KillsPerLog = 50;

    /// <summary>Kills so many programs, with a new log for every few, as each entry is checked against all others.</summary>
    public static int Run(int kills)
    {
        var (random, total) = (new Random(1), default(Tally));
        for (var left = kills; left > 0; left -= KillsPerLog)
        {
            total += OneLog(Math.Min(left, KillsPerLog), random);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kills} kills: {total.Said} entries said to be done, "
            + $"{total.Lost} of them lost, {total.Twice} doubled; {total.Logged} in the logs, {total.Torn} cut off and set aside, "
            + $"{total.Broken} unreadable"));
        return total.Lost + total.Twice + total.Broken == 0 ? 0 : 1;
    }

    private static Tally OneLog(int kills, Random random)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-counting-").FullName;
        File.WriteAllText(Path.Combine(folder, "lamp.card"), "card \"The lamp\"\n");
        var batch = Path.Combine(folder, "day.batch");
        File.WriteAllText(batch, Batch);
        var said = new List<string>();
        for (var killed = 0; killed < kills; killed += 2)
        {
            using var first = Start(batch);
            using var second = Start(batch);
            Process[] both = [first, second];
            foreach (var program in both)
            {
                // The first entry shows that the program has started.
                said.Add(program.StandardOutput.ReadLine() ?? throw new InvalidOperationException("A program did not start."));
            }

            Thread.Sleep(random.Next(LongestLife));
            foreach (var program in both)
            {
                program.Kill();
                // A line that was cut off by the kill was not said.
                var rest = program.StandardOutput.ReadToEnd();
                said.AddRange(rest[..(rest.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries));
                program.WaitForExit();
            }
        }

        var tally = Tally.Of(CountLog.PathOf(batch), said);
        Directory.Delete(folder, recursive: true);
        return tally;
    }

    /// <summary>The program that is killed: adds entries and says the id of each once it is done.</summary>
    public static int Append(string batch)
    {
        var world = new FolderFiles();
        var file = new CountFile(Compiler.Compile(new SourceText(batch, File.ReadAllText(batch)), world).Batch!, batch, world);
        while (true)
        {
            var entry = new CountEntry(DateTime.Now, CountStage.Cut, 1, "The lamp") { Id = CountEntry.NewId() };
            if (file.Add(entry) is { } failure)
            {
                Console.Error.WriteLine(failure.Problem);
                return 1;
            }

            Console.Out.WriteLine(entry.Id);
            // Others get their turn.
            Thread.Sleep(1);
        }
    }

    private static Process Start(string batch) => Process.Start(new ProcessStartInfo(
        Environment.ProcessPath!, [typeof(CountingKills).Assembly.Location, "counting-append", batch])
    {
        RedirectStandardOutput = true,
    })!;

    /// <summary>What was said to be done, and what the logs hold.</summary>
    private readonly record struct Tally(int Said, int Lost, int Twice, int Logged, int Torn, int Broken)
    {
        public static Tally Of(string log, List<string> said)
        {
            var findings = new FindingBag();
            var entries = CountLog.Read(new(log, File.ReadAllText(log)), findings).Entries;
            var logged = entries.Select(e => e.Entry.Id).ToHashSet();
            return new(said.Count, said.Count(id => !logged.Contains(id)), Of(FindingCatalogue.EntryTwice), entries.Length,
                Of(FindingCatalogue.TornEntry), Of(FindingCatalogue.BadEntry));

            int Of(FindingKind kind) => findings.ToImmutable().Count(f => f.Kind == kind);
        }

        public static Tally operator +(Tally a, Tally b) => new(
            a.Said + b.Said, a.Lost + b.Lost, a.Twice + b.Twice, a.Logged + b.Logged, a.Torn + b.Torn, a.Broken + b.Broken);
    }
}
