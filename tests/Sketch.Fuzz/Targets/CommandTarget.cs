using System.Collections.Immutable;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;

namespace Sketch.Fuzz.Targets;

/// <summary>The command line, in this process: an input is a folder, and a file <c>line.txt</c> with one argument on each line.</summary>
internal sealed class CommandTarget : IFuzzTarget
{
    private const string Line = "line.txt";

    private static readonly string[] Verbs = ["check", "sizes", "draw", "templates", "variants", "gallery", "plan", "count", "format",
        "explain", "new", "help"];

    private static readonly string[] Values = ["0", "-1", "1e9", "a4", "svg", "png", "pdf,svg", "x", "", "3 mm", "12x24", "1/8",
        "sky=navy", "sky=a/b/c", "front",
        "inside", "envelope", "72", "100000", "Ann", "cut", "12", "Lamp", "SK210", "0.98", "\u202e", "@file", "--", "99/100", "mm", "in"];

    private static readonly string[] Options = ["--as", "--copies", "--csv", "--dpi", "--easy", "--face", "--gap", "--glue", "--help",
        "--hollow", "--json",
        "--left", "--limit", "--machine", "--maker", "--man", "--markdown", "--measured", "--metric", "--mirror", "--mm", "--note",
            "--out", "-o", "--outside",
        "--page", "--paper", "--papers", "--printer-scale", "--quiet", "--roles", "--ruler", "--shapes", "--stash", "--time", "--title",
            "--to", "--write",
        "--nothing"];

    public string Name => "command";

    public int Weight => 1;

    public FuzzInput Make(Draws draws)
    {
        var files = new List<FuzzFile>
        {
            new("lamp.card", draws.OnceIn(2) ? RandomCards.Text(draws.Below(1_000_000)) : GrammarCards.Text(draws)),
            new("shelf.stash", new GrammarStashes(draws).Stash()),
            new("day.batch", new GrammarStashes(draws).Batch(["lamp.card"])),
            new("broken.card", Damage.OfBytes(System.Text.Encoding.UTF8.GetBytes(draws.Any(Corpus.Cards)), draws)),
        };
        string[] names = [.. files.Select(f => "{}/" + f.Name), "{}", "{}/none.card", "-", "{}/out", "{}/out.pdf", "{}/new.card"];
        var line = new List<string> { draws.Any(Verbs) };
        for (var count = draws.From(1, 5); count > 0; count--)
        {
            line.Add(draws.Below(5) switch
            {
                0 or 1 => draws.Any(names),
                2 => draws.Any(Values),
                _ => draws.Any(Options),
            });
        }

        return new([.. files, new(Line, string.Join('\n', line))]);
    }

    public void Run(FuzzInput input)
    {
        var args = input[Line].Text.Split('\n');
        if (args.Any(a => a is "open" or "language-server" or "--watch"))
        {
            return;
        }

        var folder = Directory.CreateTempSubdirectory("sketch-fuzz-").FullName;
        try
        {
            foreach (var file in input.Files.Where(f => f.Name != Line))
            {
                File.WriteAllBytes(Path.Combine(folder, file.Name), file.Content);
            }

            using var output = new StringWriter();
            using var error = new StringWriter();
            var status = Cli.Program.Run([.. args.Select(a => a.Replace("{}", folder, StringComparison.Ordinal))], output, error);
            Check(args, status, output.ToString(), error.ToString());
            var changed = input.Files.Where(f => f.Name != Line && !args.Contains("--write")
                && !File.ReadAllBytes(Path.Combine(folder, f.Name)).AsSpan().SequenceEqual(f.Content)).Select(f =>
                    f.Name).ToImmutableArray();
            BrokenInvariantException.Unless(changed.IsEmpty, "files of the user are never overwritten", string.Join(' ', changed));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Check(string[] args, int status, string output, string error)
    {
        BrokenInvariantException.Unless(status is >= 0 and <= 3, "the status is one of those in the help", $"{status}");
        BrokenInvariantException.Unless(status == 0 || output.Length + error.Length > 0, "a failure says something", string.Join(' ',
            args));
        BrokenInvariantException.Unless(!error.Contains("   at ", StringComparison.Ordinal), "an error is no exception", error);
        if (args.Contains("--json") && status < 2 && output.Length > 0 && !args.Contains("--help"))
        {
            WellFormed.Json(output);
        }

        if (args[0] == "sizes" && args.Contains("--csv") && status < 2 && !args.Contains("--help") && !args.Contains("--json"))
        {
            WellFormed.Csv(output);
        }
    }
}
