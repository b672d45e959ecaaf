using System.Text.RegularExpressions;
using Markdig;
using Markdig.Syntax;
using Xunit;

namespace Sketch.Tests.Project;

public class ReadmeTests
{
    private static readonly string Text = File.ReadAllText(Repository.PathTo("README.md"));

    [Fact]
    public void The_sketch_on_the_first_screen_is_the_shipped_one()
    {
        var shown = Fences("card").First();

        Assert.Equal(File.ReadAllText(Repository.PathTo("sketches", "first-light.card")).Trim(), shown.Trim());
    }

    [Fact]
    public void The_picture_beside_it_is_the_one_that_the_gallery_test_draws_again() =>
        Assert.Matches(@"!\[[^\]]+\]\(gallery/first-light-front\.svg\)", Text);

    [Fact]
    public void Every_file_that_the_readme_names_is_there()
    {
        var named = Regex.Matches(Text, @"\]\((?!https?:)([^)#]+)\)").Select(m => m.Groups[1].Value)
            .Concat(Regex.Matches(Text, @"sketches/[\w.-]+\.(?:card|stash|batch)").Select(m => m.Value));

        Assert.All(named, path => Assert.True(File.Exists(Repository.PathTo(path)) || Directory.Exists(Repository.PathTo(path)), path));
    }

    [Fact]
    public void The_test_command_is_the_one_that_the_build_script_calls() =>
        Assert.Contains("dotnet test", File.ReadAllText(Repository.PathTo(".ci", "run")), StringComparison.Ordinal);

    private static IEnumerable<string> Fences(string language) =>
        Markdown.Parse(Text).Descendants<FencedCodeBlock>().Where(f => f.Info == language).Select(f => f.Lines.ToString());
}
