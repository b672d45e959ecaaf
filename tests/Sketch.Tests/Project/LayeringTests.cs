using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Project;

public partial class LayeringTests
{
    [Fact]
    public void The_cutting_solver_uses_only_lengths_texts_and_findings_of_the_engine()
    {
        var used = Directory.GetFiles(Repository.PathTo("src", "Sketch.Cutting"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(f => Used().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
            .Where(name => Directory.Exists(Repository.PathTo("src", "Sketch", name))).Distinct();

        Assert.Empty(used.Except(["Units", "Text", "Diagnostics"]));
    }

    [Theory]
    [InlineData("Sketch.Cli")]
    [InlineData("Sketch.Cutting")]
    public void The_page_uses_neither_the_command_line_nor_the_cutting_solver(string project)
    {
        var folder = Repository.PathTo("src", "Sketch.Preview");
        var users = Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories).Append(Path.Combine(folder, "Sketch.Preview.csproj"))
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => Regex.IsMatch(File.ReadAllText(f), $@"\b{Regex.Escape(project)}\b"))
            .Select(Path.GetFileName);

        Assert.Empty(users);
    }

    [Theory]
    [InlineData("Console.")]
    [InlineData("File.")]
    [InlineData("HttpClient")]
    public void The_engine_uses_no_console_or_files_or_web(string name)
    {
        var users = Directory.GetFiles(Repository.PathTo("src", "Sketch"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => Regex.IsMatch(File.ReadAllText(f), $@"(?<![\w.]){Regex.Escape(name)}(?=[A-Z])"))
            .Select(Path.GetFileName);

        Assert.Empty(users);
    }

    [GeneratedRegex(@"^using Sketch\.([A-Z]\w+)", RegexOptions.Multiline)]
    private static partial Regex Used();
}
