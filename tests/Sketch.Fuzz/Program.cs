using System.Globalization;
using Sketch.Fuzz.Targets;

namespace Sketch.Fuzz;

/// <summary>
/// Feeds the whole chain with random inputs and checks what always holds.
/// <c>run [--seconds N] [--first N] [--target NAME]</c> runs inputs in order of their numbers, cuts failing ones down and keeps them;
/// <c>replay</c> runs the kept ones; <c>show TARGET NUMBER FOLDER</c> writes an input. A number always gives the same input.
/// </summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        // The page logs faults of the program there; here they are failures.
        Console.SetError(TextWriter.Null);
        // Command lines may name files without a folder.
        Directory.SetCurrentDirectory(Directory.CreateTempSubdirectory("sketch-fuzz-").FullName);
        switch (args)
        {
            case ["run", .. var rest]:
                return new Session(Option(rest, "--target") is { } name ? [FuzzTargets.Named(name)] : FuzzTargets.All,
                    Number(rest, "--first", 1), TimeSpan.FromSeconds(Number(rest, "--seconds", 30))).Run();
            case ["replay"]:
                return Replay();
            case ["show", var target, var number, var folder] when Path.IsPathRooted(folder):
                FuzzTargets.Named(target).Make(new(Session.Seed(int.Parse(number, CultureInfo.InvariantCulture)))).Save(folder);
                return 0;
            default:
                Console.WriteLine("Type run, replay, or show TARGET NUMBER FOLDER.");
                return 2;
        }
    }

    private static int Replay()
    {
        var failed = 0;
        foreach (var (target, folder) in FuzzTargets.Kept())
        {
            if (Failure.Of(target, FuzzInput.Load(folder)) is { } failure)
            {
                failed++;
                Console.WriteLine($"{folder}: {failure.Text}");
            }
        }

        Console.WriteLine($"{failed} of the kept failures fail again.");
        return failed == 0 ? 0 : 1;
    }

    private static string? Option(string[] args, string name) =>
        Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length ? args[at + 1] : null;

    private static int Number(string[] args, string name, int usual) =>
        Option(args, name) is { } number ? int.Parse(number, CultureInfo.InvariantCulture) : usual;
}
