using System.Diagnostics;
using System.Text.Json;
using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

/// <summary>The program in a folder without the native library of the solver, as on a machine that no package is made for.</summary>
public sealed class MissingSolverTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public void Without_the_solver_there_is_a_plan_and_a_note()
    {
        _line.File("gull.card", PlanRun.Card);
        _line.File("shelf.stash", PlanRun.Shelf);
        var batch = _line.File(
            "day.batch", "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 6 of \"gull.card\"\ncut 5 of 3 x 4 from navy\n");
        _line.Run("plan", batch, "--json");
        var whole = _line.Json;

        var (status, plan) = PlanWithoutSolver(batch);

        Assert.Equal(0, status);
        Assert.Equal(Sheets(whole).Select(s => s.Paper), Sheets(plan).Select(s => s.Paper));
        Assert.All(Sheets(whole).Zip(Sheets(plan)), pair => Assert.InRange(pair.Second.Sheets, pair.First.Sheets, pair.First.Sheets + 1));
        var note = Assert.Single(plan.GetProperty("findings").EnumerateArray(), f => f.GetProperty("code").GetString() == "SK731");
        Assert.Contains("solver", note.GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    private static IEnumerable<(string? Paper, int Sheets)> Sheets(JsonElement plan) => plan.GetProperty("papers").EnumerateArray()
        .Select(p => (p.GetProperty("paper").GetString(), p.GetProperty("sheets").GetInt32()));

    private (int Status, JsonElement Plan) PlanWithoutSolver(string batch)
    {
        using var program = Process.Start(new ProcessStartInfo("dotnet", [ProgramWithoutSolver(), "plan", batch, "--json"])
        {
            RedirectStandardOutput = true,
        })!;
        var output = program.StandardOutput.ReadToEnd();
        program.WaitForExit();
        return (program.ExitCode, JsonDocument.Parse(output).RootElement);
    }

    // The program itself is copied, because its folder is where the libraries are looked for; all else is linked.
    private string ProgramWithoutSolver()
    {
        var program = typeof(Sketch.Cli.Program).Assembly.Location;
        var folder = Path.GetDirectoryName(program)!;
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(folder, file);
            var target = _line.InFolder(Path.Combine("program", name));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            if (Path.GetFileName(file).StartsWith("Sketch.Cli.", StringComparison.Ordinal))
            {
                File.Copy(file, target);
            }
            else if (!name.Contains("ortools-native", StringComparison.Ordinal))
            {
                File.CreateSymbolicLink(target, file);
            }
        }

        return _line.InFolder(Path.Combine("program", Path.GetFileName(program)));
    }
}
