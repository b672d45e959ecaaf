using System.Text.RegularExpressions;
using Markdig;
using Markdig.Syntax;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Output.Handbook;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Tests.Cli;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>The guide for makers, sketches/guide: what it shows is what the tool does.</summary>
public sealed partial class GuideTests
{
    private const string Prompt = "$ sketch ";

    private static readonly string Cards = Repository.PathTo("sketches");

    public static TheoryData<string, int> Examples => [.. Pages.SelectMany(p => HandbookExample.In(File.ReadAllText(p))
        .Select(e => (Path.GetFileName(p), e.Line)))];

    public static TheoryData<string, int> Consoles => [.. Pages.SelectMany(p => Fences(p).Where(f => f.Info == "console")
        .Select(f => (Path.GetFileName(p), f.Line)))];

    public static TheoryData<string> PageNames => [.. Pages.Select(p => Path.GetFileName(p))];

    private static string[] Pages => [.. Directory.GetFiles(Path.Combine(Cards, "guide"), "*.md").Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_has_no_finding(string page, int line)
    {
        var examples = HandbookExample.In(Text(page));
        var example = examples.Single(e => e.Line == line);
        var files = new ExampleFiles(examples, Cards, new FolderFiles());
        var source = example.Source(Cards);

        var findings = Compiler.Compile(source, files).Findings.ToList();
        if (example.Kind == "batch")
        {
            var planned = new FindingBag();
            BatchPlanner.Plan(BatchFiles.Read(source, files, planned)!, BatchPlanner.UsualTime, planned,
                cancellation: TestContext.Current.CancellationToken);
            findings.AddRange(planned.ToImmutable().Where(f => f.Severity != Severity.Note));
        }

        Assert.Empty(findings.Select(
            f => $"{page}:{f.Location.Start.Line - example.LinesAbove + line - 1}: {f.Code} {f.Message} {f.Hint}"));
    }

    [Theory]
    [MemberData(nameof(Consoles))]
    public void A_command_prints_the_lines_below_it(string page, int line)
    {
        using var folder = new Museum(page);
        var (printed, from) = (Array.Empty<string>(), 0);
        foreach (var text in Fences(page).Single(f => f.Line == line).Lines.ToString().Split('\n').Select(l => l.TrimEnd()))
        {
            if (text.StartsWith(Prompt, StringComparison.Ordinal))
            {
                (printed, from) = (folder.Run(text[Prompt.Length..]).Split('\n'), 0);
                continue;
            }

            var at = Array.FindIndex(printed, from, l => l.TrimEnd() == text);
            Assert.True(at >= 0, $"{page}:{line}: {text}\n{string.Join('\n', printed)}");
            from = at + 1;
        }
    }

    [Theory]
    [MemberData(nameof(PageNames))]
    public void Each_command_that_a_page_names_works(string page)
    {
        using var folder = new Museum(page);
        // The page in the browser runs until it is stopped.
        foreach (var words in Command().Matches(Text(page)).Select(m => m.Groups[1].Value)
            .Where(w => w.Contains(' ', StringComparison.Ordinal) && !w.StartsWith("open ", StringComparison.Ordinal)))
        {
            var printed = folder.Run(words);

            Assert.True(folder.Status == 0, $"sketch {words}\n{printed}");
        }
    }

    private static string Text(string page) => File.ReadAllText(Path.Combine(Cards, "guide", page));

    private static IEnumerable<FencedCodeBlock> Fences(string page) =>
        Markdown.Parse(Text(Path.GetFileName(page))).Descendants<FencedCodeBlock>();

    [GeneratedRegex(@"(?:^|`)(?:\$ )?sketch ([^`\n]+)", RegexOptions.Multiline)]
    private static partial Regex Command();

    /// <summary>A folder with the museum's files and the last of each named example of a page.</summary>
    private sealed class Museum : IDisposable
    {
        private readonly CommandLineRun _run = new();

        public Museum(string page)
        {
            foreach (var file in Directory.GetFiles(Cards).Where(f => !f.EndsWith(".md", StringComparison.Ordinal)))
            {
                File.Copy(file, _run.InFolder(Path.GetFileName(file)));
            }

            foreach (var example in HandbookExample.In(Text(page)).Where(e => e.File is not null))
            {
                _run.File(example.File!, example.Text + "\n");
            }
        }

        public string Run(string words)
        {
            var typed = Word().Matches(words).Select(m => m.Value.Trim('"')).ToArray();
            // Files are those of the folder, and so is what follows --out.
            Status = _run.Run([.. typed.Select(
                (w, i) => Path.HasExtension(w) || (i > 0 && typed[i - 1] == "--out") ? _run.InFolder(w) : w)]);
            return _run.Output.ReplaceLineEndings("\n") + _run.Error.ReplaceLineEndings("\n");
        }

        public int Status { get; private set; }

        public void Dispose() => _run.Dispose();
    }

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
