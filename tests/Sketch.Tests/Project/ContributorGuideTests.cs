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
    public void Each_path_that_it_names_leads_to_a_file() => Assert.DoesNotContain(
        PathInCode().Matches(File.ReadAllText(Repository.PathTo("DEVELOPERS.md"))).Select(m => m.Groups["path"].Value),
        path => !Sources.Any(s => IsAt(s, path)));

    /// <summary>Whether a file is at a path, which may leave out the folders before it and may name a member after it.</summary>
    private static bool IsAt(string file, string path) =>
        file.Contains("/" + path, StringComparison.Ordinal) || file.Contains("." + path, StringComparison.Ordinal)
            || (path.LastIndexOf('.') is > 0 and var dot && IsAt(file, path[..dot]));

    [GeneratedRegex("`(?<path>[A-Z][A-Za-z.]*(?:/[A-Z][A-Za-z.]*)+)`")]
    private static partial Regex PathInCode();
}
