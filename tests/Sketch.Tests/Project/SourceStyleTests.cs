using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Project;

public sealed partial class SourceStyleTests
{
    public static TheoryData<string> Folders() => ["src", "tests"];

    [Theory]
    [MemberData(nameof(Folders))]
    public void No_line_is_wider_than_editorconfig_allows(string folder)
    {
        var limit = int.Parse(MaxLineLength().Match(File.ReadAllText(Repository.PathTo(".editorconfig"))).Groups[1].Value);

        var wide =
            from file in Sources(folder)
            from line in File.ReadLines(file).Index()
            where line.Item.Length > limit
            select $"{Path.GetRelativePath(Repository.Root, file)}:{line.Index + 1} has {line.Item.Length} columns";

        Assert.Empty(wide);
    }

    /// <summary>
    /// The only rule of formatting that neither the build nor <c>dotnet format whitespace</c> checks: System first, then by name, then
    /// static imports, then aliases.
    /// </summary>
    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    public void Imports_are_sorted(string folder) => Assert.All(
        Sources(folder).Where(f => f.EndsWith(".cs", StringComparison.Ordinal)),
        file =>
        {
            var imports = File.ReadLines(file).TakeWhile(l => l.StartsWith("using ", StringComparison.Ordinal)).ToList();
            Assert.Equal(imports.OrderBy(i => i.Contains('=', StringComparison.Ordinal))
                .ThenBy(i => i.StartsWith("using static ", StringComparison.Ordinal))
                .ThenBy(i => !i.StartsWith("using System", StringComparison.Ordinal))
                .ThenBy(i => i.TrimEnd(';'), StringComparer.OrdinalIgnoreCase), imports);
        });

    [Theory]
    [InlineData("src")]
    [InlineData("tests/Sketch.Tests")]
    public void No_two_types_share_a_name(string folder)
    {
        var shared =
            from file in Sources(folder).Where(f => f.EndsWith(".cs", StringComparison.Ordinal))
            from type in TopLevelType().Matches(File.ReadAllText(file))
            group Path.GetFileName(file) by type.Groups["name"].Value into same
            where same.Count() > 1
            select $"{same.Key}: {string.Join(", ", same)}";

        Assert.Empty(shared);
    }

    private static IEnumerable<string> Sources(string folder) => Directory
        .EnumerateFiles(Repository.PathTo(folder), "*.*", SearchOption.AllDirectories)
        .Where(file => Path.GetExtension(file) is ".cs" or ".js" or ".css")
        .Where(file => !file.Split(Path.DirectorySeparatorChar).Intersect(["bin", "obj", "node_modules"]).Any());

    [GeneratedRegex(@"^max_line_length = (\d+)$", RegexOptions.Multiline)]
    private static partial Regex MaxLineLength();

    // Partial types are in several files; a generic type may have a companion without parameters.
    [GeneratedRegex(
        @"^(?:public|internal) (?:(?:static|sealed|abstract|readonly) )*"
        + @"(?:class|record struct|record|struct|interface|enum) (?<name>\w+(<\w+>)?)",
        RegexOptions.Multiline)]
    private static partial Regex TopLevelType();
}
