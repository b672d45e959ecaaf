using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>The tests of a source folder are in the test folder of the same name.</summary>
public sealed partial class TestFolderTests
{
    private static readonly string Tests = Repository.PathTo("tests", "Sketch.Tests");

    [Fact]
    public void Each_test_folder_has_the_name_of_a_source_folder_or_project()
    {
        var others = OtherFolders();
        var unknown = Folders(Tests)
            .Where(folder => !others.Contains(folder.Split('/')[0]))
            .Where(folder => !Directory.Exists(SourceOf(folder)));

        Assert.Empty(unknown);
    }

    [Fact]
    public void Each_folder_of_the_engine_has_tests()
    {
        var untested = Folders(Repository.PathTo("src", "Sketch"))
            .Where(folder => !folder.Contains('/'))
            .Where(folder => !Directory.Exists(Path.Combine(Tests, folder))
                || !Directory.EnumerateFiles(Path.Combine(Tests, folder), "*Tests.cs").Any());

        Assert.Empty(untested);
    }

    [Fact]
    public void Each_source_project_has_a_test_folder() => Assert.All(
        Directory.EnumerateDirectories(Repository.PathTo("src")).Select(Path.GetExtension).Where(part => part is { Length: > 0 }),
        part => Assert.True(Directory.Exists(Path.Combine(Tests, part![1..])), part));

    [Fact]
    public void Namespaces_of_tests_match_their_folders()
    {
        var astray =
            from folder in Folders(Tests)
            let expected = $"namespace Sketch.Tests.{folder.Replace('/', '.')};"
            from file in Directory.EnumerateFiles(Path.Combine(Tests, folder), "*.cs")
            where !File.ReadLines(file).Contains(expected)
            select Path.GetRelativePath(Tests, file);

        Assert.Empty(astray);
    }

    /// <summary>The source folder with the name of a test folder: in the engine, or else in another project.</summary>
    private static string SourceOf(string folder) =>
        Directory.Exists(Repository.PathTo("src", "Sketch", folder)) ? Repository.PathTo("src", "Sketch", folder)
            : Repository.PathTo("src", $"Sketch.{folder}");

    /// <summary>The folders that DEVELOPERS.md lists under the test project; they have no counterpart in the source.</summary>
    private static HashSet<string> OtherFolders() =>
        [.. OtherFolder().Match(File.ReadAllText(Repository.PathTo("DEVELOPERS.md"))).Groups[1].Captures.Select(name => name.Value)];

    /// <summary>Folders with C# files below another, such as <c>Preview/Server</c>.</summary>
    private static IEnumerable<string> Folders(string root) => Directory
        .EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(root, Path.GetDirectoryName(file)!).Replace('\\', '/'))
        .Where(folder => folder != "." && folder.Split('/')[0] is not ("bin" or "obj"))
        .Distinct();

    [GeneratedRegex(@"^tests/Sketch\.Tests .*\n(?:  (\w+)/ .*\n)+", RegexOptions.Multiline)]
    private static partial Regex OtherFolder();
}
