using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Sketch.Tests.Project;

/// <summary>
/// The notices of all parts that Sketch is distributed with, written from the fonts, the lists of packages, the packages themselves, the
/// bundled text editor, and <c>src/Notices/parts.txt</c> for what lies in packages without a word about it. Equal texts stand there once.
/// </summary>
internal sealed partial class ThirdPartyNotices
{
    private const string Introduction =
        """
        Third-party notices of Sketch

        Sketch is distributed with the parts listed here. Each names its licence; the texts follow the lists and are numbered.
        Downloads that need no .NET also hold the .NET runtime; its licence and notices are in the files beside the program whose
        names begin with "dotnet".

        This file is written from the packages: see "Packages and licences" in DEVELOPERS.md.
        """;

    private static readonly string Notices = Repository.PathTo("src", "Notices");
    private static readonly string Projects = Repository.PathTo("src");

    private readonly List<(string Origin, string Text)> _texts = [];
    private readonly StringBuilder _lists = new();

    /// <summary>The file that is kept.</summary>
    public static string Kept { get; } = Path.Combine(Notices, "THIRD-PARTY-NOTICES.txt");

    /// <summary>Whether the last build has bundled the text editor; only then are its parts known.</summary>
    public static bool EditorIsBundled => File.Exists(Bundle) && !File.Exists(Path.Combine(Path.GetDirectoryName(Bundle)!, "plain.txt"));

    private static string Bundle => Path.Combine(Projects, "Sketch.Preview", "obj", "editor", "editor.js");

    /// <summary>The packages that the command line is distributed with, by name.</summary>
    public static IReadOnlyList<(string Name, string Version)> Packages()
    {
        using var locked = JsonDocument.Parse(File.ReadAllText(Path.Combine(Projects, "Sketch.Cli", "packages.lock.json")));
        return [.. locked.RootElement.GetProperty("dependencies").EnumerateObject().First().Value.EnumerateObject()
            .Where(package => package.Value.GetProperty("type").GetString() != "Project")
            // Analyzers that only the build uses.
            .Where(package => package.Name != "Microsoft.NET.ILLink.Tasks")
            .Select(package => (package.Name, package.Value.GetProperty("resolved").GetString()!))
            .OrderBy(package => package.Name, StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>The whole file.</summary>
    public static string Write() => new ThirdPartyNotices().WriteAll();

    private string WriteAll()
    {
        _lists.Append(Introduction.ReplaceLineEndings("\n")).Append('\n');
        Fonts();
        NuGetPackages();
        PartsInPackages();
        PartsOfTheEditor();
        for (var number = 1; number <= _texts.Count; number++)
        {
            var (origin, text) = _texts[number - 1];
            _lists.Append($"\n{new string('=', 100)}\n[{number}] {origin}\n{new string('=', 100)}\n\n{text}\n");
        }

        return _lists.ToString();
    }

    private void Fonts()
    {
        Heading("Fonts in the program");
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Projects, "Sketch.Output", "Lettering", "Fonts"), "*-OFL.txt")
            .Order(StringComparer.Ordinal))
        {
            var text = File.ReadAllText(file);
            var name = Path.GetFileName(file)[..^"-OFL.txt".Length];
            Part(name, "OFL-1.1", CopyrightIn(text), Text($"Licence of the font {name}, from the file beside it", text));
        }
    }

    private void NuGetPackages()
    {
        Heading("NuGet packages");
        foreach (var (name, version) in Packages())
        {
            var folder = PackageFolder(name, version);
            var described = XDocument.Load(Directory.GetFiles(folder, "*.nuspec").Single()).Descendants();
            var licence = described.First(e => e.Name.LocalName == "license").Value;
            var copyright = (described.FirstOrDefault(e => e.Name.LocalName == "copyright")
                ?? described.First(e => e.Name.LocalName == "authors")).Value;
            var own = Directory.GetFiles(folder).Where(f => OwnText().IsMatch(Path.GetFileName(f))).Order(StringComparer.Ordinal)
                .Select(f => Text($"{Path.GetFileName(f)} of the package {name} {version}", File.ReadAllText(f))).ToList();
            Part($"{name} {version}", licence, copyright, own.Count > 0 ? string.Join(", ", own) : TextOf(licence));
        }
    }

    private void PartsInPackages()
    {
        Heading("Parts inside packages");
        foreach (var block in File.ReadAllText(Path.Combine(Notices, "parts.txt")).Trim().Split("\n\n").Skip(1))
        {
            var lines = block.Split('\n');
            var said = lines.Skip(1).Select(line => line.Split(": ", 2)).ToDictionary(pair => pair[0], pair => pair[1]);
            Part($"{lines[0]} (in {said["in"]})", said["licence"], said["copyright"], TextOf(said["licence"]));
            _lists.Append($"  said in: {said["said in"]}\n  source: {said["source"]}\n");
        }
    }

    private void PartsOfTheEditor()
    {
        Heading("The text editor of the page (npm packages)");
        var bundle = File.ReadAllText(Bundle);
        var start = bundle.LastIndexOf("/*!\n", StringComparison.Ordinal) + "/*!\n".Length;
        var notices = bundle[start..bundle.LastIndexOf("*/", StringComparison.Ordinal)];
        foreach (var part in notices.Split("\n\n----\n\n"))
        {
            var (name, text) = (part[..part.IndexOf('\n')], part[part.IndexOf('\n')..]);
            Part(name, "MIT", CopyrightIn(text), Text($"Licence file of the npm package {name}", text));
        }
    }

    private static string PackageFolder(string name, string version)
    {
        using var assets = JsonDocument.Parse(File.ReadAllText(Path.Combine(Projects, "Sketch.Cli", "obj", "project.assets.json")));
        return assets.RootElement.GetProperty("packageFolders").EnumerateObject()
            .Select(root => Path.Combine(root.Name, name.ToLowerInvariant(), version)).First(Directory.Exists);
    }

    private void Heading(string words) => _lists.Append($"\n{words}\n{new string('-', words.Length)}\n");

    private void Part(string name, string licence, string copyright, string text) =>
        _lists.Append($"\n{name}\n  licence: {licence}, text {text}\n  copyright: {copyright}\n");

    private string TextOf(string licence) => Text(
        $"{licence}. {(licence is "Lucent" or "RTools.Util" ? "From the place named above" : "From the licence list of SPDX")}",
        File.ReadAllText(Path.Combine(Notices, "Texts", licence + ".txt")));

    /// <summary>The number of a text, in brackets.</summary>
    private string Text(string origin, string text)
    {
        var plain = string.Join('\n', text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd())).Trim('\n');
        var known = _texts.FindIndex(t => t.Text == plain);
        if (known < 0)
        {
            _texts.Add((origin, plain));
        }

        return $"[{(known < 0 ? _texts.Count : known + 1)}]";
    }

    private static string CopyrightIn(string text) => text.Split('\n').First(l => l.Contains("Copyright", StringComparison.Ordinal)).Trim();

    [GeneratedRegex(@"^(?:LICEN[CS]E|THIRD-PARTY-NOTICES)\b.*$", RegexOptions.IgnoreCase)]
    private static partial Regex OwnText();
}
