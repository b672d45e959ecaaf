using System.Text.RegularExpressions;
using Markdig;
using Markdig.Syntax;
using Sketch.Reports;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Project;

public class ReadmeTests
{
    private static readonly string Text = File.ReadAllText(Repository.PathTo("README.md"));

    [Fact]
    public void The_sketch_at_the_top_is_the_one_in_the_folder_of_sketches()
    {
        var shown = Fences("card").First();

        Assert.Equal(File.ReadAllText(Repository.PathTo("sketches", "first-light.card")).Trim(), shown.Trim());
    }

    [Fact]
    public void The_picture_beside_it_is_the_one_in_the_gallery() =>
        Assert.Matches(@"!\[[^\]]+\]\(gallery/first-light-front\.svg\)", Text);

    [Fact]
    public void Every_file_that_the_readme_names_exists()
    {
        var named = Regex.Matches(Text, @"\]\((?!https?:)([^)#]+)\)").Select(m => m.Groups[1].Value)
            .Concat(Regex.Matches(Text, @"sketches/[\w.-]+\.(?:card|stash|batch)").Select(m => m.Value));

        Assert.All(named, path => Assert.True(File.Exists(Repository.PathTo(path)) || Directory.Exists(Repository.PathTo(path)), path));
    }

    [Fact]
    public void The_test_command_is_the_one_in_the_build_script() =>
        Assert.Contains("dotnet test", File.ReadAllText(Repository.PathTo(".ci", "run")), StringComparison.Ordinal);

    [Fact]
    public void The_command_shown_prints_the_output_shown()
    {
        var shown = Fences("console").Single().Split('\n', 2);
        var arguments = shown[0]["$ sketch ".Length..].Split(' ')
            .Select(a => a.Contains('/', StringComparison.Ordinal) ? Repository.PathTo(a) : a);
        using var output = new StringWriter();

        global::Sketch.Cli.Program.Run([.. arguments], output, TextWriter.Null, TestContext.Current.CancellationToken);

        Assert.Equal(shown[1].Trim(), output.ToString().ReplaceLineEndings("\n").Trim());
    }

    [Fact]
    public void The_mistakes_shown_give_the_findings_shown()
    {
        var compilation = Compiler.Compile(new SourceText("mistaken.card", Fences("mistaken").Single()), new TestWorld());
        using var reported = new StringWriter();

        FindingsText.Write(reported, compilation.Findings);

        Assert.Equal(Fences("findings").Single().Trim(), reported.ToString().ReplaceLineEndings("\n").Trim());
    }

    private static IEnumerable<string> Fences(string language) =>
        Markdown.Parse(Text).Descendants<FencedCodeBlock>().Where(f => f.Info == language).Select(f => f.Lines.ToString());
}
