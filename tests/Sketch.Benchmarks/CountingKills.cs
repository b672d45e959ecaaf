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

    /// <summary>Kills so many programs.</summary>
    public static int Run(int kills)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-counting-").FullName;
        File.WriteAllText(Path.Combine(folder, "lamp.card"), "card \"The lamp\"\n");
        var batch = Path.Combine(folder, "day.batch");
        File.WriteAllText(batch, Batch);
        var (random, said) = (new Random(1), new List<string>());
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

        return Judge(CountLog.PathOf(batch), said, kills, folder);
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
        }
    }

    private static int Judge(string log, List<string> said, int kills, string folder)
    {
        var findings = new FindingBag();
        var entries = CountLog.Read(new(log, File.ReadAllText(log)), findings).Entries;
        var logged = entries.Select(e => e.Entry.Id).ToHashSet();
        var lost = said.Count(id => !logged.Contains(id));
        var (torn, broken, twice) = (Of(FindingCatalogue.TornEntry), Of(FindingCatalogue.BadEntry), Of(FindingCatalogue.EntryTwice));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kills} kills: {said.Count} entries said to be done, {lost} of "
            + $"them lost, {twice} doubled; {entries.Length} in the log, {torn} cut off and set aside, {broken} unreadable"));
        Directory.Delete(folder, recursive: true);
        return lost + twice + broken == 0 ? 0 : 1;

        int Of(FindingKind kind) => findings.ToImmutable().Count(f => f.Kind == kind);
    }

    private static Process Start(string batch) => Process.Start(new ProcessStartInfo(
        Environment.ProcessPath!, [typeof(CountingKills).Assembly.Location, "counting-append", batch])
    {
        RedirectStandardOutput = true,
    })!;
}
