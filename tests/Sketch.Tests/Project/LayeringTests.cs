using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Project;

public partial class LayeringTests
{
    /// <summary>The stages of the engine in the order in which they hand on; a file may use only its own and earlier ones.</summary>
    private static readonly string[] Stages =
    [
        "Units", "Text", "Diagnostics", "Syntax", "Shapes", "Colours", "Papers", "Stationery", "Surroundings",
        "Panels", "Drafts", "Shelf", "Layout", "Batches", "Checks", "Drawing", "Variants", "Templates", "Reports",
    ];

    /// <summary>The page's folders of code, in the order in which they build on each other.</summary>
    private static readonly string[] OfThePage = ["Folder", "Desk", "Views", "Server"];

    public static TheoryData<string> FoldersOfThePage() => [.. OfThePage];

    public static TheoryData<string> Folders() =>
        new(Directory.GetDirectories(Repository.PathTo("src", "Sketch")).Select(d => Path.GetFileName(d)!)
            .Where(d => d is not ("bin" or "obj")).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Folders))]
    public void Every_folder_of_the_engine_is_a_stage(string folder) => Assert.Contains(folder, Stages);

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_stage_uses_no_later_stage(string folder)
    {
        var own = Array.IndexOf(Stages, folder);
        var backwards = Directory.GetFiles(Repository.PathTo("src", "Sketch", folder), "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => Named().Matches(File.ReadAllText(file)).Select(m => (File: Path.GetFileName(file), Stage: m.Groups[1].Value)))
            .Where(use => Array.IndexOf(Stages, use.Stage) > own)
            .Distinct();

        Assert.Empty(backwards);
    }

    [Fact]
    public void The_planner_uses_only_lengths_texts_and_findings_of_the_engine()
    {
        var used = Directory.GetFiles(Repository.PathTo("src", "Sketch.Cutting"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(f => Named().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
            .Where(Stages.Contains).Distinct();

        Assert.Empty(used.Except(["Units", "Text", "Diagnostics"]));
    }

    [Fact]
    public void Every_folder_of_the_page_with_code_is_one_of_its_layers()
    {
        var withCode = Directory.GetDirectories(Repository.PathTo("src", "Sketch.Preview"))
            .Where(d => Path.GetFileName(d) is not ("bin" or "obj") && Directory.EnumerateFiles(d, "*.cs", SearchOption.AllDirectories).Any())
            .Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal);

        Assert.Equal(OfThePage.Order(StringComparer.Ordinal), withCode);
    }

    [Theory]
    [MemberData(nameof(FoldersOfThePage))]
    public void A_layer_of_the_page_uses_no_later_layer(string folder)
    {
        var own = Array.IndexOf(OfThePage, folder);
        var backwards = Directory.GetFiles(Repository.PathTo("src", "Sketch.Preview", folder), "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => NamedOfThePage().Matches(File.ReadAllText(file)).Select(m => (File: Path.GetFileName(file), Layer: m.Groups[1].Value)))
            .Where(use => Array.IndexOf(OfThePage, use.Layer) > own)
            .Distinct();

        Assert.Empty(backwards);
    }

    [Theory]
    [InlineData("Sketch.Cli")]
    [InlineData("Sketch.Cutting")]
    public void The_page_uses_neither_the_command_line_nor_the_planner_itself(string project)
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
    public void The_engine_knows_no_console_files_or_web(string name)
    {
        var users = Directory.GetFiles(Repository.PathTo("src", "Sketch"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => Regex.IsMatch(File.ReadAllText(f), $@"(?<![\w.]){Regex.Escape(name)}(?=[A-Z])"))
            .Select(Path.GetFileName);

        Assert.Empty(users);
    }

    [GeneratedRegex(@"\bSketch\.([A-Z]\w+)")]
    private static partial Regex Named();

    // Within the namespace the first word may be left out.
    [GeneratedRegex(@"\bPreview\.([A-Z]\w+)")]
    private static partial Regex NamedOfThePage();
}
