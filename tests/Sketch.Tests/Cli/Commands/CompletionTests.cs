using System.Diagnostics;
using Xunit;

namespace Sketch.Tests.Cli.Commands;

/// <summary>What shells ask for to complete a command line.</summary>
public sealed class CompletionTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    private readonly string _card;
    private readonly string _stash;

    public CompletionTests()
    {
        _card = _line.File(
            "lamp.card", "card \"Lamp\"\nbase A2, of white\nrole sky: blue\nrole deep: navy\nfront\n  panel 2 x 3, of sky\n");
        _stash = _line.File("museum.stash", "stash \"Museum\"\npaper gulls: 12 x 12, 3 sheets\npaper granite: 12 x 12, 3 sheets\n");
    }

    public void Dispose() => _line.Dispose();

    private string[] Complete(string line)
    {
        Assert.Equal(0, _line.Run($"[suggest:{line.Length}]", line));
        return _line.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    [Fact]
    public void A_verb_is_completed() => Assert.Equal(["templates"], Complete("temp"));

    [Fact]
    public void An_option_is_completed() => Assert.Contains("--stash", Complete("draw a.card --st"));

    [Fact]
    public void A_kind_of_picture_is_completed_after_a_comma() => Assert.Contains("svg,png", Complete("draw a.card --as svg,"));

    [Fact]
    public void Roles_are_those_of_the_card() => Assert.Equal(["deep=", "sky="], Complete($"draw {_card} --stash {_stash} --paper "));

    [Fact]
    public void Papers_are_those_of_the_stash() =>
        Assert.Equal(["sky=granite", "sky=gulls"], Complete($"draw {_card} --stash {_stash} --paper sky=g"));

    [Fact]
    public void The_next_choice_of_a_list_is_completed() =>
        Assert.Contains("sky=gulls,deep=", Complete($"draw {_card} --stash {_stash} --paper sky=gulls,"));

    [Fact]
    public void A_broken_file_has_no_roles() => Assert.Empty(Complete($"draw {_line.Broken("b.card")} --paper "));

    [Theory]
    [InlineData("bas", "There is no script for \"bas\". Did you mean \"bash\"?")]
    [InlineData("anchor", "There is no script for \"anchor\". Write one of bash, zsh, fish, pwsh.")]
    public void A_shell_without_a_script_is_answered_with_what_to_write(string shell, string answer)
    {
        Assert.Equal(2, _line.Run("completions", shell));
        Assert.Contains(answer, _line.Error);
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("pwsh")]
    public void Each_shell_has_a_script(string shell)
    {
        Assert.Equal(0, _line.Run("completions", shell));
        Assert.Contains("[suggest:", _line.Output);
    }

    [Fact]
    public void Another_shell_is_wrong_usage() => Assert.Equal(2, _line.Run("completions", "cmd"));

    [Fact]
    public async Task Bash_completes_a_paper_by_the_script()
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "This system has no bash.");
        _line.Run("completions", "bash");
        var typed = $"sketch draw {_card} --stash {_stash} --paper sky=gu";
        // Bash takes an equals sign for a word of its own.
        var script = $"""
            {_line.Output}
            sketch() {'{'} dotnet '{typeof(Sketch.Cli.Program).Assembly.Location}' "$@"; {'}'}
            compopt() {'{'} :; {'}'}
            COMP_LINE='{typed}' COMP_POINT={typed.Length} COMP_WORDS=(sketch draw {_card} --stash {_stash} --paper sky = gu) COMP_CWORD=8
            _sketch
            printf '%s\n' "{'$'}{'{'}COMPREPLY[@]{'}'}"
            """;

        using var bash = Process.Start(new ProcessStartInfo("/bin/bash", ["-c", script]) { RedirectStandardOutput = true })!;
        var completed = await bash.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);

        Assert.Equal("gulls", completed.Trim());
    }
}
