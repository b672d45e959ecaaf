using Xunit;

namespace Sketch.Tests.Cli.Commands;

/// <summary>Source: the convention of no-color.org, read in November 2026 as it is commonly known.</summary>
public sealed class ColourTests : IDisposable
{
    private const string Escape = "\u001b[";

    private readonly CommandLineRun _line = new() { IsTerminal = true };

    public void Dispose() => _line.Dispose();

    private void Check() =>
        _line.Run("check", _line.File("a.card", "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 2 x 3, of sliver\n"));

    [Fact]
    public void A_terminal_shows_findings_in_colours()
    {
        Check();
        Assert.Contains($"{Escape}1;33mwarning SK210:{Escape}0m", _line.Output);
    }

    [Fact]
    public void Without_colours_the_words_are_the_same()
    {
        Check();
        var plain = System.Text.RegularExpressions.Regex.Replace(_line.Output, "\u001b\\[[0-9;]*m", "");
        _line.IsTerminal = false;
        Check();
        Assert.Equal(plain, _line.Output);
    }

    [Fact]
    public void A_pipe_gets_no_colours()
    {
        _line.IsTerminal = false;
        Check();
        Assert.DoesNotContain(Escape, _line.Output);
    }

    [Theory]
    [InlineData("NO_COLOR", "1")]
    [InlineData("TERM", "dumb")]
    public void The_environment_can_forbid_colours(string variable, string value)
    {
        _line.Variables[variable] = value;
        Check();
        Assert.DoesNotContain(Escape, _line.Output);
    }

    [Fact]
    public void An_empty_NO_COLOR_forbids_nothing()
    {
        _line.Variables["NO_COLOR"] = "";
        Check();
        Assert.Contains(Escape, _line.Output);
    }
}
