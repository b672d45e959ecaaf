using Xunit;

namespace Sketch.Tests.Cli.Commands;

public sealed class UsageTests : IDisposable
{
    private static readonly string[] Verbs = ["check", "sizes", "draw", "format"];

    private readonly CommandLineRun _line = new();

    public static TheoryData<string> EveryVerb => [.. Verbs];

    public void Dispose() => _line.Dispose();

    [Fact]
    public void No_verb_is_wrong_usage() => Assert.Equal(2, _line.Run());

    [Fact]
    public void A_misspelt_verb_is_answered_with_the_nearest()
    {
        Assert.Equal(2, _line.Run("chekc", "a.card"));
        Assert.Contains("Did you mean \"check\"?", _line.Error);
    }

    [Theory]
    [MemberData(nameof(EveryVerb))]
    public void A_misspelt_option_is_answered_with_the_nearest(string verb)
    {
        Assert.Equal(2, _line.Run(verb, "a.card", "--jsn"));
        Assert.Contains("Did you mean \"--json\"?", _line.Error);
    }

    [Theory]
    [InlineData("draw", "--as", "ai", "--as does not know \"ai\".")]
    [InlineData("templates", "--as", "ai", "--as does not know \"ai\".")]
    [InlineData("templates", "--glue", "much", "--glue: \"much\" is not a length")]
    [InlineData("templates", "--copies", "0", "--copies 0 is not valid")]
    public void A_value_that_an_option_does_not_take_is_reported(string verb, string option, string value, string expected)
    {
        Assert.Equal(2, _line.Run(verb, "a.card", "--out", _line.InFolder("out"), option, value));
        Assert.Contains(expected, _line.Error);
    }

    [Theory]
    [MemberData(nameof(EveryVerb))]
    public void A_verb_without_files_is_wrong_usage(string verb) => Assert.Equal(2, _line.Run(verb));

    [Theory]
    [MemberData(nameof(EveryVerb))]
    public void Help_shows_an_example(string verb)
    {
        Assert.Equal(0, _line.Run(verb, "--help"));
        Assert.Contains($"  sketch {verb} ", _line.Output);
    }

    [Fact]
    public void Help_lists_every_verb()
    {
        _line.Run("--help");
        Assert.All(Verbs, v => Assert.Contains($"  {v} ", _line.Output));
    }

    [Theory]
    [MemberData(nameof(EveryVerb))]
    public void Help_with_a_verb_is_the_help_of_that_verb(string verb)
    {
        _line.Run(verb, "--help");
        var expected = _line.Output;
        Assert.Equal((0, expected), (_line.Run("help", verb), _line.Output));
    }

    [Fact]
    public void Help_alone_is_the_help_of_the_tool()
    {
        _line.Run("--help");
        var expected = _line.Output;
        Assert.Equal((0, expected), (_line.Run("help"), _line.Output));
    }

    [Fact]
    public void Help_with_a_misspelt_verb_names_the_nearest()
    {
        Assert.Equal(2, _line.Run("help", "drwa"));
        Assert.Equal("sketch: There is no verb \"drwa\". Did you mean \"draw\"?\n", _line.Error);
    }

    [Fact]
    public void The_help_of_open_shows_one_default()
    {
        _line.Run("open", "--help");
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(_line.Output, @"\[default"));
    }

    [Fact]
    public void Wrong_usage_leaves_the_output_empty()
    {
        _line.Run("sizes", "--json", "--csv", "a.card");
        Assert.Empty(_line.Output);
    }

    [Fact]
    public void The_version_is_reported()
    {
        Assert.Equal(0, _line.Run("--version"));
        Assert.Matches(@"^sketch \d+\.\d+\.\d+\n$", _line.Output);
    }

    [Theory]
    [InlineData("--licences")]
    [InlineData("--licenses")]
    public void The_licences_of_all_parts_are_printed(string option)
    {
        Assert.Equal(0, _line.Run(option));
        Assert.StartsWith(File.ReadAllText(Project.ThirdPartyNotices.Kept), _line.Output);
    }

    [Fact]
    public void A_file_name_that_begins_with_a_dash_follows_two_dashes()
    {
        Assert.Equal(2, _line.Run("check", "--", "--no-such.card"));
        Assert.Contains("\"--no-such.card\" cannot be opened", _line.Error);
    }

    [Fact]
    public void A_file_name_that_begins_with_an_at_sign_is_a_file_name()
    {
        _line.Run("check", "@lamp.card");
        Assert.Contains("\"@lamp.card\" cannot be opened", _line.Error);
    }

    [Theory]
    [InlineData("8")]
    [InlineData("sixteen")]
    [InlineData("-16")]
    [InlineData("99999999999999999999")]
    public void A_ruler_has_16_32_or_64_marks(string marks)
    {
        Assert.Equal(2, _line.Run("sizes", "--ruler", marks, "a.card"));
        Assert.Contains("16, 32 or 64", _line.Error);
    }

    [Fact]
    public void Two_forms_at_once_are_wrong_usage() => Assert.Equal(2, _line.Run("sizes", "--csv", "--markdown", "a.card"));
}
