using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Sketch.Diagnostics;
using Sketch.Tests.Cli;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Diagnostics;

/// <summary>
/// Every code needs an explanation in the Markdown file beside its part of the catalogue (see <see cref="Explanations"/>).
/// The page <c>sketches/FINDINGS.md</c> is written anew by <c>sketch explain --markdown</c>.
/// </summary>
public sealed partial class ExplanationTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public static TheoryData<string> Codes => [.. FindingCatalogue.All.Select(k => k.Code)];

    public void Dispose() => _line.Dispose();

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_code_is_explained(string code) => Assert.Contains(code, Explanations.Codes);

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_example_gives_its_finding(string code)
    {
        var example = ExplanationOf(code).Example;

        Assert.Contains(Run(code, example.Files, example.Command), f => f.EndsWith(code, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_fix_gives_neither_its_finding_nor_an_error_or_warning(string code)
    {
        var (example, fix) = (ExplanationOf(code).Example, ExplanationOf(code).Fix);
        var kept = example.Files.Where(f => fix.Files.All(g => g.Name != f.Name));

        var found = Run(code, [.. kept, .. fix.Files], fix.Command ?? example.Command);

        Assert.DoesNotContain(found, f => f.EndsWith(code, StringComparison.Ordinal));
        Assert.All(found, f => Assert.StartsWith("note", f, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_text_is_no_wider_than_a_terminal(string code)
    {
        var explanation = ExplanationOf(code);

        Assert.All($"{explanation.Meaning}\n{explanation.Remedy}".Split('\n'), line => Assert.InRange(line.Length, 1, 120));
    }

    [Fact]
    public void The_page_is_the_one_that_the_verb_writes()
    {
        _line.Run("explain", "--markdown");

        Assert.Equal(_line.Output, File.ReadAllText(Repository.PathTo("sketches", "FINDINGS.md")).ReplaceLineEndings("\n"));
    }

    private static Explanation ExplanationOf(string code) => Explanations.Of(FindingCatalogue.All.Single(k => k.Code == code));

    /// <summary>
    /// The findings of an example as severity and code, run as its reader would run it, in a folder with a copy of the sketches.
    /// </summary>
    private List<string> Run(string code, IReadOnlyList<ExampleFile> files, string? command)
    {
        foreach (var sketch in Directory.GetFiles(Repository.PathTo("sketches")))
        {
            File.Copy(sketch, _line.InFolder(Path.GetFileName(sketch)));
        }

        foreach (var file in files)
        {
            var path = _line.File(file.Name, "");
            File.WriteAllText(path, Unabridged(file.Text), file.IsLatin1 ? Encoding.Latin1 : new UTF8Encoding(false));
        }

        var status = _line.Run(TestContext.Current.CancellationToken, Arguments(files, command));
        Assert.True(status < 2, $"{code}: {_line.Error}");
        return [.. FindingLine().Matches(_line.Output + _line.Error).Select(m => m.Groups[1].Value)];
    }

    private string[] Arguments(IReadOnlyList<ExampleFile> files, string? command)
    {
        var batch = files.FirstOrDefault(f => f.Language == "batch");
        command ??= batch is null ? $"$ sketch check {files[^1].Name}" : $"$ sketch plan {batch.Name}";
        return [.. command["$ sketch ".Length..].Split(' ').Select(a => IsPath(a) ? _line.InFolder(a) : a)];

        static bool IsPath(string argument) => argument.Contains('.') || argument.StartsWith("pictures", StringComparison.Ordinal);
    }

    /// <summary>
    /// The text with every line <c>… 60 more</c> written out: indentation and numbers go on by the step of the two lines before.
    /// </summary>
    private static string Unabridged(string text)
    {
        var lines = new List<string>();
        foreach (var line in text.TrimEnd('\n').Split('\n'))
        {
            if (Abridged().Match(line) is not { Success: true } match)
            {
                lines.Add(line);
                continue;
            }

            for (var left = int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture); left > 0; left--)
            {
                lines.Add(Next(lines[^2], lines[^1]));
            }
        }

        return string.Join('\n', lines) + "\n";
    }

    private static string Next(string before, string last)
    {
        var numbers = Number().Matches(before).Select(m => Value(m)).ToList();
        var at = 0;
        var indent = (2 * IndentOf(last)) - IndentOf(before);
        return new string(' ', indent) + Number().Replace(last.Trim(), m => Text((2 * Value(m)) - numbers[at++]));

        static int IndentOf(string line) => line.Length - line.TrimStart().Length;

        static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

        static int Value(Match match) => int.Parse(match.Value, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"\b((?:error|warning|note) SK\d{3}):")]
    private static partial Regex FindingLine();

    [GeneratedRegex(@"^… (\d+) more$")]
    private static partial Regex Abridged();

    [GeneratedRegex(@"\d+")]
    private static partial Regex Number();
}
