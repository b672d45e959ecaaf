using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>DEVELOPERS.md describes the source as it is.</summary>
public partial class ContributorGuideTests
{
    private static readonly HashSet<string> Sources =
        [.. new[] { "src", "tests" }
            .SelectMany(f => Directory.EnumerateFiles(Repository.PathTo(f), "*", SearchOption.AllDirectories))
            .Select(f => Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'))];

    [Fact]
    public void Each_path_in_it_exists() => Assert.DoesNotContain(
        PathInCode().Matches(File.ReadAllText(Repository.PathTo("DEVELOPERS.md"))).Select(m => m.Groups["path"].Value),
        path => !Sources.Any(s => IsAt(s, path)));

    /// <summary>Whether a path exists; it may omit leading folders and may end with the name of a member.</summary>
    private static bool IsAt(string file, string path) =>
        file.Contains("/" + path, StringComparison.Ordinal) || file.Contains("." + path, StringComparison.Ordinal)
            || (path.LastIndexOf('.') is > 0 and var dot && IsAt(file, path[..dot]));

    [GeneratedRegex("`(?<path>[A-Z][A-Za-z.]*(?:/[A-Z][A-Za-z.]*)+)`")]
    private static partial Regex PathInCode();
}
