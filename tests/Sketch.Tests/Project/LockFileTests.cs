using System.Text.Json;
using System.Xml.Linq;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>Each project has a list of the packages that its build takes.</summary>
public sealed class LockFileTests
{
    private static readonly Dictionary<string, string> Versions = XDocument.Load(Repository.PathTo("Directory.Packages.props"))
        .Descendants("PackageVersion").ToDictionary(p => p.Attribute("Include")!.Value, p => p.Attribute("Version")!.Value);

    private static readonly string[] Folders = ["src", "tests"];

    private static readonly string[] Made = ["bin", "obj"];

    public static TheoryData<string> Projects() => [.. Folders
        .SelectMany(folder => Directory.EnumerateFiles(Repository.PathTo(folder), "*.csproj", SearchOption.AllDirectories))
        .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
        .Where(file => !file.Split('/').Intersect(Made).Any()).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void The_list_holds_each_package_of_the_project_in_its_version(string project)
    {
        using var locked = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(Path.GetDirectoryName(Repository.PathTo(project))!, "packages.lock.json")));
        var packages = locked.RootElement.GetProperty("dependencies").EnumerateObject().First().Value;

        Assert.All(
            XDocument.Load(Repository.PathTo(project)).Descendants("PackageReference").Select(p => p.Attribute("Include")!.Value),
            name => Assert.Equal(Versions[name], packages.GetProperty(name).GetProperty("resolved").GetString()));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_list_belongs_to_one_platform_or_one_machine(string project)
    {
        var text = File.ReadAllText(Path.Combine(Path.GetDirectoryName(Repository.PathTo(project))!, "packages.lock.json"));

        Assert.DoesNotContain("\"net10.0/", text, StringComparison.Ordinal);
    }
}
