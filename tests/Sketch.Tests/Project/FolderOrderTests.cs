using System.Text.RegularExpressions;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>
/// DEVELOPERS.md lists the folders in the order of the flow. A type uses only types of its own folder, of folders above it in its project,
/// and of projects above its own, so there are no cycles between folders.
/// </summary>
public sealed partial class FolderOrderTests
{
    private static readonly string Root = Repository.Root;

    /// <summary>Folders such as <c>Sketch/Units</c>, in the order of DEVELOPERS.md; a project's root follows its folders.</summary>
    private static readonly List<string> Order = ReadOrder();

    private static readonly IReadOnlyList<IType> Types = LoadTypes();

    public static TheoryData<string> Projects() => [.. Order.Select(ProjectOf).Distinct()];

    [Fact]
    public void The_order_lists_each_source_folder_that_contains_code()
    {
        var folders = Directory.EnumerateFiles(Path.Combine(Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Path.Combine(Root, "src"), file).Replace('\\', '/').Split('/'))
            .Where(parts => parts[1] is not ("bin" or "obj"))
            .Select(parts => parts.Length > 2 ? $"{parts[0]}/{parts[1]}" : parts[0])
            .Distinct();

        Assert.Equal(string.Join('\n', folders.Order(StringComparer.Ordinal)), string.Join('\n', Order.Order(StringComparer.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_folder_uses_no_folder_below_it(string project)
    {
        var backwards =
            from type in Types
            let own = FolderOf(type)
            where ProjectOf(own) == project
            from target in type.Dependencies.Select(d => d.Target).Where(IsOurs).Distinct()
            let used = FolderOf(target)
            where Place(used) > Place(own)
            select $"{type.FullName} uses {target.FullName}";

        var found = string.Join('\n', backwards.Distinct().Order(StringComparer.Ordinal));
        Assert.True(found.Length == 0, found);
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Namespaces_equal_folders(string project)
    {
        var astray = Directory.EnumerateFiles(Path.Combine(Root, "src", project), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Path.Combine(Root, "src"), file).Replace('\\', '/'))
            .Where(file => file.Split('/')[1] is not ("bin" or "obj"))
            .Where(file => NamespaceIn().Match(File.ReadAllText(Path.Combine(Root, "src", file))) is { Success: true } found
                && found.Groups[1].Value != Path.GetDirectoryName(file)!.Replace('/', '.').Replace('\\', '.'));

        Assert.Empty(astray);
    }

    private static int Place(string folder) => Order.IndexOf(folder) is var place and >= 0 ? place
        : throw new InvalidOperationException($"{folder} is not in the order.");

    private static string ProjectOf(string folder) => folder.Split('/')[0];

    // Type parameters have neither an assembly nor a namespace.
    private static bool IsOurs(IType type) =>
        type is { Assembly: not null, Namespace: not null } && IsWritten(type)
        && Order.Exists(folder => ProjectOf(folder) == ProjectOf(FolderOf(type)));

    /// <summary>The coverage tool and generators of packages add types of their own to an assembly, in other namespaces.</summary>
    private static bool IsWritten(IType type) =>
        $"{type.Namespace.FullName}.".StartsWith($"{type.Assembly.Name.Split(',')[0]}.", StringComparison.Ordinal);

    /// <summary>The folder of a type by its namespace; in <c>Sketch.Drawing.Papers</c> the folder is Drawing.</summary>
    private static string FolderOf(IType type)
    {
        var project = type.Assembly.Name.Split(',')[0];
        var below = type.Namespace.FullName.Length > project.Length ? type.Namespace.FullName[(project.Length + 1)..].Split('.')[0] : "";
        return below.Length > 0 && Order.Contains($"{project}/{below}") ? $"{project}/{below}" : project;
    }

    private static List<IType> LoadTypes()
    {
        var assemblies = Order.Select(ProjectOf).Distinct().Select(System.Reflection.Assembly.Load).ToArray();
        return [.. new ArchLoader().LoadAssemblies(assemblies).Build().Types.Where(IsOurs)];
    }

    private static bool HasCode(string folder) => Directory.EnumerateFiles(Path.Combine(Root, "src", folder), "*.cs").Any();

    private static List<string> ReadOrder()
    {
        var flow = File.ReadAllText(Path.Combine(Root, "DEVELOPERS.md")).Split("```")[1];
        var order = new List<string>();
        string? project = null;
        foreach (var line in flow.Split('\n'))
        {
            if (ProjectLine().Match(line) is { Success: true } opened)
            {
                Close();
                project = opened.Groups[1].Value;
            }
            else if (project is not null && line.StartsWith("  ", StringComparison.Ordinal))
            {
                order.AddRange(FolderNames().Matches(line).Select(name => $"{project}/{name.Groups[1].Value}").Where(HasCode));
            }
            else
            {
                Close();
                project = null;
            }
        }

        return order;

        void Close()
        {
            if (project is not null && HasCode(project))
            {
                order.Add(project);
            }
        }
    }

    [GeneratedRegex(@"^src/(Sketch[\w.]*)\b")]
    private static partial Regex ProjectLine();

    // The names come before the description, which starts after two or more spaces.
    [GeneratedRegex(@"(?<=^  (?:\w+/ )*)(\w+)/")]
    private static partial Regex FolderNames();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceIn();
}
